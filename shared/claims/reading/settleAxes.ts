import { type AxisSpan, axisPhrase, isWindow } from './axis.ts';
import { type Item, isWord, keyOf } from './items.ts';
import { isSecondPatch } from './screenShare.ts';

/** Sentence-wide: gives numbers their roles as axis, window or angle and collects the axis phrases. */
export function settleAxes(items: readonly Item[], angleTalk: boolean): AxisSpan[] {
  const spans: AxisSpan[] = [];
  for (let at = 0; at < items.length; at += 1) {
    const number = items[at]!.number;
    if (!number || number.state || (number.role && number.role !== 'value')) continue;
    if (
      number.dimension === 'percent' &&
      (isWindow(items, at) || isSecondPatch(items, at) || isResized(items, at))
    ) {
      number.role = 'window';
      // "At 50 % of the area it manages 705 nits": no gamut's area.
      for (const item of items.slice(Math.max(0, at - 3), at)) if (isWord(item, 'patch')) item.meanings = [];
      const area = items[at + 3];
      if (isWord(items[at + 1], 'of') && isWord(area, 'area')) area!.meanings = [];
      continue;
    }
    const bareAngle =
      number.dimension === '' &&
      (angleTalk || keepsLightAt(items, number.x)) &&
      Number.isInteger(number.x) &&
      number.x >= 5 &&
      number.x <= 89 &&
      (isWord(items[at - 1], 'at', 'from', 'beyond', 'past', 'by', 'until') ||
        // "all the way out to sixty"
        (isWord(items[at - 1], 'to') && isWord(items[at - 2], 'out', 'way')));
    if (bareAngle) number.dimension = 'angle';
    if (
      number.dimension === 'angle' &&
      items.some(
        (item) =>
          keyOf(item, 'concept') === 'hueError' ||
          (isWord(item, 'towards', 'toward') && items.some((other) => keyOf(other, 'hue'))),
      ) &&
      !items.some((item, index) => isWord(item, 'axis', 'centre') && isWord(items[index - 1], 'off'))
    )
      continue;
    const span = turnedUp(items, at) ?? axisPhrase(items, at);
    if (!span) continue;
    if (number.dimension === '' && !spans.length && span.doubtful) continue;
    const crowning = span.at !== undefined && isCrowning(items, items.indexOf(span.items[0]!));
    number.role = span.doubtful && !crowning ? 'axisOrValue' : 'axis';
    if (!crowning) spans.push(span);
  }
  return [...spans, ...spansBeside(items, spans), ...spansWhere(items, spans)];
}

/** "Crank it to a hundred and …": the saturation or the level that is set. */
function turnedUp(items: readonly Item[], at: number): AxisSpan | undefined {
  const { x, dimension } = items[at]!.number!;
  const left = isWord(items[at - 1], 'a') ? at - 2 : at - 1;
  const lead = items.slice(Math.max(0, left - 3), left);
  const verb = lead.find(({ text }) => /^(?:crank|push|drive|take|turn|bring|dial)$/.test(text));
  const isLevel = x <= 100 && (dimension === '' || dimension === 'percent');
  if (
    !verb ||
    !isLevel ||
    !isWord(items[left], 'to') ||
    !lead.some((item) => isWord(item, 'it', 'that', 'them'))
  )
    return undefined;
  return {
    kind: 'stimulus',
    at: x,
    fromIncluded: true,
    toIncluded: true,
    items: items.slice(verb.index, at + 1),
  };
}

/** "Shrink that to 2 %", "open the window to 50 %": another size of the patch. */
function isResized(items: readonly Item[], at: number): boolean {
  const verb = items
    .slice(Math.max(0, at - 4), at)
    .find(({ text }) => /^(?:shrink|narrow|open|widen|grow|enlarge|expand)(?:s|ed)?$/.test(text));
  const what = verb && items[verb.index + 1];
  return (
    isWord(items[at - 1], 'to') &&
    (isWord(what, 'that', 'it') || isWord(items[at - 2], 'window', 'patch', 'box')) &&
    what !== items[at - 1]
  );
}

/** "… up to 40 degrees, where half of it is left": what stands behind is said of the place where the stretch ends. */
function spansWhere(items: readonly Item[], spans: readonly AxisSpan[]): AxisSpan[] {
  if (spans.length === 0) return [];
  return items.flatMap((item, at) => {
    if (!isWord(item, 'where')) return [];
    const place = items[at - 1]?.type === 'mark' ? items[at - 2] : items[at - 1];
    const span = spans.find((entry) => !entry.tone && place !== undefined && entry.items.includes(place));
    const x = place?.number?.x;
    if (!span || x === undefined || ![span.at, span.from, span.to].includes(x)) return [];
    return [{ kind: span.kind, at: x, fromIncluded: true, toIncluded: true, items: [item] }];
  });
}

/** "It keeps more at forty-five": of light, and so from the side. */
function keepsLightAt(items: readonly Item[], x: number): boolean {
  return (
    [15, 30, 45, 60, 75].includes(x) &&
    items.some((item) => ['keep', 'lose'].includes(keyOf(item, 'verb') ?? '')) &&
    !items.some((item) => item.number?.role === 'window' || keyOf(item, 'hue') !== undefined)
  );
}

/** "… from 70 % upwards, whereas below that level …": a stretch that begins or ends where another was named. */
function spansBeside(items: readonly Item[], spans: readonly AxisSpan[]): AxisSpan[] {
  if (spans.length === 0) return [];
  return items.flatMap((item, at) => {
    const comparator = keyOf(item, 'comparator');
    const taken = items[at + 1]?.number !== undefined;
    const isBeside =
      (comparator === '<' || comparator === '>') && !taken && isWord(items[at + 1], 'that', 'this');
    const noun = isWord(items[at + 2], 'level', 'point', 'step', 'mark', 'stimulus') ? 1 : 0;
    const next = items[at + 2 + noun];
    const named = spans.findLast((span) => span.kind === 'stimulus' && span.items[0]!.index < item.index);
    const x = named?.at ?? named?.from ?? named?.to;
    if (!isBeside || x === undefined || (noun === 0 && next?.type === 'word' && next.meanings.length === 0))
      return [];
    const side = comparator === '<' ? { to: x, toIncluded: false } : { from: x, fromIncluded: false };
    const whole = { kind: 'stimulus' as const, fromIncluded: true, toIncluded: true };
    return [{ ...whole, ...side, items: items.slice(at, at + 2 + noun) }];
  });
}

/** "Never gets past 3, not even at 60 degrees": the last word on all places, and no choice of one. */
function isCrowning(items: readonly Item[], at: number): boolean {
  if (!isWord(items[at - 1], 'even')) return false;
  return items.slice(0, at - 1).some((item) => ['never', 'none', 'all'].includes(keyOf(item, 'stat') ?? ''));
}
