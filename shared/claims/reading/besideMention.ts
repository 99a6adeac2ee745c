import { type Item, isWord, keyOf } from './items.ts';
import { before, isParted } from './subjectMention.ts';

/** "And the dearer Plain is no angel": a word on the set that follows it, and no verb. */
export function isAttributeOfSet(items: readonly Item[], at: number): boolean {
  return isWord(items[at - 1], 'the') && keyOf(items[at + 1], 'unit') !== undefined;
}

/** "Push the signal and …", "fill the screen and …": what the reader is asked to do first. */
export function isRequest(item: Item | undefined): boolean {
  return /^(?:push|fill|feed|move|walk|step|sit|turn|raise|lower|show|play|give|put|take|go|slide|dim|switch|ask|drive|throw|look|stand|get|send|bring|drop|crank)$/.test(
    item?.text ?? '',
  );
}

/** "A quarter of the glow that the Kasulind leaves", "half of what Orrinvale allows its Hearth": whose share is taken. */
export function isWholeOfShare(items: readonly Item[], at: number): boolean {
  const share = items
    .slice(0, at)
    .findLastIndex((item) => keyOf(item, 'multiple') !== undefined || item.number?.dimension === 'times');
  if (share < 0 || at - share > 8) return false;
  const between = items.slice(share + 1, at);
  const of = isWord(between[0], 'of') || / of$/.test(items[share]!.text);
  return (
    of &&
    between.some((item) => isWord(item, 'what', 'that', 'which')) &&
    between.every(
      (item) => item.meanings.length === 0 || keyOf(item, 'maker') !== undefined || isWord(item, 'its'),
    ) &&
    !isParted(items, at)
  );
}

/** "For £600 more", "for a quarter more money": what is paid leaves the subject to come. */
export function isOfMoney(items: readonly Item[], at: number): boolean {
  return (
    isWord(items[at], 'more', 'less', 'extra') &&
    isWord(items[0], 'for') &&
    (items[at - 1]?.number?.role === 'money' || isWord(items[at + 1], 'money'))
  );
}

/** "exceeded only by the Plain", "beaten only by that of the Plain" */
export function isExceededBy(items: readonly Item[], at: number): boolean {
  const lead = items.slice(Math.max(0, at - 7), at);
  const only = lead.findIndex((item, place) => isWord(item, 'only') && isWord(lead[place + 1], 'by'));
  return (
    only > 0 &&
    isWord(lead[only - 1], 'exceeded', 'beaten', 'surpassed', 'topped', 'bettered', 'outdone') &&
    lead.slice(only + 2).every((item) => isWord(item, 'the', 'that', 'of'))
  );
}

/** "The runner-up is the Umbra with 3,000:1": the number behind is that set's. */
export function isNumbered(items: readonly Item[], at: number): boolean {
  return (
    isWord(items[before(items, at)], 'is', 'was') &&
    isWord(items[at + 1], 'with') &&
    items[at + 2]?.number !== undefined &&
    items.slice(0, at).some((item) => isWord(item, 'runner-up', 'runner', 'next', 'nearest', 'closest'))
  );
}

/** "three times the Kasulind's figure", "half the Kasulind's number" */
export function isTimesFigure(items: readonly Item[], at: number): boolean {
  const before = isWord(items[at - 1], 'the') ? items[at - 2] : items[at - 1];
  const times = keyOf(before, 'multiple') !== undefined || before?.number?.dimension === 'times';
  return (
    times && isWord(items[at + 1], "'s") && isWord(items[at + 2], 'figure', 'number', 'value', 'reading')
  );
}
