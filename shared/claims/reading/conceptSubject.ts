import { isOfEachLevel } from './besideNumber.ts';
import { carriedConcept } from './carry.ts';
import { gamutSubject } from './gamut.ts';
import { type Item, isWord, keyOf } from './items.ts';
import { hueOf, isSdrWhite, luminanceSubject } from './luminance.ts';
import { isOffAxis } from './offAxis.ts';
import { plays } from './parts.ts';
import { powerId } from './powerName.ts';
import { firstWith, hasKey, type Scene } from './scene.ts';
import { type Subject, settled } from './settled.ts';
import { splitVariant } from './variant.ts';

/** The colour error that the clause speaks of: of the greyscale, a hue, the chart or to the side. */
export function errorSubject(scene: Scene, concept: string, item: Item | undefined): Subject {
  const hue = hueOf(scene) ?? (scene.hue && concept === 'error' ? { hue: scene.hue } : undefined);
  // "The worst hue is blue; the best, yellow, stays under 1": of a hue, and no word says in what.
  const ofHue = item === undefined && scene.previous?.items.slice(-2).some((word) => keyOf(word, 'hue'));
  if (ofHue && (!hue || concept === 'greyError'))
    return { problem: 'the words do not say which quantity is meant' };
  // "No sweep contains an error above 3": of each hue, one by one.
  const sweep = scene.items.find((word) => isWord(word, 'sweep', 'sweeps'));
  if (sweep && !hue && concept !== 'greyError') return { problem: 'no quantity is of several hues at once' };
  // "The average error of the six hues": no quantity averages them.
  const hues = scene.items.find((word) => isWord(word, 'hues', 'primaries', 'secondaries'));
  if (hues && !hue && concept !== 'greyError' && !hasKey(scene, 'concept', 'greyError', 'chartError'))
    return { problem: 'no quantity is of several hues at once' };
  // "Skin patches stay under 2": some of the chart, which the reading does not tell apart.
  const skin = scene.items.find((word) => isWord(word, 'skin', 'flesh', 'pastel'));
  if (skin && (item === undefined || concept === 'chartError'))
    return { problem: 'the words name some of the colours, and no quantity is of these alone' };
  const total = firstWith(scene, 'concept', 'totalWord');
  // "The colour error at 45 degrees": of the view from the side, where no chart is named.
  if (concept === 'chartError' && isOffAxis(scene) && !/chart|patch|checker/.test(item?.text ?? ''))
    return settled(
      scene.conditions.plane === 'vertical' ? 'angle.vertical.de2000' : 'angle.de2000',
      'angle',
      [item],
    );
  const sweepId = concept === 'chartError' ? sweepBefore(scene, item) : undefined;
  if (sweepId !== undefined) return settled(sweepId, 'error', [item]);
  if (concept === 'chartError' && isOfGreys(scene, item)) return errorSubject(scene, 'greyError', item);
  if (concept === 'deItp' || hasKey(scene, 'concept', 'deItp')) return settled('grey.deitp', 'deItp', [item]);
  const chart = firstWith(scene, 'concept', 'chartError');
  const ofGreys =
    concept === 'greyError' && (isColourError(item) || (chart !== undefined && isOfGreys(scene, chart)));
  if (chart && !ofGreys)
    return settled('chart.de2000', 'chartError', [firstWith(scene, 'concept', 'chartError')]);
  // "Its worst blue lands at 1.3" behind a word on the greys: the hue is named here.
  const ofNamedHue = hue?.item !== undefined && item === undefined && keyOf(hue.item, 'hue') !== undefined;
  if (hue && (concept !== 'greyError' || ofNamedHue))
    return settled(`sweep.${hue.hue}.de2000`, 'error', [item, hue.item]);
  if (isOffAxis(scene) && concept !== 'greyError')
    return settled(
      scene.conditions.plane === 'vertical' ? 'angle.vertical.de2000' : 'angle.de2000',
      concept,
      [item],
    );
  // "Colours in SDR average 1.6"
  const colours = item === undefined ? scene.items[0] : undefined;
  if (isWord(colours, 'colours') && hasKey(scene, 'stat', 'average', 'max'))
    return settled('chart.de2000', 'chartError', [colours]);
  if (total) return settled('grey.de2000.total', concept, [item, total]);
  if (concept === 'chartError') return settled('chart.de2000', concept, [item]);
  return settled('grey.de2000', concept === 'error' ? 'greyError' : concept, [item]);
}

/** "The red sweep averages 1.8, and no patch in it is over 3": of the sweep that was just spoken of. */
function sweepBefore({ items, previous }: Scene, patch: Item | undefined): string | undefined {
  const said = previous?.said?.at(-1);
  const id = said?.kind === 'value' && said.operand.type === 'quantity' ? said.operand.id : '';
  const at = patch ? items.indexOf(patch) : -1;
  const inIt =
    isWord(patch, 'patch', 'patches') && isWord(items[at + 1], 'in', 'of') && isWord(items[at + 2], 'it');
  return inIt && /^sweep\.[a-z]+\.de2000/.test(id) ? id : undefined;
}

function isColourError(item: Item | undefined): boolean {
  return /^colou?r (?:error|deviation|δe|delta)/.test(item?.text ?? '');
}

/** "The greyscale has an average colour error of 2.1", "the colour error stays under 3 up to 70 % of the signal": no chart has levels. */
function isOfGreys(scene: Scene, item: Item | undefined): boolean {
  const { items } = scene;
  if (!isColourError(item)) return false;
  const leads = scene.items.find((word) => keyOf(word, 'concept') !== undefined);
  if (keyOf(leads, 'concept') === 'greyError') return true;
  // "The colour error of the SDR greyscale"
  const at = item ? items.indexOf(item) : -1;
  const behind = items.slice(at + 1, at + 5);
  if (isWord(behind[0], 'of', 'in') && behind.some((word) => keyOf(word, 'concept') === 'greyError'))
    return true;
  const spoken = scene.concept ?? carriedConcept(scene.carry);
  return spoken === 'greyError' && !scene.items.some((word) => keyOf(word, 'unit') !== undefined);
}

/** Was a tint of the greys what was just stated, and does the clause name no white? */
function saysTint({ items, previous }: Scene): boolean {
  const said = previous?.said?.at(-1);
  return (
    said?.kind === 'direction' &&
    said.operand.type === 'quantity' &&
    said.operand.id === 'grey.tint' &&
    !items.some((item) => isWord(item, 'white', 'white point'))
  );
}

/** "Gamma in the shadows", and not "gamma averages 1.9, and the shadows come up". */
function isOfTone({ items, axes }: Scene, gamma: Item | undefined): boolean {
  return axes.some(({ tone, items: [first] }) => {
    if (!tone || !first) return false;
    const at = items.indexOf(first);
    const lead = items.slice(Math.max(0, at - 3), at);
    return !(gamma && first.index > gamma.index && lead.some((item) => isWord(item, 'and', 'but')));
  });
}

/** The quantity that a concept stands for in this clause, beside a number of this dimension. */
export function byConcept(
  scene: Scene,
  concept: string,
  item: Item | undefined,
  dimension: string | undefined,
): Subject {
  const hue = hueOf(scene);
  switch (concept) {
    case 'chartError':
      // "A patch of 2 % of the screen reaches 705": no error is so large; its light is meant.
      if ((dimension === '' || dimension === 'luminance') && (scene.focus?.number?.x ?? 0) >= 100)
        return luminanceSubject(scene, 'luminance', item, 'luminance');
      return errorSubject(scene, concept, item);
    case 'greyError':
    case 'error':
    case 'deItp':
      return errorSubject(scene, concept, item);
    case 'angle':
      if (dimension === 'percent') return luminanceSubject(scene, 'luminance', item, dimension);
      return settled('angle.de2000', concept, [item]);
    case 'tint':
      return settled('grey.tint', concept, [item]);
    case 'gamma':
      return settled(isOfEachLevel(scene) || isOfTone(scene, item) ? 'gamma' : 'gamma.average', concept, [
        item,
      ]);
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
      // "The greys have a magenta tint, 0.0104 in Δu′v′"
      if ((dimension === '' || dimension === 'uv') && saysTint(scene))
        return settled('grey.tint', 'tint', [item]);
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
      // "The tint is Δu′v′ 0.004 at worst"
      if (hasKey(scene, 'concept', 'tint') && /^(?:δ|d)?u'v'/.test(item?.text ?? ''))
        return { problem: 'the words do not say of which levels' };
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
      // "Full white comes out at 6,000 K"
      if (dimension === 'temperature') return settled('white.cct', 'cct', [item]);
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
      // "No more than 96 W, standby included"
      const beside = standby && scene.items[scene.items.indexOf(standby) + 1];
      if (isWord(beside, 'included', 'excluded', 'aside'))
        return { problem: 'the words do not say which power is meant' };
      if (standby) return settled('standby', 'standby', [item, standby]);
      return settled(powerId(scene), concept, [item]);
    }
    case 'noise':
      return settled('noise', concept, [item]);
    case 'saturation':
      // "Blue is 4 % too strong in the greys": of the balance, and no saturation.
      if (scene.items.some((entry) => plays(entry, 'greys') && !keyOf(entry, 'hue')))
        return { problem: 'the words speak of greys and of a hue at once' };
      if (!hue)
        return scene.hue
          ? settled(`sweep.${scene.hue}.saturation`, concept, [item])
          : { problem: 'the words do not say which hue’s saturation is meant' };
      return settled(`sweep.${hue.hue}.saturation`, concept, [item, hue.item]);
    case 'hueError':
      if (!hue && (scene.hue ?? hueBefore(scene)) !== undefined)
        return settled(`sweep.${scene.hue ?? hueBefore(scene)}.hue`, concept, [item]);
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

/** "Blue is oversaturated by 4 %. Its hue turns by 4.5 degrees": the one that the sentence before spoke of. */
function hueBefore({ carry }: Scene): string | undefined {
  return /^sweep\.([a-z]+)\./.exec(carry.said?.id ?? '')?.[1];
}
