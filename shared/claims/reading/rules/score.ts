import type { ScoreCheck } from '../../../contract/check.ts';
import { type Findings, propose } from '../finding.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { firstWith, type Scene } from '../scene.ts';
import { statedNumber } from '../stated.ts';
import { factConditions } from './factCheck.ts';

const verbs = [
  'scores',
  'score',
  'scored',
  'gets',
  'earns',
  'receives',
  'awarded',
  'give',
  'gives',
  'deserves',
  'rate',
  'rates',
  'rated',
  'marks',
  'worth',
  'given',
  'award',
];

/** "scores 7.5 out of 10", "7.5/10", "earns our award", "no award this time". */
export function readScores(scene: Scene, findings: Findings): undefined {
  const noun = firstWith(scene, 'concept', 'score');
  const awardNoun = firstWith(scene, 'concept', 'award');
  const verb = scene.items.find((item) => isWord(item, ...verbs));
  const criterion = firstWith(scene, 'criterion');
  for (const item of scene.items) {
    const number = item.number;
    if (!number || scene.used.has(item) || (number.role && number.role !== 'value')) continue;
    const next = scene.items[scene.items.indexOf(item) + 1];
    const scaled = number.outOf !== undefined && [5, 6, 10, 20, 100].includes(number.outOf);
    const starred =
      isWord(next, 'stars', 'star', 'points') && verb !== undefined && number.dimension !== 'percent';
    const named =
      (noun || (verb && isWord(verb, 'scores', 'scored'))) &&
      number.dimension === '' &&
      number.outOf === undefined;
    const pointsScore = number.dimension === 'points' && (noun || (verb && isWord(verb, 'scores', 'scored')));
    if (!scaled && !starred && !named && !pointsScore) continue;
    if (
      scaled &&
      next?.type === 'word' &&
      !isWord(
        next,
        'for',
        'and',
        'from',
        'is',
        'in',
        'overall',
        'here',
        'at',
        'on',
        'with',
        'stars',
        'points',
        'to',
        'as',
        'feels',
        'seems',
        'but',
        'it',
        'because',
      ) &&
      !noun &&
      !verb
    )
      continue;
    const stated = statedNumber(
      {
        x: number.x,
        place: number.place,
        ...(number.hedge && { hedge: number.hedge }),
        ...(number.hedgeText && { hedgeText: number.hedgeText }),
      },
      'plain',
    );
    const op =
      number.comparator && ['<', '<=', '>', '>='].includes(number.comparator)
        ? (number.comparator as '<')
        : '=';
    const check: ScoreCheck = {
      kind: 'score',
      criterion: keyOf(criterion, 'criterion') ?? 'total',
      x: number.x,
      ...(number.outOf !== undefined && { max: number.outOf }),
      stated,
      op,
      conditions: factConditions(scene),
    };
    propose(findings, scene, 'score', check, [verb, noun, criterion, item, starred ? next : undefined]);
  }
  if (!awardNoun || scene.used.has(awardNoun)) return;
  const given = scene.items.find(
    (item) =>
      keyOf(item, 'awardWord') !== undefined ||
      isWord(item, 'earned', 'won', 'received', 'gets', 'take', 'misses', 'has', 'with', 'is', 'for'),
  );
  const negation = scene.items.find(
    (item) => (keyOf(item, 'negation') || keyOf(item, 'stat') === 'none') && !scene.used.has(item),
  );
  if (!given && !negation) return;
  const { name, items } = awardName(scene, awardNoun);
  propose(
    findings,
    scene,
    'score',
    {
      kind: 'score',
      criterion: 'award',
      x: name ?? !negation,
      ...(name !== undefined && negation && { negated: true }),
      conditions: factConditions(scene),
    },
    [given, negation, ...items, awardNoun],
  );
}

/** "our Best Buy award", "the Editor's Choice": the capitals before the noun, or the noun's own name. */
function awardName(scene: Scene, noun: Item): { name?: string; items: Item[] } {
  const at = scene.items.indexOf(noun);
  let left = at;
  while (left > 1 && (scene.items[left - 1]!.capital || isWord(scene.items[left - 1], "'s", '-'))) left -= 1;
  const items = scene.items.slice(left, at);
  const own = noun.text.replace(/ ?\b(?:award|badge|seal)$|^our /g, '');
  const words = [...items, ...(own === '' || own === 'our' ? [] : [{ text: own, capital: true }])];
  if (words.length === 0) return { items };
  const name = words
    .map(({ text, capital }) =>
      capital ? text.replaceAll(/\b\p{Ll}/gu, (letter) => letter.toUpperCase()) : text,
    )
    .join(' ')
    .replaceAll(/ ?'S\b/gi, "'s");
  return { name, items };
}
