import { type ConditionsDraft, name } from './conditionsDraft.ts';
import { type Item, isWord, keyOf } from './items.ts';
import { issueAt, modeAt } from './modeName.ts';
import { meets, needBits, shows } from './needs.ts';
import { opensOther } from './rules/than.ts';
import { isPatchOfBoth, patchOf } from './screenShare.ts';

/** Words without a meaning of their own that place, number or name a condition. */
const placing = new Set([
  'axis',
  'on',
  'sample',
  'firmware',
  'angle',
  'ahead',
  'there',
  'seat',
  'place',
  'spot',
]);

/** No condition begins here; most words of a sentence are passed over by this. */
function isSilent(items: readonly Item[], at: number): boolean {
  const item = items[at]!;
  return (
    item.meanings.length === 0 &&
    item.number === undefined &&
    !item.capital &&
    !placing.has(item.text) &&
    !isWord(items[at + 1], 'mode', 'preset')
  );
}

/** "Set dimming to high and black sinks to 0.009": what is to be done holds for what the same sentence says of it. */
function isSupposed(sentence: readonly Item[]): boolean {
  const first = sentence[0];
  return (
    first !== undefined &&
    /^(?:set|turn|switch|put|engage|enable|disable|choose|pick|select|dial|crank|push|drop|move|leave|try)(?: |$)/.test(
      first.text,
    ) &&
    sentence.some(
      ({ number }) => number !== undefined && (number.role === undefined || number.role === 'value'),
    )
  );
}

const localStage = /^(?:before|out|straight|prior|from|pre)/;

/** "As delivered", "after adjustment", "with nothing adjusted" */
function nameStage(draft: ConditionsDraft, item: Item, at: number): undefined {
  const { scene, conditions, origin, named } = draft;
  const [before, , lead] = [scene.items[at - 1], scene.items[at - 2], scene.items[at - 3]];
  const untouched = isWord(before, 'nothing') && keyOf(item, 'stage') === 'adjusted';
  if (untouched) scene.conditionItems.add(before!);
  const stage = untouched ? 'as-delivered' : keyOf(item, 'stage');
  if (!stage || (origin.stage === 'named' && conditions.stage !== stage)) return;
  name(draft, 'stage', stage, item);
  // "The average is a quarter of what it was before adjustment"
  if (isWord(before, 'was', 'were') && isWord(lead, 'what', 'than')) draft.isOfReference = true;
  if (!localStage.test(item.text)) named.stage = stage;
}

/** "31 % darker than BT.1886 asks", "within 5 % of PQ": a tone curve by name is its signal's (ITU-R BT.1886, BT.2100). */
function signalOfCurve(item: Item): string | undefined {
  if (keyOf(item, 'direction') === undefined && keyOf(item, 'concept') !== 'eotf') return undefined;
  if (/\b1886\b/.test(item.text)) return 'SDR';
  return /\bpq\b/.test(item.text) ? 'HDR10' : undefined;
}

function isSameSignal(one: string | undefined, other: string): boolean {
  return one === other || (one === 'HDR' && other !== 'SDR');
}

/** "In HDR", "the HLG peak", "SDR white" */
function nameSignal(draft: ConditionsDraft, item: Item, at: number): undefined {
  const { scene, conditions, origin, named } = draft;
  const next = scene.items[at + 1];
  const format = keyOf(item, 'format');
  // "HLG peak is …": a format before what is measured names the signal.
  const isOfLight =
    keyOf(next, 'concept') !== undefined ||
    keyOf(next, 'verb') === 'reach' ||
    isWord(next, 'window', 'patch', 'highlights', 'tone', 'curve');
  const signal =
    keyOf(item, 'signal') ?? ((format === 'HLG' || format === 'HDR10') && isOfLight ? format : undefined);
  const ofCurve = signalOfCurve(item);
  if (ofCurve !== undefined && origin.signal === 'named' && !isSameSignal(conditions.signal, ofCurve))
    conditions.unmatched = 'in both signals at once';
  else if (ofCurve !== undefined && !isSameSignal(conditions.signal, ofCurve)) {
    name(draft, 'signal', ofCurve, item);
    scene.isCurveSignal = true;
  }
  if (signal) {
    if (origin.signal === 'named' && conditions.signal !== signal)
      conditions.unmatched = 'in both signals at once';
    name(draft, 'signal', signal, item);
    named.signal = signal;
  }
  const concept = keyOf(item, 'concept');
  if (!concept) return;
  const inHdr = conditions.signal !== undefined && conditions.signal !== 'SDR';
  if (/\bsdr\b/.test(item.text) || (concept === 'sdrWhite' && !(inHdr && keyOf(item, 'fullScreen'))))
    name(draft, 'signal', 'SDR', item);
  // "HDR brightness" under a heading on SDR.
  else if (/\bhdr\b/.test(item.text) && origin.signal === 'carried' && conditions.signal === 'SDR')
    name(draft, 'signal', 'HDR', item);
}

/** Room, side, plane, level and window */
function namePlace(draft: ConditionsDraft, item: Item, at: number): undefined {
  const { scene, conditions } = draft;
  const room = keyOf(item, 'room');
  if (room) name(draft, 'room', room, item);
  if (item.number?.role === 'lux') name(draft, 'room', item.number.x, item);
  const side = keyOf(item, 'side');
  if (side && (conditions.angle !== undefined || scene.axes.some((axis) => axis.kind === 'angle')))
    name(draft, 'side', side, item);
  const plane = keyOf(item, 'plane');
  if (plane) name(draft, 'plane', plane, item);
  const beyond = scene.items[at + 1];
  if (
    item.number?.dimension === 'angle' &&
    isWord(beyond, 'above', 'below') &&
    !scene.sentence[beyond!.index + 1]?.number
  )
    name(draft, 'plane', 'vertical', beyond!);
  const level = keyOf(item, 'level');
  if (level) name(draft, 'level', level, item);
  if (item.number?.role === 'window') name(draft, 'window', item.number.x, item);
  const patch = patchOf(item);
  if (patch !== undefined) name(draft, 'window', patch, item);
}

/** "At that angle", "there", "from the same seat", "straight ahead": angles without their number, in degrees */
function nameAngle(draft: ConditionsDraft, item: Item, at: number): undefined {
  const { scene } = draft;
  const before = scene.items[at - 1];
  const spoken =
    scene.previous?.conditions.angle ??
    scene.previous?.axes.find((axis) => axis.kind === 'angle')?.from ??
    scene.carry.said?.angle;
  // "At 45 degrees it keeps half of its light. The Plain keeps 71 % there."
  const keepsThere =
    isWord(item, 'there') &&
    scene.items.slice(0, at).some((word) => ['keep', 'lose'].includes(keyOf(word, 'verb') ?? '')) &&
    (scene.items[at + 1]?.type ?? 'mark') === 'mark';
  const isSame =
    (isWord(item, 'angle') && isWord(before, 'that', 'this', 'same')) ||
    (isWord(item, 'seat', 'place', 'spot') && isWord(before, 'same'));
  if ((keepsThere || isSame) && spoken !== undefined) name(draft, 'angle', spoken, item);
  const isOnAxis =
    (isWord(item, 'axis') && isWord(before, 'on')) ||
    (isWord(item, 'on') && isWord(before, 'head', 'straight', 'square')) ||
    (isWord(item, 'ahead') && isWord(before, 'straight'));
  if (isOnAxis) name(draft, 'angle', 0, item);
}

/** Sample, firmware, mode: which set it was, and how it was set */
function nameSetting(draft: ConditionsDraft, item: Item, at: number, supposed: boolean): undefined {
  const { scene, conditions, origin, named } = draft;
  // "The first sample reached 700 nits": which one, no run says.
  if (
    isWord(item, 'sample') &&
    isWord(scene.items[at - 1], 'first', 'second', 'third', 'another', 'other', 'earlier')
  )
    conditions.unmatched = 'on a sample that the words do not name';
  const issue = issueAt(scene.items, at);
  if (issue) {
    name(draft, issue.dimension, issue.name, item);
    scene.conditionItems.add(issue.item);
  }
  const mode = modeAt(scene.sentence, item.index);
  if (mode?.mode) {
    name(draft, 'mode', mode.mode, item);
    scene.unknownMode = undefined;
    if (!supposed) named.mode = mode.mode;
  } else if (mode?.unknown && origin.mode !== 'named') {
    scene.unknownMode = mode.unknown;
    scene.conditionItems.add(item);
  } else if (mode?.outside && origin.mode !== 'named') {
    conditions.unmatched = `in a mode called “outside ${mode.outside}”`;
    scene.conditionItems.add(item);
  }
}

const ofSignal = needBits([{ kinds: ['signal', 'format', 'concept', 'direction'] }]);
const ofPlace = needBits([{ kinds: ['room', 'side', 'plane', 'level', 'fullScreen', 'number'] }]);
const ofAngle = needBits([{ words: ['there', 'angle', 'seat', 'place', 'spot', 'axis', 'on', 'ahead'] }]);
/** Only a dimming or a picture mode is supposed. */
const ofSetting = needBits([{ kinds: ['dimming', 'mode'] }]);

/** Takes the conditions that the words of a clause name; behind "than" only those that hold for both sets. */
export function takeNamed(draft: ConditionsDraft): undefined {
  const { scene, origin, named } = draft;
  const { signs } = scene;
  const supposed = meets(signs, ofSetting) && isSupposed(scene.sentence);
  const staged = shows(signs, 'stage');
  const [signalled, placed, angled] = [ofSignal, ofPlace, ofAngle].map((needs) => meets(signs, needs));
  let afterThan = false;
  for (let at = 0; at < scene.items.length; at += 1) {
    const item = scene.items[at]!;
    if (opensOther(scene.items, at)) afterThan = true;
    // "Brighter than the Kasulind in a 10 % window": a patch behind the other set holds for both.
    if (afterThan && isPatchOfBoth(scene.items, at)) name(draft, 'window', item.number!.x, item);
    // "75 W less than the Plain in HDR": a signal behind the other set holds for both, too.
    const ofBoth =
      afterThan &&
      keyOf(item, 'signal') !== undefined &&
      keyOf(scene.items[at - 1], 'unit') !== undefined &&
      (scene.items[at + 1]?.type ?? 'mark') === 'mark' &&
      origin.signal !== 'named';
    if (ofBoth) name(draft, 'signal', keyOf(item, 'signal')!, item);
    if (afterThan || isSilent(scene.items, at)) continue;
    if (staged) nameStage(draft, item, at);
    if (signalled) nameSignal(draft, item, at);
    const dimming = keyOf(item, 'dimming');
    if (dimming) {
      name(draft, 'dimming', dimming, item);
      if (!supposed) named.dimming = dimming;
    }
    if (placed) namePlace(draft, item, at);
    if (angled) nameAngle(draft, item, at);
    nameSetting(draft, item, at, supposed);
  }
}
