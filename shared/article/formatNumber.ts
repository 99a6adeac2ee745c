/** The one number formatter for texts that people read: true minus, thin spaces that never break, no trailing surprises. */

/** U+202F: thin, and no line ends at it */
const thinSpace = '\u202f';
const noBreakSpace = '\u00a0';
const trueMinus = '\u2212';

const marksByLanguage: Readonly<Record<string, Marks>> = {
  en: { decimal: '.', thousands: ',' },
  de: { decimal: ',', thousands: '.' },
  nl: { decimal: ',', thousands: '.' },
  es: { decimal: ',', thousands: '.' },
  it: { decimal: ',', thousands: '.' },
  fr: { decimal: ',', thousands: '\u202f' },
  sv: { decimal: ',', thousands: '\u00a0' },
};

/** English as it is written on the Continent has the marks of the place (CLDR, from memory). */
const languageOfRegion: Readonly<Record<string, string>> = {
  de: 'de',
  at: 'de',
  nl: 'nl',
  be: 'nl',
  dk: 'de',
  si: 'de',
  es: 'es',
  it: 'it',
  fr: 'fr',
  se: 'sv',
  fi: 'sv',
};

interface Marks {
  decimal: string;
  thousands: string;
}

/** Asked for each number and each sentence, of some few locales. */
const marksByLocale = new Map<string, Marks>();

/** Decimal and thousands marks of a BCP 47 locale; unknown languages write as English does. */
export function numberMarks(locale: string): Marks {
  let marks = marksByLocale.get(locale);
  if (!marks) {
    marks = marksOf(locale);
    marksByLocale.set(locale, marks);
  }
  return marks;
}

function marksOf(locale: string): Marks {
  if (/^(?:de|en)-(?:ch|li)/i.test(locale)) return { decimal: '.', thousands: '’' };
  const region = /^en-([a-z]{2})\b/i.exec(locale)?.[1]?.toLowerCase();
  const neighbour = region === undefined ? undefined : languageOfRegion[region];
  if (neighbour !== undefined) return marksByLanguage[neighbour]!;
  return marksByLanguage[locale.slice(0, 2).toLowerCase()] ?? marksByLanguage.en!;
}

/** How a number is to be written. `decimals` fixed; `digits` significant (3 when neither is given). */
export interface NumberStyle {
  decimals?: number;
  digits?: number;
  locale?: string;
  unit?: string;
  /** Show "+" before positive numbers */
  signed?: boolean;
}

function decimalsFor(value: number, digits: number): number {
  if (value === 0 || !Number.isFinite(value)) return 0;
  return Math.max(0, Math.min(12, digits - 1 - Math.floor(Math.log10(Math.abs(value)))));
}

function roundedText(value: number, style: NumberStyle): string {
  const { decimal, thousands } = numberMarks(style.locale ?? 'en');
  const decimals = style.decimals ?? decimalsFor(value, style.digits ?? 3);
  const fixed = Math.abs(value).toFixed(decimals);
  const point = fixed.indexOf('.');
  const whole = point < 0 ? fixed : fixed.slice(0, point);
  const fraction = point < 0 ? '' : fixed.slice(point + 1);
  const grouped = whole.length > 3 ? whole.replace(/\B(?=(\d{3})+$)/g, thousands) : whole;
  const isZero = Number(fixed) === 0;
  const sign = value < 0 && !isZero ? trueMinus : style.signed && !isZero ? '+' : '';
  return sign + grouped + (fraction && decimal + fraction);
}

/** Unit glued as print does: no space before ° and :1, thin space before %, no-break space before words. */
function withUnit(text: string, unit: string | undefined): string {
  if (!unit) return text;
  if (unit === '°' || unit === ':1') return text + unit;
  if (unit === '%') return text + thinSpace + unit;
  if (unit.startsWith('ΔE') || unit === 'Δu′v′') return `${unit}${noBreakSpace}${text}`;
  const symbols: Readonly<Record<string, string>> = { GBP: '£', EUR: '€', USD: '$' };
  const symbol = symbols[unit];
  return symbol ? symbol + text : text + noBreakSpace + unit;
}

/** "−3.2 %", "742 cd/m²", "£1,039". Not finite: "undefined", never "NaN". */
export function formatNumber(value: number, style: NumberStyle = {}): string {
  if (!Number.isFinite(value)) return 'undefined';
  return withUnit(roundedText(value, style), style.unit);
}

/** "742 ± 15 cd/m²" with the expanded uncertainty U = 2u, both with the same decimals. */
export function formatWithUncertainty(
  value: number,
  standardUncertainty: number | null,
  style: NumberStyle = {},
): string {
  if (!Number.isFinite(value)) return 'undefined';
  if (standardUncertainty === null || !Number.isFinite(standardUncertainty) || standardUncertainty === 0)
    return formatNumber(value, style);
  const expanded = 2 * standardUncertainty;
  const decimals = style.decimals ?? Math.min(decimalsFor(expanded, 2), decimalsFor(value, 6));
  const text = `${roundedText(value, { ...style, decimals })}${thinSpace}±${thinSpace}${roundedText(expanded, { ...style, decimals, signed: false })}`;
  return withUnit(text, style.unit);
}
