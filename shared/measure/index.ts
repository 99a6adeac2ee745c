/**
 * Readings to quantities. Reading order: conditions, points, greyLevels, prepare (a run made ready); plan (what a
 * quantity is); one file a series; plans (all of them); measureRun (the measurements); catalogue (what they are
 * called).
 */
export { catalogue, catalogueEntry } from './catalogue.ts';
export { measureRun } from './measureRun.ts';
export { placeOf } from './uniformity.ts';
