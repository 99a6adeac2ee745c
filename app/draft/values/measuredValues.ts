import type { EditorView } from 'prosemirror-view';
import { formatNumber } from '../../../shared/article/formatNumber.ts';
import type { JudgingBench } from '../../../shared/claims/index.ts';
import type { Measurement } from '../../../shared/contract/measurement.ts';
import { catalogueEntry } from '../../../shared/measure/index.ts';
import { articleSchema } from '../document/schema.ts';

/** A number in the text that follows what was measured: `measured:unit/run/quantity?axis=10`. */
export interface MeasuredAddress {
  unit: string;
  run: string;
  quantity: string;
  /** A level, an angle, a patch; or `average`, `max`, `min` */
  axis?: string;
}

export function parseMeasured(href: string): MeasuredAddress | null {
  const match = /^measured:([a-z0-9-]+)\/([a-z0-9-]+)\/([^?]+)(?:\?axis=(.+))?$/.exec(href);
  if (!match) return null;
  const [, unit, run, quantity, axis] = match;
  return {
    unit: unit!,
    run: run!,
    quantity: decodeURIComponent(quantity!),
    ...(axis === undefined ? {} : { axis: decodeURIComponent(axis) }),
  };
}

export function measuredHref({ unit, run, quantity, axis }: MeasuredAddress): string {
  return `measured:${unit}/${run}/${encodeURIComponent(quantity)}${axis === undefined ? '' : `?axis=${encodeURIComponent(axis)}`}`;
}

/** The one number that an address names; null when the measurement has none there. */
export function measuredNumber(
  measurement: Measurement | undefined,
  axis: string | undefined,
): number | null {
  if (measurement?.state !== 'measured') return null;
  if (axis === 'average' || axis === 'max' || axis === 'min') return measurement[axis]?.value ?? null;
  const found =
    axis === undefined
      ? measurement.values.length === 1
        ? measurement.values[0]
        : measurement.max
      : measurement.values.find((value) => String(value.axis) === axis);
  return found?.value ?? null;
}

/** As printed in an article of this locale, by the quantity's conventional decimals; null when nothing is there. */
export function measuredText(
  bench: Pick<JudgingBench, 'evidence' | 'measure'>,
  address: MeasuredAddress,
  locale: string,
): string | null {
  const unit = bench.evidence.units.get(address.unit);
  const run = unit?.runs.find((candidate) => candidate.id === address.run);
  if (!unit || !run) return null;
  const measurement = bench.measure(unit, run).get(address.quantity);
  const value = measuredNumber(measurement, address.axis);
  if (value === null || measurement?.state !== 'measured') return null;
  const decimals = catalogueEntry(address.quantity)?.decimals ?? 1;
  const printed =
    measurement.unit.startsWith('Δ') || measurement.unit === '' ? {} : { unit: measurement.unit };
  return formatNumber(value, { decimals, locale, ...printed });
}

/** Writes every followed number anew where it differs from what is measured now. */
export function refreshMeasuredValues(view: EditorView, bench: JudgingBench): void {
  const locale = bench.article.meta.locale ?? 'en-GB';
  const { state } = view;
  const transaction = state.tr;
  state.doc.descendants((node, position) => {
    if (!node.isText) return;
    const link = node.marks.find((mark) => mark.type === articleSchema.marks.link);
    const address = link && parseMeasured(link.attrs.href as string);
    if (!address) return;
    const text = measuredText(bench, address, locale);
    if (text === null || text === node.text) return;
    const from = transaction.mapping.map(position);
    const to = transaction.mapping.map(position + node.nodeSize);
    transaction.replaceWith(from, to, articleSchema.text(text, node.marks));
  });
  // What the bench changed, undo in the text does not take back.
  if (transaction.docChanged) view.dispatch(transaction.setMeta('addToHistory', false));
}
