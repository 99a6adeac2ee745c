/**
 * The program that reads, measures and judges, in one piece: by far the largest of the Draft, and nothing that the
 * text needs to be shown and typed in. It is fetched once the text has been shown.
 */
export { benchOf, checkerOf } from '../../evidence/articleChecker.ts';
export { openDraws } from '../../evidence/draws.ts';
export { refreshMeasuredValues } from '../values/measuredValues.ts';
