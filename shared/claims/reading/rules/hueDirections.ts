import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { isOffAxis } from '../offAxis.ts';
import { operandOf } from '../operand.ts';
import { plays } from '../parts.ts';
import { quantityById } from '../quantity.ts';
import { hasKey, type Scene } from '../scene.ts';
import { statOf } from '../selector.ts';
import { emit, emitEvery, negationBefore, region } from './directionCheck.ts';
import { isLight, isSaturation, type SaidDirection } from './saidDirection.ts';

/** "Every hue but red": what is spared of all. */
function isEvery({ items }: Scene, { index }: Item): boolean {
  return items.some(
    (entry) => entry.index < index && entry.index >= index - 4 && keyOf(entry, 'stat') === 'all',
  );
}

/** "Blue? It's over-saturated.": of the hue that was asked for or announced. */
function readHueBefore(
  scene: Scene,
  findings: Findings,
  { item, key, text }: Pick<SaidDirection, 'item' | 'key' | 'text'>,
): boolean {
  const { hue } = scene;
  const named = scene.items.some((entry) => (keyOf(entry, 'concept') ?? 'saturation') !== 'saturation');
  if (hue === undefined || named || !(isSaturation(scene, text) || key === 'on-target')) return false;
  emit(scene, findings, `sweep.${hue}.saturation`, key, region(scene, {}), item, []);
  return true;
}

/** "Red is oversaturated, green on target": said of each hue that the clause names. */
export function readHues(scene: Scene, findings: Findings, { item, key, text }: SaidDirection): boolean {
  const hues = scene.items.filter((entry) => keyOf(entry, 'hue') && !scene.used.has(entry));
  if (hues.length === 0) return readHueBefore(scene, findings, { item, key, text });
  const spared = scene.items.find(
    (entry) => (entry.index > item.index || isEvery(scene, entry)) && plays(entry, 'excepting'),
  );
  if (spared && spared.index < hues[0]!.index) {
    refuse(findings, scene, 'direction', 'said of all hues but one: say it of each', [item, spared, hues[0]]);
    return true;
  }
  const measure =
    hasKey(scene, 'concept', 'hueError') && !/satur/.test(text)
      ? 'hue'
      : isLight(scene, text) && !isSaturation(scene, text)
        ? 'luminance'
        : 'saturation';
  // "Neither red nor green": one denial serves every hue.
  const denied = negationBefore(scene, item);
  // "Reds, greens and blues are all undersaturated": all of the hues, each by its average.
  const ofHues =
    hues.length > 1 &&
    scene.items.some(
      (entry, at) => keyOf(entry, 'stat') === 'all' && isWord(scene.items[at - 1], 'are', 'were'),
    );
  for (const hue of hues) {
    const id = `sweep.${keyOf(hue, 'hue')}.${measure}`;
    const every =
      !ofHues &&
      statOf(scene) === 'all' &&
      measure === 'saturation' &&
      (key === 'over' || key === 'under') &&
      !denied;
    if (every) emitEvery(scene, findings, id, key, item, hue);
    else emit(scene, findings, id, key, region(scene, {}), item, [hue], { denied });
  }
  return true;
}

/** "Every hue is undersaturated": each of the six, judged as one alone is. */
export function readAllHues(scene: Scene, findings: Findings, { item, key, text }: SaidDirection): boolean {
  if (!isSaturation(scene, text) || (key !== 'over' && key !== 'under') || negationBefore(scene, item))
    return false;
  const noun = scene.items.findIndex((entry) =>
    isWord(entry, 'hue', 'hues', 'colour', 'colours', 'color', 'colors'),
  );
  const lead = scene.items.slice(Math.max(0, noun - 3), Math.max(0, noun));
  const every = lead.find((entry) => keyOf(entry, 'stat') === 'all' || isWord(entry, 'six'));
  if (noun < 0 || !every || scene.items.some((entry) => plays(entry, 'excepting'))) return false;
  if (isOffAxis(scene)) {
    refuse(findings, scene, 'direction', 'the hues are not measured to the side', [item]);
    return true;
  }
  const limit = scene.context.house.limits.saturationPercent;
  const bounds = ['red', 'yellow', 'green', 'cyan', 'blue', 'magenta'].map((hue) => {
    const quantity = quantityById(`sweep.${hue}.saturation`);
    const operand = operandOf(scene, quantity, region(scene, {}));
    const op = key === 'over' ? ('>' as const) : ('<' as const);
    return { operand, op, x: key === 'over' ? limit : -limit, unit: quantity.unit };
  });
  propose(findings, scene, 'direction', { kind: 'bound', bounds }, [every, scene.items[noun], item]);
  return true;
}
