import type { ReadingContext } from '../../contract/articleText.ts';
import { speaksOfAnyWindow } from './anyWindow.ts';
import { type Carry, carriedConditions } from './carry.ts';
import { isConditional } from './conditional.ts';
import { settleEllipsis } from './ellipticUnits.ts';
import { type Item, isWord, keyOf } from './items.ts';
import { partsOf } from './leftOut.ts';
import { settleLeftOutDirections } from './leftOutDirection.ts';
import { leansOn } from './mainClause.ts';
import { issueAt, modeAt } from './modeName.ts';
import { plays } from './parts.ts';
import { earlierTime, speaksOfThePast, speaksOfUpdate, statesPresent } from './past.ts';
import { sharesOf, takeShare } from './respectively.ts';
import { opensOther } from './rules/than.ts';
import type { Scene } from './scene.ts';
import { isPatchOfBoth, patchOf, settleScreenShares, windowOfList } from './screenShare.ts';
import { seatOf } from './seat.ts';
import { settleAxes } from './settleAxes.ts';
import { settleBareSizes } from './sizes.ts';
import { markStates, partStates, speaksOfAdjusted } from './states.ts';
import { isDistance, isFromTarget } from './toneDirection.ts';
import { toneSpans } from './toneSpans.ts';
import { unitMentions } from './unitMentions.ts';
import { settleUnit } from './units.ts';
import { unkeptSettingAt } from './unkeptSetting.ts';
import { splitVariant } from './variant.ts';
import { saysWorkDone } from './workDone.ts';

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

/** Nothing that {@link settleConditions} looks for begins here; most words of a sentence are passed over by this. */
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

/** "The Plain manages 412 nits in the same window": the one of the sentence before. */
function namesSameWindow(items: readonly Item[]): boolean {
  return items.some((item, at) => isWord(item, 'same') && isWord(items[at + 1], 'window', 'patch', 'box'));
}

const localStage = /^(?:before|out|straight|prior|from|pre)/;
/** Reads the conditions that a clause names, over those that are carried. */
function settleConditions(scene: Scene): { named: Carry['paragraph'] } {
  const named: Carry['paragraph'] = {};
  const origin: Record<string, 'named' | 'carried' | 'article'> = {};
  const conditions: Scene['conditions'] = { origin };
  const carried = { ...carriedConditions(scene.carry), ...(scene.previous ? inherit(scene.previous) : {}) };
  // A mode that no run knows lasts to the sentence's end.
  scene.unknownMode = scene.previous?.unknownMode;
  for (const [key, value] of Object.entries(carried)) {
    (conditions as unknown as Record<string, unknown>)[key] = value;
    origin[key] = 'carried';
  }
  const set = (key: string, value: unknown, item: Item) => {
    (conditions as unknown as Record<string, unknown>)[key] = value;
    origin[key] = 'named';
    scene.conditionItems.add(item);
  };
  const supposed = isSupposed(scene.sentence);
  if (scene.index === 0 && scene.carry.window !== undefined) {
    conditions.window = scene.carry.window;
    origin.window = 'named';
  }
  const same = scene.index === 0 ? scene.carry.said?.window : undefined;
  if (same !== undefined && namesSameWindow(scene.items)) {
    conditions.window = same;
    origin.window = 'named';
  }
  let afterThan = false;
  const stageBefore = { said: conditions.stage, origin: origin.stage };
  let isReference = false;
  for (let at = 0; at < scene.items.length; at += 1) {
    const item = scene.items[at]!;
    if (opensOther(scene.items, at)) afterThan = true;
    // "Brighter than the Kasulind in a 10 % window": a patch behind the other set holds for both.
    if (afterThan && isPatchOfBoth(scene.items, at)) set('window', item.number!.x, item);
    // "75 W less than the Plain in HDR": a signal behind the other set holds for both, too.
    const ofBoth =
      afterThan &&
      keyOf(item, 'signal') !== undefined &&
      keyOf(scene.items[at - 1], 'unit') !== undefined &&
      (scene.items[at + 1]?.type ?? 'mark') === 'mark' &&
      origin.signal !== 'named';
    if (ofBoth) set('signal', keyOf(item, 'signal')!, item);
    if (afterThan) continue;
    if (isSilent(scene.items, at)) continue;
    // "With nothing adjusted"
    const untouched = isWord(scene.items[at - 1], 'nothing') && keyOf(item, 'stage') === 'adjusted';
    if (untouched) scene.conditionItems.add(scene.items[at - 1]!);
    const stage = untouched ? 'as-delivered' : keyOf(item, 'stage');
    if (stage && !(origin.stage === 'named' && conditions.stage !== stage)) {
      set('stage', stage, item);
      // "The average is a quarter of what it was before adjustment": of what it is compared with, and no longer.
      if (isWord(scene.items[at - 1], 'was', 'were') && isWord(scene.items[at - 3], 'what', 'than'))
        isReference = true;
      if (!localStage.test(item.text)) named.stage = stage;
    }
    // "HLG peak is …": a format before what is measured names the signal.
    const format = keyOf(item, 'format');
    const signal =
      keyOf(item, 'signal') ??
      ((format === 'HLG' || format === 'HDR10') &&
      (keyOf(scene.items[at + 1], 'concept') !== undefined ||
        keyOf(scene.items[at + 1], 'verb') === 'reach' ||
        isWord(scene.items[at + 1], 'window', 'patch', 'highlights', 'tone', 'curve'))
        ? format
        : undefined);
    if (signal) {
      if (origin.signal === 'named' && conditions.signal !== signal)
        conditions.unmatched = 'in both signals at once';
      set('signal', signal, item);
      named.signal = signal;
    }
    const concept = keyOf(item, 'concept');
    const inHdr = conditions.signal !== undefined && conditions.signal !== 'SDR';
    if (
      concept &&
      (/\bsdr\b/.test(item.text) || (concept === 'sdrWhite' && !(inHdr && keyOf(item, 'fullScreen'))))
    )
      set('signal', 'SDR', item);
    // "HDR brightness" under a heading on SDR.
    else if (
      concept &&
      /\bhdr\b/.test(item.text) &&
      origin.signal === 'carried' &&
      conditions.signal === 'SDR'
    )
      set('signal', 'HDR', item);
    const dimming = keyOf(item, 'dimming');
    if (dimming) {
      set('dimming', dimming, item);
      if (!supposed) named.dimming = dimming;
    }
    const room = keyOf(item, 'room');
    if (room) set('room', room, item);
    if (item.number?.role === 'lux') set('room', item.number.x, item);
    const side = keyOf(item, 'side');
    if (side && (conditions.angle !== undefined || scene.axes.some((axis) => axis.kind === 'angle')))
      set('side', side, item);
    const plane = keyOf(item, 'plane');
    if (plane) set('plane', plane, item);
    const beyond = scene.items[at + 1];
    if (
      item.number?.dimension === 'angle' &&
      isWord(beyond, 'above', 'below') &&
      !scene.sentence[beyond!.index + 1]?.number
    )
      set('plane', 'vertical', beyond!);
    const level = keyOf(item, 'level');
    if (level) set('level', level, item);
    if (item.number?.role === 'window') set('window', item.number.x, item);
    const patch = patchOf(item);
    if (patch !== undefined) set('window', patch, item);
    // "… becomes distracting at that angle"
    const spoken =
      scene.previous?.conditions.angle ??
      scene.previous?.axes.find((axis) => axis.kind === 'angle')?.from ??
      scene.carry.said?.angle;
    if (isWord(item, 'angle') && isWord(scene.items[at - 1], 'that', 'this', 'same') && spoken !== undefined)
      set('angle', spoken, item);
    // "At 45 degrees it keeps half of its light. The Plain keeps 71 % there."
    const keepsThere =
      isWord(item, 'there') &&
      scene.items
        .slice(0, at)
        .some((word) => keyOf(word, 'verb') === 'keep' || keyOf(word, 'verb') === 'lose') &&
      (scene.items[at + 1]?.type ?? 'mark') === 'mark';
    if (keepsThere && spoken !== undefined) set('angle', spoken, item);
    // "The Plain, from the same seat, keeps 74 %"
    if (isWord(item, 'seat', 'place', 'spot') && isWord(scene.items[at - 1], 'same') && spoken !== undefined)
      set('angle', spoken, item);
    if (isWord(item, 'axis') && isWord(scene.items[at - 1], 'on')) set('angle', 0, item);
    if (
      (isWord(item, 'on') && isWord(scene.items[at - 1], 'head', 'straight', 'square')) ||
      (isWord(item, 'ahead') && isWord(scene.items[at - 1], 'straight'))
    )
      set('angle', 0, item);
    // "The first sample reached 700 nits": which one, no run says.
    if (
      isWord(item, 'sample') &&
      isWord(scene.items[at - 1], 'first', 'second', 'third', 'another', 'other', 'earlier')
    )
      conditions.unmatched = 'on a sample that the words do not name';
    const issue = issueAt(scene.items, at);
    if (issue) {
      set(issue.dimension, issue.name, item);
      scene.conditionItems.add(issue.item);
    }
    const mode = modeAt(scene.sentence, item.index);
    if (mode?.mode) {
      set('mode', mode.mode, item);
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
  const setting = settingOf(scene);
  if (setting) conditions.unmatched ??= `with its ${setting.text} so set`;
  if (scene.unknownMode !== undefined) conditions.unmatched ??= `in a mode called “${scene.unknownMode}”`;
  for (const axis of scene.axes)
    if (axis.kind === 'angle') {
      const angle = axis.at ?? seatOf(scene, axis);
      if (angle !== undefined) set('angle', angle, axis.items[0]!);
    }
  const window = windowOfList(scene);
  if (window) set('window', window.number!.x, window);
  // Said once of the sentence: an hour with the controls, and then what came of it.
  const worked =
    scene.index === 0
      ? origin.stage === undefined && saysWorkDone(scene.sentence)
      : origin.stage !== 'named' && saysWorkDone(scene.items);
  if (worked) {
    conditions.stage = 'adjusted';
    origin.stage = 'named';
    named.stage = 'adjusted';
  }
  const isNow = scene.items.some((item) => plays(item, 'nowadays'));
  const before =
    scene.previous?.conditions.unmatched === earlierTime && !isNow && !statesPresent(scene.items);
  const former = scene.items.some(({ number }) => number?.state === 'before');
  if (former || before || speaksOfThePast(scene.items, scene.sentence)) {
    scene.now = { ...conditions, origin: { ...origin } };
    // "I adjusted it. The average is 0.9; it used to be 3.4."
    const updated = scene.sentence.some((item) => isWord(item, 'firmware', 'update', 'patch', 'fix'));
    const delivered = origin.stage === 'named' && conditions.stage !== 'adjusted';
    if (
      (conditions.stage === 'adjusted' && !updated) ||
      (former && !delivered && speaksOfAdjusted(scene.sentence, scene.carry))
    ) {
      conditions.stage = 'as-delivered';
      origin.stage = 'named';
    } else if (!former) conditions.unmatched ??= earlierTime;
    else if (!delivered) conditions.before = true;
  }
  const updated =
    speaksOfUpdate(scene.items) || (scene.previous !== null && speaksOfUpdate(scene.previous.items));
  if (isNow && !former) delete conditions.before;
  else if (updated && !former) conditions.before = 'update';
  // "Adjustment takes the average from 3.2 to 0.5": what the change led to is the adjusted set's.
  if (
    !former &&
    origin.stage !== 'named' &&
    scene.items.some(({ number }) => number?.state === 'now') &&
    speaksOfAdjusted(scene.sentence, scene.carry)
  ) {
    conditions.stage = 'adjusted';
    origin.stage = 'named';
  }
  if (isReference) {
    const { stage: _stage, ...now } = conditions;
    const { stage: _origin, ...rest } = origin;
    scene.now ??= {
      ...now,
      ...(stageBefore.said && { stage: stageBefore.said }),
      origin: { ...rest, ...(stageBefore.origin && { stage: stageBefore.origin }) },
    };
  }
  if (origin.window === 'carried' && speaksOfAnyWindow(scene.items)) {
    delete conditions.window;
    delete origin.window;
  }
  const { unit, inches } = splitVariant(scene.unit);
  if (unit !== undefined && unit !== scene.context.own) {
    conditions.unit = unit;
    origin.unit = scene.units.some((mention) => mention.role === 'subject') ? 'named' : 'carried';
  }
  if (inches !== undefined) {
    conditions.variantInches = inches;
    origin.variantInches = 'named';
  }
  if (unit !== undefined && unit !== scene.context.own) {
    if (origin.firmware === 'carried') delete conditions.firmware;
    if (conditions.before === 'update' && !speaksOfUpdate(scene.items)) delete conditions.before;
  }
  scene.conditions = conditions;
  return { named };
}

/** The setting that the clause names, or that its sentence begins with: "With eco mode on, the lag is 84 ms". */
function settingOf({ sentence, items }: Scene): Item | undefined {
  for (const item of items) {
    const setting = unkeptSettingAt(sentence, item.index);
    if (setting) return setting;
  }
  return unkeptSettingAt(sentence, 0);
}

/** Angle, window, level and room last to the sentence's end; so does what an earlier clause named. */
function inherit(previous: Scene): Record<string, unknown> {
  const result: Record<string, unknown> = {};
  for (const key of [
    'stage',
    'mode',
    'signal',
    'dimming',
    'room',
    'window',
    'level',
    'angle',
    'side',
    'plane',
    'sample',
    'firmware',
  ] as const) {
    const value = (previous.now ?? previous.conditions)[key];
    if (value !== undefined) result[key] = value;
  }
  return result;
}

/** The scenes of a sentence, one a clause, with conditions and units settled, and what they hand on. */
export function scenesOf(
  tagged: readonly Item[],
  context: ReadingContext,
  carry: Carry,
  angleTalk: boolean,
): Scene[] {
  settleBareSizes(tagged, context);
  settleScreenShares(tagged);
  const items = markStates(tagged, carry);
  settleLeftOutDirections(items, context.house);
  const axes = settleAxes(items, angleTalk || items.some((item) => item.number?.dimension === 'angle'));
  const shares = sharesOf(items, context, carry);
  const scenes: Scene[] = [];
  for (const { items: clause, borrowed, problem } of partsOf(items).flatMap(partStates)) {
    const inClause = new Set(axes.length > 0 ? clause : []);
    const previous = leansOn(scenes, clause, items);
    const scene: Scene = {
      context,
      carry,
      sentence: items,
      items: clause,
      index: scenes.length,
      previous,
      axes: [...axes.filter((axis) => axis.items.some((item) => inClause.has(item))), ...toneSpans(clause)],
      conditions: { origin: {} },
      conditionItems: new Set(),
      units: unitMentions(clause, context),
      unitNamed: false,
      conditional: isConditional(items, clause),
      used: new Set(),
      borrowed,
      unknownMode: undefined,
      // Every member from the beginning: all scenes are of one shape to the engine.
      unit: undefined,
      unitProblem: undefined,
      group: undefined,
      share: undefined,
      concept: previous?.concept,
      hue: previous?.hue,
      gamut: previous?.gamut,
      focus: undefined,
      said: undefined,
      stat: undefined,
      now: undefined,
    };
    // "The 10 % step is too bright, by 16 %": the place was named before.
    if (previous && scene.axes.length === 0 && (isDistance(scene) || isFromTarget(scene)))
      scene.axes = previous.axes;
    settleUnit(scene);
    if (problem) scene.unitProblem = problem;
    if (shares) takeShare(scene, shares);
    settleEllipsis(scene);
    const { named } = settleConditions(scene);
    Object.assign(carry.paragraph, named);
    scenes.push(scene);
  }
  return scenes;
}
