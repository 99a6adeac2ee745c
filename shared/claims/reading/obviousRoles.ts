import { type Item, isWord, keyOf, meaningOf } from './items.ts';
import { plays } from './parts.ts';
import { settleScaleParts } from './scaleParts.ts';

const namePrefixes = new Set([
  'fig',
  'figure',
  'figures',
  'table',
  'chapter',
  'page',
  'section',
  'version',
  'firmware',
  'part',
  'no',
  'number',
  'issue',
  'channel',
  'episode',
  'season',
  'volume',
  'note',
  'appendix',
  'item',
  'question',
  'bluetooth',
  'wi-fi',
  'fi',
  'usb',
  'android',
  'series',
  'generation',
  'dolby',
  'class',
  'type',
  'iso',
  'ciede',
  'cie',
  'st',
  'itu',
  'delta',
  'port',
  'input',
  'socket',
  'paragraph',
  'plate',
  'chart',
  'plot',
  'graph',
  'row',
  'line',
  'column',
  'annex',
  'annexe',
  'page',
  'pages',
  'numbered',
  'room',
  'platform',
  'flat',
  'gate',
  'bus',
  'route',
  'seat',
  'stage',
  'track',
  'lesson',
  'act',
  'scene',
  'build',
  'revision',
]);
const yearPrefixes = new Set([
  'in',
  'since',
  'during',
  'of',
  'by',
  'from',
  'late',
  'early',
  'mid',
  'until',
  'spring',
  'summer',
  'autumn',
  'winter',
  'year',
  'through',
  'before',
  'after',
  'for',
  'the',
  'a',
  'its',
  'last',
]);

function isDigits(item: Item | undefined): boolean {
  return item?.number !== undefined && item.number.dimension === '' && /^\d{3,}$/.test(item.text);
}

/** Numbers that are no measurements by where they stand: dates, years, times, figure numbers, names. */
export function settleObviousRoles(items: Item[]): void {
  settleScaleParts(items);
  for (const item of items) {
    const number = item.number;
    if (!number || number.role) continue;
    const before = items[item.index - 1];
    const after = items[item.index + 1];
    const bare = number.dimension === '' && number.outOf === undefined;
    // "(k = 2)", "(n = 3)": of how the number was made. "1080p/60"
    const ofMethod =
      (isWord(before, '=') && isWord(items[item.index - 2], 'k', 'n')) ||
      (isWord(before, '/') && before!.glued && isWord(items[item.index - 2], 'p'));
    if (bare && (ofMethod || (after?.glued && isWord(after, 'p', 'fps', 'point')))) {
      number.role = 'ignored';
      continue;
    }
    if (number.x === 24 && number.outOf === 7) {
      number.role = 'ignored';
      continue;
    }
    // "two-point"
    if (
      number.spelled &&
      /^(?:points?)$/.test(number.unit) &&
      items[item.index + 1]?.type === 'word' &&
      /^\w+(?:-| )point$/.test(item.text)
    ) {
      number.role = 'ignored';
      continue;
    }
    // "Too low for a 2.4 power law": what is aimed at.
    const isAim = isWord(before, 'a') && isWord(items[item.index - 2], 'for', 'than', 'of');
    if (bare && isAim && isWord(after, 'power law', 'power curve', 'power function')) {
      number.role = 'ignored';
      continue;
    }
    // "A brooding one": a word that stands for a noun.
    if (
      bare &&
      item.text === 'one' &&
      before?.type === 'word' &&
      isWord(items[item.index - 2], 'a', 'an', 'the') &&
      (after === undefined || after.type === 'mark')
    ) {
      number.role = 'ignored';
      continue;
    }
    // "a quarter past nine"
    if (
      bare &&
      isWord(before, 'past', 'to') &&
      /^(?:a )?(?:quarter|half)$/.test(items[item.index - 2]?.text ?? '')
    ) {
      number.role = 'time';
      items[item.index - 2]!.meanings = [];
      continue;
    }
    // Telephone and serial numbers: a leading zero, several numbers in a row, or a call to ring.
    if (
      bare &&
      !number.spelled &&
      (/^0\d{2,}$/.test(item.text) ||
        /^\d{3}\D+0\d+$/.test(item.text) ||
        (/^\d{3,}$/.test(item.text) && (isDigits(before) || isDigits(after))) ||
        (/^\d{3,}/.test(item.text) &&
          items.some((entry) => isWord(entry, 'ring', 'phone', 'dial', 'telephone', 'extension'))))
    ) {
      number.role = 'ignored';
      continue;
    }
    // "a 4–3 win", "it ended 2–1": the score of a match.
    if (
      bare &&
      number.to !== undefined &&
      number.x < 20 &&
      items.some((entry) =>
        /^(?:win|won|wins|lost|loss|draw|drew|victory|defeat|beat|score|goals?|match|matches|game|football|cup|league|final|ended|finished|penalties|set piece)$/.test(
          entry.text,
        ),
      ) &&
      !items.some((entry) => keyOf(entry, 'concept') !== undefined)
    ) {
      number.role = 'ignored';
      continue;
    }
    // "Call between 9 and 5", "who is 81", "the best year was 2019"
    const hours =
      bare &&
      number.rangeWord === 'between' &&
      number.x <= 24 &&
      items.some((entry) => isWord(entry, 'call', 'ring', 'open', 'office', 'shop', 'phone'));
    const age =
      bare &&
      ((isWord(before, 'is', 'was') && isWord(items[item.index - 2], 'who')) ||
        isWord(before, 'turns', 'turned', 'aged'));
    const year =
      bare &&
      /^(?:19|20)\d\d$/.test(item.text) &&
      isWord(before, 'is', 'was') &&
      isWord(items[item.index - 2], 'year');
    if (hours || age || year) {
      number.role = 'ignored';
      continue;
    }
    // "The worst of the 24": how many there are; so many patches has only the chart.
    if (bare && Number.isInteger(number.x) && isWholeOf(items, item)) {
      number.role = 'ignored';
      if (number.x === 24 && !isWord(after, 'levels', 'steps'))
        item.meanings = [{ kind: 'concept', key: 'chartError' }];
      continue;
    }
    // "ten past seven"
    if (bare && isWord(after, 'past') && items[item.index + 2]?.number?.dimension === '' && number.x <= 30) {
      number.role = 'time';
      items[item.index + 2]!.number!.role = 'time';
      continue;
    }
    if (bare && isWord(before, 'hdmi') && number.place < 1) {
      number.role = 'name';
      continue;
    }
    // "a lag of 0.0124 seconds"
    if (
      number.dimension === 'duration' &&
      Math.abs(number.x * number.factor) < 1 &&
      items.some((entry) => ['lag', 'response'].includes(keyOf(entry, 'concept') ?? ''))
    ) {
      number.dimension = 'time';
      number.unit = 'ms';
      number.factor *= 1000;
      continue;
    }
    if (
      bare &&
      (keyOf(before, 'month') ||
        // "On 22 and 23 September"
        (isWord(after, 'and') &&
          items[item.index + 2]?.number?.dimension === '' &&
          keyOf(items[item.index + 3], 'month')) ||
        (keyOf(after, 'month') && after!.capital) ||
        (isWord(after, 'of') && items[item.index + 2]?.capital && keyOf(items[item.index + 2], 'month')))
    )
      number.role = 'date';
    else if (bare && isWord(after, 'am', 'pm', 'a.m', 'p.m', "o'clock", 'a.m.', 'p.m.')) number.role = 'time';
    else if (
      bare &&
      !number.spelled &&
      Number.isInteger(number.x) &&
      number.x >=
        (isWord(
          before,
          'in',
          'since',
          'from',
          'until',
          'during',
          'of',
          'summer',
          'spring',
          'autumn',
          'winter',
        )
          ? 1850
          : 1990) &&
      number.x <= 2060 &&
      number.place === 1 &&
      !item.text.includes(',') &&
      (item.index === 0 ||
        (before !== undefined && yearPrefixes.has(before.text)) ||
        before?.number?.role === 'date' ||
        isWord(before, ',', '('))
    )
      number.role = 'year';
    else if (
      bare &&
      before &&
      (namePrefixes.has(before.text) ||
        (isWord(before, '.') && namePrefixes.has(items[item.index - 2]?.text ?? '')))
    )
      number.role = 'name';
    else if (
      bare &&
      !number.spelled &&
      before?.type === 'word' &&
      before.capital &&
      before.index > 0 &&
      before.meanings.length === 0 &&
      Number.isInteger(number.x) &&
      !isWord(before, 'i')
    )
      number.role = 'name';
    else if (number.dimension === 'hours' || number.dimension === 'calendar' || number.dimension === 'other')
      number.role = number.dimension === 'other' ? 'value' : 'ignored';
    else if (number.dimension === 'illuminance') number.role = 'lux';
    else if (number.dimension === 'duration') number.role = 'seconds';
    else if (number.dimension === 'inch') number.role = 'size';
    else if (number.unit === 'GBP' && isWeight(items, item) && !isPriceGap(after)) {
      number.dimension = 'mass';
      number.unit = 'kg';
      number.factor *= kilogramsPerPound;
    } else if (number.dimension === 'money') number.role = 'money';
    if (bare && isWord(after, 'and', 'or', ',', 'to') && items[item.index + 2]?.number?.dimension === 'inch')
      number.role = 'size';
  }
}

/** "The worst of the 24 is 3.9", "one of all eleven steps": a count behind what is a part of it. */
function isWholeOf(items: readonly Item[], { index, number }: Item): boolean {
  const after = items[index + 1];
  // "The lowest of the five." may be sets; twenty-four are the patches of the chart.
  const ends = after === undefined || after.type === 'mark';
  // "Red is the worst of the six, at 4.6": six of what, the sentence says no more than of which hue.
  const ofHues = [3, 6].includes(number?.x ?? 0) && items.some((item) => keyOf(item, 'hue') !== undefined);
  const closes = ends ? number?.x === 24 || ofHues : keyOf(after, 'verb') !== undefined;
  if (!closes && !plays(after, 'levels') && !plays(after, 'colouring')) return false;
  let at = index - 1;
  while (isWord(items[at], 'the', 'all', 'its', 'these', 'our')) at -= 1;
  if (!isWord(items[at], 'of', 'of the', 'out of')) return false;
  const part = items[at - 1];
  if (part === undefined) return plays(after, 'levels');
  return ['average', 'max', 'min'].includes(keyOf(part, 'stat') ?? '') || part?.number?.dimension === '';
}

/** International pound avoirdupois, exact (1959 agreement; from memory). */
const kilogramsPerPound = 0.45359237;

/** "200 pounds dearer" */
function isPriceGap(after: Item | undefined): boolean {
  return conceptCompared(after) === 'price';
}

function conceptCompared(item: Item | undefined): string | undefined {
  const compared = item && (meaningOf(item, 'comparative') ?? meaningOf(item, 'superlative'))?.data;
  return (compared as { concept: string } | undefined)?.concept;
}

/** "It weighs 49.4 pounds": no money where the sentence speaks of weight and no price. */
function isWeight(items: readonly Item[], { text }: Item): boolean {
  return (
    /pounds?$/.test(text) &&
    items.some((item) => keyOf(item, 'fact') === 'weight' || conceptCompared(item) === 'fact:weight') &&
    !items.some((item) => keyOf(item, 'concept') === 'price' || keyOf(item, 'verb') === 'cost')
  );
}
