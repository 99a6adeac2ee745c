/**
 * How sure a quantity is. Reading order: errorModel (who errs with whom), random and streams (the errors of 2,000
 * imagined worlds), gradient (first order), expansion and draws (what the errors do to a quantity), spread (u),
 * workspace (the room that runs draw in, in turns), measurer (each made once).
 */
export { createMeasurer, drawQuantity } from './measurer.ts';
export { expanded, probability } from './probability.ts';
