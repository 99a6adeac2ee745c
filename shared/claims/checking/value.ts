import type { ValueCheck } from '../../contract/check.ts';
import { onTheLimit } from './decide.ts';
import { intervalFigure } from './figures.ts';
import { inUnit, readOperand } from './operand.ts';
import { conditionsOf, foundOf, notesOf, type Outcome, unproven } from './outcome.ts';
import { says, subject } from './phrases.ts';
import type { Sight } from './sight.ts';
import { digitNotes, intervalWords, isInside, missBy, tidy } from './stated.ts';
import { amount, plain } from './terms.ts';

/** A quantity is x: does the text say what was measured, within its rounding? */
export function judgeValue(check: ValueCheck, sight: Sight, signal?: string): Outcome {
  const { operand, stated } = check;
  const quantity = operand.type === 'fact' ? `fact.${operand.key}` : operand.id;
  const statedOut = {
    op: '=',
    x: stated.x,
    low: check.range ? check.range.min.low : stated.low,
    high: check.range ? check.range.max.high : stated.high,
    ...(stated.unit === undefined ? {} : { unit: stated.unit }),
  };
  if (check.range) return judgeRange(check, check.range, sight, statedOut, quantity, signal);
  const reading = readOperand(sight, operand, signal === undefined ? {} : { signal });
  if (!reading.ok) return unproven(reading.reason, quantity, statedOut);
  const value = inUnit(reading.value, stated.unit);
  const common = {
    probability: null,
    stated: statedOut,
    found: foundOf(reading.value),
    conditions: conditionsOf(reading.value),
    quantity,
    evidence: reading.value.evidence,
  };
  if (!value)
    return unproven(
      `${says(reading.value, sight.own)}, and ${stated.unit} measures something else`,
      quantity,
      statedOut,
      common,
    );
  const unit = value.unitOfMeasure;
  if (value.over) {
    // A black too dark for the instrument: smaller numbers are disproven, greater ones cannot be proven.
    const breaks = stated.high < value.value - onTheLimit;
    return {
      ...common,
      verdict: breaks !== (check.negated ?? false) ? (breaks ? 'breaks' : 'holds') : 'unproven',
      sentence: `${says(value, sight.own)}; the instrument gives no more than that lower bound, ${
        breaks
          ? `and ${plain(stated.x, unit)} lies under it`
          : `so ${plain(stated.x, unit)} can be neither proven nor disproven`
      }`,
      notes: notesOf(value),
    };
  }
  // The words that name no side state the distance from the target.
  const told = check.eitherSide ? { ...value, value: Math.abs(value.value) } : value;
  const inside = isInside(told.value, stated);
  const holds = inside !== (check.negated ?? false);
  const miss = missBy(told.value, stated);
  return {
    ...common,
    verdict: holds ? 'holds' : 'breaks',
    sentence: `${says(value, sight.own)}, ${
      inside ? 'inside' : 'outside'
    } the stated ${intervalWords(stated, unit)}${check.eitherSide ? ', on either side of the target' : ''}${inside ? '' : `, by ${amount(tidy(miss), null, unit, '')}`}`,
    notes: [...digitNotes(value, stated), ...notesOf(value)],
    figure: intervalFigure(told, stated, subject(value, true)),
    ...(holds || check.negated ? {} : { suggestion: amount(value.value, null, unit, value.id) }),
  };
}

/** "a to b": the smallest and the greatest of a series; of a scalar, anything inside. */
function judgeRange(
  check: ValueCheck,
  range: NonNullable<ValueCheck['range']>,
  sight: Sight,
  stated: Record<string, unknown>,
  quantity: string,
  signal: string | undefined,
): Outcome {
  const { operand } = check;
  const options = signal === undefined ? {} : { signal };
  const ends =
    operand.type === 'quantity' && !['at', 'average'].includes(operand.selector.stat)
      ? (['min', 'max'] as const).map((stat) =>
          readOperand(sight, { ...operand, selector: { ...operand.selector, stat } }, options),
        )
      : [readOperand(sight, operand, options)];
  const failed = ends.find((end) => !end.ok);
  if (failed && !failed.ok) return unproven(failed.reason, quantity, stated);
  const values = ends.flatMap((end) =>
    end.ok ? [inUnit(end.value, range.min.unit ?? check.stated.unit)] : [],
  );
  if (values.some((value) => value === null))
    return unproven(`The stated unit ${range.min.unit} does not measure this quantity`, quantity, stated);
  const [least, most = least] = values as [NonNullable<(typeof values)[0]>, NonNullable<(typeof values)[0]>];
  const isSeries = least.series !== undefined && least.series.values.length > 1 && values.length === 2;
  const holds = isSeries
    ? isInside(least.value, range.min) && isInside(most.value, range.max)
    : least.value >= range.min.low - onTheLimit && least.value <= range.max.high + onTheLimit;
  const unit = least.unitOfMeasure;
  const words = `${plain(range.min.x)} to ${plain(range.max.x, unit)}`;
  const spanned = isSeries
    ? `${amount(least.value, least.u, '', least.id)} to ${amount(most.value, most.u, unit, most.id)}`
    : amount(least.value, least.u, unit, least.id);
  return {
    verdict: holds !== (check.negated ?? false) ? 'holds' : 'breaks',
    probability: null,
    sentence: `${subject({ ...least, stat: 'at' }, least.unit.id === sight.own)} ${isSeries ? 'runs from' : 'is'} ${spanned}, ${
      holds ? 'as' : 'not'
    } the stated ${words}`,
    notes: notesOf(least, most),
    stated,
    found: isSeries
      ? {
          value: least.levels.map(({ axis, value }) => [axis ?? '', value] as const),
          u: least.levels.map(({ u }) => u),
          min: least.value,
          max: most.value,
          unit,
        }
      : foundOf(least),
    conditions: conditionsOf(least),
    quantity,
    evidence: [...new Set([...least.evidence, ...most.evidence])],
    ...(holds ? {} : { suggestion: spanned }),
  };
}
