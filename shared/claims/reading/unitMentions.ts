import type { ReadingContext } from '../../contract/articleText.ts';
import { type Item, isWord, keyOf } from './items.ts';
import type { UnitMention } from './scene.ts';

const againstAnother = ['than', 'as', 'unlike', 'like', 'against', 'versus', 'vs', 'from', 'twice'];
/** Words that set one side against another, wherever they stand before it. */
const comparing = new Set([...againstAnother, 'compared']);
/** A set right behind one of them is compared with. */
const comparedAfter = new Set([
  ...againstAnother,
  'behind',
  'over',
  'alongside',
  'beside',
  'beats',
  'beat',
  'matches',
  'match',
  'equals',
  'trails',
  'outshines',
  'with',
  'to',
  'of',
  'half',
  'above',
  'below',
  'what',
]);
const barring = new Set(['bar', 'except', 'excluding', 'barring', 'save', 'besides']);

/** Skips "the", "a", "its" and "new" leftwards from `at`. */
function before(items: readonly Item[], at: number): number {
  let left = at - 1;
  while (
    left >= 0 &&
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
    )
  )
    left -= 1;
  return left;
}

/** A maker’s name or a model that several sets share means this review’s own set where that is one of them. */
export function narrowed(id: string, context: ReadingContext): string {
  if (!id.includes('|')) return id;
  const ids = id.split('|');
  return ids.includes(context.own) ? context.own : id;
}

/** "both rivals", "all its rivals", "the others": every set that the review compares with, when the number fits. */
function rivalsNamed(
  items: readonly Item[],
  at: number,
  context: ReadingContext,
): readonly string[] | undefined {
  const item = items[at]!;
  if (!/(?:rivals|others|competitors)$/.test(item.text)) return undefined;
  const rest = context.units.flatMap(({ id }) => (id === context.own ? [] : [id]));
  const lead = items.slice(Math.max(0, at - 3), at);
  const word = lead.find((entry) => isWord(entry, 'both', 'two', 'three', 'four', 'all'));
  const n = word && { both: 2, two: 2, three: 3, four: 4 }[word.text];
  const group = context.against && context.against.length > 0 ? context.against : undefined;
  if (n !== undefined) return group?.length === n ? group : rest.length === n ? rest : undefined;
  return group ?? (isWord(word, 'all') ? rest : undefined);
}

/** "The lag is 9.6 ms on the Kasulind": whom it is said of stands behind, unless something is set against it. */
function isSaidOn(items: readonly Item[], at: number, left: Item | undefined): boolean {
  return (
    isWord(left, 'on') &&
    !items.slice(0, at).some((item) => comparing.has(item.text) || keyOf(item, 'pronoun') === 'own')
  );
}

const done = ['filled', 'covered', 'reached', 'spanned', 'delivered', 'offered', 'managed'];

/** "BT.709 is filled to 99 % by the Hearth": who does it stands behind "by". */
function isDoneBy(items: readonly Item[], at: number, left: Item | undefined): boolean {
  return (
    isWord(left, 'by') &&
    items
      .slice(0, at)
      .some((item, place) => isWord(item, ...done) && isWord(items[place - 1], 'is', 'are', 'was', 'were'))
  );
}

/** "The brightest of the three is the Plain", "the lowest error belongs to the Plain": who has the extreme stands behind. */
function isHolder(
  items: readonly Item[],
  at: number,
  left: Item | undefined,
  lead: Item | undefined,
): boolean {
  const leads =
    isWord(left, 'is', 'was', 'belongs to', 'goes to') ||
    (isWord(left, 'to') && isWord(lead, 'belongs', 'goes', 'falls', 'belong', 'go', 'went')) ||
    (isWord(left, 'from') && isWord(lead, 'comes', 'came', 'come')) ||
    (isWord(left, 'by') && isWord(lead, 'held', 'taken', 'owned', 'won'));
  if (!leads) return false;
  const before = items.slice(0, at);
  return (
    before.some((item) => keyOf(item, 'superlative') !== undefined || extreme.has(item.text)) &&
    !before.some((item) => isWord(item, 'than') || keyOf(item, 'unit') !== undefined)
  );
}

const extreme = new Set([
  'lowest',
  'highest',
  'smallest',
  'largest',
  'greatest',
  'biggest',
  'least',
  'shortest',
  'longest',
  'best',
  'worst',
]);

/** "three times the Kasulind's figure", "half the Kasulind's number" */
function isTimesFigure(items: readonly Item[], at: number): boolean {
  const before = isWord(items[at - 1], 'the') ? items[at - 2] : items[at - 1];
  const times = keyOf(before, 'multiple') !== undefined || before?.number?.dimension === 'times';
  return (
    times && isWord(items[at + 1], "'s") && isWord(items[at + 2], 'figure', 'number', 'value', 'reading')
  );
}

/** "Veltrane, mind you, promises 1,200 nits": what is thrown in between two marks parts nobody from what they say. */
function saysBehindAside(items: readonly Item[], at: number): boolean {
  const [first, ...rest] = items.slice(at + 1, at + 6);
  const parted = first !== undefined && first.index > items[at]!.index + 1;
  const verb = [first, ...rest].findIndex(
    (item) => item !== undefined && keyOf(item, 'saying') !== undefined,
  );
  const last = verb > 0 ? [first, ...rest][verb - 1] : undefined;
  const said = [first, ...rest][verb];
  return parted && verb > 0 && said !== undefined && last !== undefined && said.index > last.index + 1;
}

/** "For £600 more", "for a quarter more money": what is paid leaves the subject to come. */
function isOfMoney(items: readonly Item[], at: number): boolean {
  return (
    isWord(items[at], 'more', 'less', 'extra') &&
    isWord(items[0], 'for') &&
    (items[at - 1]?.number?.role === 'money' || isWord(items[at + 1], 'money'))
  );
}

/** "Give the Brindle the same treatment", "calibrate the Linnet": what is done to it leads to what comes of it. */
function isCommanded(items: readonly Item[], left: number): boolean {
  return (
    left >= 0 &&
    left <= 1 &&
    isWord(
      items[left],
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
    (left === 0 || isWord(items[0], 'and', 'but', 'now', 'then', 'so'))
  );
}

/** "You get a three-year warranty from Veltrane": what comes with that maker's set. */
function isGivenBy(
  items: readonly Item[],
  at: number,
  left: Item | undefined,
  maker: string | undefined,
): boolean {
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
function isPointedAt(items: readonly Item[], at: number, left: Item | undefined): boolean {
  return (
    at <= 6 &&
    isWord(left, 'is', 'stands', 'sits', 'hangs', 'comes') &&
    isWord(items[0], 'on', 'to', 'in', 'beside', 'behind', 'next', 'here', 'there', 'at') &&
    !items.slice(0, at).some((item) => item.number ?? keyOf(item, 'concept'))
  );
}

/** "With Veltrane's set, blue is oversaturated" */
function isWithSet(items: readonly Item[], at: number, left: Item | undefined): boolean {
  return (
    isWord(left, 'with', 'on') &&
    left === items[0] &&
    isWord(items[at + 1], "'s", "'") &&
    isWord(items[at + 2], 'set', 'television', 'screen', 'model', 'tv', 'panel')
  );
}

/** Units that a clause names, each with its part in the statement. */
export function unitMentions(items: readonly Item[], context: ReadingContext): UnitMention[] {
  const mentions: UnitMention[] = [];
  let verbSeen = false;
  for (let at = 0; at < items.length; at += 1) {
    const item = items[at]!;
    // "Measured in xy, the Plain covers …": how it was measured leads, and the subject follows.
    const leads = at === 0 && isWord(item, 'measured', 'seen', 'judged', 'compared', 'set', 'adjusted');
    if (
      (keyOf(item, 'verb') && !leads) ||
      (keyOf(item, 'comparative') && !isOfMoney(items, at)) ||
      isWord(item, 'is', 'are', 'was', 'were', 'has', 'beats', 'matches', 'trails', 'it')
    )
      verbSeen = true;
    const unit = keyOf(item, 'unit');
    // "Its rival from Veltrane" is that maker's set, under one name.
    const isFrom = isWord(items[at + 1], 'from', 'by') && keyOf(item, 'pronoun') === 'rival';
    if (isWord(items[at - 1], 'from', 'by') && keyOf(items[at - 2], 'pronoun') === 'rival') continue;
    const maker = keyOf(isFrom ? items[at + 2] : item, 'maker');
    const rival = keyOf(item, 'pronoun') === 'rival';
    if (!unit && !maker && !rival) continue;
    // "Nocthale's Gloam 48" is one name.
    if (maker && isWord(items[at + 1], "'s", "'") && keyOf(items[at + 2], 'unit')) continue;
    const next = items[at + 1];
    if (
      maker &&
      !unit &&
      // "More than three times the Kasulind's figure": of that set.
      !isTimesFigure(items, at) &&
      (keyOf(next, 'saying') ||
        saysBehindAside(items, at) ||
        keyOf(items[at - 1], 'saying') ||
        (isWord(next, "'s") &&
          isWord(
            items[at + 2],
            'claim',
            'claims',
            'claimed',
            'promise',
            'promised',
            'quoted',
            'figure',
            'own',
            'data',
          )) ||
        // "Nocthale's 600 cd/m² claim"
        (isWord(next, "'s") &&
          items[at + 2]?.number !== undefined &&
          isWord(items[at + 3], 'claim', 'promise', 'figure', 'pledge')))
    ) {
      mentions.push({ item, id: narrowed(maker, context), role: 'maker' });
      continue;
    }
    const left = items[before(items, at)];
    const possessive = isWord(next, "'s") || next?.text === "'";
    const twoBefore = items[before(items, at) - 1];
    let role: UnitMention['role'];
    // "With the Umbra you get four inputs"
    const had = isWord(left, 'with') && before(items, at) === 0 && isWord(next, 'you', 'we', 'buyers', 'one');
    // "7.7 ms for the Kasulind"
    const given =
      isWord(left, 'for') &&
      twoBefore?.number !== undefined &&
      !items.slice(0, at).some((item) => isWord(item, 'against', 'versus')) &&
      (next === undefined || next.type === 'mark') &&
      !mentions.some((mention) => mention.role === 'subject');
    // "We gave the Plain 8 out of 10"
    const scored = isWord(left, 'gave', 'give', 'awarded', 'award') && next?.number !== undefined;
    // "Keep in mind that the Plain gives you four"
    const told =
      isWord(left, 'that') &&
      isWord(
        twoBefore,
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
      ) &&
      (keyOf(next, 'verb') !== undefined ||
        isWord(next, 'is', 'has', 'gives', 'costs', 'offers', 'weighs', 'draws'));
    // "Three of the Plain's HDMI sockets are 2.1"
    const parted =
      possessive &&
      isWord(left, 'of') &&
      !verbSeen &&
      twoBefore?.number?.spelled === true &&
      twoBefore.number.dimension === '' &&
      twoBefore.number.place >= 1 &&
      !mentions.some((mention) => mention.role === 'subject');
    if (
      told ||
      had ||
      scored ||
      given ||
      parted ||
      isCommanded(items, before(items, at)) ||
      isGivenBy(items, at, left, maker) ||
      isWithSet(items, at, left) ||
      isPointedAt(items, at, left) ||
      isHolder(items, at, left, twoBefore)
    )
      role = 'subject';
    else if (
      left &&
      (barring.has(left.text) ||
        (isWord(left, 'from') && isWord(twoBefore, 'apart', 'aside')) ||
        (isWord(left, 'than') && isWord(twoBefore, 'other')) ||
        (isWord(left, 'but') && at > 1 && verbSeen) ||
        (isWord(left, 'for') && isWord(twoBefore, 'except', 'save', 'but')))
    )
      role = 'barred';
    else if (
      isWord(left, 'of') &&
      !verbSeen &&
      !items
        .slice(0, at)
        .some(
          (entry) =>
            entry.number ||
            keyOf(entry, 'multiple') ||
            keyOf(entry, 'superlative') ||
            (isWord(entry, 'that', 'those') && items.indexOf(entry) > 1),
        ) &&
      !mentions.some((mention) => mention.role === 'subject')
    )
      role = 'subject';
    else if (
      left &&
      (comparedAfter.has(left.text) ||
        keyOf(left, 'multiple') ||
        left.number?.dimension === 'times' ||
        keyOf(left, 'comparator') ||
        keyOf(left, 'standing') ||
        keyOf(left, 'verb') === 'exceed')
    )
      role =
        possessive && (keyOf(left, 'multiple') || left.number || isWord(left, 'of'))
          ? 'possessive'
          : 'compared';
    else if (isWord(left, 'for') && twoBefore?.number !== undefined && mentions.length === 0 && at > 3)
      role = 'compared';
    else if (
      left &&
      isWord(left, 'and', 'or', 'nor') &&
      mentions.length > 0 &&
      before(items, at) > 0 &&
      mentions[mentions.length - 1]!.item.index >= left.index - 2
    )
      role = mentions[mentions.length - 1]!.role;
    else if (!verbSeen && !mentions.some((mention) => mention.role === 'subject')) role = 'subject';
    else if (isDoneBy(items, at, left)) role = 'subject';
    else if (isSaidOn(items, at, left) && !mentions.some((mention) => mention.role === 'subject'))
      role = 'subject';
    else if (left && isWord(left, 'in', 'on', 'does', 'do', 'did')) role = 'compared';
    else role = verbSeen ? (possessive ? 'possessive' : 'compared') : 'compared';
    const several = rival && !unit && !maker ? rivalsNamed(items, at, context) : undefined;
    if (several) for (const id of several) mentions.push({ item, id, role });
    else
      mentions.push({
        item,
        id: rival && !unit && !maker ? 'rival' : narrowed(unit ?? maker!, context),
        role,
      });
  }
  return mentions;
}
