import { type Carry, carriedConditions, sectionUnit } from './carry.ts';
import { type Item, isWord, type MeaningKind } from './items.ts';
import { mark, meets, needBits, type Signs, shows, signsOfItems } from './needs.ts';
import { countsThings } from './plainTalk.ts';
import { isPortCount } from './portCount.ts';
import { rules } from './rules/index.ts';
import { saysExtreme } from './selector.ts';
import { saysWorkDone } from './workDone.ts';

/** Kinds of meaning that leave nothing for the next sentence, unless a rule makes a claim of them. */
const passing = new Set<MeaningKind>([
  'verb',
  'saying',
  'makerWord',
  'idiom',
  'comparator',
  'trailing',
  'intensity',
  'negation',
  'room',
  'side',
  'plane',
  'level',
  'month',
  'comparative',
  'equative',
  'multiple',
  'ordinal',
  'hedge',
  'opinion',
  'standing',
  'fact',
  'severity',
  'gotThere',
  'fellShort',
  'awardWord',
]);

/** Words by which sets may be meant without a name. */
const meaningSets = needBits([
  {
    kinds: ['pronoun'],
    words: ['both', 'neither', 'all', 'others', 'the others', 'other', 'you', 'your', 'our'],
  },
]);

/** What any clause of a sentence may show to a rule, given what it shows by itself. */
function signsOfSentence(items: readonly Item[], shown: Signs, carry: Carry, own: string): Signs {
  // Its numbers are passed over by every rule; what is counted may be a set's all the same.
  const isPlain = !shows(shown, 'number') || shows(shown, 'countable');
  const signs = isPlain ? [...shown] : signsOfItems(items, false);
  // A section on the article's own set means no other than a text without sections does.
  const section = sectionUnit(carry);
  mark(signs, 'set', (section !== undefined && section !== own) || meets(signs, meaningSets));
  mark(signs, 'window', carry.window !== undefined);
  mark(signs, 'adjusted', carriedConditions(carry).stage === 'adjusted');
  mark(signs, 'claimed', carry.claimed !== undefined);
  mark(signs, 'statement', carry.statement !== undefined);
  mark(signs, 'portsBefore', carry.ports !== undefined);
  mark(signs, 'quantityBefore', carry.said !== undefined);
  mark(signs, 'topicBefore', carry.topic !== undefined);
  return signs;
}

/** Plurals that may be the sets, or of them */
const ofSets = [
  ...[
    'sets',
    'televisions',
    'tvs',
    'screens',
    'panels',
    'models',
    'rivals',
    'makers',
    'others',
    'contenders',
  ],
  ...['samples', 'units', 'sizes', 'halves', 'errors', 'points', 'results', 'figures', 'places'],
];

/** "Three weeks", "an hour", "two colleagues": no measurement, and no version in digits either. */
function isPassedOver({ number }: Item, next: Item | undefined): boolean {
  const { role, dimension, spelled, outOf } = number!;
  if (role === 'ignored') return spelled || dimension === 'calendar' || dimension === 'hours';
  const isCount = role === undefined && spelled && dimension === '' && outOf === undefined;
  return isCount && countsThings(next) && !isWord(next, ...ofSets);
}

function leavesNothing(item: Item): boolean {
  for (const { kind, key } of item.meanings) {
    if (kind === 'pronoun' && key === 'it') continue;
    // "Everything", "never": only an average, a maximum or a minimum is taken up by the next sentence.
    if (kind === 'stat' && (key === 'none' || key === 'never' || key === 'all' || key === 'any')) continue;
    if (!passing.has(kind) || (kind === 'fact' && isPortCount(key))) return false;
  }
  return !saysExtreme(item);
}

/**
 * Prose about something else: no rule finds in it what it needs, and all that it leaves for the next sentence is that
 * what the sentence before said is over. No clauses are made of it, which would take three fifths of its time.
 * @param shown what the sentence shows by itself
 * @param own the article's own unit
 */
export function isIdle(items: readonly Item[], shown: Signs, carry: Carry, own: string): boolean {
  if (
    carry.asked !== undefined ||
    carry.askedUnit !== undefined ||
    carry.askedAgainst !== undefined ||
    carry.unit !== undefined
  )
    return false;
  let hasWords = false;
  for (let at = 0; at < items.length; at++) {
    const item = items[at]!;
    if ((item.number !== undefined && !isPassedOver(item, items[at + 1])) || !leavesNothing(item))
      return false;
    // "It" takes up the statistic of the sentence before.
    if (carry.stat !== undefined && isWord(item, 'it', 'this', 'that')) return false;
    if (item.type !== 'mark') hasWords = true;
  }
  if (!hasWords || saysWorkDone(items, shown)) return false;
  const signs = signsOfSentence(items, shown, carry, own);
  return !rules.some(({ needs }) => meets(signs, needs));
}
