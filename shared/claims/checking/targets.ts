import { cctAndDuv } from '../../colour/cct.ts';
import { bt1886Eotf } from '../../colour/transfer/bt1886.ts';
import { srgbEotf } from '../../colour/transfer/srgb.ts';
import { isWhiteName, whiteXy } from '../../colour/whites.ts';
import type { RunEvidence } from '../../contract/evidence.ts';
import type { Axis, MeasuredSeries, RunMeasurements } from '../../contract/measurement.ts';
import type { OperandValue } from './operandValue.ts';
import type { Sight } from './sight.ts';

/** Correlated colour temperature of a run's target white, K; null for a white that has no name here. */
export function targetCct(run: RunEvidence): number | null {
  const { white } = run.conditions.target;
  if (!isWhiteName(white)) return null;
  const found = cctAndDuv(...whiteXy(white));
  return 'cct' in found ? found.cct : null;
}

/** What a signed quantity would be of a perfect set; null where none is defined. */
export function targetOf(
  { id, values }: Pick<MeasuredSeries, 'id' | 'values'>,
  run: RunEvidence,
  measurements: RunMeasurements,
): number | null {
  if (id === 'white.cct') return targetCct(run);
  if (id === 'gamma.average' || id === 'gamma.slope') {
    const series = measurements.get('gamma');
    const levels = series?.state === 'measured' ? levelsOf(series.values.filter(isMiddle)) : [];
    const gamma = gammaOfTarget(run, levels);
    return typeof gamma === 'number' ? gamma : null;
  }
  if (id === 'gamma') {
    const gamma = gammaOfTarget(run, levelsOf(values.filter(({ counts }) => counts)));
    return typeof gamma === 'number' ? gamma : null;
  }
  return /^(eotf\.error|sweep\..*\.(saturation|hue|luminance))$/.test(id) ? 0 : null;
}

/** {@link gammaOfTarget} over the levels that a gamma was found from. */
export function targetGamma(value: OperandValue, sight: Sight): number | string {
  const run = value.run!;
  if (value.id === 'gamma') return gammaOfTarget(run, levelsOf(value.levels));
  const series = sight.measurement(value.unit, run, 'gamma');
  return gammaOfTarget(run, series?.state === 'measured' ? levelsOf(series.values.filter(isMiddle)) : []);
}

/**
 * The gamma that a perfect set would show under the run's target EOTF, by the same definition and over the same
 * levels: the exponent itself for a power law; for BT.1886 and sRGB the average of ln(Yt/Yw)/ln V, since neither is
 * a power law (`docs/measuring.md`, "Greyscale").
 * @param levels V between 0 and 1
 * @returns a reason where the target has no gamma or a level is missing
 */
export function gammaOfTarget(run: RunEvidence, levels: readonly number[]): number | string {
  const { eotf } = run.conditions.target;
  const power = /^gamma (\d+(?:\.\d+)?)$/.exec(eotf)?.[1];
  if (power !== undefined) return Number(power);
  if (eotf !== 'BT.1886' && eotf !== 'sRGB') return `a ${eotf} target has no gamma`;
  if (levels.length === 0) return 'no level from 10 to 90 % was measured';
  const white = luminanceAt(run, 100);
  if (white === null) return 'no 100 % level';
  const black = luminanceAt(run, 0) ?? 0;
  const curve = (V: number) => (eotf === 'sRGB' ? white * srgbEotf(V) : bt1886Eotf(V, white, black));
  const Yw = curve(1);
  const gammas = levels.map((V) => Math.log(curve(V) / Yw) / Math.log(V));
  return gammas.reduce((sum, gamma) => sum + gamma, 0) / gammas.length;
}

type Placed = { axis?: Axis | undefined; counts: boolean };

function isMiddle({ axis, counts }: Placed): boolean {
  return counts && typeof axis === 'number' && axis >= 10 && axis <= 90;
}

function levelsOf(values: readonly Placed[]): number[] {
  return values.flatMap(({ axis }) => (typeof axis === 'number' ? [axis / 100] : []));
}

/** Mean luminance of the greys at one stimulus, cd/m². */
function luminanceAt(run: RunEvidence, stimulus: number): number | null {
  const found = run.readings.flatMap((reading) =>
    reading.series === 'greyscale' &&
    reading.stimulus !== undefined &&
    Math.abs(reading.stimulus - stimulus) < 1e-9
      ? (reading.Y ?? [])
      : [],
  );
  return found.length === 0 ? null : found.reduce((sum, Y) => sum + Y, 0) / found.length;
}
