import { hueSaidOfGrey } from './hueSaid.ts';
import { type Item, isWord, keyOf } from './items.ts';
import { isOffAxis } from './offAxis.ts';
import { firstWith, type Scene } from './scene.ts';
import { type Subject, settled } from './settled.ts';

/** The hue that the clause itself names as its subject; "the whites go blue" speaks of white. */
export function hueOf(scene: Scene): { hue: string; item?: Item } | undefined {
  const own = scene.items.filter(
    (item, at) =>
      keyOf(item, 'hue') &&
      !hueSaidOfGrey(scene.items, item) &&
      // "Towards red, with an average error of 2.5": where to, not of what.
      !isWord(scene.items[at - 1], 'towards', 'toward') &&
      keyOf(scene.items[at - 1], 'lean') === undefined,
  );
  const [first] = own;
  if (!first) return undefined;
  // "Nobody would fault the reds; the blues are 6 % pale": behind the mark another hue is spoken of.
  const { focus } = scene;
  const near = focus && own.findLast((item) => item.index < focus.index);
  const apart =
    near && scene.sentence.slice(first.index, near.index).some((item) => isWord(item, ';', ':', 'but'));
  const hue = apart ? near : first;
  return { hue: keyOf(hue, 'hue')!, item: hue };
}

/** Light as cd/m² or as a share: the peak, SDR white, what is held, what is left off axis. */
export function luminanceSubject(
  scene: Scene,
  concept: string,
  item: Item | undefined,
  dimension: string | undefined,
): Subject {
  const signal = scene.conditions.signal;
  const hue = hueOf(scene);
  if (dimension === 'percent') {
    if (isOffAxis(scene))
      return settled(
        scene.conditions.plane === 'vertical' ? 'angle.vertical.luminance' : 'angle.luminance',
        'luminance',
        [item],
      );
    if (hue) return settled(`sweep.${hue.hue}.luminance`, 'luminance', [item, hue.item]);
    const later = scene.items.find(
      (entry, at) =>
        (entry.number?.role === 'seconds' && entry.number.x * entry.number.factor >= 120) ||
        // "After a few minutes", "over minutes"
        (isWord(entry, 'minutes') &&
          (keyOf(scene.items[at - 1], 'hedge') === 'vague' || isWord(scene.items[at - 1], 'over'))),
    );
    if (later) return settled('peak.hold', 'hold', [item, later]);
    if (firstWith(scene, 'direction', 'over', 'under')) return settled('eotf.error', 'eotf', [item]);
    // "The luminance stays within 0.8 % of the BT.1886 target"
    const curve = scene.items.find((entry) =>
      /^(?:bt ?\.? ?1886|pq|hlg)(?: |$)|target|1886/.test(entry.text),
    );
    if (curve) return settled('eotf.error', 'eotf', [item, curve]);
    return { problem: 'the words do not say what the percentage of luminance is taken of' };
  }
  if (dimension === undefined && isOffAxis(scene) && concept === 'luminance')
    return settled(
      scene.conditions.plane === 'vertical' ? 'angle.vertical.luminance' : 'angle.luminance',
      'luminance',
      [item],
    );
  if (dimension === 'luminance' && isOffAxis(scene))
    return {
      problem: 'luminance to the side is kept as a percentage of the luminance in front, not in cd/m²',
    };
  const minutes = scene.items.find(
    (entry) => entry.number?.role === 'seconds' && entry.number.x * entry.number.factor >= 120,
  );
  const shortTime = scene.items.find(
    (entry) =>
      entry.number?.role === 'seconds' &&
      entry.number.x * entry.number.factor > 10 &&
      entry.number.x * entry.number.factor < 120,
  );
  // "Left on for minutes, the 10 % window settles at 1,416 nits"
  const settles = scene.items.some((entry) => /^settles?(?: at)?$|^settled(?: at)?$/.test(entry.text));
  const lasting =
    (settles && (isRequested(scene) || scene.items.some((entry) => /\bminutes$/.test(entry.text)))) ||
    isLeftOn(scene);
  if (!minutes && isLeftOn(scene) && scene.conditions.window === undefined)
    return { problem: 'the words do not say of which patch' };
  if (concept === 'sustained' || lasting || (minutes && concept !== 'black'))
    return settled('peak.sustained', 'sustained', [item, minutes]);
  const wordedTime = scene.items.some(
    (entry, at) =>
      entry.number === undefined &&
      /\b(?:seconds?|minutes?|hours?)$/.test(entry.text) &&
      isWord(scene.items[at - 1], 'after', 'for', 'within'),
  );
  if ((shortTime || wordedTime) && concept !== 'black')
    return { problem: 'no quantity stands for the luminance at that moment' };
  // After adjustment plain "luminance" is SDR white, as only SDR is adjusted by a fixed target (`judging.md`: all others → SDR).
  const plain = concept === 'luminance' && signal === undefined && scene.conditions.window === undefined;
  if (
    (concept === 'sdrWhite' && (signal === undefined || signal === 'SDR')) ||
    signal === 'SDR' ||
    (plain && scene.conditions.stage === 'adjusted')
  )
    return settled('white', 'sdrWhite', [item]);
  return settled('peak', 'peak', [item]);
}

/** "Leave a 10 % window up and it settles at 766 nits" */
function isRequested({ sentence }: Scene): boolean {
  const first = isWord(sentence[0], 'but', 'and', 'now') ? sentence[1] : sentence[0];
  return isWord(first, 'leave', 'keep', 'hold', 'park', 'let');
}

/** "Leave that patch up for a few minutes and it sags to 658 nits" */
function isLeftOn({ sentence }: Scene): boolean {
  const first = isWord(sentence[0], 'but', 'and', 'now') ? sentence[1] : sentence[0];
  return (
    isWord(first, 'leave', 'keep', 'hold', 'left', 'kept') &&
    sentence.some(
      (item, at) => /\bminutes$/.test(item.text) || (isWord(item, 'while') && isWord(sentence[at - 1], 'a')),
    )
  );
}

/** "White reaches 142 nits": the 100 % grey, unless a window or an HDR signal makes it a peak. */
export function isSdrWhite(scene: Scene): boolean {
  const { signal, window } = scene.conditions;
  return (signal === undefined || signal === 'SDR') && window === undefined;
}

/**
 * "A 10 % window opens at 1,438 nits and holds 96 % of it", "the 10 % window keeps 96 % of its light": what is left of a
 * patch's light after a time.
 */
export function keepsOfLight(scene: Scene, number: Item): boolean {
  if (isOffAxis(scene) || scene.conditions.window === undefined) return false;
  const at = scene.items.indexOf(number);
  const verb = scene.items.findLast(
    (item, index) =>
      index < at &&
      (['keep', 'lose'].includes(keyOf(item, 'verb') ?? '') || /^settle[sd]?(?: at)?$/.test(item.text)),
  );
  if (!verb || !isWord(scene.items[at + 1], 'of')) return false;
  const whole = scene.items[at + 2];
  const ofBefore =
    isWord(whole, 'it', 'that', 'this') &&
    scene.previous?.said?.some(
      (check) => check.kind === 'value' && check.operand.type === 'quantity' && check.operand.id === 'peak',
    );
  const patch = scene.items.findIndex(
    (item) => item.index < verb.index && (item.number?.role === 'window' || keyOf(item, 'fullScreen')),
  );
  let lead = patch - 1;
  while (isWord(scene.items[lead], 'the', 'a', 'that', 'this', 'same')) lead -= 1;
  const patchKeeps =
    patch >= 0 &&
    !isWord(scene.items[lead], 'in', 'at', 'on', 'with', 'over') &&
    isWord(whole, 'its') &&
    ['luminance', 'peak'].includes(keyOf(scene.items[at + 3], 'concept') ?? '');
  return ofBefore === true || patchKeeps;
}
