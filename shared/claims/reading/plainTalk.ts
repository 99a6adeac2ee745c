import { type Item, isWord, keyOf, type MeaningKind } from './items.ts';

const ofSets: readonly MeaningKind[] = [
  'concept',
  'unit',
  'maker',
  'gamut',
  'fact',
  'topic',
  'house',
  'signal',
  'mode',
  'stage',
  'tone',
  'format',
  'pronoun',
  'hue',
  'tint',
  'direction',
  'dimming',
  'verb',
];

/** Does any word of the sentence have to do with a set, a picture or a measurement? */
export function speaksOfSets(sentence: readonly Item[]): boolean {
  return sentence.some(
    (item) =>
      ofSets.some((kind) => keyOf(item, kind) !== undefined) ||
      isWord(
        item,
        'set',
        'television',
        'picture',
        'image',
        'pixel',
        'pixels',
        'factor',
        'score',
        'metre',
        'level',
        'levels',
        'step',
        'steps',
        'patch',
        'patches',
        'window',
      ),
  );
}

const persons =
  /^(?:i|we|he|she|you|they|someone|somebody|nobody|everyone|us|my|his|her|our|mother|father|daughter|son|sister|brother|wife|husband|aunt|uncle|neighbours?|cat|dog|youngest|eldest|colleagues?|company|best year)$/;

/** "Two apartments", "612 pages": a plural that nobody measures. */
export function countsThings(noun: Item | undefined): boolean {
  // "Two further sets serve for comparison"
  if (isWord(noun, 'halves', 'further')) return true;
  return (
    noun?.type === 'word' &&
    noun.meanings.length === 0 &&
    (/[a-z]{3}s$/.test(noun.text) || isWord(noun, 'people', 'children', 'foot', 'halves', 'men', 'women')) &&
    !/^(?:theirs|hers|ours|yours|ports?|inputs?|sockets?|outputs?|connectors?|levels?|steps?|patches|zones?|speakers?|tuners?|watts?|fifths|tenths|sixths|eighths|ninths|modes?|presets?|stops?|times)$/.test(
      noun.text,
    )
  );
}

/** A number in a sentence about people, places and things: an age, a distance, a count of pages. */
export function isPlainNumber(sentence: readonly Item[], item: Item): boolean {
  // "Its 7 buttons" are the set's, whatever they are.
  if (isWord(sentence[item.index - 1], 'its')) return false;
  const next = sentence[item.index + 1];
  // "Round two: SDR", "Part 3"
  if (
    isWord(
      sentence[item.index - 1],
      'round',
      'day',
      'week',
      'part',
      'chapter',
      'act',
      'lesson',
      'section',
      'question',
      'verse',
    ) &&
    (next === undefined || next.type === 'mark')
  )
    return true;
  const counted =
    countsThings(next) ||
    isWord(sentence[item.index + 2], 'days', 'weeks', 'hours') ||
    (isWord(next, 'of') && isWord(sentence[item.index + 2], 'us', 'you')) ||
    (next?.type === 'word' && countsThings(sentence[item.index + 2]));
  if (
    counted &&
    !sentence.some((other) => ['concept', 'unit'].some((kind) => keyOf(other, kind as MeaningKind)))
  )
    return true;
  if (speaksOfSets(sentence)) return false;
  return counted || sentence.some((other) => persons.test(other.text));
}
