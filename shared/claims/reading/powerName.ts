import { type Item, isWord } from './items.ts';
import type { Scene } from './scene.ts';
import { splitVariant } from './variant.ts';

/** Power is named with its mode: the sentence's, else the article's for the signal, else the signal itself. */
export function powerId(scene: Scene): string {
  const signal = scene.conditions.signal ?? 'SDR';
  const stated = scene.context.conditions ?? {};
  const key = signal === 'HDR' ? Object.keys(stated).find((name) => name !== 'SDR') : signal;
  const unit = scene.context.units.find(
    (entry) => entry.id === (splitVariant(scene.unit).unit ?? scene.context.own),
  );
  const known = unit?.quantities?.filter((id) => id.startsWith('power.')) ?? [];
  const own = scene.unit === undefined && key !== undefined ? stated[key]?.mode : undefined;
  const slugs = [scene.conditions.mode, own, signal, signal === 'SDR' ? undefined : 'hdr']
    .filter((name) => name !== undefined)
    .map((name) => `power.${slugOf(name)}`);
  for (const slug of slugs) {
    const fitting = known.find((id) => `power.${slugOf(id.slice('power.'.length))}` === slug);
    if (fitting) return fitting;
  }
  if (scene.conditions.mode === undefined && scene.conditions.signal === undefined && known.length === 1)
    return known[0]!;
  return slugs[0]!;
}

/** A mode's name within an id: `hdr-cinema`; `hdr.cinema` is the same. */
function slugOf(mode: string): string {
  return mode.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-');
}

/** "0.27 W when it's asleep", "0.36 W at rest", "0.63 W off": the power of standby. */
export function isAtRest(scene: Scene, number: Item): boolean {
  const after = scene.items.filter((item) => item.index > number.index && item.index < number.index + 7);
  const next = after.findIndex((item) => item.number?.dimension === 'power');
  const own = next < 0 ? after : after.slice(0, next);
  return own.some(
    (item, at) =>
      isWord(item, 'asleep', 'sleeping', 'sleeps') ||
      (isWord(item, 'rest') && isWord(own[at - 1], 'at')) ||
      (isWord(item, 'off') && (at === 0 || isWord(own[at - 1], 'is', 'when', 'switched'))),
  );
}
