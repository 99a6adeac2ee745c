import type { StatedNumber } from '../../../contract/check.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { isWord, keyOf, meaningOf } from '../items.ts';
import { keptOrLost } from '../lexicon/claims.ts';
import { operandOf } from '../operand.ts';
import { firstWith, type Scene } from '../scene.ts';
import { selectorOf } from '../selector.ts';
import { isSettled } from '../settled.ts';
import { statedMultiple, tidy } from '../stated.ts';
import { subjectOf } from '../subject.ts';
import { resolveMention } from '../units.ts';
import { splitVariant } from '../variant.ts';
import { opposite } from './levelCount.ts';
import { limitCheck } from './limit.ts';
import { complementOf } from './loss.ts';

/** What is left where a share is said to be lost: 100 % less it. */
export function complemented(stated: StatedNumber): StatedNumber {
  return {
    ...stated,
    x: tidy(100 - stated.x),
    low: tidy(100 - stated.high),
    high: tidy(100 - stated.low),
    ...(stated.highOpen
      ? { lowOpen: true, highOpen: undefined }
      : stated.lowOpen
        ? { highOpen: true, lowOpen: undefined }
        : {}),
  };
}

/** "half of the luminance is gone at 50": a fraction of a quantity that is itself a share. */
export function readShares(scene: Scene, findings: Findings): undefined {
  for (const item of scene.items) {
    const meaning = meaningOf(item, 'multiple');
    if (!meaning || scene.used.has(item)) continue;
    const entry = meaning.data as { x: number; low: number; high: number };
    if (entry.x >= 1) continue;
    const other = scene.units.some(({ role }) => role === 'possessive' || role === 'compared');
    if (other && !isShareOfOwn(scene)) continue;
    const subject = subjectOf(scene, 'percent', item);
    if (!isSettled(subject) || !/^(?:angle\..*luminance|peak\.hold|coverage\.)/.test(subject.quantity.id))
      continue;
    const before = scene.items[scene.items.indexOf(item) - 1];
    // "Its gamut exceeds BT.709 by a fifth"
    if (isWord(before, 'by') && subject.quantity.id.startsWith('coverage.')) {
      refuse(
        findings,
        scene,
        'share',
        'the number says how far it lies from another, not what was measured',
        [item, ...subject.items],
      );
      continue;
    }
    const hedge = keyOf(before, 'hedge');
    const share = statedMultiple(entry, hedge, hedge ? before!.text : undefined);
    let stated: StatedNumber = {
      ...share,
      x: tidy(share.x * 100),
      low: tidy(share.low * 100),
      high: tidy(share.high * 100),
      unit: '%',
    };
    const complement = complementOf(scene, subject.quantity, item);
    if (complement) stated = complemented(stated);
    // "It loses half its luminance at most"
    const atMost = scene.items.find(
      (word) =>
        word.index > item.index &&
        word.index <= item.index + 5 &&
        keyOf(word, 'comparator') === '<=' &&
        isWord(word, 'at most', 'at the most'),
    );
    const comparator = keyOf(before, 'comparator') ?? keyOf(atMost, 'comparator');
    // "Is not left with less than half"
    const denial = scene.items.find(
      (word) =>
        word.index < item.index &&
        !scene.used.has(word) &&
        word !== before &&
        (keyOf(word, 'negation') === 'not' || keyOf(word, 'stat') === 'never'),
    );
    const axisItems = scene.axes.flatMap((axis) => axis.items);
    const words = [
      item,
      ...subject.items,
      complement,
      hedge ? before : undefined,
      ...axisItems,
      firstWith(scene, 'verb'),
    ];
    // "It drops above half" says two things at once.
    if (complement && comparator && isWord(before, 'above') && keyOf(complement, 'verb') === 'fall') {
      refuse(
        findings,
        scene,
        'share',
        'the words leave open whether that is what is left or what is lost',
        words,
      );
      continue;
    }
    if (comparator && !hedge && comparator !== 'upTo') {
      const base = comparator.startsWith('<') ? '<' : '>';
      const strict = comparator.endsWith('=') ? '=' : '';
      const said = ((complement ? (base === '<' ? '>' : '<') : base) + strict) as '<' | '<=' | '>' | '>=';
      const op = denial ? opposite[said] : said;
      propose(findings, scene, 'share', limitCheck(scene, subject.quantity, op, stated.x, { unit: '%' }), [
        ...words,
        before,
        denial,
      ]);
      continue;
    }
    if (denial) {
      refuse(findings, scene, 'share', 'the words leave open what is denied', [denial, ...words]);
      continue;
    }
    propose(
      findings,
      scene,
      'share',
      {
        kind: 'value',
        operand: operandOf(scene, subject.quantity, selectorOf(scene, subject.quantity, 'value')),
        stated,
      },
      words,
    );
  }
}

/** "Half of the Hearth's luminance is left at 45 degrees": what a set keeps of its own; "half of the Kasulind's" compares. */
export function isShareOfOwn(scene: Scene): boolean {
  const own = splitVariant(scene.unit).unit ?? scene.context.own;
  return scene.units.some(
    (mention) =>
      mention.role === 'possessive' &&
      resolveMention(mention, scene.carry, scene.context) === own &&
      scene.items.some(
        (item) =>
          item.index > mention.item.index &&
          (isWord(item, ...keptOrLost) || isWord(item, 'is kept', 'are kept', 'was kept')),
      ),
  );
}
