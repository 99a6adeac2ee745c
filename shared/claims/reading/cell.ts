import { type Item, isOneOf, isWord, keyOf } from './items.ts';
import { plays } from './parts.ts';
import type { Scene } from './scene.ts';
import { type Subject, settled } from './settled.ts';

/** Parts of the screen that a cell of the grid stands for. */
export const placeNouns = ['corner', 'corners', 'edge', 'edges', 'side', 'border', 'borders'] as const;

/** "White falls off by 25 % towards the edges": the spread over the whole grid. */
export function spreadOf(scene: Scene): Subject | undefined {
  const edge = scene.items.find(
    (item, at) =>
      isWord(item, 'edges', 'corners', 'sides', 'borders') &&
      scene.items
        .slice(Math.max(0, at - 3), at)
        .some((before) => isWord(before, 'towards', 'toward', 'to', 'into', 'at')),
  );
  const varies = scene.items.find((item) =>
    /^(?:var(?:y|ies|ied)|differs?|deviates?|fluctuates?|strays?)$/.test(item.text),
  );
  const across = scene.items.some(
    (item, at) =>
      isWord(item, 'across', 'over', 'around') &&
      scene.items
        .slice(at + 1, at + 5)
        .some((next) => isWord(next, 'screen', 'the screen', 'panel', 'the panel', 'field')),
  );
  // "Across a white field it loses 6 %", "a white field varies by 6 %"
  const field = scene.items.find(
    (item, at) =>
      keyOf(item, 'level') !== undefined &&
      (isWord(scene.items[at + 1], 'field', 'fields') || / (?:fields?|screens?)$/.test(item.text)),
  );
  const acrossField =
    field !== undefined &&
    scene.items.some((item) => item.index < field.index && isWord(item, 'across', 'over', 'around'));
  const brightest = brightestSpot(scene.items);
  const even = scene.items.find(
    (item, at) =>
      isWord(item, 'uniform', 'even') &&
      scene.items.slice(at + 1, at + 3).some((next) => keyOf(next, 'comparator') ?? isWord(next, 'within')),
  );
  // "A white screen is 10.7 % uneven"
  const uneven = scene.items.find(
    (item, at) => isWord(item, 'uneven') && scene.items[at - 1]?.number?.dimension === 'percent',
  );
  const lit = uneven && scene.items.find((item) => keyOf(item, 'level') ?? keyOf(item, 'fullScreen'));
  if (uneven && lit)
    return settled(`uniformity.${scene.conditions.level ?? 'white'}`, 'uniformity', [lit, uneven]);
  if (even) return settled(`uniformity.${scene.conditions.level ?? 'white'}`, 'uniformity', [even]);
  // "A white screen varies by 14 %"
  const white = scene.items.find(
    (item, at) =>
      / white screen$|^full white$/.test(item.text) ||
      (isWord(item, 'white', 'grey') &&
        isWord(scene.items[at + 1], 'screen', 'screens', 'fields', 'picture', 'image', 'raster')),
  );
  // "White varies by 13 %"
  const isWhite = varies !== undefined && isWord(scene.items[scene.items.indexOf(varies) - 1], 'white');
  if ((varies && (across || field || white || isWhite)) || brightest)
    return settled(`uniformity.${scene.conditions.level ?? 'white'}`, 'uniformity', [
      varies ?? brightest,
      ...(varies && field && field.index < varies.index ? [field] : []),
      ...(varies ? screenAcross(scene.items, varies) : []),
    ]);
  const falls = scene.items.some(
    (item) =>
      ['fall', 'lose'].includes(keyOf(item, 'verb') ?? '') || /^(?:fades?|darkens?|dims?)$/.test(item.text),
  );
  // "On mid-grey the falloff reaches 22 %"
  const falloff = scene.items.find((item) => /^(?:fall ?-?off|gap|shortfall|difference)$/.test(item.text));
  if (falloff && scene.conditions.level !== undefined)
    return settled(`uniformity.${scene.conditions.level}`, 'uniformity', [falloff]);
  // "A white field is down by 12 % at its worst"
  const isSubject =
    field !== undefined &&
    !scene.items.slice(0, scene.items.indexOf(field)).some((item) => keyOf(item, 'verb') !== undefined);
  // "A full white field is 14 % down at its worst spot"
  const filled = worstSpot(scene.items)
    ? scene.items.find((item) => keyOf(item, 'fullScreen') !== undefined)
    : undefined;
  // "On a white field the luminance falls by 13 % in the worst corner"
  const corner = scene.items.find(
    (item, at) =>
      isWord(item, 'corner', 'spot') && isWord(scene.items[at - 1], 'worst', 'darkest', 'dimmest'),
  );
  const place = (field && corner) ?? edge ?? (acrossField || isSubject ? field : undefined) ?? filled;
  if (!place || !falls) return undefined;
  return settled(`uniformity.${scene.conditions.level ?? 'white'}`, 'uniformity', [place]);
}

/** "Than the brightest spot": what the spread over the screen is measured from. */
export function brightestSpot(items: readonly Item[]): Item | undefined {
  return items.find(
    (item, at) =>
      /^brightest/.test(item.text) &&
      (isWord(items[at + 1], ...spots) ||
        // "Between its brightest and its darkest point"
        (isWord(items[at + 1], 'and') &&
          items.slice(at + 2, at + 5).some((word) => /^(?:darkest|dimmest)$/.test(word.text)) &&
          items.slice(at + 3, at + 7).some((word) => isWord(word, ...spots))) ||
        // "The dimmest patch is 8 % darker than the brightest"
        (isWord(items[at - 1], 'the') &&
          isWord(items[at - 2], 'than') &&
          items.some(
            (word, place) => /^(?:darkest|dimmest)$/.test(word.text) && isWord(items[place + 1], ...spots),
          ))),
  );
}

const spots = [
  'spot',
  'point',
  'part',
  'area',
  'cell',
  'patch',
  'place',
  'spots',
  'points',
  'parts',
  'areas',
];

/** "… varies by 4 % across the screen": the words of where, as far as the noun. */
function screenAcross(items: readonly Item[], varies: Item): Item[] {
  const at = items.findIndex((item) => item.index > varies.index && isWord(item, 'across', 'over'));
  const noun = items
    .slice(at + 1, at + 3)
    .find((item) => isWord(item, 'screen', 'the screen', 'panel', 'the panel'));
  return at >= 0 && noun ? [items[at]!, noun] : [];
}

/** "From its brightest patch to its dimmest": the other end of what varies over the screen. */
export function otherSpot(items: readonly Item[], item: Item): boolean {
  const brightest = brightestSpot(items);
  return brightest !== undefined && brightest.index < item.index && /^(?:darkest|dimmest)/.test(item.text);
}

/** "at its worst spot", "in the darkest corner" */
export function worstSpot(items: readonly Item[]): boolean {
  return items.some(
    (item, at) => /\b(?:worst|darkest|dimmest|weakest)$/.test(item.text) && plays(items[at + 1], 'spots'),
  );
}

/** "The bottom left corner is 31 % darker than the centre" speaks of one cell of the grid. */
export function cellOf(scene: Scene): Subject | undefined {
  if (brightestSpot(scene.items)) return undefined;
  const placed = scene.items.some((item) => isWord(item, 'top', 'bottom', 'upper', 'lower', 'left', 'right'));
  const corner = scene.items.find(
    (item, at) =>
      isOneOf(item, placeNouns) ||
      (placed && isWord(item, 'cell', 'zone', 'spot')) ||
      // "The bottom left loses 19 %"
      (isWord(item, 'left', 'right') &&
        isWord(scene.items[at - 1], 'top', 'bottom', 'upper', 'lower') &&
        keyOf(scene.items[at + 1], 'verb') === 'lose'),
  );
  if (
    !corner ||
    !scene.items.some(
      (item, at) =>
        (isWord(item, 'centre', 'middle') &&
          !scene.items
            .slice(at + 1, at + 4)
            .some((next) => isWord(next, 'sofa', 'couch', 'room', 'row', 'bench', 'seat', 'settee'))) ||
        /^(?:darker|dimmer|brighter)/.test(item.text) ||
        // "The bottom left corner loses 14 %", "the worst cell, bottom right: −14 %"
        (placed &&
          (keyOf(item, 'verb') === 'lose' || (item.number?.dimension === 'percent' && item.number.x < 0))) ||
        // "the top left corner is 14 % down"
        (isWord(item, 'down', 'short') && scene.items[at - 1]?.number?.dimension === 'percent'),
    )
  )
    return undefined;
  return settled(`uniformity.${scene.conditions.level ?? 'white'}.cell`, 'uniformity', [corner]);
}
