import type { Operand, Selector } from '../../contract/check.ts';
import type { RunEvidence, UnitEvidence } from '../../contract/evidence.ts';
import type { MeasuredSeries, QuantityDraws } from '../../contract/measurement.ts';
import { drawnColumn, drawnNumber } from './columns.ts';
import { convertUnit } from './convertUnit.ts';
import { readFact } from './factValue.ts';
import { cellAt, cellsOf } from './gridCell.ts';
import { inRange, type Level, type Levels, levelsOf, sameAxis } from './levels.ts';
import type { OperandReading, OperandValue, Statistic } from './operandValue.ts';
import { resolveRun } from './resolve.ts';
import type { Sight } from './sight.ts';
import { axisUnitOf, nameOfQuantity, nameOfUnit, unitOfQuantity } from './terms.ts';

/** Reads one operand of a check; `signal` binds the signal of a sentence that names none. */
export function readOperand(
  sight: Sight,
  operand: Operand,
  options: { signal?: string; side?: 'upper' | 'lower' } = {},
): OperandReading {
  if (operand.type === 'fact') return readFact(sight, operand);
  const resolved = resolveRun(sight, operand.id, operand.conditions, options.signal);
  if (!resolved.ok) return resolved;
  const { unit, run } = resolved;
  const measurement = sight.measurement(unit, run, operand.id)!;
  if (measurement.state === 'undefined')
    return { ok: false, reason: `Its ${nameOfQuantity(operand.id)} is undefined: ${measurement.undefined}.` };
  const common = { id: operand.id, unit, run, notes: [...resolved.notes, ...measurement.notes] };
  if (measurement.state === 'over')
    return {
      ok: true,
      value: {
        ...common,
        value: measurement.over,
        u: null,
        over: true,
        unitOfMeasure: measurement.unit,
        stat: 'scalar',
        levels: [],
        draw: null,
        drawCount: 0,
        pending: false,
        evidence: evidenceOfRows(sight, unit, run, measurement.rows),
      },
    };
  const draws = sight.draws(unit, run, operand.id);
  return selectValue(sight, operand, measurement, draws, common, options.side);
}

type Common = { id: string; unit: UnitEvidence; run: RunEvidence; notes: string[] };

function selectValue(
  sight: Sight,
  operand: Extract<Operand, { type: 'quantity' }>,
  series: MeasuredSeries,
  draws: QuantityDraws | 'pending' | null,
  common: Common,
  side: 'upper' | 'lower' | undefined,
): OperandReading {
  const selector = effectiveSelector(operand, series);
  const view = levelsOf(series, operand.conditions, selector);
  const statistic = statisticOf(selector, series, side);
  if (!statistic)
    return {
      ok: false,
      asks: true,
      reason: `The ${nameOfQuantity(series.id)} has ${view.levels.length} levels, and the sentence does not say whether it means one of them, the average or the maximum.`,
    };
  const chosen = choose(view, selector, statistic);
  if (chosen.length === 0)
    return { ok: false, reason: nothingThere(series.id, view, selector, nameOfUnit(common.unit)) };
  const value = statistics(
    chosen.map((level) => view.valueOf(level, (member) => series.values[member]!.value)),
    statistic,
  );
  const extreme = chosen.find((level) => level.value === value);
  const drawn = draws === 'pending' || draws === null ? null : draws;
  const draw = drawn ? drawOf(drawn, view, chosen, statistic) : null;
  const rows = statistic.name === 'average' ? chosen.flatMap((level) => level.rows) : (extreme?.rows ?? []);
  return {
    ok: true,
    value: {
      ...common,
      value,
      u: standardUncertainty(series, view, chosen, statistic, extreme, drawn),
      over: false,
      unitOfMeasure: series.unit,
      ...(statistic.name !== 'average' && extreme?.axis !== undefined ? { axis: extreme.axis } : {}),
      stat: statistic.name,
      ...(statistic.rank > 0 && { rank: statistic.rank }),
      levels: chosen,
      series,
      draw,
      ...(drawn
        ? {
            levelDraws: (level: Level) => levelColumn(drawn, view, level),
          }
        : {}),
      drawCount: drawn?.count ?? 0,
      pending: draws === 'pending',
      evidence: evidenceOfRows(sight, common.unit, common.run, rows),
    },
  };
}

/** A window or an angle among the conditions picks a level of a series over windows or angles. */
function effectiveSelector(
  { conditions, selector }: Extract<Operand, { type: 'quantity' }>,
  series: MeasuredSeries,
): Selector {
  if (series.id.endsWith('.cell') && typeof selector.at === 'string' && selector.stat === 'at') {
    const at = cellAt(
      selector.at,
      series.values.map(({ axis }) => String(axis)),
    );
    return at === undefined ? selector : { ...selector, at };
  }
  if (selector.at !== undefined || selector.from !== undefined || selector.to !== undefined) return selector;
  const { window, angle } = conditions;
  if (/^peak(\.|$)/.test(series.id) && window !== undefined) return { ...selector, stat: 'at', at: window };
  if (series.id.startsWith('angle.') && angle !== undefined) return { ...selector, stat: 'at', at: angle };
  return selector;
}

function statisticOf(
  selector: Selector,
  series: MeasuredSeries,
  side: 'upper' | 'lower' | undefined,
): Statistic | undefined {
  const { stat, exceptions } = selector;
  if (stat === 'all') return { name: side === 'lower' ? 'min' : 'max', rank: exceptions ?? 0 };
  if (stat === 'any')
    return { name: side === 'lower' ? 'max' : 'min', rank: Math.max((exceptions ?? 1) - 1, 0) };
  if (stat !== 'scalar') return { name: stat, rank: 0 };
  if (series.values.length <= 1) return { name: 'scalar', rank: 0 };
  if (selector.at !== undefined) return { name: 'at', rank: 0 };
  // A peak without a window is the greatest of all windows, and the window is named.
  if (/^peak(\.|$)/.test(series.id)) return { name: 'max', rank: 0 };
  return undefined;
}

function choose(view: Levels, selector: Selector, statistic: Statistic): Level[] {
  if (statistic.name === 'scalar') return view.levels.slice(0, 1);
  if (statistic.name === 'at')
    return view.levels.filter((level) => sameAxis(level.axis, selector.at)).slice(0, 1);
  const among = typeof selector.at === 'string' ? cellsAlong(selector.at, view) : undefined;
  return view.levels.filter(
    (level) => level.counts && inRange(level.axis, selector) && (among?.has(String(level.axis)) ?? true),
  );
}

function cellsAlong(place: string, { levels }: Levels): ReadonlySet<string> {
  return new Set(
    cellsOf(
      place,
      levels.map(({ axis }) => String(axis)),
    ),
  );
}

function statistics(values: number[], { name, rank }: Statistic): number {
  if (name === 'average') return values.reduce((sum, value) => sum + value, 0) / values.length;
  if (name === 'max' && rank === 0) return values.reduce((most, value) => Math.max(most, value));
  if (name === 'min' && rank === 0) return values.reduce((least, value) => Math.min(least, value));
  if (name === 'scalar' || name === 'at') return values[0]!;
  const ordered = [...values].sort((one, other) => (name === 'max' ? other - one : one - other));
  return ordered[Math.min(rank, ordered.length - 1)]!;
}

function standardUncertainty(
  series: MeasuredSeries,
  view: Levels,
  chosen: readonly Level[],
  statistic: Statistic,
  extreme: Level | undefined,
  drawn: QuantityDraws | null,
): number | null {
  if (statistic.name !== 'average') return extreme?.u ?? null;
  const whole = chosen.length === view.levels.filter((level) => level.counts).length;
  if (whole && series.average) return series.average.u;
  if (!drawn) return null;
  const key = statisticKey(view, chosen, statistic);
  return drawnNumber(drawn, `u ${key}`, () => spread(statisticColumn(drawn, view, chosen, statistic)));
}

/** Standard deviation of the draws, for a statistic that the measurement does not carry itself. */
function spread(column: Float64Array): number {
  let sum = 0;
  let squares = 0;
  for (const value of column) {
    sum += value;
    squares += value * value;
  }
  const count = column.length;
  return Math.sqrt(Math.max(0, squares / count - (sum / count) ** 2));
}

/** The statistic in a draw; its draws are worked out when the first is asked for. */
function drawOf(drawn: QuantityDraws, view: Levels, chosen: readonly Level[], statistic: Statistic) {
  let column: Float64Array | undefined;
  return (index: number): number => {
    column ??= statisticColumn(drawn, view, chosen, statistic);
    return column[index]!;
  };
}

function statisticColumn(
  drawn: QuantityDraws,
  view: Levels,
  chosen: readonly Level[],
  statistic: Statistic,
): Float64Array {
  return drawnColumn(drawn, statisticKey(view, chosen, statistic), (d) => {
    const width = drawn.axes.length;
    return statistics(
      chosen.map((level) => view.valueOf(level, (member) => drawn.values[d * width + member]!)),
      statistic,
    );
  });
}

function levelColumn(drawn: QuantityDraws, view: Levels, level: Level): Float64Array {
  return drawnColumn(drawn, `level ${levelKey(view, level)}`, (d) =>
    view.valueOf(level, (member) => drawn.values[d * drawn.axes.length + member]!),
  );
}

function statisticKey(view: Levels, chosen: readonly Level[], { name, rank }: Statistic): string {
  return `${name} ${rank} ${chosen.map((level) => levelKey(view, level)).join(' ')}`;
}

/** The members that a level stands for, and how they make one value. */
function levelKey({ fold }: Levels, { members }: Level): string {
  return members.length === 1 ? String(members[0]) : `${fold}(${members.join()})`;
}

function nothingThere(id: string, view: Levels, selector: Selector, name: string): string {
  const unit = axisUnitOf(id);
  const what = nameOfQuantity(id);
  if (selector.at === undefined)
    return `No level that counts was measured in that part of the ${what} of the ${name}.`;
  const measured = view.levels.map((level) => level.axis).filter((axis) => axis !== undefined);
  const at = typeof selector.at === 'number' ? `${selector.at}${unit}` : selector.at;
  const near =
    typeof selector.at === 'number'
      ? neighbours(
          measured.filter((axis) => typeof axis === 'number'),
          selector.at,
        )
      : '';
  return `The ${what} of the ${name} was not measured at ${at}${near && ` (nearest: ${near}${unit})`}.`;
}

function neighbours(axes: readonly number[], at: number): string {
  const under = axes.filter((axis) => axis < at).at(-1);
  const over = axes.find((axis) => axis > at);
  return [under, over].filter((axis) => axis !== undefined).join(' and ');
}

/** `run/<r>#<row>` for the own unit, with `unit/<u>/` before it for another. */
export function evidenceOfRows(
  sight: Sight,
  unit: UnitEvidence,
  run: RunEvidence,
  rows: readonly number[],
): string[] {
  const path = `${unit.id === sight.own ? '' : `unit/${unit.id}/`}run/${run.id}`;
  return [...new Set(rows)].sort((one, other) => one - other).map((row) => `${path}#${row}`);
}

/** The value in another unit of measure, or null when the two do not measure the same thing. */
export function inUnit(value: OperandValue, unit: string | undefined): OperandValue | null {
  const factor = convertUnit(value.unitOfMeasure || unitOfQuantity(value.id), unit);
  if (factor === null) return null;
  if (factor === 1) return value;
  const { draw } = value;
  return {
    ...value,
    value: value.value * factor,
    u: value.u === null ? null : value.u * factor,
    unitOfMeasure: unit!,
    draw: draw && ((index) => draw(index) * factor),
  };
}
