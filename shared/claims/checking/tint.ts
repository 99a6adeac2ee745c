import { formatWithUncertainty } from '../../article/formatNumber.ts';
import { tintName } from '../../colour/tintName.ts';
import type { DirectionCheck, Operand } from '../../contract/check.ts';
import type { ProofFigure } from '../../contract/claim.ts';
import { closeNote } from './bound.ts';
import { decide, onTheLimit } from './decide.ts';
import { floorNote } from './floor.ts';
import { readOperand } from './operand.ts';
import type { OperandValue } from './operandValue.ts';
import { conditionsOf, evidenceUnion, notesOf, type Outcome, unproven } from './outcome.ts';
import type { Sight } from './sight.ts';
import { plain } from './terms.ts';

type Quantity = Extract<Operand, { type: 'quantity' }>;
type Vector = readonly [du: number, dv: number];

/** A tint over a part of the greyscale (50 to 100 % unless named): the average of the shifts as vectors. */
export function judgeTint(check: DirectionCheck, operand: Quantity, sight: Sight, signal?: string): Outcome {
  const stated = { name: check.name, ...(check.size ? { size: check.size } : {}) };
  const { selector } = operand;
  const isOpen = selector.at === undefined && selector.from === undefined && selector.to === undefined;
  const options = signal === undefined ? {} : { signal };
  const part = (id: string): Quantity => ({
    ...operand,
    id,
    selector: {
      ...selector,
      ...(isOpen ? { from: 50, to: 100 } : {}),
      stat: selector.at === undefined ? 'average' : 'at',
    },
  });
  const readings = ['grey.tint.u', 'grey.tint.v', 'grey.tint'].map((id) =>
    readOperand(sight, part(id), options),
  );
  const failed = readings.find((reading) => !reading.ok);
  if (failed && !failed.ok) return unproven(failed.reason, 'grey.tint', stated);
  const [u, v, size] = readings.map((reading) => (reading.ok ? reading.value : null)) as [
    OperandValue,
    OperandValue,
    OperandValue,
  ];
  const shiftIn = (draw: number | undefined): Vector =>
    draw === undefined || !u.draw || !v.draw ? [u.value, v.value] : [u.draw(draw), v.draw(draw)];
  const { house } = sight.bench;
  const decision = decide(
    [u, v],
    (draw) => saysTint(shiftIn(draw), check, house) !== (check.negated ?? false),
    house.level,
  );
  const shift = shiftIn(undefined);
  const { hues, distance } = tintName(...shift);
  const intensity = sizeWord(distance, house.tintSizes, house.limits.tint);
  const where = isOpen
    ? 'over 50–100 %'
    : selector.at === undefined
      ? 'over the named levels'
      : `at ${selector.at} %`;
  const wantsNone = check.name === 'none' || check.name === 'on-target';
  const floor =
    decision.verdict === 'close' && wantsNone
      ? floorNote(sight, { ...size, stat: 'average' }, house.limits.tint, house.level)
      : null;
  const uDistance = uncertaintyOfDistance(u, v, distance);
  return {
    ...decision,
    sentence: `The average shift of the greys ${where} is Δu′v′ ${formatWithUncertainty(distance, uDistance, uDistance ? {} : { decimals: 4 })}${
      distance < house.limits.tint
        ? `, under the limit of ${plain(house.limits.tint)}: no tint`
        : ` towards ${hues.join(' or ')} (${intensity})`
    }`,
    notes: [...closeNote(decision.verdict, decision.probability), ...(floor ? [floor] : []), ...notesOf(u)],
    stated,
    found: {
      value: distance,
      u: uDistance ?? undefined,
      unit: 'Δu′v′',
      du: shift[0],
      dv: shift[1],
      names: distance < house.limits.tint ? ['none'] : hues,
    } as Outcome['found'],
    conditions: conditionsOf(u),
    quantity: 'grey.tint',
    evidence: evidenceUnion(
      sight,
      u,
      u.levels.flatMap((level) => level.rows),
    ),
    figure: tintFigure(u, v, shift, hues[0]),
    ...(decision.verdict === 'breaks' && hues[0]
      ? { suggestion: distance < house.limits.tint ? 'no tint' : `${intensity} ${hues[0]} tint` }
      : {}),
  };
}

type House = Sight['bench']['house'];

function saysTint(shift: Vector, check: DirectionCheck, house: House): boolean {
  const { hues, distance } = tintName(...shift);
  const { tint } = house.limits;
  if (check.name === 'none' || check.name === 'on-target') return distance <= tint + onTheLimit;
  if (distance < tint - onTheLimit) return false;
  if (check.name !== 'tinted' && !hues.some((hue) => hue === check.name)) return false;
  return check.size === undefined || sizeWord(distance, house.tintSizes, tint) === check.size;
}

function sizeWord(distance: number, sizes: House['tintSizes'], limit: number): string {
  if (distance < Math.min(limit, sizes.slight) - onTheLimit) return 'none';
  if (distance < sizes.mild - onTheLimit) return 'slight';
  return distance < sizes.obvious - onTheLimit ? 'mild' : 'obvious';
}

/** First order: the components' u along the direction of the shift. */
function uncertaintyOfDistance(u: OperandValue, v: OperandValue, distance: number): number | null {
  if (u.u === null || v.u === null) return null;
  if (distance === 0) return Math.hypot(u.u, v.u) / Math.SQRT2;
  return Math.hypot((u.value / distance) * u.u, (v.value / distance) * v.u);
}

function tintFigure(u: OperandValue, v: OperandValue, average: Vector, hue: string | undefined): ProofFigure {
  return {
    form: 'tint',
    title: hue ? `Greys lean towards ${hue}` : 'Greys on target',
    points: u.levels.flatMap(({ axis, value: du }, i) =>
      typeof axis === 'number' ? [{ axis, du, dv: v.levels[i]?.value ?? 0 }] : [],
    ),
    average,
  };
}
