import type { OnsetCheck } from '../../contract/check.ts';
import { closeNote } from './bound.ts';
import { decide, onTheLimit } from './decide.ts';
import { levelsFigure } from './figures.ts';
import type { Level } from './levels.ts';
import { nearEnough } from './neighbours.ts';
import { readOperand } from './operand.ts';
import type { OperandValue } from './operandValue.ts';
import { conditionsOf, evidenceUnion, notesOf, type Outcome, unproven } from './outcome.ts';
import type { Sight } from './sight.ts';
import { amount, axisUnitOf, definitionOf, nameOfQuantity, plain } from './terms.ts';

/** A level with a place on a number axis. */
type Step = { axis: number; level: Level; value: number; member: number; drawn: Float64Array | undefined };

/** Off the grid a stated edge may stand this far from the interpolated onset, in units of the axis. */
const edgeTolerance = 2.5;

/** Past the limit from a level upwards (or up to a level): every level on the stated side and no other. */
export function judgeOnset(check: OnsetCheck, sight: Sight, signal?: string): Outcome {
  const { operand } = check;
  const edge = check.from ?? check.to!;
  const stated = {
    limit: check.limit,
    op: check.side === 'over' ? '>' : '<',
    ...(check.from === undefined ? { to: check.to } : { from: check.from }),
    inclusive: check.edge === 'included',
  };
  if (operand.type === 'fact') return unproven('A fact has no levels', `fact.${operand.key}`, stated);
  const quantity = operand.id;
  const series = { ...operand, selector: { ...operand.selector, stat: 'max' as const } };
  const reading = readOperand(sight, series, signal === undefined ? {} : { signal });
  if (!reading.ok) return unproven(reading.reason, quantity, stated);
  const { value } = reading;
  if (value.over || !value.series) return unproven('Only a lower bound is known', quantity, stated);
  const steps = stepsOf(value);
  const unit = axisUnitOf(quantity);
  const common = {
    stated,
    found: foundOfSteps(value, steps, check),
    conditions: conditionsOf(value),
    quantity,
    evidence: evidenceUnion(
      sight,
      value,
      steps.flatMap(({ level }) => level.rows),
    ),
  };
  const sides = sidesOf(steps, check, edge);
  if (sides.inside.length === 0)
    return unproven(
      `No level that counts was measured ${sideWords(check, edge, unit)}`,
      quantity,
      stated,
      common,
    );
  const gap = gapAround(sides, check, edge, quantity, unit, steps);
  const allowed = check.mostly ? Math.floor((sides.inside.length + sides.outside.length) / 5) : 0;
  const statement = (d: number | undefined) => {
    // Asked of thousands of draws: most are settled by a few levels.
    let out = 0;
    for (const step of sides.inside)
      if (!isPast(valueAt(step, d), check, true) && ++out > allowed) return false;
    for (const step of sides.outside)
      if (isPast(valueAt(step, d), check, false) && ++out > allowed) return false;
    if (sides.onGrid || check.mostly) return true;
    const crossing = crossingOf(sides, (step) => valueAt(step, d), check.limit);
    return crossing === null || Math.abs(edge - crossing) <= edgeTolerance + onTheLimit;
  };
  const decision = decide([value], statement, sight.bench.house.level);
  const actual = onsetOf(steps, check);
  const wrong = [
    ...sides.inside.filter((step) => !isPast(step.value, check, true)),
    ...sides.outside.filter((step) => isPast(step.value, check, false)),
  ];
  const sentence = sentenceOf(check, value, steps, sides, wrong, edge, unit, sight);
  const figure = levelsFigure(
    value,
    actual === null
      ? `No onset at ${plain(check.limit)}`
      : `Past ${plain(check.limit)} ${fromWords(check, actual, unit)}`,
    { value: check.limit, label: plain(check.limit) },
    (axis) => wrong.some((step) => step.axis === axis),
    { from: check.from, to: check.to },
  );
  const suggestion = actual !== null && actual !== edge ? fromWords(check, actual, unit) : undefined;
  if (gap && decision.verdict !== 'breaks')
    return {
      ...common,
      verdict: 'unproven',
      probability: null,
      sentence: gap,
      notes: notesOf(value),
      ...(figure ? { figure } : {}),
    };
  return {
    ...common,
    ...decision,
    sentence,
    notes: [...closeNote(decision.verdict, decision.probability), ...notesOf(value)],
    ...(figure ? { figure } : {}),
    ...(decision.verdict !== 'holds' && suggestion ? { suggestion } : {}),
  };
}

/** The level in one world: its found value, or a draw. */
function valueAt({ value, drawn }: Step, draw: number | undefined): number {
  return draw === undefined || drawn === undefined ? value : drawn[draw]!;
}

function stepsOf(value: OperandValue): Step[] {
  return value.levels
    .flatMap((level) =>
      typeof level.axis === 'number'
        ? [
            {
              axis: level.axis,
              level,
              value: level.value,
              member: level.members[0]!,
              drawn: value.levelDraws?.(level),
            },
          ]
        : [],
    )
    .sort((one, other) => one.axis - other.axis);
}

type Sides = { inside: Step[]; outside: Step[]; free: Step | undefined; onGrid: boolean };

function sidesOf(steps: readonly Step[], { from, edge: rule }: OnsetCheck, edge: number): Sides {
  const at = steps.find((step) => Math.abs(step.axis - edge) < onTheLimit);
  const beyond = (step: Step) => (from === undefined ? step.axis < edge : step.axis > edge);
  const rest = steps.filter((step) => step !== at);
  const inside = rest.filter(beyond);
  const outside = rest.filter((step) => !beyond(step));
  if (at && rule === 'included') inside.push(at);
  if (at && rule === 'excluded') outside.push(at);
  const byAxis = (one: Step, other: Step) => one.axis - other.axis;
  return {
    inside: inside.sort(byAxis),
    outside: outside.sort(byAxis),
    free: rule === 'free' ? at : undefined,
    onGrid: at !== undefined,
  };
}

/** On its own side a number on the limit is past it; on the other side it is not: both count as holding. */
function isPast(value: number, { side, limit }: OnsetCheck, wanted: boolean): boolean {
  const slack = wanted ? onTheLimit : -onTheLimit;
  return side === 'over' ? value > limit - slack : value < limit + slack;
}

/** The two levels on either side of the stated edge. */
function bracketOf({ inside, outside }: Sides): [Step, Step] | null {
  if (outside.length === 0 || inside.length === 0) return null;
  const upwards = outside[0]!.axis < inside[0]!.axis;
  return upwards ? [outside.at(-1)!, inside[0]!] : [outside[0]!, inside.at(-1)!];
}

function crossingOf(sides: Sides, read: (step: Step) => number, limit: number): number | null {
  const bracket = bracketOf(sides);
  if (!bracket) return null;
  const [outer, inner] = bracket;
  const [from, to] = [read(outer), read(inner)];
  if (from === to) return inner.axis;
  return outer.axis + ((limit - from) / (to - from)) * (inner.axis - outer.axis);
}

/** Why too little was measured around the edge to say where the onset lies; null where enough was. */
function gapAround(
  sides: Sides,
  check: OnsetCheck,
  edge: number,
  id: string,
  unit: string,
  steps: readonly Step[],
): string | null {
  const bracket = bracketOf(sides);
  if (!bracket) {
    // Nothing was measured outside: fine where the axis itself ends within reach of the stated edge.
    const end = check.from === undefined ? highestOf(id) : 0;
    if (end === null || nearEnough(id, edge, end)) return null;
    return `Nothing that counts was measured ${check.from === undefined ? 'above' : 'under'} ${plain(edge)}${unit}`;
  }
  const [outer, inner] = bracket;
  const between = sides.free ? [outer.axis, sides.free.axis, inner.axis] : [outer.axis, inner.axis];
  for (let i = 1; i < between.length; i++)
    if (!nearEnough(id, between[i - 1]!, between[i]!)) {
      const [low, high] = [between[i - 1]!, between[i]!].sort((one, other) => one - other);
      const measured = steps.some(({ axis }) => axis > low! && axis < high!);
      return measured ? null : `Nothing was measured between ${plain(low!)} and ${plain(high!)}${unit}`;
    }
  return null;
}

function highestOf(id: string): number | null {
  return id.startsWith('angle.') ? 90 : 100;
}

/** The level from which (up to which) the series really is past the limit; null where there is none. */
function onsetOf(steps: readonly Step[], check: OnsetCheck): number | null {
  const ordered = check.from === undefined ? [...steps] : [...steps].reverse();
  let edge: number | null = null;
  for (const step of ordered) {
    if (!isPast(step.value, check, false)) break;
    edge = step.axis;
  }
  return edge;
}

function fromWords(check: OnsetCheck, axis: number, unit: string): string {
  return check.from === undefined ? `up to ${plain(axis)}${unit}` : `from ${plain(axis)}${unit} upwards`;
}

function sideWords(check: OnsetCheck, edge: number, unit: string): string {
  const at = `${plain(edge)}${unit}`;
  if (check.edge === 'included') return check.from === undefined ? `up to ${at}` : `from ${at} upwards`;
  return check.from === undefined ? `below ${at}` : `above ${at}`;
}

function sentenceOf(
  check: OnsetCheck,
  value: OperandValue,
  steps: readonly Step[],
  sides: Sides,
  wrong: readonly Step[],
  edge: number,
  unit: string,
  sight: Sight,
): string {
  const what = nameOfQuantity(value.id);
  const whose = value.unit.id === sight.own ? '' : ` of the ${value.unit.unit.model}`;
  const definition = definitionOf(value.id);
  const name = `The ${what}${whose}${definition && ` (${definition})`}`;
  const number = (step: Step) =>
    `${amount(step.value, step.level.u, value.unitOfMeasure, value.id)} at ${plain(step.axis)}${unit}`;
  const limit = plain(check.limit, value.unitOfMeasure);
  if (wrong.length === 0) {
    const bracket = bracketOf(sides);
    const crossing = crossingOf(sides, (step) => step.value, check.limit);
    const off =
      !sides.onGrid && crossing !== null
        ? `; it crosses ${limit} at about ${plain(Number(crossing.toFixed(1)))}${unit}, and the text says ${plain(edge)}${unit}`
        : '';
    if (!bracket)
      return `${name} is past ${limit} at all ${sides.inside.length} levels ${sideWords(check, edge, unit)}${off}`;
    const [outer, inner] = bracket;
    return `${name} is ${number(outer)} and ${number(inner)}, so it passes ${limit} ${sideWords(check, edge, unit)}${off}`;
  }
  const worst = [...wrong].sort(
    (one, other) => Math.abs(other.value - check.limit) - Math.abs(one.value - check.limit),
  )[0]!;
  const actual = onsetOf(steps, check);
  const gap = amount(Math.abs(worst.value - check.limit), null, value.unitOfMeasure, value.id);
  const where = worst.value > check.limit ? 'over' : 'under';
  const crossings = crossingCount(steps, check);
  const tail =
    crossings > 1
      ? `; it crosses ${limit} ${crossings} times`
      : actual === null
        ? ''
        : `; it is past it ${fromWords(check, actual, unit)}`;
  return `${name} is ${number(worst)}, ${gap} ${where} the limit of ${limit}${tail}`;
}

function crossingCount(steps: readonly Step[], check: OnsetCheck): number {
  let count = 0;
  for (let i = 1; i < steps.length; i++)
    if (isPast(steps[i - 1]!.value, check, false) !== isPast(steps[i]!.value, check, false)) count++;
  return count;
}

function foundOfSteps(value: OperandValue, steps: readonly Step[], check: OnsetCheck): Outcome['found'] {
  return {
    value: steps.map(({ axis, value: found }) => [axis, found] as const),
    u: steps.map(({ level }) => level.u),
    unit: value.unitOfMeasure,
    onset: onsetOf(steps, check),
  };
}
