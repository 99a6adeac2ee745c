import { isWindow } from './axis.ts';
import { type Item, isOneOf, isWord, keyOf, meaningOf } from './items.ts';
import { meets, needBits, type Signs, signsOfItems } from './needs.ts';
import type { Scene } from './scene.ts';

const screenNouns = [
  'screen',
  'the screen',
  'panel',
  'the panel',
  'display',
  'the display',
  'picture',
  'field',
];

/** "With a tenth of the screen lit", "fill a quarter of the panel": words that make a share of the screen a patch. */
const litWords =
  /^(?:lit|white|filled|fill|fills|light|lights|light up|lights up|in white|with|over|across|on|for|covers|covering|bright|glowing)$/;

function isLight(item: Item | undefined): boolean {
  return item !== undefined && litWords.test(item.text);
}

/** Does the clause state an amount of light, with its unit or as a bare number that no noun follows? */
function statesLight(items: readonly Item[]): boolean {
  return items.some(
    ({ number }) =>
      number !== undefined &&
      number.role === undefined &&
      (number.dimension === 'luminance' ||
        (number.dimension === '' && number.x >= (number.spelled ? 100 : 20))),
  );
}

/**
 * The share of the screen, in %, that words at `at` name as a patch: "a tenth of the screen lit" (10), "half the
 * screen: 487" (50), "all of it: 306" (100). Undefined where they name none.
 */
function screenShareAt(items: readonly Item[], at: number): { percent: number; length: number } | undefined {
  const item = items[at]!;
  const share = meaningOf(item, 'multiple')?.data as { x: number } | undefined;
  if (share && share.x < 1) {
    const noun = items.slice(at + 1, at + 4).findIndex((word) => screenNouns.includes(word.text));
    if (
      noun < 0 ||
      items.slice(at + 1, at + 1 + noun).some((word) => !isWord(word, 'of', 'the', 'a', 'its', 'as'))
    )
      return undefined;
    const end = at + noun + 2;
    const patch =
      isLight(items[end]) ||
      isLight(items[end + 1]) ||
      isLight(items[at - 1]) ||
      isLight(items[at - 2]) ||
      items.length === noun + 2 ||
      isWord(items[end], ':') ||
      statesLight(items);
    return patch ? { percent: Math.round(share.x * 1000) / 10, length: noun + 2 } : undefined;
  }
  if (!isWord(item, 'all', 'all of', 'all of the', 'whole')) return undefined;
  const rest = items.slice(at + 1, at + 4);
  const noun = rest.findIndex((word) => screenNouns.includes(word.text) || isWord(word, 'it'));
  if (noun < 0 || !statesLight(items)) return undefined;
  if (rest.slice(0, noun).some((word) => !isWord(word, 'of', 'the'))) return undefined;
  const next = items[at + noun + 2];
  const patch =
    next === undefined ||
    next.type === 'mark' ||
    next.number ||
    isLight(next) ||
    isLight(items[at - 1]) ||
    keyOf(next, 'concept');
  return patch ? { percent: 100, length: noun + 2 } : undefined;
}

const filling: readonly string[] = ['fill', 'fills', 'filled', 'filling', 'cover', 'flood'];
const ofScreen = needBits([
  { kinds: ['multiple'], words: ['all', 'all of', 'all of the', 'whole', ...filling] },
]);

/** Makes each share of the screen one phrase for a patch, as "full screen" is one. */
export function settleScreenShares(items: readonly Item[], signs: Signs): undefined {
  if (!meets(signs, ofScreen)) return;
  for (let at = 0; at < items.length; at += 1) {
    const item = items[at]!;
    fillScreen(items, at);
    if (item.meanings.length === 0 && item.text !== 'whole') continue;
    const share = screenShareAt(items, at);
    if (!share) continue;
    for (const word of items.slice(at, at + share.length)) word.meanings = [];
    item.meanings = [{ kind: 'fullScreen', key: String(share.percent) }];
    // "With the whole screen white": how it is lit, and no word on white.
    const lit = items[at + share.length];
    if (isWord(lit, 'white')) lit!.meanings = [];
  }
}

/** "Fill the Plain's screen with white and 817 nits remain": the whole of it. */
function fillScreen(items: readonly Item[], at: number): undefined {
  const screen = items[at]!;
  const withWhite = isWord(items[at + 1], 'with') && isWord(items[at + 2], 'white');
  // "Fill the screen and the peak is 398 nits"
  const whole = items.slice(1, at).every((item) => isWord(item, 'the', 'its', "'s") || keyOf(item, 'unit'));
  const isAll = whole && isWord(items[at + 1], 'and', ',') && isWord(items[0], 'fill', 'flood');
  if (!isWord(screen, ...screenNouns) || !(withWhite || isAll)) return;
  const lead = items.slice(Math.max(0, at - 5), at);
  if (!lead.some((item) => isOneOf(item, filling))) return;
  screen.meanings = [{ kind: 'fullScreen', key: '100' }];
  if (withWhite) items[at + 2]!.meanings = [];
}

/** The patch that a phrase names, in % of the screen. */
export function patchOf(item: Item): number | undefined {
  const key = keyOf(item, 'fullScreen');
  return key === undefined ? undefined : Number(key) || 100;
}

/** "1,343 with a tenth of the screen lit, and 1,368 with one percent": after one patch another, without its noun. */
export function isSecondPatch(items: readonly Item[], at: number): boolean {
  const next = items[at + 1];
  const lit = isWord(next, 'lit', 'filled', 'of it', 'on screen');
  if (lit) return true;
  if (!isWord(items[at - 1], 'with', 'over', 'across', 'on', 'for', 'in')) return false;
  if (next !== undefined && next.type !== 'mark' && !isWord(next, 'and', 'but', 'then')) return false;
  return (
    statesLight(items) &&
    items.some((item, index) => index < at && (item.number?.role === 'window' || patchOf(item) !== undefined))
  );
}

/** The patch that a question asks for: "Whole screen?", "And with a tenth of it lit?" */
export function patchAsked(items: readonly Item[]): number | undefined {
  const asked = items.slice(0, -1);
  settleScreenShares(asked, signsOfItems(asked));
  for (let at = 0; at < items.length; at += 1) {
    const item = items[at]!;
    const patch =
      patchOf(item) ??
      (item.number?.dimension === 'percent' && isWindow(items, at) ? item.number.x : undefined);
    if (patch !== undefined) return patch;
  }
  return undefined;
}

/** "In a 10 % window you get 1,190, at 25 percent it's 706": the next window of a list, where nothing else is named. */
export function windowOfList(scene: Scene): Item | undefined {
  const before = scene.previous?.conditions;
  if (before?.window === undefined || before.origin.window === undefined) return sizeOfList(scene);
  if (
    scene.items.some((item) => item.number?.role === 'window' || keyOf(item, 'concept') || keyOf(item, 'hue'))
  )
    return undefined;
  const [axis] = scene.axes;
  const place = axis?.items.find(({ number }) => number?.dimension === 'percent');
  return axis?.at !== undefined && !axis.tone && scene.axes.length === 1 ? place : undefined;
}

/** "742 nits at 10 per cent, 640 at 25": behind an amount of light at a percentage the next with its own. */
function sizeOfList({ items, previous }: Scene): Item | undefined {
  const light = previous?.items.findIndex(({ number }) => number?.dimension === 'luminance') ?? -1;
  const size = previous?.items[light + 2];
  const isSize = size?.number?.dimension === 'percent' || size?.number?.role === 'window';
  if (light < 0 || !isWord(previous!.items[light + 1], 'at') || !isSize) return undefined;
  const words = items.filter(({ type }) => type !== 'mark');
  const [amount, at, place] = isWord(words[0], 'and') ? words.slice(1) : words;
  const isPlace = place?.number?.dimension === '' || place?.number?.dimension === 'percent';
  if (!amount?.number || !isWord(at, 'at') || !isPlace || amount.number.x < 20) return undefined;
  place!.number!.role = 'window';
  const { dimension, unit, factor } = previous!.items[light]!.number!;
  if (amount.number.dimension === '') Object.assign(amount.number, { dimension, unit, factor });
  return place;
}

/** Is it a patch that stands behind the other set of a comparison, "than the Kasulind in a 10 % window"? */
export function isPatchOfBoth(items: readonly Item[], at: number): boolean {
  if (items[at]!.number?.role !== 'window') return false;
  let left = at - 1;
  while (isWord(items[left], 'a', 'an', 'the', 'that', 'same')) left -= 1;
  return (
    isWord(items[left], 'in', 'at', 'on', 'with') &&
    (keyOf(items[left - 1], 'unit') ?? keyOf(items[left - 1], 'maker')) !== undefined
  );
}
