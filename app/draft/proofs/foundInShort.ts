import { formatNumber, formatWithUncertainty } from '../../../shared/article/formatNumber.ts';
import { nameOfFact } from '../../../shared/claims/checking/terms.ts';
import type { Judgement } from '../../../shared/contract/claim.ts';
import { catalogueEntry } from '../../../shared/measure/index.ts';

/** Severities of an observation, 0 to 4 (`formats.md`). */
const severityWords = ['not seen', 'just visible', 'visible', 'distracting', 'unusable'];

/**
 * What was found, as a note in a crowded margin: "white 118.3 ± 2.4 cd/m²". Null where no single value says it:
 * then the sentence has to.
 */
export function foundInShort({ found, quantity, kind, figure }: Judgement): string | null {
  const { value, u, unit } = found;
  if (quantity?.startsWith('observation.')) {
    const topic = quantity.slice('observation.'.length).replaceAll('-', ' ');
    return typeof value === 'number' ? `${topic} ${severityWords[value] ?? value}` : null;
  }
  const entry = quantity ? catalogueEntry(quantity) : undefined;
  const name =
    entry?.short ?? (quantity?.startsWith('fact.') ? nameOfFact(quantity.slice('fact.'.length)) : '');
  const printed = unit && !unit.startsWith('Δ') && unit !== '1' ? { unit } : {};
  const named = (text: string) => (name ? `${name} ${text}` : text);
  // "grey error past 3 from 60 % upwards": where a limit is passed is what its picture is titled with.
  if (kind === 'onset' && figure) return named(figure.title.charAt(0).toLowerCase() + figure.title.slice(1));
  if (typeof value === 'number') {
    if (kind === 'ratio') return named(`${formatNumber(value, { digits: 3 })}\u202f×`);
    const certain = typeof u === 'number' && u > 0;
    return named(
      certain
        ? formatWithUncertainty(value, u, printed)
        : formatNumber(value, { ...printed, digits: 6 })
            .replace(/(\.\d*?)0+(?=\D|$)/, '$1')
            .replace(/\.(?=\D|$)/, ''),
    );
  }
  if (typeof value === 'string') return quantity?.startsWith('fact.') && name ? named(value) : null;
  if (typeof value === 'boolean') return null;
  if (Array.isArray(value) && value.length > 0 && value.every((one) => typeof one === 'string')) {
    return named((value as string[]).join(', '));
  }
  return null;
}
