import type { RoundingFamily } from './stated.ts';

/** What reading must know of a quantity to turn words into a check; its values live in `shared/measure`. */
export interface Quantity {
  id: string;
  /** Other definitions that the words allow because they name none */
  others?: readonly string[];
  dimension: string;
  unit: string;
  axis: 'stimulus' | 'saturation' | 'angle' | 'window' | 'patch' | null;
  better: 'lower' | 'higher' | 'target';
  family: RoundingFamily;
  /** Ids of `eotf.error` and the like that count to both sides of a target */
  signed?: boolean;
}

function quantity(
  id: string,
  dimension: string,
  unit: string,
  axis: Quantity['axis'],
  better: Quantity['better'],
  more: Partial<Quantity> = {},
): Quantity {
  return { id, dimension, unit, axis, better, family: 'plain', ...more };
}

const table: readonly Quantity[] = [
  quantity('grey.de2000', 'de', 'ΔE2000', 'stimulus', 'lower', { others: ['grey.de2000.total'] }),
  quantity('grey.de2000.total', 'de', 'ΔE2000', 'stimulus', 'lower'),
  quantity('grey.deitp', 'de', 'ΔE_ITP', 'stimulus', 'lower'),
  quantity('grey.tint', 'tint', 'Δu′v′', 'stimulus', 'lower'),
  quantity('grey.balance.red', 'percent', '%', 'stimulus', 'target'),
  quantity('grey.balance.green', 'percent', '%', 'stimulus', 'target'),
  quantity('grey.balance.blue', 'percent', '%', 'stimulus', 'target'),
  quantity('white.cct', 'temperature', 'K', null, 'target', { family: 'cct' }),
  quantity('white.duv', 'duv', '', null, 'target', { signed: true }),
  quantity('white.distance', 'duv', 'Δu′v′', null, 'lower'),
  quantity('gamma', 'gamma', '', 'stimulus', 'target'),
  quantity('gamma.average', 'gamma', '', null, 'target'),
  quantity('gamma.slope', 'gamma', '', null, 'target'),
  quantity('eotf.error', 'percent', '%', 'stimulus', 'target', { signed: true }),
  quantity('eotf.rolloff', 'percent', '%', null, 'higher'),
  quantity('chart.de2000', 'de', 'ΔE2000', 'patch', 'lower'),
  quantity('peak', 'luminance', 'cd/m²', 'window', 'higher', { family: 'luminance' }),
  quantity('peak.sustained', 'luminance', 'cd/m²', 'window', 'higher', { family: 'luminance' }),
  quantity('peak.hold', 'percent', '%', 'window', 'higher'),
  quantity('white', 'luminance', 'cd/m²', null, 'higher', { family: 'luminance' }),
  quantity('black', 'luminance', 'cd/m²', null, 'lower', { family: 'luminance' }),
  quantity('contrast.native', 'ratio', ':1', null, 'higher', { family: 'contrast' }),
  quantity('contrast.sequential', 'ratio', ':1', null, 'higher', { family: 'contrast' }),
  quantity('contrast.chequer', 'ratio', ':1', null, 'higher', { family: 'contrast' }),
  quantity('angle.luminance', 'percent', '%', 'angle', 'higher'),
  quantity('angle.contrast', 'ratio', ':1', 'angle', 'higher', { family: 'contrast' }),
  quantity('angle.de2000', 'de', 'ΔE2000', 'angle', 'lower', { others: ['angle.de2000.total'] }),
  quantity('angle.vertical.luminance', 'percent', '%', 'angle', 'higher'),
  quantity('angle.vertical.contrast', 'ratio', ':1', 'angle', 'higher', { family: 'contrast' }),
  quantity('angle.vertical.de2000', 'de', 'ΔE2000', 'angle', 'lower'),
  quantity('lag', 'time', 'ms', null, 'lower'),
  quantity('response', 'time', 'ms', null, 'lower'),
  quantity('standby', 'power', 'W', null, 'lower'),
  quantity('noise', 'noise', 'dB(A)', null, 'lower'),
];
const byId = new Map(table.map((entry) => [entry.id, entry]));

/** The traits of an id; families with a name in the middle (sweep, coverage, uniformity, power, fact) by pattern. */
export function quantityById(id: string): Quantity {
  const known = byId.get(id);
  if (known) return known;
  if (id.startsWith('sweep.')) {
    const last = id.slice(id.indexOf('.', 6) + 1);
    if (last.startsWith('de2000')) return quantity(id, 'de', 'ΔE2000', 'saturation', 'lower');
    if (last === 'hue') return quantity(id, 'angle', '°', 'saturation', 'target', { signed: true });
    return quantity(id, 'percent', '%', 'saturation', 'target', { signed: true });
  }
  if (id.startsWith('coverage.') || id.startsWith('area.')) {
    const others = id.endsWith('.xy') ? [id.replace(/\.xy$/, '.uv')] : id.endsWith('.uv') ? [] : undefined;
    return quantity(id, 'percent', '%', null, 'higher', others?.length ? { others } : {});
  }
  if (id.endsWith('.cell')) return quantity(id, 'percent', '%', 'patch', 'target', { signed: true });
  if (id.startsWith('uniformity.'))
    return id.endsWith('.colour')
      ? quantity(id, 'duv', 'Δu′v′', null, 'lower')
      : quantity(id, 'percent', '%', null, 'lower');
  if (id.startsWith('power.')) return quantity(id, 'power', 'W', null, 'lower');
  if (id.startsWith('angle.'))
    return quantity(
      id,
      id.endsWith('luminance') ? 'percent' : id.endsWith('contrast') ? 'ratio' : 'de',
      '',
      'angle',
      id.includes('de2000') ? 'lower' : 'higher',
    );
  if (id === 'fact:price') return quantity(id, 'money', '', null, 'lower', { family: 'price' });
  return quantity(id, '', '', null, 'lower');
}
