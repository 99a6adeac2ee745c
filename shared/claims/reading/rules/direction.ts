import type { StatedConditions } from '../../../contract/check.ts';
import { carriedConcept } from '../carry.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord, keyOf, meaningOf } from '../items.ts';
import { isOffAxis } from '../offAxis.ts';
import { conditionsFor, operandOf } from '../operand.ts';
import { plays } from '../parts.ts';
import { quantityById } from '../quantity.ts';
import { firstWith, hasKey, type Scene } from '../scene.ts';
import { statOf } from '../selector.ts';
import { emit, emitEvery, negationBefore, region } from './directionCheck.ts';
import { readPrimaries } from './primaries.ts';
import { rolloffFrom } from './rolloff.ts';

/** A word of direction in its clause. */
interface Said {
  item: Item;
  key: string;
  /** What it says; of "blues a little under" what was said of reds before it */
  text: string;
  /** The clause states a number with a unit. */
  hasValue: boolean;
}

/** One reader a kind of quantity; the first that takes the word ends the search. */
const readers: readonly ((scene: Scene, findings: Findings, said: Said) => boolean)[] = [
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
    const said: Said = { item, key: meaning.key, text, hasValue };
    if (readers.some((reader) => reader(scene, findings, said))) continue;
    if (readAllHues(scene, findings, said)) continue;
    if (/satur/.test(text) && meaning.key !== 'on-target')
      refuse(findings, scene, 'direction', 'the words do not say which hue is meant', [item]);
  }
}

/** "Rolls off from 70 %", "clips": the end of the curve, and the level where it begins. */
function readCurveEnd(scene: Scene, findings: Findings, { item, key }: Said): boolean {
  if (key !== 'rolls-off' && key !== 'clips' && key !== 'neither') return false;
  if (keyOf(item, 'topic') && key === 'clips' && !/^clip/.test(item.text)) return true;
  // "Below the roll-off the error is lower": a place.
  const noun = scene.items.indexOf(item);
  const led = isWord(scene.items[noun - 1], 'the', 'its', 'that') ? scene.items[noun - 2] : undefined;
  if (isWord(led, 'below', 'above', 'before', 'past', 'beyond', 'until', 'to', 'after', 'from')) return true;
  // "On our SDR clip": what is played.
  const before = scene.items[scene.items.indexOf(item) - 1];
  if (
    isWord(item, 'clip', 'clips') &&
    (isWord(
      before,
      'our',
      'its',
      'the',
      'a',
      'test',
      'film',
      'demo',
      'same',
      'video',
      'use',
      'uses',
      'with',
      'metal',
    ) ||
      // "The tone curve in HDR clips" is what the curve does.
      (keyOf(before, 'signal') !== undefined && !/^(?:in|with|under|for) /.test(before!.text)))
  )
    return true;
  // "Patterns and clips", "we watched clips": what is played.
  const isClips = isWord(item, 'clip', 'clips') && scene.axes.length === 0;
  const lead = scene.items[noun - 1];
  const played =
    lead === undefined
      ? scene.items.length === 1
      : isWord(lead, 'and', 'or', 'watched', 'watch', 'of', 'few', 'some', 'more', 'played', 'for');
  if (isClips && played && !scene.previous?.said?.length) return true;
  // "The menus can clip those wings": what is clipped is no picture.
  const object = scene.items[noun + 1];
  if (
    isWord(item, 'clip', 'clips', 'clipped') &&
    (isWord(object, 'those', 'these', 'his', 'her', 'my', 'your', 'our', 'their', 'a') ||
      (isWord(object, 'the') &&
        !isWord(scene.items[noun + 2], 'highlights', 'whites', 'brightest', 'top', 'signal')))
  )
    return true;
  const axis = scene.axes.find((entry) => entry.kind === 'stimulus' && !entry.tone);
  const early = axis ? undefined : asEarlyAs(scene);
  const level = axis?.from ?? axis?.at ?? early?.number?.x ?? levelTakenUp(scene, item);
  if (axis && level === undefined) {
    refuse(findings, scene, 'direction', 'a curve leaves its target from a level upwards', [
      item,
      ...axis.items,
    ]);
    return true;
  }
  const from = level !== undefined && key !== 'neither' ? rolloffFrom(level) : undefined;
  // "The Plain's roll-off begins at 90 %" says where the curve leaves its target, not how.
  if (from && isWord(lead, 'the', 'its', 'their', "'s", "'")) {
    const operand = operandOf(scene, quantityById('eotf.rolloff'), { stat: 'scalar' });
    propose(findings, scene, 'direction', { kind: 'value', operand, stated: from }, [item, ...axis!.items]);
    return true;
  }
  emit(scene, findings, 'eotf.rolloff', key, { stat: 'scalar' }, item, from ? (axis?.items ?? [early]) : [], {
    from,
  });
  return true;
}

/** "It tracks PQ up to 70 % and clips there": the level where the clause before ends, in % stimulus. */
function levelTakenUp({ items, previous }: Scene, word: Item): number | undefined {
  if (!isWord(items[items.indexOf(word) + 1], 'there') || !previous) return undefined;
  const [before, other] = previous.axes.filter(({ kind, tone }) => kind === 'stimulus' && !tone);
  return other ? undefined : (before?.to ?? before?.at);
}

/** "Clips as early as 60 %" */
function asEarlyAs({ items }: Scene): Item | undefined {
  const early = items.find(
    (item, at) =>
      item.number?.dimension === 'percent' &&
      isWord(items[at - 1], 'as') &&
      isWord(items[at - 2], 'early', 'low', 'soon', 'late', 'little') &&
      isWord(items[at - 3], 'as'),
  );
  if (early?.number) early.number.role = 'axis';
  return early;
}

/** "White is on the cool side", "a touch warm": colour temperature by name. */
function readWarmth(scene: Scene, findings: Findings, { item, key, hasValue }: Said): boolean {
  if (/warm|cool/.test(item.text) && key === 'on-target') {
    emit(scene, findings, 'white.cct', key, { stat: 'scalar' }, item, []);
    return true;
  }
  if (key !== 'warm' && key !== 'cool') return false;
  // "With a cold", "a chill": an ailment.
  if (isWord(item, 'cold') && isWord(scene.items[scene.items.indexOf(item) - 1], 'a', 'the')) return true;
  const subject = whiteSubject(scene) ?? setSubject(scene, item) ?? whiteBefore(scene);
  if (!subject) return true;
  const beside =
    hasValue &&
    item.index > 0 &&
    !/side$/.test(item.text) &&
    !scene.items.some((entry) => isWord(entry, 'too'));
  if (!beside) emit(scene, findings, 'white.cct', key, { stat: 'scalar' }, item, [subject]);
  return true;
}

function whiteSubject(scene: Scene): Item | undefined {
  return scene.items.find(
    (entry) => ['cct', 'whitePoint'].includes(keyOf(entry, 'concept') ?? '') || plays(entry, 'picture'),
  );
}

/** "White measures 7,511 K, which is plainly cool" */
function whiteBefore({ items, previous }: Scene): Item | undefined {
  const said = previous?.said?.at(-1);
  const isWhite =
    said?.kind === 'value' && said.operand.type === 'quantity' && said.operand.id === 'white.cct';
  const words = items.filter(({ type }) => type !== 'mark');
  const isWhat = isWord(words[0], 'which') && isWord(words[1], 'is', 'was');
  return isWhite && isWhat && keyOf(words.at(-1), 'direction') !== undefined ? words[0] : undefined;
}

/** "It is on the warm side", "the Calm mode leans cool": said of the set, whose back may be warm too. */
function setSubject(scene: Scene, item: Item): Item | undefined {
  const subject = scene.items.find(
    (entry) =>
      entry.index < item.index &&
      (keyOf(entry, 'pronoun') !== undefined ||
        keyOf(entry, 'mode') !== undefined ||
        keyOf(entry, 'unit') !== undefined),
  );
  const spoken = scene.concept ?? carriedConcept(scene.carry);
  const ofPicture =
    scene.sentence.some((entry) => ['cct', 'whitePoint'].includes(keyOf(entry, 'concept') ?? '')) ||
    /side$|^leans/.test(item.text) ||
    scene.sentence.some(({ number }) => number?.dimension === 'temperature') ||
    ['cct', 'whitePoint', 'tint', 'greyError'].includes(spoken ?? '');
  return ofPicture ? subject : undefined;
}

/** A number says more than the word beside it; "spot on" before one is a hedge. */
function passOver(scene: Scene, _findings: Findings, { item, key, hasValue }: Said): boolean {
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

function isSaturation(scene: Scene, text: string): boolean {
  return (
    /satur|pale|vivid|rich|washed|overcooked|lively|overdone|strong|weak|mute/.test(text) ||
    hasKey(scene, 'concept', 'saturation')
  );
}

function isLight(scene: Scene, text: string): boolean {
  return (
    /bright|dark|dim|light|lumin|lifted|raised|crushed/.test(text) || hasKey(scene, 'concept', 'luminance')
  );
}

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
  { item, key, text }: Pick<Said, 'item' | 'key' | 'text'>,
): boolean {
  const { hue } = scene;
  const named = scene.items.some((entry) => (keyOf(entry, 'concept') ?? 'saturation') !== 'saturation');
  if (hue === undefined || named || !(isSaturation(scene, text) || key === 'on-target')) return false;
  emit(scene, findings, `sweep.${hue}.saturation`, key, region(scene, {}), item, []);
  return true;
}

/** "Red is oversaturated, green on target": said of each hue that the clause names. */
function readHues(scene: Scene, findings: Findings, { item, key, text }: Said): boolean {
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
function readAllHues(scene: Scene, findings: Findings, { item, key, text }: Said): boolean {
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

function readGamma(scene: Scene, findings: Findings, { item, key, text }: Said): boolean {
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

function readTemperature(scene: Scene, findings: Findings, { item, key, text }: Said): boolean {
  const cct = firstWith(scene, 'concept', 'cct');
  const white = cct ?? (key === 'on-target' ? firstWith(scene, 'concept', 'whitePoint') : undefined);
  if (!white) return false;
  const name = key === 'on-target' ? key : /low|under|below/.test(text) ? 'warm' : 'cool';
  emit(scene, findings, 'white.cct', name, { stat: 'scalar' }, item, [white]);
  return true;
}

/** "Shadows are too dark", "it follows PQ": the tone curve. */
function readCurve(scene: Scene, findings: Findings, { item, key, text }: Said): boolean {
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
    (isOfLevel(scene, text) ? item : undefined);
  if (!curve || isSaturation(scene, text)) return false;
  const conditions = eotfSignal(
    `${item.text} ${scene.items.map((entry) => entry.text).join(' ')}`,
    conditionsFor(scene, quantityById('eotf.error')),
  );
  emit(scene, findings, 'eotf.error', key, region(scene, {}), item, [curve], { conditions });
  return true;
}

/** "At 10 % it is on target": a level of the signal has no other target than its luminance. */
function isOfLevel(scene: Scene, text: string): boolean {
  return (
    /target/.test(text) &&
    scene.hue === undefined &&
    scene.axes.some(({ kind, at, tone }) => kind === 'stimulus' && at !== undefined && !tone) &&
    !scene.items.some((entry) => keyOf(entry, 'concept') ?? keyOf(entry, 'gamut') ?? keyOf(entry, 'hue'))
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
