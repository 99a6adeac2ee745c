import type { ScoreCheck } from '../../../contract/check.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isOneOf, isWord, keyOf } from '../items.ts';
import type { Need } from '../needs.ts';
import { firstWith, type Scene } from '../scene.ts';
import { statedNumber } from '../stated.ts';
import { factConditions } from './factCheck.ts';

const verbs: readonly string[] = [
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

const giving: readonly string[] = ['give', 'gave', 'award', 'awarded', 'we give', 'we award'];

/** A clause with none of these speaks of no score. */
export const scoreNeed: Need = {
  kinds: ['scale', 'scoreWord', 'criterion', 'criterionSaid'],
  words: [...verbs, ...giving, 'stars', 'star', 'us', 'of', 'from', 'out of', 'for'],
};

/** "scores 7.5 out of 10", "7.5/10", "earns our award", "no award this time". */
export function readScores(scene: Scene, findings: Findings): undefined {
  // A review scores its own set: another one is meant only where the clause itself names it.
  if (scene.units.length > 0 || scene.items.some(({ number }) => number?.role === 'size'))
    return readOwnScores(scene, findings);
  const { unit: _unit, variantInches: _inches, ...conditions } = scene.conditions;
  const own = { ...scene, conditions, unit: undefined, unitProblem: undefined };
  readOwnScores(own, findings);
  // What was said is said in the clause itself, for those that follow.
  if (own.said) scene.said = own.said;
}

function readOwnScores(scene: Scene, findings: Findings): undefined {
  const noun = firstWith(scene, 'concept', 'score');
  const awardNoun = awardNamed(scene);
  const verb = scene.items.find((item) => isOneOf(item, verbs) && keyOf(item, 'concept') !== 'award');
  const criterion = firstWith(scene, 'criterion');
  for (const item of scene.items) {
    const number = item.number;
    if (!number || scene.used.has(item) || (number.role && number.role !== 'value')) continue;
    const next = scene.items[scene.items.indexOf(item) + 1];
    // "Scores half a point more than the Plain"
    if (
      isWord(next, 'more', 'less', 'higher', 'lower', 'fewer') &&
      isWord(verb, 'scores', 'scored', 'rates') &&
      number.outOf === undefined
    ) {
      refuse(findings, scene, 'score', 'the number says how far two scores lie apart', [item, next]);
      continue;
    }
    const apart = readScale(scene, item);
    const scaled = number.outOf !== undefined && [5, 6, 10, 20, 100].includes(number.outOf);
    const starred =
      (isWord(next, 'stars', 'star') || number.dimension === 'points') &&
      verb !== undefined &&
      number.dimension !== 'percent';
    const named =
      (noun || (verb && isWord(verb, 'scores', 'scored', 'rates'))) &&
      number.dimension === '' &&
      number.outOf === undefined &&
      // "…, as one misses a guest"
      !(number.spelled && number.x === 1);
    const ours = isOurNumber(scene, item) || isCriterionsNumber(scene, item);
    const pointsScore = number.dimension === 'points' && (noun || (verb && isWord(verb, 'scores', 'scored')));
    if (!scaled && !starred && !named && !pointsScore && !ours) continue;
    // "It wins three of five rounds"
    const what = scene.items.slice(scene.items.indexOf(item) + 1).slice(0, 4);
    if (
      what.some(({ text }) => /^(?:rounds?|contests?|categories|disciplines|tests|bouts|games)$/.test(text))
    )
      continue;
    if (
      scaled &&
      !apart &&
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
    const denial =
      op === '='
        ? undefined
        : scene.items.find((entry) => entry.index < item.index && keyOf(entry, 'negation') === 'not');
    if (denial) {
      refuse(findings, scene, 'score', 'the words leave open what is denied', [denial, item]);
      continue;
    }
    const check: ScoreCheck = {
      kind: 'score',
      criterion: keyOf(criterion, 'criterion') ?? partOf(scene, item) ?? 'total',
      x: number.x,
      ...(number.outOf !== undefined && { max: number.outOf }),
      stated,
      op,
      conditions: factConditions(scene),
    };
    propose(findings, scene, 'score', check, [verb, noun, criterion, item, starred ? next : undefined]);
  }
  if (!awardNoun || scene.used.has(awardNoun)) return;
  // "The best buy in its class" is no name.
  if (/^(?:best buy|editor's choice)$/.test(awardNoun.text) && !awardNoun.capital) return;
  const given = scene.items.find(
    (item) =>
      keyOf(item, 'awardWord') !== undefined ||
      // "For now it takes 8.5 and our award": "for" stands beside the award or says nothing of it.
      (isWord(item, 'for') && awardNoun.index - item.index <= 4 && awardNoun.index > item.index) ||
      isWord(item, 'earned', 'won', 'received', 'gets', 'take', 'misses', 'has', 'with', 'is', 'goes', ':'),
  );
  const negation = scene.items.find(
    (item) => (keyOf(item, 'negation') || keyOf(item, 'stat') === 'none') && !scene.used.has(item),
  );
  const denials = scene.items.filter(
    (item) =>
      item.index < awardNoun.index &&
      (keyOf(item, 'negation') !== undefined || keyOf(item, 'stat') === 'none'),
  );
  if (denials.length > 1) {
    refuse(findings, scene, 'score', 'two denials in a row may mean either', [...denials, awardNoun]);
    return;
  }
  const labelled = isWord(scene.sentence[awardNoun.index + 1], ':');
  // "It gets 8 out of 10, and our badge"
  const afterScore =
    scene.said?.some(({ kind }) => kind === 'score') ||
    (scene.previous?.said?.at(-1)?.kind === 'score' && isWord(scene.items[0], 'and', 'plus', 'with'));
  if (!given && !negation && !labelled && !afterScore) return;
  // "Our award goes to the Umbra"
  const winner = scene.units.find(
    ({ item, id, role }) =>
      id !== scene.context.own &&
      // "The Plain earned our award in spring"
      ((role === 'subject' && item.index < awardNoun.index) || item.index > awardNoun.index) &&
      (role === 'subject' ||
        scene.items
          .slice(0, scene.items.indexOf(item))
          .slice(-2)
          .some((word) => isWord(word, 'to'))),
  );
  if (winner) {
    refuse(findings, scene, 'score', 'the award of another set is in its own review', [
      awardNoun,
      winner.item,
    ]);
    return;
  }
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
    // Behind a score of its own the verb stands before both.
    [scene.said?.some(({ kind }) => kind === 'score') ? undefined : given, negation, ...items, awardNoun],
  );
}

/** "Our Recommended award": the noun, where a name and the noun stand side by side. */
function awardNamed(scene: Scene): Item | undefined {
  const first = firstWith(scene, 'concept', 'award');
  const next = first && scene.items[scene.items.indexOf(first) + 1];
  return keyOf(next, 'concept') === 'award' ? next : first;
}

/** "We give it 8.5", "it gets 8.5 from us": a bare number that the magazine hands out. */
function isOurNumber(scene: Scene, item: Item): boolean {
  const { dimension, outOf, hedge, x } = item.number!;
  if (dimension !== '' || outOf !== undefined || hedge || x > 100) return false;
  const at = scene.items.indexOf(item);
  const [next, afterNext] = scene.items.slice(at + 1, at + 3);
  const before = scene.items.slice(Math.max(0, at - 5), at);
  if (isWord(next, 'from') && isWord(afterNext, 'us'))
    return isWord(before.at(-1), 'gets', 'earns', 'has', 'a', 'an');
  const giver = before.findIndex((entry) => isOneOf(entry, giving));
  const taker = before.at(-1);
  return (
    giver >= 0 &&
    before.slice(0, giver + 1).some((entry) => isWord(entry, 'we', 'i', 'we give', 'we award')) &&
    (keyOf(taker, 'pronoun') !== undefined ||
      keyOf(taker, 'unit') !== undefined ||
      isWord(taker, 'a', 'an')) &&
    (next === undefined || next.type === 'mark' || isWord(next, 'for', 'overall', 'and', 'in'))
  );
}

/** "Picture gets an 8, value a 7": a bare number behind the criterion that it is given for. */
function isCriterionsNumber(scene: Scene, item: Item): boolean {
  const { dimension, outOf, x } = item.number!;
  const at = scene.items.indexOf(item);
  const next = scene.sentence[item.index + 1];
  // "Picture: 8."
  const labelled =
    isWord(scene.sentence[item.index - 1], ':') && keyOf(scene.sentence[item.index - 2], 'criterion');
  if (dimension === '' && outOf === undefined && x <= 20 && labelled) return true;
  if (dimension !== '' || outOf !== undefined || x > 20 || !isWord(scene.items[at - 1], 'a', 'an'))
    return false;
  // "It earns an 8 for picture, a 7 for sound"
  const behind = scene.items[at + 2];
  if (isWord(next, 'for') && behind && (keyOf(behind, 'criterion') !== undefined || parts.test(behind.text)))
    return scene.sentence.some((item) => item.index <= 4 && isOneOf(item, verbs));
  if (next !== undefined && next.type !== 'mark' && !isWord(next, 'and', 'from', 'for')) return false;
  const giver = scene.items[at - 2];
  const criterion = firstWith(scene, 'criterion');
  return (
    criterion !== undefined &&
    criterion.index < item.index &&
    (isOneOf(giver, verbs) || (giver === criterion && isOneOf(scene.sentence[1], verbs)))
  );
}

/** "8 of 10", "8 points out of 10", "4 stars out of 5", "scores 80 %": the scale that stands apart from its number. */
function readScale(scene: Scene, item: Item): boolean {
  const number = item.number!;
  const verb = scene.items.find((entry) => isWord(entry, 'scores', 'scored', 'score', 'rates'));
  // "Rates the panel at 98 % of P3" is no score.
  const ofGamut = firstWith(scene, 'gamut') !== undefined;
  if (
    number.dimension === 'percent' &&
    !ofGamut &&
    verb &&
    verb.index < item.index &&
    item.index - verb.index <= 3
  ) {
    number.outOf = 100;
    number.dimension = '';
    return true;
  }
  if (number.outOf !== undefined || !['', 'points'].includes(number.dimension)) return false;
  let at = scene.items.indexOf(item) + 1;
  if (isWord(scene.items[at], 'stars', 'star')) at += 1;
  if (isWord(scene.items[at], 'points', 'point')) at += 1;
  if (isWord(scene.items[at], 'out')) at += 1;
  const linked = isWord(scene.items[at], 'of', 'from', 'out of');
  at += 1;
  while (linked && isWord(scene.items[at], 'a', 'possible', 'maximum')) at += 1;
  const scale = linked ? scene.items[at] : undefined;
  if (scale?.number?.dimension !== '' || ![5, 10, 20, 100].includes(scale.number.x)) return false;
  number.outOf = scale.number.x;
  scale.number.role = 'ignored';
  return true;
}

const parts =
  /^(?:picture|sound|value|design|build|features|gaming|games|contrast|colours?|brightness|usability|motion|software|connectivity|price|ergonomics|economy|hdr|sdr|screen)$/;

/** "7 for picture", "the sound earns 6": the criterion, when the words name one; else the total is meant. */
function partOf(scene: Scene, item: Item): string | undefined {
  const at = scene.items.indexOf(item);
  const behind = scene.items.slice(at + 1, at + 7);
  const parted = behind.findIndex((entry) => entry.type === 'mark' || isWord(entry, 'and', 'but'));
  const after = parted < 0 ? behind : behind.slice(0, parted);
  const link = after.findIndex((entry) => isWord(entry, 'for', 'on', 'in'));
  const named =
    link < 0 ? undefined : after.slice(link + 1).find((entry) => !isWord(entry, 'its', 'the', 'our'));
  if (keyOf(named, 'unit') ?? keyOf(named, 'maker') ?? keyOf(named, 'pronoun')) return undefined;
  if (named && named.type !== 'mark' && !isWord(named, 'overall', 'all', 'this', 'us', 'total'))
    return parts.test(named.text) || isWord(after[link], 'for') ? named.text : undefined;
  const first = scene.items
    .slice(0, Math.min(at, 4))
    .find((entry) => parts.test(entry.text.replace(/^the /, '')));
  return first?.text.replace(/^the /, '');
}

/** "our Best Buy award", "the Editor's Choice": the capitals before the noun, or the noun's own name. */
function awardName(scene: Scene, noun: Item): { name?: string; items: Item[] } {
  const at = scene.items.indexOf(noun);
  let left = at;
  while (left > 1 && (scene.items[left - 1]!.capital || isWord(scene.items[left - 1], "'s", '-'))) left -= 1;
  const items = scene.items.slice(left, at);
  const own = noun.text.replace(/ ?\b(?:award|badge|seal)$|^our /g, '');
  // "Award: Best Buy"
  if (isWord(scene.sentence[noun.index + 1], ':'))
    for (let right = at + 1; scene.items[right]?.capital; right += 1) items.push(scene.items[right]!);
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
