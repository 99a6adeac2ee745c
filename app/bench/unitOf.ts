import type { Unit } from '../../shared/contract/unit.ts';
import type { Fields } from './forms/readFields.ts';

/** A set as its form says; what the form does not show stays as `before` has it. */
export function unitOf(fields: Fields, before: Unit | undefined): object {
  const amount = fields.number('amount');
  const diagonal = fields.number('diagonal');
  return {
    ...before,
    maker: fields.text('maker') ?? '',
    model: fields.text('model') ?? '',
    size: diagonal === undefined ? undefined : { ...before?.size, diagonal_in: diagonal },
    panel: fields.text('panel'),
    backlight: fields.text('backlight'),
    zones: fields.number('zones') ?? nullLike(before?.zones),
    price:
      amount === undefined
        ? nullLike(before?.price)
        : {
            ...before?.price,
            amount,
            currency: fields.text('currency')?.toUpperCase() ?? 'GBP',
            on: fields.text('on'),
          },
    provenance: fields.text('provenance'),
    due_back: fields.text('due_back') ?? nullLike(before?.due_back),
    firmware: fields.text('firmware'),
    received: fields.text('received') ?? nullLike(before?.received),
    // The file says null where a set is still here.
    returned: fields.text('returned') ?? (before?.returned === undefined ? undefined : null),
  };
}

/** Nothing stays spelled as it was: as null where the file says null. */
function nullLike(before: unknown): null | undefined {
  return before === null ? null : undefined;
}
