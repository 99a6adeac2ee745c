import { speaksOfAnyWindow } from './anyWindow.ts';
import { type Carry, carriedConditions } from './carry.ts';
import { type ConditionsDraft, draftOf, name } from './conditionsDraft.ts';
import { type Item, isWord, keyOf } from './items.ts';
import { takeNamed } from './namedConditions.ts';
import { meets } from './needs.ts';
import { speaksOfUpdate } from './past.ts';
import type { Scene } from './scene.ts';
import { windowOfList } from './screenShare.ts';
import { seatOf } from './seat.ts';
import { settleStage } from './settleStage.ts';
import { ofSettings, unkeptSettingAt } from './unkeptSetting.ts';
import { splitVariant } from './variant.ts';

/** "The Plain manages 412 nits in the same window": the one of the sentence before. */
function namesSameWindow(items: readonly Item[]): boolean {
  return items.some((item, at) => isWord(item, 'same') && isWord(items[at + 1], 'window', 'patch', 'box'));
}

/** The window that a question or the sentence before left to this one, in % of the screen. */
function takeWindowBefore({ scene, conditions, origin }: ConditionsDraft): undefined {
  if (scene.index > 0) return;
  const same = namesSameWindow(scene.items) ? scene.carry.said?.window : undefined;
  const window = same ?? scene.carry.window;
  if (window === undefined) return;
  conditions.window = window;
  origin.window = 'named';
}

/** The setting that the clause names, or that its sentence begins with: "With eco mode on, the lag is 84 ms". */
function settingOf({ sentence, items, sentenceSigns }: Scene): Item | undefined {
  if (!meets(sentenceSigns, ofSettings)) return undefined;
  for (const item of items) {
    const setting = unkeptSettingAt(sentence, item.index);
    if (setting) return setting;
  }
  return unkeptSettingAt(sentence, 0);
}

const ofOtherThings = ['fact', 'superlative', 'comparative', 'equative', 'topic'] as const;

/** "It tracks PQ to 70 %; the lag is 9 ms": what a tone curve stands for holds for what is said of the curve. */
function dropCurveSignal({ scene, conditions, origin }: ConditionsDraft): undefined {
  if (!scene.previous?.isCurveSignal) return;
  const inPercent = scene.items.some(
    ({ number }) => number?.dimension === 'percent' && (number.role === undefined || number.role === 'value'),
  );
  const own = inPercent ? ['eotf', 'rolloff', 'error', undefined] : ['eotf', 'rolloff', undefined];
  const ofOther = scene.items.some(
    (item) =>
      !own.includes(keyOf(item, 'concept')) ||
      item.number?.dimension === 'luminance' ||
      isWord(item, 'edge', 'edges', 'corner', 'corners', 'centre') ||
      ofOtherThings.some((kind) => keyOf(item, kind) !== undefined),
  );
  if (!ofOther) {
    scene.isCurveSignal = true;
    return;
  }
  const { signal } = carriedConditions(scene.carry);
  if (signal !== undefined) conditions.signal = signal;
  else {
    delete conditions.signal;
    delete origin.signal;
  }
}

/** The set, or its other size, that the clause is about, and what of the conditions is only this review's own set's. */
function takeUnit({ scene, conditions, origin }: ConditionsDraft): undefined {
  const { unit, inches } = splitVariant(scene.unit);
  if (inches !== undefined) {
    conditions.variantInches = inches;
    origin.variantInches = 'named';
  }
  if (unit === undefined || unit === scene.context.own) return;
  conditions.unit = unit;
  origin.unit = scene.units.some((mention) => mention.role === 'subject') ? 'named' : 'carried';
  if (origin.firmware === 'carried') delete conditions.firmware;
  if (conditions.before === 'update' && !speaksOfUpdate(scene)) delete conditions.before;
}

/**
 * Reads the conditions that a clause names, over those that are carried.
 * @returns what lasts to the paragraph's end
 */
export function settleConditions(scene: Scene): Carry['paragraph'] {
  const draft = draftOf(scene);
  const { conditions, origin, named } = draft;
  // A mode that no run knows lasts to the sentence's end.
  scene.unknownMode = scene.previous?.unknownMode;
  takeWindowBefore(draft);
  dropCurveSignal(draft);
  takeNamed(draft);
  const setting = settingOf(scene);
  if (setting) conditions.unmatched ??= `with its ${setting.text} so set`;
  if (scene.unknownMode !== undefined) conditions.unmatched ??= `in a mode called “${scene.unknownMode}”`;
  for (const axis of scene.axes) {
    if (axis.kind !== 'angle') continue;
    const angle = axis.at ?? seatOf(scene, axis);
    if (angle !== undefined) name(draft, 'angle', angle, axis.items[0]!);
  }
  const window = windowOfList(scene);
  if (window) name(draft, 'window', window.number!.x, window);
  settleStage(draft);
  if (origin.window === 'carried' && speaksOfAnyWindow(scene.items)) {
    delete conditions.window;
    delete origin.window;
  }
  takeUnit(draft);
  scene.conditions = conditions;
  return named;
}
