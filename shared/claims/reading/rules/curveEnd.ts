import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { operandOf } from '../operand.ts';
import { plays } from '../parts.ts';
import { quantityById } from '../quantity.ts';
import type { Scene } from '../scene.ts';
import { emit } from './directionCheck.ts';
import { rolloffFrom } from './rolloff.ts';
import type { SaidDirection } from './saidDirection.ts';

/** "Rolls off from 70 %", "clips": the end of the curve, and the level where it begins. */
export function readCurveEnd(scene: Scene, findings: Findings, { item, key }: SaidDirection): boolean {
  if (key !== 'rolls-off' && key !== 'clips' && key !== 'neither') return false;
  if (keyOf(item, 'topic') && key === 'clips' && !/^clip/.test(item.text)) return true;
  if (isPassedOver(scene, item, key)) {
    scene.used.add(item);
    return true;
  }
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
  const opens =
    lead === undefined && keyOf(item, 'concept') === 'rolloff' && plays(scene.items[noun + 1], 'beginning');
  if (from && (opens || isWord(lead, 'the', 'its', 'their', "'s", "'"))) {
    const operand = operandOf(scene, quantityById('eotf.rolloff'), { stat: 'scalar' });
    propose(findings, scene, 'direction', { kind: 'value', operand, stated: from }, [item, ...axis!.items]);
    return true;
  }
  emit(scene, findings, 'eotf.rolloff', key, { stat: 'scalar' }, item, from ? (axis?.items ?? [early]) : [], {
    from,
  });
  return true;
}

/** "Rolls off gently rather than clip": the other way for a curve to end, which the first denies already. */
function isPassedOver({ items, sentence }: Scene, word: Item, key: string): boolean {
  const at = items.indexOf(word);
  // "Roll off and do not clip": the denial says again what was said.
  const lead = sentence.slice(Math.max(0, word.index - 5), word.index);
  const isAgain =
    lead.some((item) => keyOf(item, 'direction') === 'rolls-off') &&
    keyOf(lead.at(-1), 'negation') === 'not' &&
    key === 'clips' &&
    !lead.some((item) => item.number !== undefined || item.type === 'mark');
  if (isAgain) return true;
  return (
    (isWord(items[at - 1], 'rather than', 'without', 'not', 'do not', 'does not', "don't", "doesn't") ||
      (isWord(items[at - 1], 'of') && isWord(items[at - 2], 'instead'))) &&
    items.slice(0, at).some((item) => {
      const other = keyOf(item, 'direction');
      return (other === 'clips' || other === 'rolls-off') && other !== key;
    })
  );
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
