import { type Findings, propose } from '../finding.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import type { Scene } from '../scene.ts';
import { resolveMention } from '../units.ts';
import { splitVariant } from '../variant.ts';

/** "HDR10+ comes with the Sable and the Linnet but not with the Brindle": a format, and the sets that take it. */
export function readFormatOf(scene: Scene, findings: Findings): undefined {
  const first = scene.items.find((item) => item.type !== 'mark');
  const format = keyOf(first, 'format');
  const verb = scene.items.findIndex(
    (item, at) =>
      (isWord(item, 'comes', 'works', 'is') &&
        isWord(scene.items[at + 1], 'with', 'on', 'supported', 'missing')) ||
      isWord(item, 'comes with', 'works on', 'works with'),
  );
  if (!format || verb < 0 || scene.used.has(first!)) return;
  let denied = isWord(scene.items[verb + 1], 'missing');
  for (const item of scene.items.slice(verb)) {
    if (isWord(item, 'and')) continue;
    if (keyOf(item, 'negation') === 'not') denied = true;
    const mention = scene.units.find((entry) => entry.item === item && entry.role !== 'maker');
    const id = mention && resolveMention(mention, scene.carry, scene.context);
    if (!mention || id === undefined) continue;
    const { unit } = splitVariant(id);
    propose(
      findings,
      { ...scene, unitProblem: undefined, group: undefined },
      'fact',
      {
        kind: 'fact',
        key: 'hdr.formats',
        op: denied ? 'excludes' : 'includes',
        x: [format],
        conditions: {
          origin: {},
          ...(unit !== scene.context.own && { unit: unit!, origin: { unit: 'named' as const } }),
        },
      },
      [...wordsOf(scene, first!, item, mention === scene.units[0])],
    );
  }
}

/** The first set's span begins with the format, each other's with its own name. */
function wordsOf(scene: Scene, format: Item, set: Item, isFirst: boolean): Item[] {
  const denial = scene.items.findLast(
    (item) => item.index < set.index && item.index >= set.index - 3 && keyOf(item, 'negation') === 'not',
  );
  return [...(isFirst ? [format] : []), ...(denial ? [denial] : []), set];
}
