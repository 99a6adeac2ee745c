import type { Item } from './items.ts';
import { mark, type Signs, shows } from './needs.ts';
import type { Scene } from './scene.ts';

/** What a clause shows to the rules: by its words, and by what stands before it. */
export function signsOf(scene: Scene): Signs {
  const { carry, conditions, previous } = scene;
  const signs = [...scene.signs];
  mark(
    signs,
    'set',
    scene.units.length > 0 ||
      scene.unitNamed ||
      scene.unit !== undefined ||
      scene.share !== undefined ||
      isSetBefore(scene),
  );
  mark(signs, 'criterionSaid', shows(scene.sentenceSigns, 'criterion'));
  mark(signs, 'axis', scene.axes.length > 0);
  mark(signs, 'window', conditions.window !== undefined);
  mark(signs, 'adjusted', conditions.stage === 'adjusted');
  mark(signs, 'claimed', carry.claimed !== undefined);
  mark(signs, 'asked', carry.asked !== undefined);
  mark(signs, 'statement', (previous ? previous.said : carry.statement) !== undefined);
  mark(signs, 'portsBefore', carry.ports !== undefined);
  const said = hasSaid(previous);
  mark(signs, 'saidBefore', said);
  mark(signs, 'quantityBefore', said || carry.said !== undefined);
  mark(signs, 'topicBefore', carry.topic !== undefined || (previous !== null && hasTopic(scene.sentence)));
  return signs;
}

function hasSaid(scene: Scene | null): boolean {
  for (let at = scene; at; at = at.previous) if (at.said !== undefined) return true;
  return false;
}

function isSetBefore({ carry, previous }: Scene): boolean {
  return previous ? previous.units.length > 0 || previous.unit !== undefined : carry.unit !== undefined;
}

function hasTopic(items: readonly Item[]): boolean {
  return items.some(({ meanings }) => meanings.some(({ kind }) => kind === 'topic'));
}
