import { clausesOf } from './clauses.ts';
import { countedAt, isAmount, isSet, takeUnit } from './counted.ts';
import { furtherSetAt } from './furtherSet.ts';
import { type Item, isWord, keyOf } from './items.ts';
import { labelList, type Part } from './labelList.ts';

/** What a shortened clause repeats: the words behind the number, and its unit where it has one of its own. */
interface Model {
  /** One a noun: "three of each" repeats several */
  nouns: Item[][];
  number?: Item;
}

const measured = new Set(['frequency', 'length', 'mass', 'months']);

/** Everything that is counted between two places: "four HDMI inputs and three USB ports". */
function countedIn(items: readonly Item[], from: number, to: number): Item[][] {
  const found: Item[][] = [];
  for (let at = from; at < to; at += 1) {
    const words = countedAt(items, at);
    if (words.length === 0 || (words.length === 1 && isWord(words[0], 'hdmi', 'usb'))) continue;
    const counted = items
      .slice(Math.max(from, at - 3), at)
      .some((item) => isAmount(item) || isWord(item, 'no', 'single', 'a'));
    if (counted) found.push(words);
    at += words.length - 1;
  }
  return found;
}

/** What the words before `end` speak of last: things that are counted, or a measure with its unit. */
function modelBefore(items: readonly Item[], end: number): Model | undefined {
  const counted = countedIn(items, 0, end);
  const last = counted.at(-1);
  const number = items
    .slice(0, end)
    .reverse()
    .find((item) => item.number && isAmount(item));
  if (last && (!number || number.index <= last.at(-1)!.index || number.number!.dimension === ''))
    return { nouns: counted };
  if (!number || !measured.has(number.number!.dimension)) return undefined;
  const noun = items.find(
    (item) =>
      item.index < end && keyOf(item, 'fact') !== undefined && Math.abs(item.index - number.index) <= 4,
  );
  return { nouns: [noun ? [noun] : []], number };
}

const leads = /^(?:and|but|while|whereas|where|though|against|to|versus|vs|compared with|compared to|with)$/;
const fillers =
  /^(?:'s|gives?|you|us|allows|came|comes|has|have|had|gets?|got|offers?|manages?|makes do|do|comes|carries|brings|provides|musters?|sports|settles|stops|takes|only|just|even|still|a|the|mere|with|at|on|for|is|weighs|runs|of|another|exactly)$/;

interface Short {
  start: number;
  end: number;
  /** The set and the words up to its number */
  lead: Item[];
  /** "the Umbra four and two": one a noun */
  amounts: Item[];
  each: boolean;
}

/** "…, the Kasulind four", "while the Umbra has only three": nothing but a set and a number, or some. */
function shortClauseAt(items: readonly Item[], set: number): Short | undefined {
  let start = set;
  while (isWord(items[start - 1], 'the', 'our', 'this')) start -= 1;
  const before = items[start - 1];
  if (!before || !(leads.test(before.text) || isWord(before, ',', ';', ':', '(', '—', '–'))) return undefined;
  let at = set + 1;
  while (items[at] && !isAmount(items[at]!) && (fillers.test(items[at]!.text) || keyOf(items[at], 'hedge')))
    at += 1;
  const lead = items.slice(start, at);
  const amounts: Item[] = [];
  const isOne = (item: Item | undefined) =>
    item !== undefined && isAmount(item) && item.number?.role !== 'money';
  if (!isOne(items[at])) return undefined;
  amounts.push(items[at++]!);
  while (isWord(items[at], 'and') && isOne(items[at + 1]) && endsClause(items[at + 2])) {
    amounts.push(items[at + 1]!);
    at += 2;
  }
  let each = false;
  if (isWord(items[at], 'of') && isWord(items[at + 1], 'each', 'either', 'both')) {
    each = true;
    at += 2;
  } else if (isWord(items[at], 'of') && isWord(items[at + 1], 'them', 'those', 'these')) at += 2;
  else if (isWord(items[at], 'each', 'apiece', 'ones', 'such', 'all told', 'too')) at += 1;
  return endsClause(items[at]) ? { start, end: at, lead, amounts, each } : undefined;
}

function endsClause(item: Item | undefined): boolean {
  return !item || item.type === 'mark' || isWord(item, 'and', 'but', 'while', 'whereas', 'though');
}

/** The short clause with the words of the model: one part a noun. */
function lend({ lead, amounts, each }: Short, { nouns, number }: Model): Part[] {
  for (const amount of amounts) takeUnit(amount, number);
  if (each || amounts.length > 1)
    return nouns.map((noun, order) => ({
      items: [...lead, each ? amounts[0]! : amounts[order]!, ...noun],
      borrowed: new Set(noun),
    }));
  const noun = nouns.at(-1)!;
  return [
    {
      items: [...lead, amounts[0]!, ...noun],
      borrowed: new Set(noun),
      ...(nouns.length > 1 && { problem: 'the words do not say which of the counts before is meant' }),
    },
  ];
}

/** Can the numbers be counts of what the model counts, or measures of its kind? */
function suits({ amounts, each }: Short, { nouns, number }: Model): boolean {
  if (amounts.length > 1 && (each || amounts.length !== nouns.length)) return false;
  const dimensions = amounts.map((amount) => amount.number?.dimension ?? '');
  return dimensions.every((dimension) => dimension === '' || dimension === number?.number?.dimension);
}

/** The clauses of a sentence, each whole: one that leaves out what another part says is lent those words. */
export function partsOf(items: readonly Item[]): Part[] {
  if (!items.some(isSet)) return clausesOf(items).map((clause) => ({ items: clause }));
  const list = labelList(items);
  const parts = list?.parts ?? [];
  const plain = (from: number, to: number) => {
    if (to > from) for (const clause of clausesOf(items.slice(from, to))) parts.push({ items: clause });
  };
  let from = list?.end ?? 0;
  let model: Model | undefined;
  for (let at = from; at < items.length; at += 1) {
    if (!isSet(items[at])) continue;
    const further = furtherSetAt(items, at);
    if (further) {
      plain(from, further.start);
      parts.push(further.part);
      from = further.end;
      at = further.end - 1;
      continue;
    }
    const short = shortClauseAt(items, at);
    if (!short) continue;
    if (model === undefined || short.start - from > 2) model = modelBefore(items, short.start);
    if (!model || !suits(short, model)) continue;
    if (short.start - from > 2) plain(from, short.start);
    parts.push(...lend(short, model));
    from = short.end;
    at = short.end - 1;
  }
  plain(from, items.length);
  return parts;
}
