/**
 * How sure a quantity is. Reading order: errorModel (who errs with whom), random and streams (the errors of 2,000
 * imagined worlds), firstOrder and draws (what they do to a quantity), spread (u), measurer (each made once).
 */
export { createMeasurer, drawQuantity, type Measurer } from './measurer.ts';
export { coverageFactor, expanded, probability } from './probability.ts';
export { drawCount } from './streams.ts';
