import { formatNumber } from '../../shared/article/formatNumber.ts';
import type { FactStatement } from '../../shared/contract/unit.ts';
import { dateText } from './dateText.ts';

const labels: Record<string, string> = {
  'hdmi.count': 'HDMI inputs',
  'hdmi.version': 'HDMI version',
  'usb.count': 'USB ports',
  'hdr.formats': 'HDR formats',
  refresh: 'Refresh rate',
  resolution: 'Resolution',
  depth: 'Depth',
  width: 'Width',
  height: 'Height',
  weight: 'Weight',
  'stand.width': 'Width of the stand',
  warranty: 'Warranty',
  peak: 'Peak luminance',
};

export const factUnits: Record<string, string> = {
  refresh: 'Hz',
  depth: 'mm',
  width: 'mm',
  height: 'mm',
  weight: 'kg',
  'stand.width': 'mm',
  warranty: 'months',
};

export const shippedFactKeys: readonly string[] = Object.keys(labels);

/** A fact's key in words: "HDMI 2.1 inputs", "Lag, play". Unknown keys stand as they are. */
export function factLabel(key: string): string {
  const label = labels[key];
  if (label) return label;
  const inputs = /^hdmi\.count\.(.+)$/.exec(key)?.[1];
  if (inputs) return `HDMI ${inputs} inputs`;
  const lag = /^lag\.(.+)$/.exec(key)?.[1];
  if (lag) return `Lag, ${lag}`;
  return key;
}

/** The statement's value with its unit. */
export function factValueText(fact: FactStatement): string {
  const { value, unit } = fact;
  if (typeof value === 'number') {
    const decimals = String(value).split('.')[1]?.length ?? 0;
    return formatNumber(value, { decimals, ...(unit ? { unit } : {}) });
  }
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (Array.isArray(value)) return value.join(', ');
  return unit ? `${value} ${unit}` : value;
}

const sources: Record<string, string> = {
  box: 'from the box',
  menu: 'from the menus',
  measured: 'measured here',
  maker: 'says the maker',
};

/** "says the maker, 30 August 2026"; who says so is never left open. */
export function factSourceText(fact: FactStatement): string {
  const by = fact.by ? (sources[fact.by] ?? `says ${fact.by}`) : 'source not noted';
  return [by, fact.on ? dateText(fact.on) : null, fact.note].filter(Boolean).join(', ');
}

/**
 * Text as typed into a fact's field: a number, yes or no, a list where the key is one or commas stand in it
 * (not within a number), else the words themselves. Null for nothing.
 */
export function parseFactValue(key: string, text: string): FactStatement['value'] | null {
  const trimmed = text.trim();
  if (trimmed === '') return null;
  if (key === 'hdmi.version') return trimmed;
  if (/^[-−]?\d{1,3}(,\d{3})+(\.\d+)?$/.test(trimmed))
    return Number(trimmed.replaceAll(',', '').replace('−', '-'));
  if (/^[-−]?\d+(\.\d+)?$/.test(trimmed)) return Number(trimmed.replace('−', '-'));
  if (/^(yes|no)$/i.test(trimmed)) return /^yes$/i.test(trimmed);
  if (key === 'hdr.formats' || trimmed.includes(','))
    return trimmed
      .split(',')
      .map((part) => part.trim())
      .filter(Boolean);
  return trimmed;
}
