import type { StatedConditions } from '../../../contract/check.ts';
import type { Findings } from '../finding.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { conditionsFor } from '../operand.ts';
import { plays } from '../parts.ts';
import { quantityById } from '../quantity.ts';
import { firstWith, type Scene } from '../scene.ts';
import { emit, region } from './directionCheck.ts';
import { isLight, isSaturation, type SaidDirection } from './saidDirection.ts';

/** "Gamma is too low": the average gamma. */
export function readGamma(scene: Scene, findings: Findings, { item, key, text }: SaidDirection): boolean {
  const gamma = firstWith(scene, 'concept', 'gamma') ?? gammaBefore(scene, item);
  if (!gamma) return false;
  const name = key === 'on-target' ? key : /low|under|below|short|bright/.test(text) ? 'under' : 'over';
  emit(scene, findings, 'gamma.average', name, { stat: 'scalar' }, item, [gamma]);
  return true;
}

/** "Gamma averages 2.17, too low for a 2.4 power law" */
function gammaBefore({ items, previous }: Scene, word: Item): Item | undefined {
  const said = previous?.said?.at(-1);
  const isGamma =
    said?.kind === 'value' && said.operand.type === 'quantity' && said.operand.id === 'gamma.average';
  const isOther = items.some((item) => keyOf(item, 'concept') ?? keyOf(item, 'hue') ?? keyOf(item, 'tone'));
  return isGamma && /\b(?:low|high)$|^(?:below|under|above|over) target$/.test(word.text) && !isOther
    ? word
    : undefined;
}

/** "Shadows are too dark", "it follows PQ": the tone curve. */
export function readCurve(scene: Scene, findings: Findings, { item, key, text }: SaidDirection): boolean {
  const curve =
    firstWith(scene, 'concept', 'eotf') ??
    scene.items.find((entry) => keyOf(entry, 'tone')) ??
    (isLight(scene, text)
      ? scene.items.find((entry) => plays(entry, 'picture') && !isWord(entry, 'whites'))
      : undefined) ??
    // "In HDR the picture runs above target"
    (/target/.test(text)
      ? scene.items.find((entry) => isWord(entry, 'the picture', 'picture'))
      : undefined) ??
    (/curve|pq|1886|eotf|hlg|standard|2084|signal|asked/.test(text) ? item : undefined) ??
    (isOfLevel(scene, item, text) ? item : undefined);
  if (!curve || isSaturation(scene, text)) return false;
  const conditions = eotfSignal(
    `${item.text} ${scene.items.map((entry) => entry.text).join(' ')}`,
    conditionsFor(scene, quantityById('eotf.error')),
  );
  emit(scene, findings, 'eotf.error', key, region(scene, {}), item, [curve], { conditions });
  return true;
}

/** "At 10 % it is on target": a level of the signal has no other target than its luminance. */
function isOfLevel(scene: Scene, item: Item, text: string): boolean {
  return (
    (/target/.test(text) || isTooMuch(scene, item, text)) &&
    scene.hue === undefined &&
    scene.axes.some(({ kind, at, tone }) => kind === 'stimulus' && at !== undefined && !tone) &&
    !scene.items.some((entry) => keyOf(entry, 'concept') ?? keyOf(entry, 'gamut') ?? keyOf(entry, 'hue'))
  );
}

/** "The 10 % level comes out too bright", and not "…, by 16 %", which says more. */
function isTooMuch({ items, sentence }: Scene, word: Item, text: string): boolean {
  return (
    !sentence.slice(word.index + 1, word.index + 3).some((item) => isWord(item, 'by')) &&
    /^(?:far |much |a little |slightly |rather )?too (?:bright|dark|dim|light)$/.test(text) &&
    items.some((item, at) => item.number?.dimension === 'percent' && plays(items[at + 1], 'levels'))
  );
}

function eotfSignal(text: string, conditions: StatedConditions): StatedConditions {
  const signal = /\b(?:pq|2084)\b/.test(text)
    ? 'HDR10'
    : /\bhlg\b/.test(text)
      ? 'HLG'
      : /1886/.test(text)
        ? 'SDR'
        : undefined;
  if (!signal || (conditions.signal && conditions.origin.signal === 'named')) return conditions;
  return { ...conditions, signal, origin: { ...conditions.origin, signal: 'named' } };
}
