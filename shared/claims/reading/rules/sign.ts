import { type Item, isWord, keyOf } from '../items.ts';
import { firstWith, hasKey, type Scene } from '../scene.ts';
import { directionOfTone } from '../toneDirection.ts';

/** "7 % short of its target" is −7 %; "12 % under" too. */
export function signOf(scene: Scene): { sign: number; item?: Item } {
  const direction = firstWith(scene, 'direction', 'under', 'over') ?? directionOfTone(scene);
  if (direction) return { sign: keyOf(direction, 'direction') === 'under' ? -1 : 1, item: direction };
  const word = scene.items.find(
    (item) =>
      isWord(
        item,
        'short',
        'low',
        'dark',
        'darker',
        'dimmer',
        'pale',
        'down',
        'under',
        'below',
        'dim',
        'lacking',
        'fall-off',
        'falloff',
        'shy',
        'sags',
        'sag',
        'sagging',
        'dips',
        'dip',
        'sinks',
        'droops',
      ) || isWord(item, 'short of'),
  );
  if (word) return { sign: -1, item: word };
  // "The worst corner is 9 % off the centre"
  const off = scene.items.find(
    (item, at) =>
      isWord(item, 'off') &&
      isWord(scene.items[at + 1], 'the') &&
      isWord(scene.items[at + 2], 'centre', 'middle') &&
      hasKey(scene, 'stat', 'max', 'min'),
  );
  if (off) return { sign: -1, item: off };
  // "Green falls short of its P3 target by 8 %"
  const short =
    firstWith(scene, 'fellShort') ??
    scene.items.find((item) => /^(?:falls?|fell) short(?: of)?$/.test(item.text));
  if (short) return { sign: -1, item: short };
  const fallOff = scene.items.find(
    (item, at) =>
      keyOf(item, 'verb') === 'lose' ||
      (/^(?:fall|drop)$/.test(item.text) && isWord(scene.items[at + 1], 'off')),
  );
  if (fallOff) return { sign: -1, item: fallOff };
  const up = scene.items.find((item) =>
    isWord(item, 'over', 'high', 'above', 'bright', 'up', 'beyond', 'too'),
  );
  if (up) return { sign: 1, item: up };
  // "Cyan was 6 % under, and after adjustment it is 2 %": the side was said before.
  const goesOn = scene.previous && !scene.items.some((item) => keyOf(item, 'concept') ?? keyOf(item, 'hue'));
  if (goesOn) return { sign: signOf(scene.previous!).sign };
  // "Shadows are 12 % too dark. At 10 % it is 20 %."
  const before = scene.previous ? undefined : scene.carry.statement?.check;
  const isIt = scene.items.some((item) => keyOf(item, 'pronoun') === 'it');
  return { sign: isIt && before?.kind === 'value' && before.stated.x < 0 ? -1 : 1 };
}

const hueCircle = ['red', 'yellow', 'green', 'cyan', 'blue', 'magenta'];

/** "4° towards magenta": +1 when the named hue follows on the circle, −1 when it comes before, 0 when none is named. */
export function hueSide(scene: Scene, id: string): number {
  const own = hueCircle.indexOf(id.split('.')[1]!);
  for (const item of scene.items) {
    const hue = keyOf(item, 'hue');
    const place = hue === undefined ? -1 : hueCircle.indexOf(hue);
    if (place < 0 || place === own) continue;
    if ((own + 1) % 6 === place) return 1;
    if ((own + 5) % 6 === place) return -1;
  }
  return 0;
}
