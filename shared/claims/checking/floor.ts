import { isWhiteName, whiteXy } from '../../colour/whites.ts';
import type { RunEvidence } from '../../contract/evidence.ts';
import { drawnNumber } from './columns.ts';
import type { OperandValue } from './operandValue.ts';
import type { Sight } from './sight.ts';
import { plain } from './terms.ts';

/** Distances from a target: no error is ever negative, so the instrument's noise alone keeps them off zero. */
export function isDistance(id: string): boolean {
  return /\.(de2000(\.total|\.colour)?|deitp)$|^grey\.tint$|^white\.distance$|^uniformity\..*\.colour$/.test(
    id,
  );
}

/**
 * "this instrument cannot prove an error under 1 (its floor here is 1.8)": said where even an error of zero would
 * be found above the limit more often than the level allows.
 * @returns the sentence, or null where a smaller error could be proven
 */
export function floorNote(sight: Sight, value: OperandValue, limit: number, level: number): string | null {
  if (!isDistance(value.id) || value.draw === null) return null;
  const floor = floorOf(sight, value, level);
  if (floor === null || floor <= limit) return null;
  const shown = Number(floor.toPrecision(2));
  return `this instrument cannot prove an error under ${plain(limit)} (its floor here is ${plain(shown)})`;
}

/** The value that a perfect set would be found under with probability `level`, with this instrument. */
function floorOf(sight: Sight, value: OperandValue, level: number): number | null {
  return onTargetFloor(sight, value, level) ?? spreadFloor(value, level);
}

/**
 * Draws of the same run with every grey exactly on its target: what the instrument would report of a perfect set.
 * Only for colour differences against the target white, where the target is known without luminance.
 */
function onTargetFloor(sight: Sight, value: OperandValue, level: number): number | null {
  const { run, unit, id } = value;
  if (!run || !/^(grey\.(de2000|tint)|white\.distance)$/.test(id)) return null;
  const perfect = onTarget(run);
  if (!perfect) return null;
  const draws = sight.draws(unit, perfect, id);
  if (draws === null || draws === 'pending') return null;
  const members = value.levels.flatMap((chosen) => chosen.members);
  const width = draws.axes.length;
  if (members.some((member) => member >= width)) return null;
  return drawnNumber(draws, `floor ${value.stat === 'average'} ${level} ${members.join()}`, () => {
    const results = new Float64Array(draws.count);
    for (let d = 0; d < results.length; d++) {
      const values = members.map((member) => draws.values[d * width + member]!);
      results[d] =
        value.stat === 'average'
          ? values.reduce((sum, v) => sum + v, 0) / values.length
          : Math.max(...values);
    }
    return quantile(results, level);
  });
}

const perfectRuns = new WeakMap<RunEvidence, RunEvidence | null>();

function onTarget(run: RunEvidence): RunEvidence | null {
  let perfect = perfectRuns.get(run);
  if (perfect === undefined) {
    perfect = withGreysOnTarget(run);
    perfectRuns.set(run, perfect);
  }
  return perfect;
}

function withGreysOnTarget(run: RunEvidence): RunEvidence | null {
  const { white } = run.conditions.target;
  if (!isWhiteName(white)) return null;
  const [x, y] = whiteXy(white);
  return {
    ...run,
    digest: `${run.digest} on target`,
    readings: run.readings.map((reading) =>
      reading.series === 'greyscale' && reading.x !== null && reading.y !== null
        ? { ...reading, x, y }
        : reading,
    ),
  };
}

/**
 * Without the target: the draws of a distance d around a found f obey mean(d²) ≈ f² + S with S the total variance of
 * the error vector, whatever its direction; a vector of two such components alone stays under √(S·ln(1/(1 − level)))
 * with probability `level` (Rayleigh distribution).
 */
function spreadFloor(value: OperandValue, level: number): number | null {
  const { draw, drawCount } = value;
  if (!draw || drawCount === 0) return null;
  let squares = 0;
  for (let d = 0; d < drawCount; d++) squares += draw(d) ** 2;
  const variance = squares / drawCount - value.value ** 2;
  return variance > 0 ? Math.sqrt(variance * Math.log(1 / (1 - level))) : null;
}

function quantile(values: Float64Array, level: number): number {
  const sorted = values.toSorted();
  return sorted[Math.min(sorted.length - 1, Math.ceil(level * sorted.length) - 1)]!;
}
