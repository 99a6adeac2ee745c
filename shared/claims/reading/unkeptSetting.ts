import { type Item, isWord } from './items.ts';
import { harmlessSwitches, settingNouns, switchWords } from './lexicon/settings.ts';
import { needBits } from './needs.ts';

const furthestSwitch = 6;

/** A sentence that does not meet these names no setting. */
export const ofSettings = needBits([
  { words: [...switchWords, ...settingNouns] },
  { words: ['with', 'without', 'at', 'on', 'in'] },
]);

/**
 * "With eco mode on", "with the sharpness turned up", "at its brightest setting": a state of the set that no run is kept
 * by. The item that names it; undefined when the words from `at` on name none.
 */
export function unkeptSettingAt(sentence: readonly Item[], at: number): Item | undefined {
  const item = sentence[at];
  if (isWord(item, 'at', 'on', 'in')) return settingBehind(sentence, at);
  if (!isWord(item, 'with', 'without')) return undefined;
  const rest = sentence.slice(at + 1, at + 1 + furthestSwitch);
  const end = rest.findIndex((word) => word.type === 'mark' || word.number !== undefined);
  const said = end < 0 ? rest : rest.slice(0, end);
  const place = said.findIndex((word, step) => step > 0 && switchWords.has(word.text));
  if (place < 0) return undefined;
  const named = said.slice(0, place);
  // "With local dimming off", "with HDR on", "with the lights out": conditions that runs and observations are kept by.
  // "With the abruptness of a bus running out of road"
  if (named.some((word, step) => isWord(word, 'of') && isWord(named[step + 1], 'a', 'an'))) return undefined;
  const isKept = named.some((word) => word.meanings.length > 0 || harmlessSwitches.has(word.text));
  // "With everything on the Umbra": the word belongs to what follows.
  const goesOn =
    isWord(said[place], 'on', 'up', 'off', 'down') &&
    said[place + 1] !== undefined &&
    isArticle(said[place + 1]!);
  return isKept || goesOn ? undefined : named.findLast((word) => !isArticle(word));
}

function isArticle(item: Item): boolean {
  return isWord(item, 'the', 'a', 'an', 'its', 'our', 'this', 'that', 'of', 'one', 'both');
}

function settingBehind(sentence: readonly Item[], at: number): Item | undefined {
  const rest = sentence.slice(at + 1, at + 5);
  const noun = rest.findIndex((word) => settingNouns.has(word.text));
  const isExtreme = rest
    .slice(0, noun)
    .some((word) =>
      /^(?:brightest|dimmest|highest|lowest|maximum|minimum|full|top|bottom|half)(?: |$)/.test(word.text),
    );
  return noun > 0 && isExtreme && rest.slice(0, noun).every((word) => word.type !== 'mark')
    ? rest[noun]
    : undefined;
}
