import type { Observation } from '../contract/observation.ts';
import { isSdr } from './checking/signalOf.ts';
import { nameOfQuantity, placeOnAxis, plain } from './checking/terms.ts';

/** What was found past a limit, before it is put into words. */
export interface WorstValue {
  value: number;
  axis?: number | string;
  /** `average`, `maximum` or empty */
  stat: string;
}

/** A short finding: "Blue is 11 % short of its saturation target in HDR". */
export function findingWords(
  id: string,
  worst: WorstValue,
  unit: string,
  target: number,
  signal: string,
): string {
  const inHdr = isSdr(signal) ? '' : ` in ${/^HLG$/i.test(signal) ? 'HLG' : 'HDR'}`;
  const where = worst.axis === undefined ? '' : ` at ${placeOnAxis(id, worst.axis)}`;
  const size = plain(rounded(Math.abs(worst.value)), unit);
  const [family, hue, measure] = id.split('.');
  if (family === 'sweep' && hue !== undefined) {
    const short = worst.value < 0;
    if (measure === 'saturation')
      return `${capital(hue)} is ${size} ${short ? 'short of' : 'past'} its saturation target${inHdr}`;
    if (measure === 'luminance') return `${capital(hue)} is ${size} too ${short ? 'dark' : 'bright'}${inHdr}`;
    if (measure === 'hue') return `${capital(hue)} is off in hue by ${size}${inHdr}`;
  }
  const value = plain(rounded(worst.value), unit);
  const against = target === 0 ? '' : `, not ${plain(Number(target.toPrecision(3)), unit)}`;
  const stat = worst.stat === 'maximum' ? 'reaches' : worst.stat === 'average' ? 'averages' : 'is';
  return `${capital(nameOfQuantity(id))} ${stat} ${value}${where}${against}${inHdr}`;
}

const severityWords = ['not seen', 'just visible', 'visible', 'distracting', 'unusable'] as const;

/** "Judder is visible in slow pans". */
export function seenWords({ topic, severity, content, pattern }: Observation): string {
  const what = capital(topic.replaceAll('-', ' '));
  const verb = /[^s]s$/.test(topic) ? 'are' : 'is';
  const place = content ? ` in ${content}` : pattern ? ` on ${pattern}` : '';
  return `${what} ${verb} ${severityWords[severity] ?? 'seen'}${place}`;
}

/** Two significant digits, or the whole number: a finding is no reading. */
function rounded(value: number): number {
  return Math.abs(value) >= 10 ? Math.round(value) : Number(value.toPrecision(2));
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
