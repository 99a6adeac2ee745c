import type { FactCheck } from '../../../contract/check.ts';
import { type Findings, propose } from '../finding.ts';
import { isWord, keyOf } from '../items.ts';
import { hasKey, type Scene } from '../scene.ts';
import { statedNumber } from '../stated.ts';
import { denialBefore, factConditions, opOf } from './factCheck.ts';

/** A price that is stated, not a limit of a cohort. */
export function readPrice(scene: Scene, findings: Findings): undefined {
  for (const item of scene.items) {
    const number = item.number;
    if (number?.role !== 'money' || scene.used.has(item)) continue;
    const superlative = scene.items.find(
      (entry) =>
        keyOf(entry, 'superlative') ||
        (keyOf(entry, 'stat') === 'none' && scene.items.some((other) => keyOf(other, 'comparative'))),
    );
    const comparative = scene.items.find(
      (entry) => keyOf(entry, 'comparative') && Math.abs(entry.index - item.index) <= 2,
    );
    const limit = number.comparator && number.comparator !== 'upTo';
    if (limit && superlative) continue;
    if (comparative && !number.comparator) continue;
    // "by £100", "a gap of £100": no price of a set.
    const lead = scene.items.slice(Math.max(0, scene.items.indexOf(item) - 3), scene.items.indexOf(item));
    if (
      isWord(lead.at(-1), 'by') ||
      scene.items.some((entry) =>
        isWord(entry, 'gap', 'difference', 'premium', 'saving', 'savings', 'discount', 'surcharge', 'extra'),
      )
    )
      continue;
    const after = scene.items[scene.items.indexOf(item) + 1];
    if (number.comparator && keyOf(after, 'comparative')) continue;
    const stated = statedNumber(
      {
        x: number.x,
        place: number.place,
        unit: number.unit,
        ...(number.hedge && { hedge: number.hedge }),
        ...(number.hedgeText && { hedgeText: number.hedgeText }),
      },
      'price',
    );
    const priced =
      limit === undefined ||
      limit === false ||
      scene.items.some(
        (entry) =>
          keyOf(entry, 'verb') === 'cost' ||
          keyOf(entry, 'concept') === 'price' ||
          isWord(entry, 'is', 'comes'),
      );
    if (!priced) continue;
    const verb = scene.items.find(
      (entry) => keyOf(entry, 'verb') === 'cost' || keyOf(entry, 'concept') === 'price',
    );
    const by =
      scene.units.some((mention) => mention.role === 'maker') && hasKey(scene, 'saying')
        ? { by: 'maker' }
        : {};
    const denial = denialBefore(scene, item);
    const check: FactCheck = {
      kind: 'fact',
      key: 'price',
      op: opOf(item) === '<=' && number.comparator === 'upTo' ? '=' : opOf(item),
      x: stated.x,
      stated,
      unit: number.unit,
      ...by,
      conditions: factConditions(scene),
      ...(denial && { negated: true }),
    };
    number.role = 'value';
    const comparatorItem = scene.items[scene.items.indexOf(item) - 1];
    propose(findings, scene, 'fact', check, [
      item,
      verb,
      keyOf(comparatorItem, 'comparator') ? comparatorItem : undefined,
      denial,
    ]);
  }
}
