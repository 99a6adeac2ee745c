import type { NumberPhrase } from './items.ts';

/** Concepts that go with each dimension, so that "742 nits" never becomes a contrast. */
const conceptsByDimension: Readonly<Record<string, readonly string[]>> = {
  luminance: ['peak', 'sustained', 'luminance', 'sdrWhite', 'black', 'whitePoint'],
  de: ['greyError', 'error', 'chartError', 'deItp', 'angle', 'cct'],
  ratio: ['contrast', 'contrastChequer', 'contrastSequential'],
  temperature: ['cct', 'whitePoint', 'sdrWhite'],
  time: ['lag', 'response'],
  power: ['power', 'standby'],
  noise: ['noise'],
  percent: [
    'coverage',
    'area',
    'luminance',
    'sdrWhite',
    'peak',
    'hold',
    'uniformity',
    'saturation',
    'eotf',
    'redBalance',
    'greenBalance',
    'blueBalance',
    'angle',
    'sustained',
  ],
  angle: ['hueError'],
  duv: ['duv', 'whitePoint', 'colourUniformity', 'tint'],
};

const bareConcepts = new Set([
  'greyError',
  'error',
  'chartError',
  'deItp',
  'gamma',
  'gammaSlope',
  'duv',
  'contrast',
  'contrastChequer',
  'contrastSequential',
  'whitePoint',
  'colourUniformity',
  'angle',
  'cct',
  'uniformity',
]);

/** May a number of this dimension be said of the concept? Undefined: no number; empty: a bare number. */
export function fits(concept: string, dimension: string | undefined): boolean {
  if (dimension === undefined) return true;
  if (dimension === '') return bareConcepts.has(concept);
  return conceptsByDimension[dimension]?.includes(concept) ?? false;
}

/**
 * Bounds of what a concept's numbers of a dimension can be at all; outside of them something else is spoken of. Gamma is
 * an exponent, contrast so many to 1, black in cd/m² (common practice, no source; wide on purpose).
 */
const possible: Readonly<
  Record<string, { dimension: string; bounds: readonly [least: number, most: number] }>
> = {
  gamma: { dimension: '', bounds: [1, 4] },
  contrast: { dimension: '', bounds: [20, Number.POSITIVE_INFINITY] },
  black: { dimension: 'luminance', bounds: [0, 5] },
};

/** Could the number be of this concept? "From 0.8 to 0.28" is no gamma, 1.9 no contrast, and 1,000 nits are no black. */
export function isPossible(concept: string, number: NumberPhrase | undefined): boolean {
  const { dimension, bounds } = possible[concept] ?? {};
  if (!bounds || !number || number.dimension !== dimension) return true;
  return [number.x, number.to?.x ?? number.partner ?? number.x].every(
    (x) => x >= bounds[0] && x <= bounds[1],
  );
}

/** A white is one point: "it averages 0.3" after a word on it takes up what was spoken of before. */
export function isOnePoint(concept: string): boolean {
  return ['whitePoint', 'cct', 'duv', 'tint'].includes(concept);
}
