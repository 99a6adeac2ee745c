/** Concepts that go with each dimension, so that "742 nits" never becomes a contrast. */
const conceptsByDimension: Readonly<Record<string, readonly string[]>> = {
  luminance: ['peak', 'sustained', 'luminance', 'sdrWhite', 'black', 'whitePoint'],
  de: ['greyError', 'error', 'chartError', 'deItp', 'angle', 'cct'],
  ratio: ['contrast', 'contrastChequer', 'contrastSequential'],
  temperature: ['cct', 'whitePoint'],
  time: ['lag', 'response'],
  power: ['power', 'standby'],
  noise: ['noise'],
  percent: [
    'coverage',
    'area',
    'luminance',
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
