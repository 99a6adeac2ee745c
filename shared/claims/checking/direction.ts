import type { DirectionCheck, Operand } from '../../contract/check.ts';
import type { Found } from '../../contract/claim.ts';
import { closeNote } from './bound.ts';
import { decide, onTheLimit, valueIn } from './decide.ts';
import { levelsFigure } from './figures.ts';
import { readOperand } from './operand.ts';
import type { OperandValue } from './operandValue.ts';
import { conditionsOf, evidenceUnion, foundOf, notesOf, type Outcome, unproven } from './outcome.ts';
import { judgeRollOff } from './rollOff.ts';
import type { Sight } from './sight.ts';
import { tidy } from './stated.ts';
import { targetCct, targetGamma } from './targets.ts';
import { amount, nameOfQuantity, plain } from './terms.ts';
import { judgeTint } from './tint.ts';

/** A named direction: a tint, over or under target, warm or cool, rolls off or clips. */
export function judgeDirection(check: DirectionCheck, sight: Sight, signal?: string): Outcome {
  const { operand } = check;
  const stated = { name: check.name, ...(check.size ? { size: check.size } : {}) };
  if (operand.type === 'fact') return unproven('A fact has no direction', `fact.${operand.key}`, stated);
  if (operand.id === 'grey.tint') return judgeTint(check, operand, sight, signal);
  if (operand.id.startsWith('eotf.rolloff')) return judgeRollOff(check, operand, sight, signal);
  return judgeAgainstTarget(check, withDefaultRange(operand), sight, stated, signal);
}

type Quantity = Extract<Operand, { type: 'quantity' }>;

/** A direction over a series is that of its average: all of a sweep, 20 % up for the EOTF (to the roll-off). */
function withDefaultRange(operand: Quantity): Quantity {
  const { selector, id } = operand;
  if (selector.stat === 'at' || selector.at !== undefined) return operand;
  const isOpen = selector.from === undefined && selector.to === undefined;
  const from = isOpen && id === 'eotf.error' ? { from: 20 } : {};
  const isSeries = id === 'eotf.error' || id === 'gamma' || id.startsWith('sweep.');
  return isSeries ? { ...operand, selector: { ...selector, ...from, stat: 'average' } } : operand;
}

/** A deviation from its target, with the house's limit: inside it the direction is "on target". */
interface Deviation {
  target: number;
  limit: number;
  /** Deviations as large as this many u may be the instrument's (colour temperature). */
  outsideU: boolean;
  words: { over: string; under: string; on: string };
}

function deviationOf(value: OperandValue, sight: Sight): Deviation | string {
  const { limits } = sight.bench.house;
  const { id } = value;
  const plainWords = { over: 'over', under: 'under', on: 'on-target' };
  if (id === 'white.cct') {
    const target = value.run && targetCct(value.run);
    if (!target) return `the target white ${value.run?.conditions.target.white ?? ''} is not known`;
    return {
      target,
      limit: limits.cctKelvin,
      outsideU: true,
      words: { over: 'cool', under: 'warm', on: 'on-target' },
    };
  }
  if (/^gamma/.test(id)) {
    const target = value.run && targetGamma(value, sight);
    if (typeof target !== 'number') return target ?? 'the target gamma is not known';
    return { target, limit: limits.gamma, outsideU: false, words: plainWords };
  }
  if (id === 'eotf.error')
    return { target: 0, limit: limits.eotfPercent, outsideU: false, words: plainWords };
  if (/^sweep\..*\.saturation$/.test(id))
    return { target: 0, limit: limits.saturationPercent, outsideU: false, words: plainWords };
  if (/^sweep\..*\.hue$/.test(id)) {
    const [over, under] = hueNeighbours(id.split('.')[1]!);
    return { target: 0, limit: limits.hueDegrees, outsideU: false, words: { over, under, on: 'on-target' } };
  }
  if (/^sweep\..*\.luminance$/.test(id))
    return { target: 0, limit: limits.eotfPercent, outsideU: false, words: plainWords };
  if (/^grey\.balance\./.test(id))
    return { target: 100, limit: limits.saturationPercent, outsideU: false, words: plainWords };
  return `no target is defined for the ${nameOfQuantity(id)}`;
}

const hueCircle = ['red', 'yellow', 'green', 'cyan', 'blue', 'magenta'];

/** A hue angle above target leans towards the next hue of the circle, below it towards the one before. */
function hueNeighbours(hue: string): [string, string] {
  const place = hueCircle.indexOf(hue);
  return [hueCircle[(place + 1) % 6]!, hueCircle[(place + 5) % 6]!];
}

function judgeAgainstTarget(
  check: DirectionCheck,
  operand: Quantity,
  sight: Sight,
  stated: Record<string, unknown>,
  signal: string | undefined,
): Outcome {
  const reading = readOperand(sight, operand, signal === undefined ? {} : { signal });
  if (!reading.ok) return unproven(reading.reason, operand.id, stated);
  const { value } = reading;
  const deviation = deviationOf(value, sight);
  if (typeof deviation === 'string' || value.over)
    return unproven(
      typeof deviation === 'string' ? deviation : 'Only a lower bound is known',
      operand.id,
      stated,
    );
  const { target, limit, outsideU, words } = deviation;
  const needed = outsideU && value.u !== null ? Math.max(limit, 2 * value.u) : limit;
  const named = directionNamed(check.name, words);
  if (named === null)
    return unproven(
      `“${check.name}” names no direction of the ${nameOfQuantity(operand.id)}`,
      operand.id,
      stated,
    );
  const decision = decide(
    [value],
    (draw) => {
      const away = valueIn(value, draw) - target;
      // What a perfect instrument would find has no uncertainty left to lie outside of.
      const least = draw === undefined ? needed : limit;
      return meets(away, least, named) !== (check.negated ?? false);
    },
    sight.bench.house.level,
  );
  const away = value.value - target;
  const shown = amount(value.value, value.u, value.unitOfMeasure, value.id);
  const actual =
    Math.abs(away) <= needed + onTheLimit
      ? 'on target'
      : away > 0
        ? wordFor(words.over)
        : wordFor(words.under);
  const against =
    target === 0
      ? ''
      : ` against a target of ${plain(tidy(Number(target.toPrecision(4))), value.unitOfMeasure)}`;
  return {
    ...decision,
    sentence: `The ${value.stat === 'average' ? 'average ' : ''}${nameOfQuantity(value.id)} is ${shown}${against}, ${actual} by the limit of ±${plain(tidy(needed), value.unitOfMeasure)}`,
    notes: [
      ...closeNote(decision.verdict, decision.probability),
      ...(check.size ? [`“${check.size}” has no definition here, so only the direction is judged`] : []),
      ...notesOf(value),
    ],
    stated,
    found: { ...foundOf(value), ...seriesOf(value) },
    conditions: conditionsOf(value),
    quantity: operand.id,
    evidence: evidenceUnion(
      sight,
      value,
      value.levels.flatMap((level) => level.rows),
    ),
    ...figureOf(value, target, limit),
    ...(decision.verdict === 'breaks' ? { suggestion: actual } : {}),
  };
}

type Side = 'over' | 'under' | 'on' | 'off';

function directionNamed(name: string, words: Deviation['words']): Side | null {
  if (name === 'none' || name === 'on-target' || name === 'neutral') return 'on';
  if (name === words.over || name === 'over') return 'over';
  if (name === words.under || name === 'under') return 'under';
  if (name === 'off-target') return 'off';
  return hueCircle.includes(name) ? 'off' : null;
}

function meets(away: number, limit: number, side: Side): boolean {
  if (side === 'on') return Math.abs(away) <= limit + onTheLimit;
  if (side === 'off') return Math.abs(away) >= limit - onTheLimit;
  return (side === 'over' ? away : -away) >= limit - onTheLimit;
}

function wordFor(word: string): string {
  return (
    { over: 'over target', under: 'under target' }[word] ??
    (hueCircle.includes(word) ? `towards ${word}` : word)
  );
}

function seriesOf(value: OperandValue): Partial<Found> {
  if (value.levels.length < 2) return {};
  return { levels: value.levels.map(({ axis, value: found }) => [axis ?? '', found] as const) };
}

function figureOf(value: OperandValue, target: number, limit: number): Pick<Outcome, 'figure'> {
  const figure = levelsFigure(
    value,
    `${nameOfQuantity(value.id)}: ${amount(value.value, value.u, value.unitOfMeasure, value.id)}`,
    target === 0 ? { value: 0, label: 'target' } : undefined,
    (_, found) => Math.abs(found - target) > limit,
  );
  return figure ? { figure } : {};
}
