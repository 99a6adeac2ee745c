import type { StatedNumber } from '../../contract/check.ts';
import type { ProofFigure } from '../../contract/claim.ts';
import { catalogueEntry } from '../../measure/catalogue.ts';
import type { OperandValue } from './operandValue.ts';
import { nameOfUnit } from './terms.ts';

/** A stated interval against the found value, with its uncertainty. */
export function intervalFigure(value: OperandValue, stated: StatedNumber, title: string): ProofFigure {
  return {
    form: 'interval',
    title,
    unit: value.unitOfMeasure,
    stated: [stated.low, stated.high],
    found: value.value,
    u: value.u,
  };
}

/** The levels of a series against a limit; `isOut` marks those on the wrong side. */
export function levelsFigure(
  value: OperandValue,
  title: string,
  limit: { value: number; label: string } | undefined,
  isOut: (axis: number, found: number) => boolean,
  part: { from?: number | undefined; to?: number | undefined } = {},
): ProofFigure | undefined {
  const points = (value.series?.values ?? []).flatMap(({ axis, value: found, u, counts }) =>
    typeof axis === 'number' ? [{ axis, value: found, u, counts, out: counts && isOut(axis, found) }] : [],
  );
  if (points.length < 2) return undefined;
  return {
    form: 'levels',
    title,
    axisUnit: catalogueEntry(value.id)?.axisUnit ?? '',
    points,
    ...(limit ? { limit } : {}),
    ...(part.from === undefined ? {} : { from: part.from }),
    ...(part.to === undefined ? {} : { to: part.to }),
  };
}

/** The members of a comparison, best first as the sentence counts. */
export function rankingFigure(
  title: string,
  own: OperandValue,
  rivals: readonly OperandValue[],
  direction: 'higher' | 'lower',
): ProofFigure {
  const sign = direction === 'higher' ? -1 : 1;
  return {
    form: 'ranking',
    title,
    unit: own.unitOfMeasure,
    members: [own, ...rivals]
      .map((value) => ({
        label: nameOfUnit(value.unit),
        value: value.value,
        u: value.u,
        own: value === own,
      }))
      .sort((one, other) => sign * (one.value - other.value)),
  };
}
