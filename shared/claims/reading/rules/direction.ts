import { type Findings, refuse } from '../finding.ts';
import { isWord, keyOf, meaningOf } from '../items.ts';
import type { Scene } from '../scene.ts';
import { readCurveEnd } from './curveEnd.ts';
import { readAllHues, readHues } from './hueDirections.ts';
import { readPrimaries } from './primaries.ts';
import type { SaidDirection } from './saidDirection.ts';
import { readCurve, readGamma } from './toneCurve.ts';
import { readTemperature, readWarmth } from './warmth.ts';

/** One reader a kind of quantity; the first that takes the word ends the search. */
const readers: readonly ((scene: Scene, findings: Findings, said: SaidDirection) => boolean)[] = [
  readCurveEnd,
  readWarmth,
  passOver,
  readPrimaries,
  readHues,
  readGamma,
  readTemperature,
  readCurve,
];

/** Saturation, luminance, tone curve, gamma and colour temperature: over, under or on target. */
export function readDirections(scene: Scene, findings: Findings): undefined {
  const hasValue = scene.items.some(
    (item) =>
      item.number &&
      (item.number.role === undefined || item.number.role === 'value') &&
      item.number.dimension !== '',
  );
  for (const item of scene.items) {
    const meaning = meaningOf(item, 'direction');
    if (!meaning || scene.used.has(item)) continue;
    // "A warm 8 out of 10"
    const at = scene.items.indexOf(item);
    if (scene.items[at + 1]?.number?.outOf !== undefined) continue;
    // "On a bench one gets used to cold whites"
    if (isWord(scene.items[at - 1], 'to') && isWord(scene.items[at - 2], 'used', 'accustomed')) continue;
    const text = (meaning.data as string | undefined) ?? item.text;
    // "Its reds are a fifth too strong": how far, and no range is laid down for a share in words.
    const share = scene.items[at - 1];
    if (keyOf(share, 'multiple') !== undefined && ['over', 'under'].includes(meaning.key)) {
      refuse(findings, scene, 'direction', 'a share in words: give the number in percent', [
        ...scene.items.filter((entry) => keyOf(entry, 'hue') ?? keyOf(entry, 'tone')),
        share,
        item,
      ]);
      continue;
    }
    const said: SaidDirection = { item, key: meaning.key, text, hasValue };
    if (readers.some((reader) => reader(scene, findings, said))) continue;
    if (readAllHues(scene, findings, said)) continue;
    if (/satur/.test(text) && meaning.key !== 'on-target')
      refuse(findings, scene, 'direction', 'the words do not say which hue is meant', [item]);
  }
}

/** A number says more than the word beside it; "spot on" before one is a hedge. */
function passOver(scene: Scene, _findings: Findings, { item, key, hasValue }: SaidDirection): boolean {
  if (hasValue && (key === 'over' || key === 'under')) return true;
  // "The Vane tracks PQ better than the Hearth" says how they stand to each other.
  const next = scene.items[scene.items.indexOf(item) + 1];
  if (
    key === 'on-target' &&
    (keyOf(next, 'comparative') !== undefined || isWord(next, 'more', 'less', 'better', 'worse', 'closer')) &&
    scene.items.some((entry) => isWord(entry, 'than'))
  )
    return true;
  // "Followed to within 5 %" says how closely, which is no less than that it is on target.
  const bounded = scene.said?.some(({ kind }) => kind === 'bound') ?? false;
  if (key === 'on-target' && bounded && scene.items.some((entry) => isWord(entry, 'within', 'to within')))
    return true;
  return item.text === 'spot on' && scene.items[scene.items.indexOf(item) + 1]?.number !== undefined;
}
