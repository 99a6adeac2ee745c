import type { ReadingContext } from '../../contract/articleText.ts';
import {
  isAttributeOfSet,
  isExceededBy,
  isNumbered,
  isOfMoney,
  isRequest,
  isTimesFigure,
  isWholeOfShare,
} from './besideMention.ts';
import { invertedSubject } from './invertedSubject.ts';
import { type Item, isWord, keyOf } from './items.ts';
import type { UnitMention } from './scene.ts';
import { againstAnother, before, isDoneBy, isParted, isSaidOn, opensAsSubject } from './subjectMention.ts';
import { hasVerb } from './verbs.ts';

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

const staff = [
  'nobody',
  'somebody',
  'someone',
  'anyone',
  'anybody',
  'everyone',
  'people',
  'engineers',
  'those',
];

/** A maker’s name or a model that several sets share means this review’s own set where that is one of them. */
export function narrowed(id: string, context: ReadingContext): string {
  if (!id.includes('|')) return id;
  const ids = id.split('|');
  return ids.includes(context.own) ? context.own : id;
}

/** "both rivals", "all its rivals", "the others": every set that the review compares with what is spoken of, when the number fits. */
function rivalsNamed(
  items: readonly Item[],
  at: number,
  subject: string | undefined,
  { own, against, units }: ReadingContext,
): readonly string[] | undefined {
  const item = items[at]!;
  if (!/(?:rivals|others|competitors)$|^both$/.test(item.text)) return undefined;
  // "The Umbra is faster than both": than the other two.
  const of = subject ?? own;
  const rest = units.flatMap(({ id }) => (id === of ? [] : [id]));
  const lead = items.slice(Math.max(0, at - 3), isWord(item, 'both') ? at + 1 : at);
  const word = lead.find((entry) => isWord(entry, 'both', 'two', 'three', 'four', 'all'));
  const n = word && { both: 2, two: 2, three: 3, four: 4 }[word.text];
  const compared = against && against.length > 0 ? [own, ...against] : undefined;
  const group = compared?.includes(of) ? compared.filter((id) => id !== of) : undefined;
  if (n !== undefined) return group?.length === n ? group : rest.length === n ? rest : undefined;
  return group ?? (isWord(word, 'all') ? rest : undefined);
}

/** "Veltrane, mind you, promises 1,200 nits": what is thrown in between two marks parts nobody from what they say. */
function saysBehindAside(items: readonly Item[], at: number): boolean {
  const [first, ...rest] = items.slice(at + 1, at + 24);
  const parted = first !== undefined && first.index > items[at]!.index + 1;
  const verb = [first, ...rest].findIndex(
    (item) => item !== undefined && keyOf(item, 'saying') !== undefined,
  );
  const last = verb > 0 ? [first, ...rest][verb - 1] : undefined;
  const said = [first, ...rest][verb];
  return parted && verb > 0 && said !== undefined && last !== undefined && said.index > last.index + 1;
}

/** "A lag of 9 ms is quoted for the Hearth by Orrinvale": who says it stands behind. */
function isSaidBy(items: readonly Item[], at: number): boolean {
  const lead = items.slice(Math.max(0, at - 7), at - 1);
  return isWord(items[at - 1], 'by') && lead.some((item) => keyOf(item, 'saying') !== undefined);
}

/** "Kasulind itself claims 1,530", "Veltrane's brochure promises 1,200": words of no meaning of their own stand between. */
function saysFurtherOn(items: readonly Item[], at: number): boolean {
  const rest = items.slice(at + 1, at + 7);
  const verb = rest.findIndex((item) => keyOf(item, 'saying') !== undefined);
  if (verb < 1) return false;
  return rest
    .slice(0, verb)
    .every(
      (item) =>
        (item.type === 'word' &&
          item.meanings.length === 0 &&
          !isWord(item, 'and', 'but', 'which', 'than')) ||
        isWord(item, 'itself', 'themselves') ||
        keyOf(item, 'makerWord') !== undefined,
    );
}

/** Words behind a set's name with which no statement on it begins. */
const notStating = [
  'at',
  'with',
  'on',
  'in',
  'by',
  'for',
  'of',
  'to',
  'from',
  'against',
  'but',
  'than',
  'as',
];

/** "When the sun is out, the Kasulind is brighter": what begins with the set's name is said of it. */
function opensStatement(items: readonly Item[], at: number): boolean {
  const next = items[at + 1];
  if (isWord(next, "'s")) return hasVerb(items.slice(at + 2));
  if (isWord(next, 'and', 'or')) return hasVerb(items.slice(at + 2, at + 6));
  // "…: the Kasulind, at 731 nits, is a shade dimmer"
  const end = items.findIndex((_, place) => place > at + 1 && isParted(items, place));
  if (isWord(next, 'at', 'with') && isParted(items, at + 1) && end > 0)
    return hasVerb(items.slice(end, end + 2));
  return next !== undefined && next.type !== 'mark' && !isWord(next, ...notStating);
}

/** "We looked again: the lag of the Plain is 13.5 ms": the part leads, and the mark stands before it. */
function opensWithPart(items: readonly Item[], of: number): boolean {
  if (!isWord(items[of], 'of')) return false;
  let start = of - 1;
  while (start > 0 && of - start < 5 && !isParted(items, start)) start -= 1;
  return (
    start > 0 && isParted(items, start) && isWord(items[start], 'the') && !hasVerb(items.slice(start, of))
  );
}

/** Units that a clause names, each with its part in the statement. */
export function unitMentions(items: readonly Item[], context: ReadingContext): UnitMention[] {
  const mentions: UnitMention[] = [];
  const inverted = invertedSubject(items);
  let verbSeen = false;
  for (let at = 0; at < items.length; at += 1) {
    const item = items[at]!;
    // "Measured in xy, the Plain covers …": how it was measured leads, and the subject follows.
    const leads = at === 0 && isWord(item, 'measured', 'seen', 'judged', 'compared', 'set', 'adjusted');
    if (
      (keyOf(item, 'verb') && !leads) ||
      (keyOf(item, 'comparative') && !isOfMoney(items, at) && !isAttributeOfSet(items, at)) ||
      isWord(item, 'is', 'are', 'was', 'were', 'has', 'beats', 'matches', 'trails', 'it')
    )
      verbSeen = true;
    // "Football was another matter, because on that night the Plain's smear was …": a statement of its own begins.
    const begins =
      (isWord(item, 'because', 'since', 'although', 'though') && item.meanings.length === 0) ||
      // "SDR is a scrappier bout, in which the Hearth over-saturates red"
      (isWord(item, 'which') && isWord(items[at - 1], 'in', 'on') && mentions.length === 0);
    if (begins) verbSeen = false;
    const unit = keyOf(item, 'unit');
    // "Its rival from Veltrane" is that maker's set, under one name.
    const isFrom = isWord(items[at + 1], 'from', 'by') && keyOf(item, 'pronoun') === 'rival';
    if (isWord(items[at - 1], 'from', 'by') && keyOf(items[at - 2], 'pronoun') === 'rival') continue;
    const maker = keyOf(isFrom ? items[at + 2] : item, 'maker');
    const rival = keyOf(item, 'pronoun') === 'rival';
    // "The Plain's average is a third of ours"
    if (isWord(item, 'ours') && /(?:^| )(?:of|than|over|as)$/.test(items[at - 1]?.text ?? ''))
      mentions.push({ item, id: context.own, role: 'compared' });
    if (!unit && !maker && !rival) continue;
    // "For reasons that nobody at Kasulind would share": people of the firm.
    if (maker && !unit && isWord(items[at - 1], 'at') && isWord(items[at - 2], ...staff)) continue;
    // "Of its rivals, the Plain has an average error of 2.9": one of them is named behind.
    if (rival && at <= 2 && isWord(items[0], 'of') && items.slice(at + 1).some((word) => keyOf(word, 'unit')))
      continue;
    // "Nocthale's Gloam 48" is one name.
    if (maker && isWord(items[at + 1], "'s", "'") && keyOf(items[at + 2], 'unit')) continue;
    const next = items[at + 1];
    if (
      maker &&
      !unit &&
      // "More than three times the Kasulind's figure": of that set.
      !isTimesFigure(items, at) &&
      (keyOf(next, 'saying') ||
        saysFurtherOn(items, at) ||
        saysBehindAside(items, at) ||
        isSaidBy(items, at) ||
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
            'number',
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
    // "Trouble comes late: the Hearth's errors are visible …": behind a mark a set is named anew.
    // "We looked again, and the Kasulind shows banding": so behind a conjunction after a comma.
    const lead = before(items, at);
    const joins = isWord(items[lead], 'and', 'but', 'so', 'yet') && isParted(items, lead);
    const follows = isWord(items[lead], 'and') && isRequest(items[0]);
    const opens =
      at > 1 && (lead < 0 || joins || follows || opensWithPart(items, lead)) && mentions.length === 0;
    // "When the sun is out, the Kasulind is brighter": the verb before the comma is of something else.
    if (opens && opensStatement(items, at)) verbSeen = false;
    const left = items[lead];
    const possessive = isWord(next, "'s") || next?.text === "'";
    const twoBefore = items[lead - 1];
    const hasSubject = mentions.some((mention) => mention.role === 'subject');
    let role: UnitMention['role'];
    // "Contrast is the Umbra's party trick, at 5,240:1": whose it is.
    const isForte =
      isWord(next, "'s", "'") &&
      isWord(left, 'is', 'was', 'remains') &&
      mentions.length === 0 &&
      items.slice(0, at).some((entry) => keyOf(entry, 'concept') !== undefined);
    if (isForte) {
      mentions.push({ item, id: narrowed(unit ?? maker ?? '', context), role: 'subject' });
      continue;
    }
    // "Colour shift does the Hearth no favours": to whom it is done.
    const isDoneTo = isWord(left, 'does', 'do', 'did') && isWord(next, 'no', 'no favours', 'few', 'any');
    // "As on the Plain, blooming is faint": there too.
    const asThere =
      isWord(left, 'on', 'with') && isWord(items[0], 'as') && items[1] === left && isParted(items, at + 1);
    // "With the Hearth you'll live with an average error of 2.6"
    const isHad = isWord(left, 'with') && /^(?:you|one|we)(?:'|$)/.test(next?.text ?? '');
    // "Fill the Hearth's screen and the peak is under 400 cd/m²"
    const isFilled = possessive && isRequest(items[0]) && at <= 2 && isWord(items[at + 2], 'screen', 'panel');
    if (isDoneTo || asThere) role = 'compared';
    else if (isHad || isFilled) role = 'subject';
    else if (at === inverted) role = 'subject';
    else if (isWholeOfShare(items, at)) role = 'compared';
    else if (opensAsSubject(items, at, { verbSeen, maker, hasSubject })) role = 'subject';
    else if (
      left &&
      (barring.has(left.text) ||
        (isWord(left, 'from') && isWord(twoBefore, 'apart', 'aside')) ||
        (isWord(left, 'than') && isWord(twoBefore, 'other')) ||
        (isWord(left, 'but') && at > 1 && verbSeen) ||
        (isWord(left, 'for') && isWord(twoBefore, 'except', 'save', 'but')))
    )
      role = 'barred';
    // "Half of what Veltrane wants for its Plain": of the set that is compared with.
    else if (
      isWord(left, 'for') &&
      items.slice(0, at).some((item) => isWord(item, 'what')) &&
      mentions.some((mention) => mention.role === 'compared')
    )
      role = 'compared';
    // "It is exceeded only by that of the Plain": all but that one.
    else if (isExceededBy(items, at)) role = 'barred';
    // "…, as do the Plain's"
    else if (isWord(left, 'do', 'does', 'did', 'is', 'are', 'has') && isWord(twoBefore, 'as'))
      role = 'compared';
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
    else if (isDoneBy(items, at, left) || isNumbered(items, at)) role = 'subject';
    else if (isSaidOn(items, at, left) && !mentions.some((mention) => mention.role === 'subject'))
      role = 'subject';
    else if (left && isWord(left, 'in', 'on', 'does', 'do', 'did')) role = 'compared';
    else role = verbSeen ? (possessive ? 'possessive' : 'compared') : 'compared';
    const subject =
      mentions.find((mention) => mention.role === 'subject')?.id ?? keyOf(items[inverted], 'unit');
    const several = rival && !unit && !maker ? rivalsNamed(items, at, subject, context) : undefined;
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
