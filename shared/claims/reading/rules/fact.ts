import type { Findings } from '../finding.ts';
import type { Scene } from '../scene.ts';
import { readFormats } from './formats.ts';
import { readMakerClaims } from './maker.ts';
import { readMeasures } from './measures.ts';
import { readPanel, readResolution } from './panel.ts';
import { readPrice } from './price.ts';
import { readSameCount } from './sameCount.ts';
import { readCounts } from './socket.ts';

/** Ports, dimensions, weight, refresh rate, warranty, HDR formats, resolution, prices. */
export function readFacts(scene: Scene, findings: Findings): undefined {
  readMakerClaims(scene, findings);
  readCounts(scene, findings);
  readSameCount(scene, findings);
  readMeasures(scene, findings);
  readResolution(scene, findings);
  readPanel(scene, findings);
  readFormats(scene, findings);
  readPrice(scene, findings);
}
