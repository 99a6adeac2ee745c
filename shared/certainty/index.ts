/**
 * How sure a quantity is. Reading order: errorModel (who errs with whom), random and streams (the errors of 2,000
 * imagined worlds), gradient (first order), expansion and draws (what the errors do to a quantity), spread (u),
 * workspace (the room that runs draw in, in turns), measurer (each made once).
 */
export { createMeasurer, drawQuantity, type Measurer } from './measurer.ts';
export { coverageFactor, expanded, probability } from './probability.ts';
export { drawCount } from './streams.ts';
