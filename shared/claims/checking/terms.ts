import { formatNumber, formatWithUncertainty } from '../../article/formatNumber.ts';
import type { UnitEvidence } from '../../contract/evidence.ts';
import type { Axis } from '../../contract/measurement.ts';
import { catalogueEntry } from '../../measure/catalogue.ts';

/** "Orrinvale Hearth 55" */
export function nameOfUnit(unit: UnitEvidence): string {
  return `${unit.unit.maker} ${unit.unit.model}`;
}

/** Lower case at the start unless the first word is a name or an abbreviation ("EOTF error"). */
function inSentence(label: string): string {
  return /^\p{Lu}\p{Ll}/u.test(label) ? label[0]!.toLowerCase() + label.slice(1) : label;
}

const factNames: Readonly<Record<string, string>> = {
  price: 'price',
  'hdmi.count': 'number of HDMI ports',
  'hdmi.version': 'HDMI version',
  'usb.count': 'number of USB ports',
  'hdr.formats': 'list of HDR formats',
  refresh: 'refresh rate',
  'stand.width': 'width of the stand',
};

/** "number of HDMI 2.1 ports"; a key that nothing names reads as its words. */
export function nameOfFact(key: string): string {
  const version = /^hdmi\.count\.(.+)$/.exec(key)?.[1];
  if (version) return `number of HDMI ${version} ports`;
  return factNames[key] ?? key.replaceAll(/[.-]/g, ' ');
}

/** "colour error of the greyscale", as it stands inside a sentence. */
export function nameOfQuantity(id: string): string {
  if (id.startsWith('fact.')) return nameOfFact(id.slice(5));
  if (id === 'eotf.rolloff') return 'roll-off of the tone curve';
  const entry = catalogueEntry(id);
  return entry ? inSentence(entry.label) : id;
}

/** Which way is better. */
export function directionOf(id: string): 'lower' | 'higher' | 'neither' {
  return catalogueEntry(id)?.direction ?? 'neither';
}

export function unitOfQuantity(id: string): string {
  return catalogueEntry(id)?.unit ?? '';
}

/** " %" or "°" after a place on the axis; empty where places have names. */
export function axisUnitOf(id: string): string {
  const unit = catalogueEntry(id)?.axisUnit ?? '';
  if (unit.startsWith('%')) return '\u202f%';
  return unit === '°' ? '°' : '';
}

/** What stands after "at": "60 %", "45°", "a 10 % window", "patch 04". */
export function placeOnAxis(id: string, axis: Axis): string {
  const unit = catalogueEntry(id)?.axisUnit ?? '';
  if (unit === '% window') return `a ${axis}\u202f% window`;
  if (unit === 'patch') return `patch ${axis}`;
  if (unit === 'cell') return `cell ${axis}`;
  return `${axis}${axisUnitOf(id)}`;
}

function isDeltaE(unit: string): boolean {
  return unit.startsWith('ΔE') || unit === 'Δu′v′' || unit === 'Duv';
}

/**
 * A number that was read off or typed in has few digits, one that was worked out has many: the first keeps its own, so
 * that 0.31 W is not 0.3 W beside a limit of 0.3 W.
 */
function isAsWritten(value: number): boolean {
  return String(Math.abs(value)).replace(/^0\.0*|\./g, '').length <= 4;
}

/** "742 ± 15 cd/m²". The name of a colour difference is said once, by {@link definitionOf}, not with each number. */
export function amount(value: number, u: number | null, unit: string, id: string): string {
  const shown = isDeltaE(unit) ? undefined : unit || undefined;
  if (u !== null && u > 0) return formatWithUncertainty(value, u, { unit: shown });
  const decimals = catalogueEntry(id)?.decimals;
  const currency = /^[A-Z]{3}$/.test(unit);
  if (decimals !== undefined && isAsWritten(value)) {
    const own = (String(value).split('.')[1] ?? '').length;
    if (own > decimals) return formatNumber(value, { decimals: own, unit: shown });
  }
  if (decimals !== undefined && value !== 0 && Math.abs(value) >= 10 ** -decimals)
    return formatNumber(value, { decimals, unit: shown });
  if (Number.isInteger(value)) return formatNumber(value, { decimals: 0, unit: shown });
  return formatNumber(value, { ...(currency ? { decimals: 2 } : {}), unit: shown });
}

/** A limit or a stated number, as written: no more digits than it has. */
export function plain(value: number, unit = ''): string {
  const shown = isDeltaE(unit) ? undefined : unit || undefined;
  const decimals = Math.min(6, (String(value).split('.')[1] ?? '').length);
  return formatNumber(value, { decimals, unit: shown });
}

/** "ΔE2000, colour only": the definition that a number was computed by; empty where there is but one. */
export function definitionOf(id: string): string {
  if (/\.de2000\.total$/.test(id)) return 'ΔE2000 with luminance';
  if (/^(sweep|chart)\..*de2000$|^chart\.de2000$/.test(id)) return 'ΔE2000 with luminance';
  if (/de2000(\.colour)?$/.test(id)) return 'ΔE2000, colour only';
  if (id.endsWith('.deitp')) return 'ΔE ITP';
  if (id.endsWith('.xy')) return 'CIE 1931 xy';
  if (id.endsWith('.uv')) return 'CIE 1976 u′v′';
  return '';
}
