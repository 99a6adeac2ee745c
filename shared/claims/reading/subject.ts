import {
  countsNothing,
  isAtFullSaturation,
  isOfEachLevel,
  isOutBy,
  leadOf,
  seesSteps,
} from './besideNumber.ts';
import { carriedConcept, earlierConcepts } from './carry.ts';
import { cellOf, spreadOf } from './cell.ts';
import { fits, isOnePoint, isPossible } from './conceptFit.ts';
import { gamutOf, gamutSubject } from './gamut.ts';
import { type Item, isWord, keyOf } from './items.ts';
import { hueOf, isSdrWhite, keepsOfLight, luminanceSubject } from './luminance.ts';
import { isOffAxis } from './offAxis.ts';
import { isAtRest, powerId } from './powerName.ts';
import { firstWith, hasKey, type Scene } from './scene.ts';
import { statOf } from './selector.ts';
import { type Subject, settled } from './settled.ts';
import { directionOfTone } from './toneDirection.ts';
import { splitVariant } from './variant.ts';

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

function errorSubject(scene: Scene, concept: string, item: Item | undefined): Subject {
  const hue = hueOf(scene) ?? (scene.hue && concept === 'error' ? { hue: scene.hue } : undefined);
  const total = firstWith(scene, 'concept', 'totalWord');
  // "The colour error at 45 degrees": of the view from the side, where no chart is named.
  if (concept === 'chartError' && isOffAxis(scene) && !/chart|patch|checker/.test(item?.text ?? ''))
    return settled(
      scene.conditions.plane === 'vertical' ? 'angle.vertical.de2000' : 'angle.de2000',
      'angle',
      [item],
    );
  if (concept === 'deItp' || hasKey(scene, 'concept', 'deItp')) return settled('grey.deitp', 'deItp', [item]);
  if (hasKey(scene, 'concept', 'chartError'))
    return settled('chart.de2000', 'chartError', [firstWith(scene, 'concept', 'chartError')]);
  if (hue && concept !== 'greyError') return settled(`sweep.${hue.hue}.de2000`, 'error', [item, hue.item]);
  if (isOffAxis(scene) && concept !== 'greyError')
    return settled(
      scene.conditions.plane === 'vertical' ? 'angle.vertical.de2000' : 'angle.de2000',
      concept,
      [item],
    );
  if (total) return settled('grey.de2000.total', concept, [item, total]);
  if (concept === 'chartError') return settled('chart.de2000', concept, [item]);
  return settled('grey.de2000', concept === 'error' ? 'greyError' : concept, [item]);
}

function byConcept(
  scene: Scene,
  concept: string,
  item: Item | undefined,
  dimension: string | undefined,
): Subject {
  const hue = hueOf(scene);
  switch (concept) {
    case 'greyError':
    case 'error':
    case 'chartError':
    case 'deItp':
      return errorSubject(scene, concept, item);
    case 'angle':
      if (dimension === 'percent') return luminanceSubject(scene, 'luminance', item, dimension);
      return settled('angle.de2000', concept, [item]);
    case 'tint':
      return settled('grey.tint', concept, [item]);
    case 'gamma':
      return settled(isOfEachLevel(scene) ? 'gamma' : 'gamma.average', concept, [item]);
    case 'gammaSlope':
      return settled('gamma.slope', concept, [item]);
    case 'eotf':
      return settled('eotf.error', concept, [item]);
    case 'rolloff':
      return settled('eotf.rolloff', concept, [item]);
    case 'cct':
      return dimension === 'de' || dimension === ''
        ? errorSubject(scene, 'greyError', item)
        : settled('white.cct', concept, [item]);
    case 'duv':
      return settled('white.duv', concept, [item]);
    case 'whitePoint':
      if (dimension === 'temperature') return settled('white.cct', 'cct', [item]);
      if (dimension === 'luminance')
        return luminanceSubject(scene, isSdrWhite(scene) ? 'sdrWhite' : 'luminance', item, dimension);
      if (isOffAxis(scene) && (dimension === '' || dimension === 'de'))
        return settled('angle.de2000', 'angle', [item]);
      // A distance is small: "White drops to 158" is its luminance, "white is warm: 6,280" its temperature.
      if (dimension === '' && (scene.focus?.number?.x ?? 0) >= 1500)
        return settled('white.cct', 'cct', [item]);
      if (dimension === '' && (scene.focus?.number?.x ?? 0) >= 20)
        return luminanceSubject(scene, isSdrWhite(scene) ? 'sdrWhite' : 'luminance', item, 'luminance');
      if (dimension === '' && (scene.focus?.number?.x ?? 0) >= 1)
        return { problem: 'the words do not say which quantity is meant' };
      return settled('white.distance', concept, [item]);
    case 'coverage':
    case 'area':
      // "the area of its gamut": the gamut's area, not how much it covers.
      if (concept === 'coverage' && hasKey(scene, 'concept', 'area') && item && !keyOf(item, 'verb'))
        return byConcept(scene, 'area', firstWith(scene, 'concept', 'area'), dimension);
      return gamutSubject(scene, concept, item);
    case 'peak':
    case 'sustained':
    case 'luminance':
    case 'sdrWhite':
      return luminanceSubject(scene, concept, item, dimension);
    case 'hold':
      return settled('peak.hold', concept, [item]);
    case 'black':
      return settled('black', concept, [item]);
    case 'contrast':
      if (isOffAxis(scene))
        return settled(
          scene.conditions.plane === 'vertical' ? 'angle.vertical.contrast' : 'angle.contrast',
          concept,
          [item],
        );
      if (hasKey(scene, 'concept', 'contrastChequer'))
        return settled('contrast.chequer', 'contrastChequer', [
          item,
          firstWith(scene, 'concept', 'contrastChequer'),
        ]);
      if (scene.conditions.dimming !== undefined && !['off', 'none'].includes(scene.conditions.dimming))
        return settled('contrast.sequential', 'contrastSequential', [item]);
      return settled('contrast.native', concept, [item]);
    case 'contrastChequer':
      return settled('contrast.chequer', concept, [item]);
    case 'contrastSequential':
      return settled('contrast.sequential', concept, [item]);
    case 'uniformity':
      return settled(
        `uniformity.${scene.conditions.level ?? (/grey/.test(item?.text ?? '') ? 'grey50' : !item && hasKey(scene, 'concept', 'black') ? 'black' : 'white')}`,
        concept,
        [item],
      );
    case 'colourUniformity':
      return settled(`uniformity.${scene.conditions.level ?? 'white'}.colour`, concept, [item]);
    case 'lag': {
      const mode = scene.conditions.mode ?? scene.conditions.unmatched?.match(/“(.+)”/)?.[1];
      const id = mode && `lag.${mode.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-')}`;
      const unit = scene.context.units.find(
        (entry) => entry.id === (splitVariant(scene.unit).unit ?? scene.context.own),
      );
      if (id && unit?.quantities?.includes(id)) return settled(id, concept, [item]);
      if (id && unit?.facts.includes(id)) return settled(`fact:${id}`, concept, [item]);
      return settled('lag', concept, [item]);
    }
    case 'response':
      return settled('response', concept, [item]);
    case 'standby':
      return settled('standby', concept, [item]);
    case 'power': {
      const standby = firstWith(scene, 'concept', 'standby');
      if (standby) return settled('standby', 'standby', [item, standby]);
      return settled(powerId(scene), concept, [item]);
    }
    case 'noise':
      return settled('noise', concept, [item]);
    case 'saturation':
      if (!hue)
        return scene.hue
          ? settled(`sweep.${scene.hue}.saturation`, concept, [item])
          : { problem: 'the words do not say which hue’s saturation is meant' };
      return settled(`sweep.${hue.hue}.saturation`, concept, [item, hue.item]);
    case 'hueError':
      if (!hue) return { problem: 'the words do not say which hue is meant' };
      return settled(`sweep.${hue.hue}.hue`, concept, [item, hue.item]);
    case 'redBalance':
    case 'greenBalance':
    case 'blueBalance':
      return settled(`grey.balance.${concept.replace('Balance', '')}`, concept, [item]);
    case 'price':
      return settled('fact:price', concept, [item]);
    default:
      return { problem: `no quantity stands for “${item?.text ?? concept}”` };
  }
}

/**
 * The quantity that a number of this dimension (or a word without a number) speaks of: the clause's own words,
 * else what the sentence, the paragraph or the heading speaks of.
 */
export function subjectOf(scene: Scene, dimension: string | undefined, near?: Item): Subject {
  if (dimension === 'power' && near && isAtRest(scene, near)) return settled('standby', 'standby', []);
  const tone = dimension === 'percent' ? toneError(scene) : undefined;
  if (tone) return tone;
  // "It takes 17.8 ms to answer"
  const deed = near && isWord(scene.items[scene.items.indexOf(near) + 1], 'to') && near.index + 2;
  if (dimension === 'time' && deed && isWord(scene.sentence[deed], 'answer', 'react'))
    return byConcept(scene, 'lag', scene.sentence[deed], dimension);
  const lead = dimension === 'luminance' && near ? leadOf(scene, near) : undefined;
  // "Sustained, a full white screen reaches 511 nits"
  const opener = isWord(scene.sentence[1], ',') ? scene.items[0] : undefined;
  if (dimension === 'luminance' && opener === scene.sentence[0] && isWord(opener, 'sustained'))
    return luminanceSubject(scene, 'sustained', opener, dimension);
  if (dimension === 'percent' && near && keepsOfLight(scene, near)) return settled('peak.hold', 'hold', []);
  if (isWord(lead, 'sustained', 'settled')) return luminanceSubject(scene, 'sustained', lead, dimension);
  const corner = dimension === 'percent' ? (cellOf(scene) ?? spreadOf(scene)) : undefined;
  if (corner) return corner;
  for (const item of conceptsFor(scene, dimension, near)) {
    const concept = keyOf(item, 'concept')!;
    if (concept === 'totalWord' || concept === 'price' || concept === 'score' || concept === 'award')
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
  if (gamut?.item && (dimension === 'percent' || dimension === undefined))
    return byConcept(scene, 'coverage', undefined, dimension);
  const own = scene.items.find((item) => {
    const key = keyOf(item, 'concept');
    return (
      key !== undefined &&
      key !== 'totalWord' &&
      key !== 'whitePoint' &&
      key !== 'standby' &&
      key !== 'black' &&
      // "The error has come down to 9 %": a share's error is that of what was spoken of.
      !(dimension === 'percent' && key === 'error') &&
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
    firstWith(scene, 'hue') &&
    (isOutBy(scene, near) || isAtFullSaturation(scene))
  )
    return errorSubject(scene, 'error', undefined);
  // A clause that names something else does not inherit: "uniformity of 3" is not the greyscale's average.
  // "Blue falls short of its target by 13 %" after a word on the gamut: the hue's own saturation.
  if (
    dimension === 'percent' &&
    !own &&
    firstWith(scene, 'hue') &&
    (hasKey(scene, 'direction', 'over', 'under') ||
      // "Cyan has gone from 6.5 % under to 2 % under"
      (near?.number?.state !== undefined &&
        isWord(scene.items[scene.items.indexOf(near) + 1], 'under', 'over')))
  )
    return byConcept(scene, 'saturation', undefined, dimension);
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
  if (inForce !== undefined && carried === undefined && !(spread && isOnePoint(inForce)))
    return { problem: 'the words do not say which quantity is meant' };
  // "On a white field the error is 9 %"
  const uneven =
    dimension === 'percent' &&
    !own &&
    scene.conditions.level !== undefined &&
    !isOffAxis(scene) &&
    (hasKey(scene, 'concept', 'error') || carried === 'uniformity');
  if (uneven) return byConcept(scene, 'uniformity', firstWith(scene, 'concept', 'error'), dimension);
  // After a word on blacks, "in a 1 % window it reaches 700 nits" is not about black.
  if (
    carried === 'black' &&
    dimension === 'luminance' &&
    (scene.conditions.origin.window === 'named' || hasKey(scene, 'verb', 'reach')) &&
    (near?.number?.x ?? 0) >= 20
  )
    return luminanceSubject(scene, 'luminance', undefined, dimension);
  // "The cast has gone. None of the steps is visible now": steps have an error, a cast has none.
  if (['tint', 'whitePoint', 'cct'].includes(carried ?? '') && dimension === undefined && seesSteps(scene))
    return errorSubject(scene, 'greyError', undefined);
  if (carried && fits(carried, dimension)) return byConcept(scene, carried, undefined, dimension);
  if (
    dimension === '' &&
    near?.number &&
    !near.number.spelled &&
    near.number.x >= 20 &&
    near.number.outOf === undefined &&
    !own &&
    ['peak', 'luminance', 'sdrWhite', 'sustained'].includes(carried ?? '') &&
    (scene.conditions.window !== undefined ||
      hasKey(scene, 'verb', 'reach', 'fall', 'rise', 'stay', 'keep') ||
      scene.items.some((item) =>
        isWord(item, 'got', 'get', 'measured', 'remain', 'more', 'less', 'was', 'is'),
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
    return errorSubject(scene, 'greyError', undefined);
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
  return { problem: 'the words do not say which quantity is meant' };
}
