import { isExtreme } from './extreme.ts';
import { type Item, isWord, keyOf } from './items.ts';

export const againstAnother = ['than', 'as', 'unlike', 'like', 'against', 'versus', 'vs', 'from', 'twice'];
/** Words that set one side against another, wherever they stand before it. */
export const comparing = new Set([...againstAnother, 'compared']);

/** A set in its clause, and the words before it */
interface Place {
  items: readonly Item[];
  /** Where the set stands in `items` */
  at: number;
  /** Where {@link left} stands; −1 when nothing stands before */
  from: number;
  /** The word before the set, articles and the like passed over, and the one before that */
  left: Item | undefined;
  lead: Item | undefined;
}

/** Skips "the", "a", "its", "new" and a size leftwards from `at`; −1 where a mark or nothing stands before. */
export function before(items: readonly Item[], at: number): number {
  let left = at - 1;
  if (isParted(items, at)) return -1;
  while (
    left >= 0 &&
    (items[left]!.number?.role === 'size' ||
      isWord(
        items[left],
        'the',
        'a',
        'new',
        'larger',
        'smaller',
        'its',
        'current',
        'old',
        'older',
        'similar',
        'rival',
        'pricier',
        'cheaper',
        'dearer',
        'outgoing',
        'our',
      ))
  ) {
    if (isParted(items, left)) return -1;
    left -= 1;
  }
  return left;
}

/** Does a comma stand before it, which a clause leaves out? */
export function isParted(items: readonly Item[], at: number): boolean {
  return at > 0 && items[at]!.index > items[at - 1]!.index + 1;
}

/** "The lag is 9.6 ms on the Kasulind": whom it is said of stands behind, unless something is set against it. */
export function isSaidOn(items: readonly Item[], at: number, left: Item | undefined): boolean {
  return (
    isWord(left, 'on') &&
    // "It saves you £90 on the Plain"
    !items.slice(0, at).some((item) => isWord(item, 'saves', 'save', 'saved', 'saving')) &&
    !items.slice(0, at).some((item) => comparing.has(item.text) || keyOf(item, 'pronoun') === 'own')
  );
}

const done = [
  'filled',
  'covered',
  'reached',
  'spanned',
  'delivered',
  'offered',
  'managed',
  'kept',
  'retained',
  'preserved',
  'drawn',
  'needed',
];

/** "BT.709 is filled to 99 % by the Hearth": who does it stands behind "by". */
export function isDoneBy(items: readonly Item[], at: number, left: Item | undefined): boolean {
  return (
    isWord(left, 'by') &&
    items.slice(0, at).some(
      (item, place) =>
        (isWord(item, ...done) && isWord(items[place - 1], 'is', 'are', 'was', 'were')) ||
        // One phrase in the lexicon
        /^(?:is|are|was|were) (?:kept|lost|left|reached)$/.test(item.text),
    )
  );
}

/** "The brightest of the three is the Plain", "the lowest error belongs to the Plain": who has the extreme stands behind. */
function isHolder({ items, at, left, lead }: Place): boolean {
  const leads =
    isWord(left, 'is', 'was', 'belongs to', 'goes to') ||
    (isWord(left, 'to') && isWord(lead, 'belongs', 'goes', 'falls', 'belong', 'go', 'went')) ||
    (isWord(left, 'from') && isWord(lead, 'comes', 'came', 'come')) ||
    (isWord(left, 'by') && isWord(lead, 'held', 'taken', 'owned', 'won'));
  if (!leads) return false;
  const before = items.slice(0, at);
  return (
    before.some((item) => keyOf(item, 'superlative') !== undefined || isExtreme(item)) &&
    !before.some((item) => isWord(item, 'than') || keyOf(item, 'unit') !== undefined)
  );
}

/** "Give the Brindle the same treatment", "calibrate the Linnet": what is done to it leads to what comes of it. */
function isCommanded({ items, from, left }: Place): boolean {
  return (
    from <= 1 &&
    isWord(
      left,
      'give',
      'calibrate',
      'adjust',
      'leave',
      'put',
      'take',
      'let',
      'feed',
      'show',
      'ask',
      'push',
    ) &&
    (from === 0 || isWord(items[0], 'and', 'but', 'now', 'then', 'so'))
  );
}

/** "You get a three-year warranty from Veltrane": what comes with that maker's set. */
function isGivenBy({ items, at, left }: Place, maker: string | undefined): boolean {
  return (
    maker !== undefined &&
    isWord(left, 'from', 'by') &&
    items
      .slice(0, at)
      .some((item) => keyOf(item, 'fact') === 'warranty' || isWord(item, 'cover', 'guarantee')) &&
    !items.slice(0, at).some((item) => comparing.has(item.text) && item !== left)
  );
}

/** "On my left is the Plain": a place leads, and what is there follows. */
function isPointedAt({ items, at, left }: Place): boolean {
  return (
    at <= 6 &&
    isWord(left, 'is', 'stands', 'sits', 'hangs', 'comes', 'waits', 'squats', 'lurks') &&
    isWord(
      items[0],
      'across',
      'opposite',
      'on',
      'to',
      'in',
      'beside',
      'behind',
      'next',
      'here',
      'there',
      'at',
    ) &&
    !items.slice(0, at).some((item) => item.number ?? keyOf(item, 'concept'))
  );
}

/** "Of the three it's the Plain that is quickest" */
function isSingledOut({ items, at, left, lead }: Place): boolean {
  return (
    isWord(left, 'is', "'s", 'was') &&
    keyOf(lead, 'pronoun') === 'it' &&
    (isWord(items[at + 1], 'that', 'which', 'who') || /^that/.test(items[at + 1]?.text ?? ''))
  );
}

/** "With Veltrane's set, blue is oversaturated" */
function isWithSet({ items, at, left }: Place): boolean {
  return (
    isWord(left, 'with', 'on') &&
    left === items[0] &&
    isWord(items[at + 1], "'s", "'") &&
    isWord(items[at + 2], 'set', 'television', 'screen', 'model', 'tv', 'panel')
  );
}

/** "With the Umbra you get four inputs", "7.7 ms for the Kasulind", "we gave the Plain 8 out of 10" */
function isGiven({ items, at, left, lead }: Place): boolean {
  const next = items[at + 1];
  const scored = isWord(left, 'gave', 'give', 'awarded', 'award') && next?.number !== undefined;
  const offered = isWord(next, 'at') && items[at + 2]?.number?.role === 'money';
  // "What's going on with the Hearth is that its white …"
  const isTopic = isWord(left, 'with') && isWord(next, 'is') && isWord(items[at + 2], 'that');
  const had =
    isTopic ||
    (isWord(left, 'with') && left === items[0] && (offered || isWord(next, 'you', 'we', 'buyers', 'one')));
  return (
    had ||
    scored ||
    (isWord(left, 'for') &&
      (lead?.number !== undefined || isWord(lead, 'recorded', 'measured', 'found', 'noted', 'obtained')) &&
      !items.slice(0, at).some((item) => isWord(item, 'against', 'versus')) &&
      (next === undefined || next.type === 'mark'))
  );
}

const tellingThat = [
  'mind',
  'know',
  'note',
  'remember',
  'means',
  'say',
  'says',
  'find',
  'found',
  'so',
  'fact',
];

/** "Keep in mind that the Plain gives you four" */
function isTold({ items, at, left, lead }: Place): boolean {
  const next = items[at + 1];
  return (
    isWord(left, 'that') &&
    isWord(lead, ...tellingThat) &&
    (keyOf(next, 'verb') !== undefined ||
      isWord(next, 'is', 'has', 'gives', 'costs', 'offers', 'weighs', 'draws'))
  );
}

/** "Three of the Plain's HDMI sockets are 2.1" */
function isOwnerOfSome({ items, at, left, lead }: Place): boolean {
  const next = items[at + 1];
  return (
    (isWord(next, "'s") || next?.text === "'") &&
    isWord(left, 'of') &&
    lead?.number?.spelled === true &&
    lead.number.dimension === '' &&
    lead.number.place >= 1
  );
}

/** Do the words before a set make it what the clause is about, wherever its verb stands? */
export function opensAsSubject(
  items: readonly Item[],
  at: number,
  known: { verbSeen: boolean; maker: string | undefined; hasSubject: boolean },
): boolean {
  const from = before(items, at);
  const place: Place = { items, at, from, left: items[from], lead: items[from - 1] };
  return (
    isTold(place) ||
    (!(isWord(place.left, 'for') && known.hasSubject) && isGiven(place)) ||
    (!known.verbSeen && !known.hasSubject && isOwnerOfSome(place)) ||
    isCommanded(place) ||
    isGivenBy(place, known.maker) ||
    isWithSet(place) ||
    isPointedAt(place) ||
    isSingledOut(place) ||
    isHolder(place)
  );
}
