import type { Selector } from '../../contract/check.ts';
import { speaksOfAnyWindow } from './anyWindow.ts';
import type { AxisSpan } from './axis.ts';
import { placeNouns } from './cell.ts';
import { type Item, isOneOf, isWord, keyOf } from './items.ts';
import { isLoneLevel } from './loneLevel.ts';
import { shows } from './needs.ts';
import type { Quantity } from './quantity.ts';
import { nearestAxis, type Scene } from './scene.ts';

/** Where the corner lies, in words; the darkest or the corners in general: the lowest cell. */
export function cellSelector(scene: Scene): Selector {
  const place = scene.items.find((item) => isOneOf(item, placeNouns));
  const words = scene.items
    .filter(
      (item) =>
        isWord(item, 'top', 'bottom', 'upper', 'lower', 'left', 'right') &&
        (place === undefined || Math.abs(item.index - place.index) <= 5),
    )
    .map((item) => ({ upper: 'top', lower: 'bottom' })[item.text] ?? item.text);
  if (words.length > 0) return { stat: 'at', at: words.join(' ') };
  return { stat: scene.items.some((item) => /^brighter|^lighter/.test(item.text)) ? 'max' : 'min' };
}

/** "From 45 degrees it keeps 58 %": where the viewer sits; "from 45 degrees upwards" is a stretch. */
function isViewpoint(axis: AxisSpan): boolean {
  return (
    axis.kind === 'angle' &&
    axis.from !== undefined &&
    axis.to === undefined &&
    isWord(axis.items[0], 'from') &&
    !/(?:up|on|upwards?|onwards?|above|beyond|more|higher)$/.test(axis.items.at(-1)!.text)
  );
}

function isSeat({ conditions }: Scene, { to }: AxisSpan): boolean {
  return conditions.angle !== undefined && conditions.angle === to;
}

/** Which value(s) of the series the clause speaks of. */
export function selectorOf(scene: Scene, quantity: Quantity, use: 'value' | 'under' | 'over'): Selector {
  if (quantity.id.endsWith('.cell')) return cellSelector(scene);
  if (quantity.axis === null) return { stat: 'scalar' };
  const kind = quantity.axis === 'angle' ? 'angle' : 'stimulus';
  const ofWindows =
    quantity.axis === 'window' && scene.items.some((item) => isWord(item, 'windows', 'patches'));
  const isPlace = quantity.axis === 'patch' || (quantity.axis === 'window' && !ofWindows);
  const axis = isPlace ? undefined : nearestAxis(scene, kind);
  const range: Partial<Selector> = {};
  // "Move out to 60 degrees, and more than half is gone": at that seat.
  if (axis?.kind === 'angle' && axis.from === undefined && axis.to !== undefined && isSeat(scene, axis))
    return { stat: 'at', at: axis.to };
  if (use === 'value' && axis && isViewpoint(axis)) return { stat: 'at', at: axis.from! };
  // "It keeps half its light out to 45 degrees": so much is left where the stretch ends.
  const ends = use === 'value' && quantity.id.endsWith('.luminance') && axis?.kind === 'angle';
  if (ends && axis.from === undefined && axis.to !== undefined) return { stat: 'at', at: axis.to };
  if (axis && axis.at === undefined) {
    if (axis.from !== undefined) {
      range.from = axis.from;
      if (!axis.fromIncluded) range.fromIncluded = false;
    }
    if (axis.to !== undefined) {
      range.to = axis.to;
      if (!axis.toIncluded) range.toIncluded = false;
    }
  }
  if (quantity.axis === 'window') {
    const window = scene.conditions.window;
    // "742 nits at 10 %": with a peak the percentage is the window.
    const percent = nearestAxis(scene, 'stimulus');
    const at = window ?? (percent?.tone ? undefined : percent?.at);
    if (at !== undefined) return { stat: 'at', at };
    // "Tops 700 nits in windows up to 25 %": in every one of them.
    if (ofWindows && percent && !percent.tone && use !== 'value')
      return { stat: use === 'over' ? 'min' : 'max', ...range };
    return { stat: use === 'over' && bindsEveryWindow(scene, quantity) ? 'min' : 'max' };
  }
  if (axis?.at !== undefined) return { stat: 'at', at: axis.at };
  if (quantity.axis === 'angle' && scene.conditions.angle !== undefined)
    return { stat: 'at', at: scene.conditions.angle };
  const stat = statOf(scene);
  if (stat === 'average' || stat === 'max' || stat === 'min') return { stat, ...range };
  if (stat === 'all' || stat === 'none' || stat === 'never')
    return { stat: use === 'over' ? 'min' : 'max', ...range };
  if (stat === 'any') return { stat: use === 'over' ? 'max' : 'min', ...range };
  if (use === 'value' && quantity.better === 'lower' && isLoneLevel(scene.items))
    return { stat: 'max', ...range };
  // "The error is 2.4" may mean the average or the maximum: the checker asks.
  if (use === 'value' && quantity.signed) return { stat: 'average', ...range };
  if (use === 'value')
    return { stat: range.from === undefined && range.to === undefined ? 'scalar' : 'average', ...range };
  return { stat: use === 'under' ? 'max' : 'min', ...range };
}

/** "It never drops under 200 nits", "over 200 nits whatever the window": the dimmest window is meant. */
function bindsEveryWindow(scene: Scene, quantity: Quantity): boolean {
  if (speaksOfAnyWindow(scene.items)) return true;
  const fall = scene.items.find((item) => keyOf(item, 'verb') === 'fall');
  const denied = scene.items.some(
    (item) =>
      keyOf(item, 'negation') !== undefined || ['none', 'never', 'all'].includes(keyOf(item, 'stat') ?? ''),
  );
  return quantity.id === 'peak' && fall !== undefined && denied;
}

const bindingStats = new Set(['none', 'never', 'all', 'any']);
const namedStats = new Set(['average', 'max', 'min']);

/** "Peaks at", "bottoms out at": the verb names the maximum or the minimum. */
export function saysExtreme(item: Item): boolean {
  return keyOf(item, 'verb') === 'reach' && /^(?:peak|top|max|bottom)/.test(item.text);
}

/** "Nothing …, that's how averages work": a denial of all levels with a statement of its own before the statistic. */
function bindsBefore(scene: Scene, binding: Item, named: Item): boolean {
  return (
    keyOf(binding, 'stat') === 'none' &&
    scene.sentence.slice(binding.index, named.index).some((item) => isWord(item, ',', ';', '—', '–'))
  );
}

/** The statistic that the clause names, "any, no, never, all" after an average included. */
export function statOf(scene: Scene): string | undefined {
  let binding: Item | undefined;
  let named: Item | undefined;
  const isNamed = shows(scene.signs, 'stat');
  for (let at = isNamed ? 0 : scene.items.length; at < scene.items.length; at += 1) {
    const item = scene.items[at]!;
    const stat = keyOf(item, 'stat');
    if (stat === undefined) continue;
    // "The lowest average of the three": of the sets, not of the levels.
    if (stat !== 'average' && namedStats.has(stat) && keyOf(scene.items[at + 1], 'stat') === 'average')
      continue;
    // "No HDR10+, average error of 3.8", "no disaster: red averages 0.4": what is denied is no level.
    const next = scene.items[at + 1];
    if (stat === 'none' && isWord(next, 'disaster', 'surprise', 'worry', 'problem', 'trouble', 'wonder'))
      continue;
    if (
      stat === 'none' &&
      (keyOf(next, 'format') ?? keyOf(next, 'topic') ?? keyOf(next, 'fact')) !== undefined
    )
      continue;
    if (!binding && bindingStats.has(stat) && !scene.conditionItems.has(item)) binding = item;
    if (namedStats.has(stat) && !(keyOf(item, 'trailing') && scene.items[at - 1]?.number)) {
      named = item;
      break;
    }
  }
  // "Nothing should be visible, right, that's how averages work": what comes later says nothing of the levels.
  if (named && !(binding && bindsBefore(scene, binding, named))) return keyOf(named, 'stat');
  if (binding) return keyOf(binding, 'stat');
  const hasConcept =
    shows(scene.signs, 'concept') && scene.items.some((item) => keyOf(item, 'concept') !== undefined);
  const peaking = shows(scene.signs, 'verb') ? scene.items.find(saysExtreme) : undefined;
  if (peaking && !(hasConcept && scene.items.some((item) => keyOf(item, 'concept') === 'peak')))
    return peaking.text.startsWith('bottom') ? 'min' : 'max';
  // "The error averages 3.3 and reaches 6.2": how far it goes.
  const first = scene.items.find(({ type, text }) => type !== 'mark' && text !== 'and' && text !== 'but');
  if (keyOf(first, 'verb') === 'reach' && /^(?:reach|climbs? to|rises? to|goes? up to)/.test(first!.text))
    if (scene.previous?.stat === 'average' && !hasConcept) return 'max';
  const refersBack = !hasConcept && scene.items.some((item) => isWord(item, 'it', 'this', 'that'));
  // "Red errors average 0.4, and blue ones stay under 3": all of the blue ones.
  const ofOthers = scene.items.some(
    (item, at) => isWord(item, 'ones') && keyOf(scene.items[at - 1], 'hue') !== undefined,
  );
  if (ofOthers) return undefined;
  if (scene.previous && !hasConcept) return scene.previous.stat;
  // "Maximum? 3.8."
  const isAnswer =
    scene.index === 0 && scene.sentence.filter(({ type }) => type !== 'mark').every(({ number }) => number);
  return refersBack || isAnswer ? scene.carry.stat : undefined;
}
