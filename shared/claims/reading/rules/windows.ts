import type { Operand, StatedNumber } from '../../../contract/check.ts';
import { worstSpot } from '../cell.ts';
import { type Findings, propose } from '../finding.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { conditionsFor, operandOf } from '../operand.ts';
import { quantityById } from '../quantity.ts';
import type { Scene } from '../scene.ts';
import { patchOf } from '../screenShare.ts';
import { denialOf, hedgeBefore, limitOn, multipleAt, ratioStated } from './ratioNumber.ts';

/** The whole that a share is taken of: the peak, or a window that is named behind "of". */
function wholeOf(scene: Scene, share: Item): { window?: number; items: Item[] } | undefined {
  const at = scene.items.indexOf(share);
  const rest = scene.items.slice(at + 1, at + 9);
  const peak = rest.find(
    (item) => /^of (?:its|the|that) peak\b/.test(item.text) || keyOf(item, 'concept') === 'peak',
  );
  const second = rest.find((item) => item.number?.role === 'window');
  const of = / of(?: the)?$/.test(share.text) || isWord(rest[0], 'of', 'that', 'the') || rest[0] === peak;
  if (!of) return undefined;
  if (second) return { window: second.number!.x, items: [second] };
  return peak && { items: [peak] };
}

/**
 * Two windows of one run: "full-screen white manages 372 nits, exactly half of the peak", "a full white screen has a
 * third of the luminance of a 10 % window", and "full-screen white is dimmer by 7 %" than the peak.
 */
export function readWindowRatios(scene: Scene, findings: Findings): undefined {
  const own = scene.conditions.window;
  if (own === undefined || scene.units.some((mention) => mention.role !== 'subject')) return;
  if (
    scene.items.some(
      (item) => item.number?.role === 'seconds' || isWord(item, 'than', 'minutes', 'seconds', 'while'),
    )
  )
    return;
  // "A 10 % window holds 98 % of its peak": so too.
  const keeps = scene.items.some((item) => keyOf(item, 'verb') === 'keep');
  if (
    keeps &&
    own !== 100 &&
    !scene.items.some((item, at) => item.number?.role === 'window' && isWord(scene.items[at - 1], 'of'))
  )
    return;
  // "A full field holds 97 % of its peak": of what it began with, and no ratio of patches.
  const isOfField = scene.items.some(
    (item, at) => keyOf(item, 'verb') === 'keep' && keyOf(scene.items[at - 1], 'fullScreen') !== undefined,
  );
  if (
    isOfField &&
    scene.items.some((item) => keyOf(item, 'concept') === 'hold' && /^of its /.test(item.text))
  )
    return;
  // "Leave the patch alone and it hangs on to 92 % of its peak": what is left in time, and no ratio of patches.
  if (
    scene.items.some((item) => keyOf(item, 'verb') === 'keep') &&
    isWord(scene.sentence[0], 'leave', 'keep', 'hold', 'left', 'park')
  )
    return;
  // "A full white field is 14 % down at its worst spot": of how evenly it is lit.
  if (worstSpot(scene.items)) return;
  const multiple = multipleAt(scene);
  const number = scene.items.find(
    (item) =>
      (item.number?.dimension === 'percent' || item.number?.dimension === 'times') &&
      !scene.used.has(item) &&
      (item.number.role === undefined || item.number.role === 'value'),
  );
  const share = number ?? multiple?.item;
  if (!share || !speaksOfLight(scene)) return;
  const whole = wholeOf(scene, share);
  const dimmer = scene.items.find((item) => isWord(item, 'dimmer', 'darker', 'less bright', 'lower', 'down'));
  // "12 % brighter than the Plain in a 10 % window but 8 % dimmer full screen": than that set still.
  const besideOther = scene.previous?.units.some(({ role }) => role === 'compared') === true;
  const lessBy =
    !whole && !besideOther && dimmer && share.number?.dimension === 'percent' && own === 100
      ? dimmer
      : undefined;
  if (!whole && !lessBy) return;
  const before = isWord(scene.items[0], 'which', 'that') ? windowBefore(scene) : undefined;
  if (whole && before !== undefined && before !== own)
    return proposeRatio(scene, findings, share, whole, before, [], undefined);
  if (whole?.window !== undefined && scene.conditionItems.has(whole.items[0]!) && whole.window === own) {
    // Two windows in one clause: the first is the one that is spoken of.
    const first = scene.items.find((item) => item.number?.role === 'window' || keyOf(item, 'fullScreen'));
    if (!first || first === whole.items[0]) return;
    return proposeRatio(
      scene,
      findings,
      share,
      whole,
      first.number?.x ?? patchOf(first) ?? 100,
      [first],
      undefined,
    );
  }
  proposeRatio(scene, findings, share, whole ?? { items: [] }, own, [], lessBy);
}

/** "Full screen gives 569 nits, which is 57 % of the peak in the 10 % window": the patch of the value just stated. */
function windowBefore({ previous }: Scene): number | undefined {
  const said = previous?.said?.at(-1);
  const isPeak = said?.kind === 'value' && said.operand.type === 'quantity' && said.operand.id === 'peak';
  const at = isPeak && said.operand.type === 'quantity' ? said.operand.selector.at : undefined;
  return typeof at === 'number' ? at : undefined;
}

function proposeRatio(
  scene: Scene,
  findings: Findings,
  share: Item,
  whole: { window?: number; items: Item[] },
  window: number,
  words: Item[],
  lessBy: Item | undefined,
): undefined {
  const quantity = quantityById('peak');
  const base = conditionsFor(scene, quantity);
  const at = (percent: number | undefined): Operand => {
    const { window: _window, ...rest } = base;
    const { window: _origin, ...origin } = base.origin;
    if (percent === undefined) return operandOf(scene, quantity, { stat: 'max' }, { ...rest, origin });
    const conditions = { ...rest, window: percent, origin: { ...origin, window: 'named' as const } };
    return operandOf(scene, quantity, { stat: 'at', at: percent }, conditions);
  };
  const isNumber = share.number !== undefined;
  const multiple = isNumber ? undefined : multipleAt(scene);
  const hedge = isNumber ? undefined : hedgeBefore(scene, share);
  const stated: StatedNumber | undefined = ratioStated(
    isNumber ? share : undefined,
    multiple,
    hedge,
    lessBy !== undefined,
    lessBy !== undefined,
  );
  if (!stated || denialOf(scene, share)) return;
  const limit = limitOn(scene, isNumber ? share : undefined, multiple, {
    comparative: false,
    lower: false,
    denied: false,
  });
  if (limit && lessBy) return;
  const ratio = { kind: 'ratio' as const, a: at(window), b: at(whole.window) };
  propose(
    findings,
    scene,
    'windows',
    limit
      ? { ...ratio, op: limit.op, stated: { x: limit.x, low: limit.x, high: limit.x } }
      : { ...ratio, stated },
    [share, hedge, limit?.item, lessBy, ...whole.items, ...words],
  );
}

function speaksOfLight(scene: Scene): boolean {
  return scene.items.some(
    (item) =>
      keyOf(item, 'fullScreen') !== undefined ||
      ['peak', 'luminance', 'whitePoint', 'hold', 'sdrWhite'].includes(keyOf(item, 'concept') ?? '') ||
      item.number?.dimension === 'luminance',
  );
}
