import { type Item, isWord, keyOf } from './items.ts';
import { knownGroup } from './knownGroup.ts';
import { meets, needBits } from './needs.ts';
import { onEach, partOfAll } from './partOfSets.ts';
import { countsPorts, isPortCount } from './portCount.ts';
import type { Scene } from './scene.ts';

/** What the maker is told that it did: "you gave it four inputs", "you deliver 468". */
const makersDeeds =
  /^(?:deliver|delivered|build|built|give|gave|make|made|add|added|claim|claimed|promise|promised|offer|offered|fit|fitted|chose|designed|provide|provided|spared|ship|shipped|sell|put)$/;

const addressing = needBits([{ words: ['us', 'here', 'your', 'our', 'you'] }]);

/** "99.8 % for us", "your white is warm", "you gave it four inputs", "… and 3.4 here" beside another set: this review's own. */
export function addressesOwn({ items, previous, context, signs }: Scene): boolean {
  if (!meets(signs, addressing)) return false;
  const besideOther = previous?.unit !== undefined && previous.unit !== context.own;
  return items.some((item, at) => {
    const next = items[at + 1];
    if (isWord(item, 'us'))
      return (
        isWord(items[at - 1], 'for', 'with') &&
        items.some((other) => other.number && other.index < item.index)
      );
    if (isWord(item, 'here'))
      return besideOther && !items.some((other) => keyOf(other, 'unit') ?? keyOf(other, 'maker'));
    if (isWord(item, 'your', 'our'))
      return next !== undefined && (next.number !== undefined || isAspect(next) || isAspect(items[at + 2]));
    return isWord(item, 'you') && makersDeeds.test(next?.text ?? '');
  });
}

/** A word for something that a set has: a quantity, a fact, something seen. */
function isAspect(item: Item | undefined): boolean {
  return (
    (keyOf(item, 'concept') ?? keyOf(item, 'fact') ?? keyOf(item, 'topic') ?? keyOf(item, 'hue')) !==
    undefined
  );
}

/** "It has four HDMI ports; all four are 2.1": the ports, not the sets. */
function speaksOfPorts(
  items: readonly Item[],
  sentence: readonly Item[],
  index: number,
  carry: Scene['carry'],
): boolean {
  if (index === 0 && carry.statement !== undefined && countsPorts(carry.statement.check)) return true;
  const first = items.find((item) => item.type !== 'mark')?.index ?? 0;
  for (let at = 0; at < first; at += 1) if (isPortCount(keyOf(sentence[at], 'fact'))) return true;
  return false;
}

/** "No other set reaches 700 nits", "nothing else here …": of all sets but this one, where nothing is compared. */
function speaksOfOthers(items: readonly Item[]): boolean {
  const words = items.filter(
    (item) => item.type !== 'mark' && !isWord(item, 'and', 'but', 'while', 'because'),
  );
  const [first, second, third] = words;
  const compares = items.some(
    (item) =>
      (keyOf(item, 'comparative') ?? keyOf(item, 'superlative') ?? keyOf(item, 'equative')) !== undefined,
  );
  // "Nobody else here gets past 731 nits"
  if (isWord(first, 'nobody', 'none', 'no') && isWord(second, 'else')) return !compares;
  if (compares || keyOf(first, 'stat') !== 'none') return false;
  const sets = ['set', 'sets', 'television', 'televisions', 'tv', 'model', 'screen', 'panel'];
  return (
    isWord(first, 'nothing else') ||
    (isWord(first, 'nothing') && isWord(second, 'else')) ||
    /\b(?:rivals?|competitors?)$/.test(second?.text ?? '') ||
    (isWord(second, 'other') && (isWord(third, ...sets) || keyOf(third, 'pronoun') === 'rival')) ||
    (isWord(second, ...sets) && isWord(third, 'here', 'we', 'in', 'tested', 'that'))
  );
}

const groups = [
  ...['both', 'neither', 'none', 'all', 'others', 'other', 'the other', 'the others'],
  ...['nobody', 'every', 'each', 'sizes', 'sets', 'televisions', 'tvs', 'models', 'screens'],
];
/** Words for several sets at once, or for their number */
const grouping = needBits([
  { kinds: ['unit', 'maker', 'rival', 'stat', 'negation'], words: [...groups, 'of'] },
]);

/** "The Kasulind and the Umbra have …": sets by name; "both keep …", "the others have …": several, and none is named. */
export function groupNamed({
  items,
  units,
  index,
  previous,
  context,
  sentence,
  carry,
  signs,
}: Scene): readonly string[] | 'unnamed' | undefined {
  if (!meets(signs, grouping)) return undefined;
  const subjects = units.filter(({ role }) => role === 'subject');
  // "The rivals err in their own ways, for the Plain leans to blue": what follows is of the set that is named then.
  const several = subjects.find(({ item }, order) => item === subjects[order - 1]?.item)?.item;
  if (several && units.some(({ item, role }) => role !== 'maker' && item.index > several.index))
    return 'unnamed';
  if (subjects.length > 1) {
    const joined = subjects.every(
      ({ item }, order) =>
        order === 0 ||
        item === subjects[order - 1]!.item ||
        items.some(
          (word) =>
            word.index < item.index &&
            word.index >= item.index - 3 &&
            (isWord(word, 'and') || (isWord(word, 'nor') && items.some((other) => isWord(other, 'neither')))),
        ),
    );
    const ids = [...new Set(subjects.map(({ id }) => id))];
    return joined && ids.length > 1 && ids.every((id) => !id.includes('|') && id !== 'rival')
      ? ids
      : undefined;
  }
  if (subjects.every(({ id }) => id === 'rival') && speaksOfOthers(items)) return 'unnamed';
  // "All sizes have four HDMI ports": of each, and what is on file is of this one.
  if (
    items.slice(0, 5).some((item) => isWord(item, 'sizes')) &&
    items.slice(0, 4).some((item) => keyOf(item, 'stat') === 'all' || isWord(item, 'both'))
  )
    return 'unnamed';
  const portsBefore = speaksOfPorts(items, sentence, index, carry);
  // "Every set here covers more than 90 %": of each, and which they are, nobody says.
  const every = items
    .slice(0, 3)
    .find(
      (item, at) =>
        isWord(item, 'every', 'each') &&
        isWord(items[at + 1], 'set', 'television', 'tv', 'model', 'contender', 'rival') &&
        isWord(items[at + 2], 'here', 'tested', 'in', 'of', 'on'),
    );
  if (every && subjects.length === 0)
    return context.against?.length ? [context.own, ...context.against] : 'unnamed';
  const part = subjects.length === 0 && !portsBefore ? partOfAll(items) : undefined;
  if (part === 'some') return 'unnamed';
  if (part?.count) {
    part.count.number!.role = 'cohort';
    return knownGroup({ context, carry, previous }, part.count, undefined) ?? 'unnamed';
  }
  if (part) return carry.sets ?? 'unnamed';
  const whole = subjects.length === 0 ? onEach(items) : undefined;
  if (whole) return knownGroup({ context, carry, previous }, whole, undefined) ?? 'unnamed';
  const words = items.filter(
    (item) => item.type !== 'mark' && !isWord(item, 'and', 'but', 'where', 'while', 'the'),
  );
  // "Neither of the other two"
  const isPart = isWord(words[0], 'neither', 'none', 'both') && isWord(words[1], 'of');
  const [first, second] = isPart && isWord(words[2], 'the other', 'other') ? words.slice(2) : words;
  const third = words[words.indexOf(first!) + 2];
  if (!first || !second || subjects.some(({ id }) => id !== 'rival')) return undefined;
  if (portsBefore && items.some(({ text }) => /^\d\.\d$/.test(text))) return undefined;
  const acts = (item: Item | undefined) =>
    item !== undefined &&
    (keyOf(item, 'verb') !== undefined ||
      isWord(
        item,
        'have',
        'has',
        'are',
        'is',
        'were',
        'do',
        'make',
        'support',
        'weigh',
        'draw',
        'run',
        'come',
        'take',
        'accept',
        'offer',
        'get',
        'share',
        'stop',
        'pass',
        'use',
        'cost',
        'last',
        'gets',
        'hold',
        'track',
        'follow',
      ));
  const alone =
    isWord(first, 'both', 'neither') && (acts(second) || (isWord(second, 'of') && isWord(third, 'them')));
  const counted =
    (isWord(first, 'all', 'others', 'other', 'the other') &&
      second.number?.dimension === '' &&
      acts(third)) ||
    (isWord(first, 'others', 'the others', 'other') && acts(second)) ||
    (isWord(first, 'both', 'all', 'neither') &&
      [second, third].some((item) =>
        isWord(item, 'sets', 'televisions', 'tvs', 'rivals', 'rival', 'models'),
      )) ||
    (isWord(first, 'neither') && isWord(second, 'set', 'television', 'tv', 'model'));
  const oneOther = context.units.length === 2 && !isWord(first, 'both', 'neither', 'all');
  if (!((alone && (index === 0 || previous?.unitProblem !== undefined)) || (counted && !oneOther)))
    return undefined;
  const known = knownGroup({ context, carry, previous }, first, second);
  // Their number is no claim of its own.
  for (const { number } of [first, second]) if (known && number) number.role = 'cohort';
  return known ?? 'unnamed';
}
