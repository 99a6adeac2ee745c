import type { House } from '../../contract/house.ts';
import { intensities } from './intensities.ts';
import { severities } from './severities.ts';
import { topics } from './topics.ts';

/** The house words as shipped (`judging.md`, "House words"). Limits: common practice, no source. */
export const defaultHouse: House = {
  version: 2,
  level: 0.95,
  limits: {
    visibleDe2000: 3,
    visibleDeItp: 3,
    imperceptibleDe2000: 1,
    referenceAverage: 1,
    referenceMaximum: 3,
    closeToReferenceAverage: 1.5,
    accurateAverage: 3,
    tint: 0.002,
    saturationPercent: 5,
    hueDegrees: 3,
    eotfPercent: 10,
    gamma: 0.05,
    cctKelvin: 200,
  },
  tintSizes: { slight: 0.002, mild: 0.004, obvious: 0.008 },
  severities,
  intensities,
  topics,
  adjectives: {},
};
