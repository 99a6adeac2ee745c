import { type Item, isWord, keyOf } from './items.ts';

/** A stretch or a place of a series' axis that words name. */
export interface AxisSpan {
  kind: 'stimulus' | 'angle';
  at?: number;
  from?: number;
  to?: number;
  fromIncluded: boolean;
  toIncluded: boolean;
  /** "until 60 %": nothing is asked of 60 % itself and above */
  free?: boolean;
  items: Item[];
  /** Could also be the value of a percentage quantity */
  doubtful?: boolean;
  /** Named by a tone word ("highlights") rather than by numbers */
  tone?: boolean;
}

const upwards = [
  'upwards',
  'upward',
  'up',
  'on',
  'onwards',
  'onward',
  'and above',
  'and up',
  'and higher',
  'and beyond',
  'or higher',
  'or more',
  'or above',
];
const axisNouns = new Set([
  'stimulus',
  'signal',
  'level',
  'levels',
  'step',
  'steps',
  'input',
  'ire',
  'stimuli',
  'saturation',
  'amplitude',
  'point',
  'points',
  'drive',
  'grey',
  'greys',
  'video',
  'mark',
  'intensity',
]);
const windowNouns = new Set([
  'window',
  'windows',
  'patch',
  'patches',
  'box',
  'apl',
  'windowed',
  'windowbox',
  'rectangle',
  'highlight',
  'highlights',
]);

/** The sizes of a patch that are measured, in % of the screen (common practice, no source). */
const patchSizes = new Set([1, 2, 3, 4, 5, 10, 18, 20, 25, 50, 75, 100]);

function textAfter(items: readonly Item[], at: number, words: number): string {
  let text = '';
  for (let index = at; index < Math.min(items.length, at + words); index += 1)
    text += (text ? ' ' : '') + items[index]!.text;
  return text;
}

/** Is this number followed by a word for a patch or a share of the screen? */
export function isWindow(items: readonly Item[], at: number): boolean {
  const after = items[at + 1];
  if (after && windowNouns.has(after.text)) return true;
  // "A window of two per cent"
  if (isWord(items[at - 1], 'of') && isWord(items[at - 2], 'window', 'patch', 'box')) return true;
  // "Shrink the window to 2 %"
  if (
    isWord(items[at - 1], 'to') &&
    isWord(items[at - 2], 'window', 'patch', 'box') &&
    items
      .slice(0, at)
      .some((item) => isWord(item, 'shrink', 'narrow', 'reduce', 'cut', 'widen', 'grow', 'enlarge', 'open'))
  )
    return true;
  // "97 % of its 10 % peak"
  if (
    isWord(after, 'peak') &&
    items[at]!.number?.dimension === 'percent' &&
    patchSizes.has(items[at]!.number!.x) &&
    isWord(items[at - 1], 'its', 'the', 'their')
  )
    return true;
  // "567 in a 10 % window, 434 in a 25 % one"
  if (
    isWord(after, 'one') &&
    isWord(items[at - 1], 'a', 'the') &&
    items[at]!.number?.dimension === 'percent' &&
    items.slice(0, at).some((item) => isWord(item, 'window', 'patch', 'box'))
  )
    return true;
  // "742 in a 1 % window, 700 in one of 10 %"
  if (
    isWord(items[at - 1], 'of') &&
    isWord(items[at - 2], 'one') &&
    isWord(items[at - 3], 'in', 'on') &&
    items.slice(0, at).some(({ number }) => number?.role === 'window')
  )
    return true;
  if (
    after &&
    (isWord(after, 'white', 'sized', 'size', 'test', 'apl') || keyOf(after, 'hue')) &&
    windowNouns.has(items[at + 2]?.text ?? '')
  )
    return true;
  const following = textAfter(items, at + 1, 4);
  return /^of (?:the |its )?(?:screen|screen's|panel|picture|image|area)\b/.test(following);
}

/** "80 per cent of full brightness", "of maximum signal": a place on the scale. */
function isOfFull(items: readonly Item[], at: number): boolean {
  const [of, full, noun] = items.slice(at, at + 3);
  const words = `${full?.text ?? ''} ${noun?.text ?? ''}`;
  return (
    isWord(of, 'of') && /^(?:full|maximum) (?:brightness|signal|drive|scale|luminance|stimulus)\b/.test(words)
  );
}

/** "P3 is covered to 93.5 %", "P3 is at 99.8 %", "follows PQ within 10 %": how far, not where. */
function statesValue(items: readonly Item[], left: number): boolean {
  const before = items[left];
  const second = items[left - 1];
  if (isWord(before, 'to'))
    return (
      ['cover', 'rise', 'fall'].includes(keyOf(second, 'verb') ?? '') ||
      isWord(second, 'sunk', 'sinks', 'shrunk')
    );
  // "The Plain covers more of P3; the Umbra stops at 86.3 %"
  const stops = isWord(second, 'stops', 'ends', 'peaks', 'tops', 'finishes', 'gives up at');
  const ofGamut = items.slice(0, left).some((item) => keyOf(item, 'gamut') !== undefined);
  const isExact = (items[left + 1]?.number?.place ?? 1) < 1;
  // "The uniformity of the white field remained at 13 %"
  const stays = keyOf(second, 'verb') === 'stay';
  if (
    isWord(before, 'at') &&
    stays &&
    items.slice(0, left).some((item) => keyOf(item, 'concept') === 'uniformity')
  )
    return true;
  if (isWord(before, 'at') && stops && (ofGamut || isExact)) return true;
  if (isWord(before, 'at'))
    return (
      [second, items[left - 2]].some((item) => keyOf(item, 'gamut') !== undefined) &&
      !items.some((item) => ![undefined, 'coverage', 'area'].includes(keyOf(item, 'concept')))
    );
  // "P3 coverage is over 99 %"
  if (keyOf(before, 'comparator') !== undefined && isWord(second, 'is', 'was', 'stays'))
    return items.slice(0, left).some((item) => keyOf(item, 'concept') === 'coverage' || keyOf(item, 'gamut'));
  return isWord(before, 'within');
}

/**
 * Reads the axis phrase around the number at `at`, or null when the number is none.
 * `force` reads "above 60" as an axis where only that makes sense.
 */
export function axisPhrase(items: readonly Item[], at: number): AxisSpan | null {
  const item = items[at]!;
  const number = item.number!;
  const percent = number.dimension === 'percent';
  const degrees = number.dimension === 'angle';
  const bare = number.dimension === '';
  if ((!percent && !degrees && !bare) || number.x < 0) return null;
  let left = at - 1;
  while (
    left >= 0 &&
    (isWord(items[left], 'the', 'a', 'an', 'just', 'only') ||
      (keyOf(items[left], 'hedge') === 'about' && !keyOf(items[left], 'comparator')))
  )
    left -= 1;
  // "Until you reach 60 %", "before we get to 60 %": the same as until 60 %.
  if (
    isWord(items[left - 1], 'you', 'we', 'it', 'one', 'they') &&
    isWord(items[left - 2], 'until', 'till', 'before') &&
    ['reach', 'exceed'].includes(keyOf(items[left], 'verb') ?? '')
  )
    left -= 2;
  let noun = number.onScale === true;
  // "At a signal level of 20 %": the noun stands before.
  if (percent && isWord(items[left], 'of') && axisNouns.has(items[left - 1]?.text ?? '')) {
    let lead = left - 1;
    while (axisNouns.has(items[lead]?.text ?? '') || isWord(items[lead], 'a', 'an', 'the')) lead -= 1;
    if (isWord(items[lead], 'at', 'from', 'until', 'below', 'above') || keyOf(items[lead], 'comparator')) {
      left = lead;
      noun = true;
    }
  }
  const before = items[left];
  let right = at + 1;
  while (
    right < items.length &&
    (axisNouns.has(items[right]!.text) ||
      (isWord(items[right], 'of') && isWord(items[right + 1], 'the', 'signal', 'stimulus', 'range')) ||
      isOfFull(items, right) ||
      (noun && isWord(items[right], 'the', 'range', 'of')))
  ) {
    // "60 % of the white signal" is rare; "98 % of P3" must stay a value.
    if (
      isWord(items[right], 'of') &&
      !isOfFull(items, right) &&
      !isWord(items[right + 1], 'signal', 'stimulus', 'range') &&
      !isWord(items[right + 2], 'signal', 'stimulus', 'range', 'scale')
    )
      break;
    noun = true;
    right += 1;
  }
  const degreesWord = degrees && items[right] && isWord(items[right], 'off', 'away', 'to', 'from', 'either');
  const after = items[right];
  // "Under 3 at 40 % and over it at 70 %": what follows is a limit of its own.
  const isOwnLimit =
    isWord(items[right + 2], 'it', 'that', 'this', 'them') || items[right + 2]?.number !== undefined;
  const after2 = isOwnLimit ? '' : textAfter(items, right, 2);
  const kind = degrees ? 'angle' : 'stimulus';
  const used = (from: number, to: number) => items.slice(Math.max(0, from), to);
  const span = (more: Partial<AxisSpan>, from: number, to: number, doubtful = false): AxisSpan => ({
    kind,
    fromIncluded: true,
    toIncluded: true,
    ...more,
    items: used(from, to),
    ...(doubtful && { doubtful }),
  });
  // "At 2.25 on the Umbra": no level has a fraction and no unit.
  if (bare && (noun || !Number.isInteger(number.x))) return null;
  if (percent && !noun && statesValue(items, left)) return null;
  if (!noun && isWord(after, 'of') && !degrees) return null;
  const x = number.x;
  // "Sit 45 degrees to one side": a side, and no second number.
  if (degrees && number.to?.x === 1 && isWord(items[at + 1], 'side')) number.to = undefined;
  if (number.to) {
    const isAxisRange =
      isWord(before, 'between', 'from', 'in', 'at', 'over', 'across', 'for', 'within') || noun;
    if (!isAxisRange) return null;
    // "Between 2 and 2.3": nor here.
    if (bare && !Number.isInteger(number.to.x)) return null;
    const doubtful = !noun && !isWord(before, 'at', 'in') && !degrees;
    return span({ from: Math.min(x, number.to.x), to: Math.max(x, number.to.x) }, left, right, doubtful);
  }
  // "96.4 % on the Plain": of a set.
  const ofSet =
    isWord(after, 'on') &&
    !isWord(before, 'from') &&
    items
      .slice(right + 1, right + 3)
      .some(
        (item) => (keyOf(item, 'unit') ?? keyOf(item, 'maker')) !== undefined || isWord(item, 'this', 'one'),
      );
  const goesUp = !ofSet && ((after && upwards.includes(after.text)) || upwards.includes(after2));
  const upLength = after && upwards.includes(after.text) ? 1 : 2;
  if (
    goesUp &&
    (percent || degrees || isWord(before, 'from', 'at')) &&
    !(
      keyOf(after, 'trailing') &&
      !isWord(before, 'from', 'at') &&
      !noun &&
      !degrees &&
      !isWord(after, 'and above', 'and up')
    )
  )
    return span(
      { from: x },
      isWord(before, 'from', 'at', 'starting') || keyOf(before, 'comparator') ? left : at,
      right + upLength,
    );
  if (
    /^(?:and|or) (?:below|under|lower|down|less|beneath|darker)$/.test(after2) ||
    isWord(after, 'downwards', 'or below', 'or under', 'or less', 'and below')
  )
    return span(
      { to: x },
      isWord(before, 'from', 'at') ? left : at,
      right +
        (after2.startsWith('and') || after2.startsWith('or ')
          ? isWord(after, 'downwards', 'or below', 'or under', 'or less', 'and below')
            ? 1
            : 2
          : 1),
      keyOf(after, 'trailing') !== undefined && !isWord(before, 'from', 'at'),
    );
  if (/^(?:and|or) (?:above|over|up|brighter|beyond)$/.test(after2))
    return span({ from: x }, isWord(before, 'from', 'at') ? left : at, right + 2);
  if (isWord(before, 'until', 'till', 'before'))
    return span({ to: x, toIncluded: false, free: true }, left, right);
  if (
    isWord(before, 'from') &&
    isWord(
      items[left - 1],
      'viewed',
      'seen',
      'watched',
      'looking',
      'looked',
      'sitting',
      'sat',
      'watching',
      'view',
    )
  )
    return span({ at: x }, left, right);
  if (isWord(before, 'from', 'starting')) {
    const comparator = keyOf(items[right], 'comparator');
    if (comparator === undefined || !isWord(items[right], 'up to'))
      return span({ from: x }, left, right, !noun && !degrees);
  }
  // "By 60 degrees three quarters is gone" opens the sentence; "off by 4°" is a value.
  const opens = degrees && (left === 0 || items[left - 1]?.type === 'mark');
  // "And by 80 % it stands at 5.2": where, for what follows says how much.
  const leadsOn =
    percent &&
    (left === 0 || items[left - 1]?.type === 'mark' || isWord(items[left - 1], 'and', 'but')) &&
    (keyOf(after, 'pronoun') === 'it' || isWord(after, "you're", 'you', "we're", 'we'));
  // "Half the light has gone by 45 degrees"
  const isLostBy =
    degrees && items.slice(0, at).some((item) => ['lose', 'keep'].includes(keyOf(item, 'verb') ?? ''));
  // "Full white ends at 8.0"
  if (
    bare &&
    isWord(before, 'at') &&
    isWord(items[left - 1], 'ends', 'finishes', 'lands', 'stops', 'starts', 'looking')
  )
    return null;
  if (isWord(before, 'at', 'by'))
    return isWord(before, 'by') && !noun && !opens && !leadsOn && !isLostBy
      ? null
      : span({ at: x }, left, right, bare);
  const comparator = keyOf(before, 'comparator');
  // "Never misses its target by more than 3 %": how far, not where.
  if (comparator !== undefined && percent && !noun && isWord(items[left - 1], 'by')) return null;
  // "Never wanders more than 3 % from BT.1886": how far, too.
  if (
    comparator !== undefined &&
    percent &&
    !noun &&
    /^(?:wander|stray|deviat|drift|depart|differ|swerv)/.test(items[left - 1]?.text ?? '')
  )
    return null;
  // "With no error above 4 %"
  if (
    comparator === '>' &&
    percent &&
    !noun &&
    keyOf(items[left - 1], 'concept') &&
    isWord(items[left - 2], 'no')
  )
    return null;
  // "Without losing more than 2 %"
  if (comparator !== undefined && isWord(items[left - 1], 'losing', 'lose')) return null;
  const bothWays = !noun && !degreesWord && !degrees;
  if (comparator === '>' || comparator === '>>' || isWord(before, 'past', 'after')) {
    if (bare && !noun) return null;
    return span({ from: x, fromIncluded: false }, left, right, bothWays);
  }
  if (comparator === '<' || comparator === '<<') {
    if (bare && !noun) return null;
    return span({ to: x, toIncluded: false }, left, right, bothWays);
  }
  if (comparator === 'upTo' || isWord(before, 'to', 'through', 'within', 'inside')) {
    if (bare && !noun) return null;
    return span({ to: x }, left, right, bothWays);
  }
  if (isWord(before, 'up to and including')) return span({ to: x }, left, right);
  if (comparator === '<=' && (noun || degrees)) return span({ to: x }, left, right);
  if (comparator === '>=' && (noun || degrees)) return span({ from: x }, left, right);
  if (noun || degrees) {
    if (isWord(before, 'on', 'in', 'for')) return span({ at: x }, left, right);
    return span({ at: x }, at, right);
  }
  return null;
}
