import { type Item, isWord, keyOf } from './items.ts';

const affirmations = ['is', 'are', 'does', 'do', 'did', 'has', 'can', 'will', 'was'];
const denials = [
  ...["isn't", "aren't", "doesn't", "don't", "didn't", "hasn't", "can't", 'cannot', "won't", "wasn't"],
  ...['is not', 'does not', 'not'],
];
/** Whatever repeats what was said has one of these words. */
export const echoing: readonly string[] = [...affirmations, ...denials, 'too', 'likewise', 'same'];

export const affirming = new RegExp(`^(?:${affirmations.join('|')})$`);
export const denying = new RegExp(`^(?:${denials.join('|')})$`);
const fillers =
  /^(?:the|which|so|and|but|while|whereas|though|yet|on|with|'s|'|too|either|however|certainly|really|sadly|alas|also|not|say|claim|that|as much|much|no|yes|same|for|true|of|likewise|only|one|ones)$/;

const turning = /(?:^|[ ])(?:not?|never|none|nothing|neither|nor|without|cannot|in?visible)(?:[ ]|$)|n't/;

/** Does a statement of these words deny something, so that "nor does it" agrees and "it does" objects? */
export function saysNo(items: readonly Item[]): boolean {
  return items.some(
    (item) => item.type !== 'mark' && (turning.test(item.text) || keyOf(item, 'house') === 'invisible'),
  );
}

/** "The same goes for it", "applies to it", "holds for it" */
const holding = /^(?:goes for|goes|applies|applies to|holds|holds for|to)$/;

interface Echo {
  /** The set, or the hue, that it is said of */
  set: Item;
  words: Item[];
  /** The statement before is agreed with ("so is"), affirmed ("is") or denied ("isn't"). */
  says: 'same' | 'yes' | 'no';
}

/** "The Kasulind's isn't", "and the Hearth is not", "nor does the Hearth", "not so on the Kasulind": nothing but a set and an answer. */
export function echoOf(all: readonly Item[]): Echo | undefined {
  const items = all.filter((item) => item.type !== 'mark');
  if (items.length < 2 || items.length > 8) return undefined;
  const sets = items.filter(
    (item) =>
      keyOf(item, 'unit') ??
      keyOf(item, 'maker') ??
      keyOf(item, 'hue') ??
      (keyOf(item, 'pronoun') === 'own' ? '' : undefined),
  );
  const [set] = sets;
  if (!set || sets.length > 1) return undefined;
  const rest = items.filter((item) => item !== set);
  if (
    !rest.every(
      (item) =>
        affirming.test(item.text) ||
        denying.test(item.text) ||
        fillers.test(item.text) ||
        isWord(item, 'nor', 'neither') ||
        holding.test(item.text) ||
        (isWord(item, 'as') && item === items[0]),
    )
  )
    return undefined;
  // "The same goes for the Plain"
  if (isWord(rest[0], 'the') && isWord(rest[1], 'same') && rest.some((item) => holding.test(item.text)))
    return { set, words: items, says: 'same' };
  const verb = rest.find((item) => affirming.test(item.text) || denying.test(item.text));
  const opening = rest.find((item) => isWord(item, 'nor', 'neither'));
  // "So does the Plain", "as do the Plain's"
  const so = rest.find((item) => isWord(item, 'so') || (isWord(item, 'as') && item === items[0]));
  if (opening) return verb && { set, words: items, says: 'same' };
  const isDenied = rest.some((item) => denying.test(item.text));
  if (so && verb && verb.index === so.index + 1 && set.index > verb.index && !isDenied)
    return { set, words: items, says: 'same' };
  if (rest.some((item) => denying.test(item.text))) return { set, words: items, says: 'no' };
  if (rest.some((item) => isWord(item, 'too', 'likewise', 'same')))
    return { set, words: items, says: 'same' };
  return verb && verb.index > set.index ? { set, words: items, says: 'yes' } : undefined;
}
