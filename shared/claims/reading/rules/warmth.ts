import { carriedConcept } from '../carry.ts';
import type { Findings } from '../finding.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { plays } from '../parts.ts';
import { firstWith, type Scene } from '../scene.ts';
import { emit } from './directionCheck.ts';
import type { SaidDirection } from './saidDirection.ts';

/** "White is on the cool side", "a touch warm": colour temperature by name. */
export function readWarmth(
  scene: Scene,
  findings: Findings,
  { item, key, hasValue }: SaidDirection,
): boolean {
  if (/warm|cool/.test(item.text) && key === 'on-target') {
    emit(scene, findings, 'white.cct', key, { stat: 'scalar' }, item, []);
    return true;
  }
  if (key !== 'warm' && key !== 'cool') return false;
  // "A room that smelt of warm dust": of a thing.
  const noun = scene.items[scene.items.indexOf(item) + 1];
  const isOfThing =
    isWord(item, 'warm', 'cool', 'cold') &&
    noun?.type === 'word' &&
    noun.meanings.length === 0 &&
    noun.index === item.index + 1 &&
    isWord(scene.items[scene.items.indexOf(item) - 1], 'of', 'with', 'the', 'a', 'in', 'like');
  if (isOfThing) return true;
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
  const isWhat =
    (isWord(words[0], 'which') && isWord(words[1], 'is', 'was')) ||
    // "5,990 K, on the warm side of neutral"
    (words.length === 1 && /\bside\b/.test(words[0]!.text)) ||
    // "…, so snow scenes come out on the cool side"
    (isWord(words[0], 'so') && /side$/.test(words.at(-1)?.text ?? ''));
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

/** "The colour temperature is too low": that of white, named as a quantity. */
export function readTemperature(
  scene: Scene,
  findings: Findings,
  { item, key, text }: SaidDirection,
): boolean {
  const cct = firstWith(scene, 'concept', 'cct');
  const white = cct ?? (key === 'on-target' ? firstWith(scene, 'concept', 'whitePoint') : undefined);
  if (!white) return false;
  const name = key === 'on-target' ? key : /low|under|below/.test(text) ? 'warm' : 'cool';
  emit(scene, findings, 'white.cct', name, { stat: 'scalar' }, item, [white]);
  return true;
}
