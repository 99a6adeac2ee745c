/**
 * Readings to quantities. Reading order: conditions, points, greyLevels, prepare (a run made ready); plan (what a
 * quantity is); one file a series; plans (all of them); measureRun (the measurements); catalogue (what they are
 * called).
 */
export {
  type CatalogueEntry,
  type CatalogueRow,
  catalogue,
  catalogueEntry,
  type LimitKey,
} from './catalogue.ts';
export { measureRun } from './measureRun.ts';
export { clipsWithin } from './toneCurve.ts';
export { placeOf } from './uniformity.ts';
