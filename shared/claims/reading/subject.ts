import type { Check } from '../../contract/check.ts';
import { countsNothing, isAtFullSaturation, isOutBy, leadOf, seesSteps } from './besideNumber.ts';
import { carriedConcept, earlierConcepts } from './carry.ts';
import { cellOf, spreadOf } from './cell.ts';
import { fits, isOnePoint, isPossible } from './conceptFit.ts';
import { byConcept, errorSubject } from './conceptSubject.ts';
import { gamutOf } from './gamut.ts';
import { type Item, isWord, keyOf, meaningOf } from './items.ts';
import { keepsOfLight, luminanceSubject } from './luminance.ts';
import { isOffAxis } from './offAxis.ts';
import { isAtRest } from './powerName.ts';
import { firstWith, hasKey, type Scene } from './scene.ts';
import { statOf } from './selector.ts';
import { type Subject, settled } from './settled.ts';
import { directionOfTone } from './toneDirection.ts';

/** The concept items of a clause that suit a dimension, nearest to the number first. */
function conceptsFor(scene: Scene, dimension: string | undefined, near: Item | undefined): Item[] {
  const found = scene.items.filter((item) => {
    const concept = keyOf(item, 'concept');
    return concept !== undefined && fits(concept, dimension);
  });
  if (!near) return found;
  // What stands before the number is its subject more often than what follows.
  const cost = (item: Item) =>
    item.index < near.index ? near.index - item.index : (item.index - near.index) * 2.5;
  return found.sort((a, b) => cost(a) - cost(b));
}

/** "Green is undersaturated, falling 8.9 % short": of what the clause before was about. */
function saturationAgain({ items, previous }: Scene, near: Item): Subject | undefined {
  const said = previous?.said?.at(-1);
  const next = items[items.indexOf(near) + 1];
  const isShort = isWord(next, 'short', 'shy', 'short of', 'over', 'under');
  const ownThing = items.some((item) => keyOf(item, 'concept') ?? keyOf(item, 'hue') ?? keyOf(item, 'gamut'));
  if (said?.kind !== 'direction' || said.operand.type !== 'quantity' || !isShort || ownThing)
    return undefined;
  return said.operand.id.endsWith('.saturation') ? settled(said.operand.id, 'saturation', []) : undefined;
}

/** "At 10 % it is 16 % too dark", "…, by 16 %": how far a level lies from the target curve. */
function toneError(scene: Scene): Subject | undefined {
  const direction = directionOfTone(scene);
  const others = scene.items.some((item) => {
    const concept = keyOf(item, 'concept');
    return (
      keyOf(item, 'hue') ??
      keyOf(item, 'gamut') ??
      (concept !== undefined && concept !== 'eotf' ? concept : undefined)
    );
  });
  if (!direction || others || isOffAxis(scene) || !scene.axes.some(({ kind }) => kind === 'stimulus'))
    return undefined;
  return settled('eotf.error', 'eotf', [direction]);
}

/** "It follows BT.1886 to within 4 %", "luminance follows PQ within 10 %" */
function isHeldTo({ items }: Scene, near: Item): boolean {
  return (
    near.number?.comparator === '<=' &&
    isWord(items[items.indexOf(near) - 1], 'within') &&
    items.some(
      (item) =>
        item.index < near.index &&
        ((keyOf(item, 'direction') === 'on-target' && /pq|1886|hlg|curve/.test(item.text)) ||
          // "The target curve is followed to within 2 %"
          (isWord(item, 'curve') && items.some((word) => keyOf(word, 'direction') === 'on-target'))),
    )
  );
}

/**
 * The quantity that a number of this dimension (or a word without a number) speaks of: the clause's own words,
 * else what the sentence, the paragraph or the heading speaks of.
 */
export function subjectOf(scene: Scene, dimension: string | undefined, near?: Item): Subject {
  if (dimension === 'power' && near && isAtRest(scene, near)) return settled('standby', 'standby', []);
  // "A black screen measures 0.034 nits"
  if (dimension === 'luminance' && scene.conditions.level === 'black' && !isOffAxis(scene))
    return settled('black', 'black', [firstWith(scene, 'level')]);
  const tone = dimension === 'percent' ? toneError(scene) : undefined;
  if (tone) return tone;
  // "It takes 17.8 ms to answer"
  const deed = near && isWord(scene.items[scene.items.indexOf(near) + 1], 'to') && near.index + 2;
  if (dimension === 'time' && deed && isWord(scene.sentence[deed], 'answer', 'react'))
    return byConcept(scene, 'lag', scene.sentence[deed], dimension);
  // "In the game mode it answers in 17.8 ms"
  const answers = near && scene.items[scene.items.indexOf(near) - 2];
  if (dimension === 'time' && isWord(answers, 'answers', 'reacts', 'responds'))
    return byConcept(scene, 'lag', answers, dimension);
  if (dimension === 'percent' && near && isHeldTo(scene, near))
    return byConcept(scene, 'eotf', undefined, dimension);
  const lead = dimension === 'luminance' && near ? leadOf(scene, near) : undefined;
  // "Sustained, a full white screen reaches 511 nits"
  const opener = isWord(scene.sentence[1], ',') ? scene.items[0] : undefined;
  if (dimension === 'luminance' && opener === scene.sentence[0] && isWord(opener, 'sustained'))
    return luminanceSubject(scene, 'sustained', opener, dimension);
  if (dimension === 'percent' && near && keepsOfLight(scene, near)) return settled('peak.hold', 'hold', []);
  const again = dimension === 'percent' && near ? saturationAgain(scene, near) : undefined;
  if (again) return again;
  if (isWord(lead, 'sustained', 'settled', 'sustains', 'sustain'))
    return luminanceSubject(scene, 'sustained', lead, dimension);
  // "The balance reads 118 for blue and 95 for red"
  const behind = near ? scene.items.slice(scene.items.indexOf(near) + 1, scene.items.indexOf(near) + 3) : [];
  const forHue = isWord(behind[0], 'for') && keyOf(behind[1], 'hue') !== undefined;
  if (forHue && scene.sentence.some((item) => isWord(item, 'balance')))
    return { problem: 'the words do not say at which level the balance was read' };
  const corner = dimension === 'percent' ? (cellOf(scene) ?? spreadOf(scene)) : undefined;
  if (corner) return corner;
  for (const item of conceptsFor(scene, dimension, near)) {
    const concept = keyOf(item, 'concept')!;
    if (concept === 'totalWord' || concept === 'price' || concept === 'score' || concept === 'award')
      continue;
    // "The Plain takes direction: after adjustment its average is 0.4": no power.
    if (/^(?:takes?|took)$/.test(item.text) && dimension === '' && near && near.index - item.index > 4)
      continue;
    if (concept === 'whitePoint' && dimension === undefined && isOffAxis(scene))
      return settled('angle.de2000', 'angle', [item]);
    // Distances of a white are small: a greater number beside the word is something else's.
    if (
      concept === 'whitePoint' &&
      dimension === '' &&
      !isOffAxis(scene) &&
      (near?.number?.x ?? 0) >= 1 &&
      ((near?.number?.x ?? 0) < 20 || near?.number?.spelled)
    )
      continue;
    return byConcept(scene, concept, item, dimension);
  }
  const gamut = gamutOf(scene);
  // "In the BT.709 saturation sweeps, green is under-saturated by 9 %"
  // "Green falls short of its P3 target by 8 %": the gamut only says which target.
  const ofHue =
    firstWith(scene, 'hue') !== undefined &&
    scene.items.some(
      (item) =>
        (['over', 'under'].includes(keyOf(item, 'direction') ?? '') && /satur/.test(item.text)) ||
        /\btarget$/.test(item.text),
    );
  if (gamut?.item && !ofHue && (dimension === 'percent' || dimension === undefined))
    return byConcept(scene, 'coverage', undefined, dimension);
  const own = scene.items.find((item) => {
    const key = keyOf(item, 'concept');
    return (
      key !== undefined &&
      key !== 'totalWord' &&
      key !== 'whitePoint' &&
      key !== 'standby' &&
      key !== 'black' &&
      // "The Plain takes 21.6 ms"
      !(
        (dimension === 'time' || dimension === '') &&
        key === 'power' &&
        isWord(item, 'takes') &&
        spokeOfTime(scene)
      ) &&
      // "Keep that patch on for three minutes and it gives 690 nits"
      !(dimension === 'luminance' && key === 'chartError') &&
      // "The error has come down to 9 %": a share's error is that of what was spoken of.
      !(dimension === 'percent' && key === 'error') &&
      // "Passes 3 from 40 % saturation upwards": a place on the scale.
      !(dimension === '' && key === 'saturation' && scene.axes.some(({ items }) => items.includes(item))) &&
      // "Under 3 at every saturation": of all of them.
      !(
        dimension === '' &&
        key === 'saturation' &&
        keyOf(scene.sentence[item.index - 1], 'stat') === 'all'
      ) &&
      // "9.7 % oversaturated (mean of the sweep)": where it was measured, not what.
      !(dimension === 'percent' && /^(?:saturation )?sweeps?$/.test(item.text)) &&
      scene.sentence[item.index - 1]?.number?.role !== 'window'
    );
  });
  // "Red is out by 5.7": a hue's own error.
  if (
    dimension === '' &&
    (!own || keyOf(own, 'concept') === 'saturation') &&
    near &&
    (firstWith(scene, 'hue') ?? scene.hue) !== undefined &&
    (isOutBy(scene, near) || isAtFullSaturation(scene))
  )
    return errorSubject(scene, 'error', undefined);
  // "At 45 degrees the shift is 2.4"
  const shift = dimension === '' && !own && scene.items.find((item) => isWord(item, 'shift', 'colour shift'));
  if (shift && near && shift.index < near.index && scene.axes.some(({ kind }) => kind === 'angle'))
    return errorSubject(scene, 'error', undefined);
  // "At 45 degrees colours have shifted by 3.8"
  if (dimension === '' && !own && near && isOffAxis(scene) && isOutBy(scene, near))
    return errorSubject(scene, 'error', undefined);
  // A clause that names something else does not inherit: "uniformity of 3" is not the greyscale's average.
  // "Blue falls short of its target by 13 %" after a word on the gamut: the hue's own saturation.
  if (
    dimension === 'percent' &&
    !own &&
    firstWith(scene, 'hue') &&
    (hasKey(scene, 'direction', 'over', 'under') ||
      (gamut?.item !== undefined && ofHue) ||
      // "Cyan has gone from 6.5 % under to 2 % under"
      (near?.number?.state !== undefined &&
        isWord(scene.items[scene.items.indexOf(near) + 1], 'under', 'over')))
  )
    return byConcept(scene, 'saturation', undefined, dimension);
  // "It follows PQ, within 5 % at every step"
  const tracked = scene.previous?.said?.at(-1);
  const follows =
    tracked?.kind === 'direction' &&
    tracked.operand.type === 'quantity' &&
    tracked.operand.id === 'eotf.error';
  if (dimension === 'percent' && !own && follows) return byConcept(scene, 'eotf', undefined, dimension);
  // "Red is oversaturated (+9 %)", "blue -6 %": a signed share of a hue is its saturation.
  const isSigned = near?.number && (near.number.x < 0 || isWord(scene.sentence[near.index - 1], '+'));
  if (dimension === 'percent' && !own && isSigned && (hasKey(scene, 'hue') || scene.previous?.hue))
    return byConcept(scene, 'saturation', undefined, dimension);
  // "It's 22 % down on the middle, where the worst the Plain does is 12": percent again, of what nobody knows.
  const open = scene.previous?.items.some(
    ({ number }) => number?.dimension === 'percent' && (number.role === undefined || number.role === 'value'),
  );
  if (dimension === '' && !own && open && !scene.previous?.said && scene.concept === undefined)
    return { problem: 'the words do not say which quantity is meant' };
  const inForce = own ? undefined : (scene.concept ?? carriedConcept(scene.carry));
  const spread = dimension === '' && ['average', 'max', 'min'].includes(statOf(scene) ?? '');
  // "From 3.2 to 0.5": both states are of one quantity.
  const numbers = near?.number?.state ? scene.sentence.filter((item) => item.number?.state) : [near];
  const fittingNumber = (concept: string) =>
    numbers.every((item) => isPossible(concept, item?.number)) && !(spread && isOnePoint(concept));
  const carried =
    inForce === undefined || fittingNumber(inForce)
      ? inForce
      : earlierConcepts(scene.carry).find(fittingNumber);
  // After a word on blacks, 700 nits are the screen's light.
  const isBright = inForce === 'black' && dimension === 'luminance';
  if (inForce !== undefined && carried === undefined && !isBright && !(spread && isOnePoint(inForce)))
    return { problem: 'the words do not say which quantity is meant' };
  // "On a white field the error is 9 %"
  const uneven =
    dimension === 'percent' &&
    !own &&
    scene.conditions.level !== undefined &&
    !isOffAxis(scene) &&
    (hasKey(scene, 'concept', 'error') || carried === 'uniformity');
  if (uneven) return byConcept(scene, 'uniformity', firstWith(scene, 'concept', 'error'), dimension);
  // "The cast has gone. None of the steps is visible now": steps have an error, a cast has none.
  if (['tint', 'whitePoint', 'cct'].includes(carried ?? '') && dimension === undefined && seesSteps(scene))
    return errorSubject(scene, 'greyError', undefined);
  if (carried && fits(carried, dimension)) return byConcept(scene, carried, undefined, dimension);
  // "It peaks at 742 nits. Give that window a couple of minutes and it settles at 690"
  const goesOn =
    dimension === '' &&
    !own &&
    near?.number !== undefined &&
    near.number.x >= 20 &&
    near.number.outOf === undefined &&
    /^(?:peak|peak\.sustained|white)$/.test(scene.carry.said?.id ?? '') &&
    ['reach', 'fall', 'stay'].includes(keyOf(scene.items[scene.items.indexOf(near) - 1], 'verb') ?? '');
  if (goesOn) return luminanceSubject(scene, 'luminance', undefined, 'luminance');
  if (
    dimension === '' &&
    near?.number &&
    (!near.number.spelled || near.number.x >= 100) &&
    near.number.x >= 20 &&
    near.number.outOf === undefined &&
    !own &&
    ['peak', 'luminance', 'sdrWhite', 'sustained'].includes(carried ?? '') &&
    (scene.conditions.window !== undefined ||
      hasKey(scene, 'verb', 'reach', 'fall', 'rise', 'stay', 'keep') ||
      scene.items.some((item) =>
        isWord(item, 'got', 'get', 'measured', 'remain', 'more', 'less', 'was', 'is', "'s"),
      ) ||
      countsNothing(scene, near))
  )
    return luminanceSubject(scene, carried!, undefined, 'luminance');
  if (
    dimension === '' &&
    near !== undefined &&
    scene.conditions.origin.window === 'named' &&
    !own &&
    near.number !== undefined &&
    near.number.x > 20
  )
    return luminanceSubject(scene, 'luminance', undefined, 'luminance');
  // Plain words: an error is the greyscale's (`judging.md`, "Conditions").
  if (
    dimension === '' &&
    !own &&
    near?.number &&
    near.number.x < 30 &&
    ['average', 'max', 'min'].includes(statOf(scene) ?? '')
  )
    return errorSubject(scene, hasKey(scene, 'hue') ? 'error' : 'greyError', undefined);
  if (dimension === 'luminance' && !own) return luminanceSubject(scene, 'luminance', undefined, dimension);
  if (dimension === 'ratio' && !own) return byConcept(scene, 'contrast', undefined, dimension);
  if (dimension === 'de') return errorSubject(scene, 'error', undefined);
  if (dimension === 'temperature' && !own) return settled('white.cct', 'cct', []);
  if (dimension === 'power' && !own) return byConcept(scene, 'power', undefined, dimension);
  if (
    dimension === '' &&
    near?.number &&
    near.number.x < 30 &&
    scene.items.some((item) => /\b(?:levels?|steps?|greys?|tones?)$/.test(item.text))
  )
    return errorSubject(scene, 'greyError', undefined);
  if (
    dimension === 'percent' &&
    !own &&
    firstWith(scene, 'hue') &&
    scene.items.some((item) => /satur/.test(item.text))
  )
    return byConcept(scene, 'saturation', undefined, dimension);
  // "13.8 % down in the top right corner, and at mid-grey the loss grows to 23 %"
  const ofField = scene.conditions.level;
  if (dimension === 'percent' && !own && ofField && scene.previous?.said?.some(isOfUniformity))
    return settled(`uniformity.${ofField}`, 'uniformity', [firstWith(scene, 'level')]);
  if (dimension === 'angle' && firstWith(scene, 'hue'))
    return byConcept(scene, 'hueError', undefined, dimension);
  if (
    dimension === 'percent' &&
    !own &&
    isOffAxis(scene) &&
    hasKey(scene, 'verb', 'keep', 'lose', 'fall', 'stay')
  )
    return luminanceSubject(scene, 'luminance', undefined, dimension);
  if (
    dimension === '' &&
    near?.number &&
    near.number.x < 30 &&
    !own &&
    scene.axes.some((axis) => axis.kind === 'stimulus' && !axis.tone)
  )
    return errorSubject(scene, 'greyError', undefined);
  if (dimension === 'noise' && !own) return settled('noise', 'noise', []);
  if (dimension === 'duv' && !own) return { problem: 'the words do not say which difference is meant' };
  if (dimension === undefined && seesSteps(scene)) return errorSubject(scene, 'greyError', undefined);
  // "After two minutes: 99.4 %": what is left of the light.
  if (dimension === 'percent' && !own && near && !firstWith(scene, 'hue')) {
    const later = scene.items.find(
      ({ number }) => number?.role === 'seconds' && number.x * number.factor >= 120,
    );
    if (later && !scene.axes.some(({ kind }) => kind === 'angle'))
      return settled('peak.hold', 'hold', [later]);
  }
  // "The quickest of the five at 9.6 ms"
  const compared =
    dimension === 'time' &&
    [...(scene.previous?.items ?? []), ...scene.items].some((item) => comparedConcept(item) === 'lag');
  if (compared && !own) return byConcept(scene, 'lag', undefined, dimension);
  return { problem: 'the words do not say which quantity is meant' };
}

function comparedConcept(item: Item): string | undefined {
  const meaning =
    meaningOf(item, 'superlative') ?? meaningOf(item, 'comparative') ?? meaningOf(item, 'equative');
  return (meaning?.data as { concept: string } | undefined)?.concept;
}

function isOfUniformity(check: Check): boolean {
  return (
    check.kind === 'value' && check.operand.type === 'quantity' && check.operand.id.startsWith('uniformity.')
  );
}

/** Was a lag or a response time spoken of just before? */
function spokeOfTime({ carry, previous }: Scene): boolean {
  const before = previous?.said?.at(-1);
  const operand = before && ('operand' in before ? before.operand : 'a' in before ? before.a : undefined);
  const id = operand ? (operand.type === 'quantity' ? operand.id : '') : (carry.said?.id ?? '');
  return id === 'lag' || id === 'response';
}
