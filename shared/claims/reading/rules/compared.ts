import { carriedConcept } from '../carry.ts';
import { gamutOf, inDiagram } from '../gamut.ts';
import { isWord, keyOf, meaningOf } from '../items.ts';
import { isOffAxis } from '../offAxis.ts';
import { powerId } from '../powerName.ts';
import { type Quantity, quantityById } from '../quantity.ts';
import { firstWith, hasKey, type Scene } from '../scene.ts';
import { isSettled } from '../settled.ts';
import { subjectOf } from '../subject.ts';
import type { ComparativeEntry } from './comparativeEntry.ts';
import { namesOtherThing, onlySaid, saidBefore, saidSeveral } from './saidBefore.ts';

/** The quantity that a comparative word compares: its own, or the clause's where it names none. */
export function comparedQuantity(scene: Scene, entry: ComparativeEntry): Quantity | { problem: string } {
  const quantity = quantityOfComparative(scene, entry);
  return 'problem' in quantity ? quantity : inDiagram(scene, quantity);
}

function quantityOfComparative(scene: Scene, entry: ComparativeEntry): Quantity | { problem: string } {
  const { concept } = entry;
  // "Black is 0.044 cd/m²; the Plain's is four times as high": of what was spoken of, no height.
  const before = scene.previous?.said && onlySaid(scene.previous.said);
  const asHigh =
    concept === 'fact:width' ||
    scene.items.some((item, at) => isWord(item, 'high', 'wide') && isWord(scene.items[at - 1], 'as'));
  if (asHigh && before && /^(?!fact:|$)/.test(before.id)) return quantityById(before.id);
  // "The foot is 410 mm wide, less than half as wide as the Kasulind's"
  const ofFoot = scene.previous?.said?.some((check) => check.kind === 'fact' && check.key === 'stand.width');
  if (concept === 'fact:width' && ofFoot && !scene.units.some(({ role }) => role === 'subject'))
    return quantityById('fact:stand.width');
  // "A foot half as wide as the Kasulind's"
  if (concept === 'fact:width' && hasKey(scene, 'fact', 'stand.width'))
    return quantityById('fact:stand.width');
  const signal = scene.conditions.signal;
  switch (concept) {
    case 'peak':
      if (isOffAxis(scene))
        return hasKey(scene, 'verb', 'keep', 'lose')
          ? keptOffAxis(scene)
          : { problem: 'off axis only the share of the luminance in front is kept, not the luminance' };
      if (signal === undefined && (saidBefore(scene)?.id === 'white' || isOfWhite(scene)))
        return quantityById('white');
      return quantityById(signal === 'SDR' ? 'white' : 'peak');
    case 'price':
      return quantityById('fact:price');
    // "Its pixels respond a millisecond faster"
    case 'lag':
      return quantityById(hasKey(scene, 'concept', 'response') ? 'response' : 'lag');
    case 'greyError': {
      const subject = subjectOf(scene, 'de');
      return isSettled(subject) ? subject.quantity : quantityById('grey.de2000');
    }
    case 'contrast':
      return quantityById(
        firstWith(scene, 'concept', 'contrastChequer') ? 'contrast.chequer' : 'contrast.native',
      );
    case 'coverage': {
      const gamut = gamutOf(scene);
      if (!gamut) return { problem: 'the words do not say which reference gamut is compared' };
      return quantityById(`coverage.${gamut.gamut}.xy`);
    }
    case 'uniformity':
      return quantityById(`uniformity.${scene.conditions.level ?? 'white'}`);
    case 'black':
      return quantityById('black');
    case 'cct':
      return quantityById('white.cct');
    case 'power': {
      // "In HDR it has the lowest consumption", whatever was said of standby before: standby knows no signal.
      if (signal !== undefined && !hasKey(scene, 'concept', 'standby')) return quantityById(powerId(scene));
      const subject = subjectOf(scene, 'power');
      return isSettled(subject)
        ? subject.quantity
        : quantityById(`power.${signal && signal !== 'SDR' ? 'hdr' : 'sdr'}`);
    }
    case '': {
      const fact = comparedFact(scene);
      if (fact) return quantityById(fact);
      return quantityOfWords(scene);
    }
    default:
      return quantityById(concept);
  }
}

/** "more HDMI ports than", "as many USB ports as", "a longer warranty than": the fact that is compared. */
function comparedFact(scene: Scene): string | undefined {
  for (const [at, item] of scene.items.entries()) {
    const before = scene.items[at - 1];
    if (!keyOf(before, 'comparative') && !isWord(before, 'many', 'as many')) continue;
    const fact = meaningOf(item, 'fact');
    const version = scene.items[at + 1];
    const ofVersion = fact?.data === 'count' && version && /^\d\.\d$/.test(version.text);
    if (ofVersion) return `fact:${fact.key}.${version.text}`;
    if (fact && ['count', 'months', 'frequency'].includes(String(fact.data))) return `fact:${fact.key}`;
    if (isWord(item, 'hdmi') && version && /^\d\.\d$/.test(version.text))
      return `fact:hdmi.count.${version.text}`;
  }
  if (scene.items.some((item) => keyOf(item, 'concept'))) return undefined;
  const noun = scene.items.find((item) =>
    ['count', 'months', 'frequency', 'mass', 'length'].includes(String(meaningOf(item, 'fact')?.data)),
  );
  if (noun) return `fact:${keyOf(noun, 'fact')}`;
  return undefined;
}

/** A price, the light that is kept, what the clause names, or what was said just before it. */
function quantityOfWords(scene: Scene): Quantity | { problem: string } {
  // "It leaves a mild blue cast. The Hearth's average is the best of the three": the error's, as a tint has none.
  const isAverage = scene.items.some((item) => ['average', 'max'].includes(keyOf(item, 'stat') ?? ''));
  const isNamed = scene.items.some(
    (item) => keyOf(item, 'concept') ?? keyOf(item, 'gamut') ?? keyOf(item, 'hue'),
  );
  if (isAverage && !isNamed && (scene.concept ?? carriedConcept(scene.carry)) === 'tint')
    return quantityById('grey.de2000');
  const cost = scene.items.find((item) => keyOf(item, 'verb') === 'cost');
  // "Twice the contrast at half the price of the Umbra"
  const isTwo = cost?.text === 'price of' && scene.items.some((item) => keyOf(item, 'concept') !== undefined);
  if (isTwo) return { problem: 'the words do not say which quantity is meant' };
  if (cost) return quantityById('fact:price');
  // "You can have it for 15 % less than the Kasulind"
  const paid = scene.items.some(
    (item, at) => item.number?.dimension === 'percent' && isWord(scene.items[at - 1], 'for'),
  );
  if (paid && scene.items.some((item) => isWord(item, 'have', 'yours', 'buy', 'get', 'sells', 'goes')))
    return quantityById('fact:price');
  const keeps = scene.items.findIndex(
    (item) => ['keep', 'lose'].includes(keyOf(item, 'verb') ?? '') || isWord(item, ...fading),
  );
  const named = scene.items.find((item) => keyOf(item, 'concept'));
  if (keeps >= 0) {
    if (isOffAxis(scene) && (!named || ['luminance', 'angle', 'peak'].includes(keyOf(named, 'concept')!)))
      return keptOffAxis(scene);
    // "It holds on to its peak better than the Sable"
    const behind = scene.items.slice(keeps + 1, keeps + 5);
    const end = behind.findIndex(
      (item) => !isWord(item, 'on', 'to', 'hold', 'of', 'its', 'the', 'more', 'up'),
    );
    const held = keyOf(behind[Math.max(0, end)], 'concept') === 'peak';
    if (held) return quantityById('peak.hold');
  }
  const said = saidBefore(scene);
  if (said) return said;
  if (!named && !hasKey(scene, 'fact') && !hasKey(scene, 'gamut') && namesOtherThing(scene))
    return { problem: 'the words name a thing for which no quantity stands' };
  if (saidSeveral(scene)) return { problem: 'the words do not say which of the quantities before is meant' };
  const subject = subjectOf(scene, undefined);
  return isSettled(subject) ? subject.quantity : { problem: subject.problem };
}

const fading = ['fades', 'fade', 'faded', 'dims', 'darkens'];

function keptOffAxis(scene: Scene): Quantity {
  return quantityById(scene.conditions.plane === 'vertical' ? 'angle.vertical.luminance' : 'angle.luminance');
}

/** "Loses less light": what is kept is measured, so that less lost is more. */
export function isOfLoss(scene: Scene, quantity: Quantity): boolean {
  if (!/^angle\..*luminance$|^peak\.hold$/.test(quantity.id)) return false;
  if (hasKey(scene, 'verb', 'lose', 'fall') || scene.items.some((item) => isWord(item, ...fading)))
    return true;
  // "It loses 44 % of its luminance at 45 degrees, more than the Plain": more is lost.
  const [first] = scene.items.filter(
    (item) => item.type !== 'mark' && !isWord(item, 'and', 'but', 'which', 'is'),
  );
  return (
    isWord(first, 'more', 'less', 'much', 'far', 'rather', 'slightly', 'a') &&
    scene.previous !== null &&
    hasKey(scene.previous, 'verb', 'lose')
  );
}

/** The quantity of "twice the Kasulind's": the clause's own, else what was said just before. */
export function subjectQuantity(scene: Scene): Quantity | { problem: string } {
  if (scene.items.some((item) => keyOf(item, 'concept') === 'price')) {
    // "60 % of the Umbra's contrast for 80 % of its price": of which the number is, two words may say.
    const other = scene.items.some((item) => !['price', undefined].includes(keyOf(item, 'concept')));
    return other ? { problem: 'the words do not say which quantity is meant' } : quantityById('fact:price');
  }
  const fact = comparedFact(scene);
  return fact ? quantityById(fact) : quantityOfWords(scene);
}

/** "White is 20 per cent dimmer than before": the full white of the signal that most measurements are of. */
function isOfWhite({ items }: Scene): boolean {
  return items.some((item, at) => isWord(item, 'white') && isWord(items[at + 1], 'is', 'was'));
}
