import type { BoundOp, FactCheck, StatedConditions } from '../../../contract/check.ts';
import { type Findings, propose } from '../finding.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { conditionsFor } from '../operand.ts';
import type { Scene } from '../scene.ts';

export function opOf(item: Item): BoundOp | '=' {
  const comparator = item.number?.comparator;
  if (comparator === '<' || comparator === '<=' || comparator === '>' || comparator === '>=')
    return comparator;
  return '=';
}

/** "does not have four ports": the denial before a number, or undefined. */
export function denialBefore(scene: Scene, item: Item): Item | undefined {
  const lead = scene.items[scene.items.indexOf(item) - 1];
  // "It isn't cheap at £1,039" denies the adjective, "not only does it cost £1,039" nothing.
  const preposition = isWord(lead, 'at', 'for', 'with') ? lead! : undefined;
  return scene.items.find(
    (entry) =>
      entry.index < item.index &&
      item.index - entry.index <= 6 &&
      keyOf(entry, 'negation') === 'not' &&
      // "Slim it isn't, because 79 mm of plastic …"
      !scene.items.some(
        (word) => word.index > entry.index && word.index < item.index && isWord(word, 'because', 'since'),
      ) &&
      // "Slender it is not (84 mm deep)"
      !scene.sentence
        .slice(entry.index, item.index)
        .some((mark) => mark.type === 'mark' && isWord(mark, '(', ':', ';', '—', '–')) &&
      !(preposition && entry.index < preposition.index - 1) &&
      !isWord(scene.items[scene.items.indexOf(entry) + 1], 'only', 'merely') &&
      keyOf(entry, 'hedge') === undefined &&
      keyOf(entry, 'comparator') === undefined &&
      !isWord(entry, 'hardly', 'barely', 'scarcely') &&
      // "Without its stand it weighs 14 kg" leaves out the stand.
      !(isWord(entry, 'without') && isWord(scene.items[scene.items.indexOf(entry) + 1], 'the', 'its', 'a')) &&
      !scene.used.has(entry),
  );
}

/** "the same four ports": what is said of another size is said of this set too. */
export function withTwin(
  scene: Scene,
  findings: Findings,
  check: FactCheck,
  items: (Item | undefined)[],
): undefined {
  // "120 Hz, the same as the Plain" compares, which `standing.ts` reads.
  const same = scene.items.find(
    (item, at) => isWord(item, 'same', 'identical') && !isWord(scene.items[at + 1], 'as'),
  );
  propose(findings, scene, 'fact', check, [...items, same]);
  const isVariant =
    check.conditions.variantInches !== undefined ||
    (check.conditions.unit !== undefined && check.conditions.unit !== scene.context.own);
  if (!same || !isVariant) return;
  const { unit: _unit, variantInches: _inches, ...rest } = check.conditions;
  propose(findings, scene, 'fact', { ...check, conditions: { ...rest, origin: {} } }, [...items, same]);
}

/** Conditions of a fact: only whose it is; a mode or a signal says nothing about a socket. */
export function factConditions(scene: Scene): StatedConditions {
  const base = conditionsFor(scene, undefined);
  const origin: Record<string, 'named' | 'carried' | 'article'> = {};
  const result: StatedConditions = { origin };
  if (base.unit !== undefined) {
    result.unit = base.unit;
    origin.unit = base.origin.unit ?? 'named';
  }
  if (base.variantInches !== undefined) {
    result.variantInches = base.variantInches;
    origin.variantInches = 'named';
  }
  return result;
}
