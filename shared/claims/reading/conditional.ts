import { bearsOn } from './guessReach.ts';
import { isIfInPassing } from './ifInPassing.ts';
import { type Item, isWord, keyOf } from './items.ts';
import { isModalInPassing } from './modalInPassing.ts';
import { meets, needBits, type Signs } from './needs.ts';
import { isAnchor } from './ownStatement.ts';

const opening = new Set(['whether', 'if', 'unless', 'supposing', 'provided', 'imagine']);
const guesses = new Set([
  'would',
  'could',
  'might',
  'may',
  'should',
  'perhaps',
  'maybe',
  'presumably',
  'probably',
  'expect',
  'expected',
  'expects',
  'hoped',
  'ought',
]);

const open = needBits([{ words: [...opening, ...guesses] }]);

/** Does a condition or a guess govern the clause, so that it says nothing of what was measured? */
export function isConditional(sentence: readonly Item[], clause: readonly Item[], signs: Signs): boolean {
  if (!meets(signs, open)) return false;
  return clause.some((item) => {
    if (item.type === 'mark') return false;
    if (!opening.has(item.text) && !guesses.has(item.text)) return false;
    // "Expect 742 nits in a 10 % window"
    if (isWord(item, 'expect') && item.index === 0) return false;
    // "Four inputs are provided": they are there.
    if (isWord(item, 'provided') && isWord(sentence[item.index - 1], 'is', 'are', 'was', 'were', 'been'))
      return false;
    const inPassing = isWord(item, 'if') ? isIfInPassing : isModalInPassing;
    if (inPassing(sentence, item.index)) return false;
    // "… wants to know whether that includes the wall": behind all that is claimed.
    const asks = isWord(sentence[item.index - 1], 'know', 'ask', 'asks', 'wonder', 'wonders', 'asked');
    const isAsked =
      isWord(item, 'whether') &&
      asks &&
      sentence.some((word) => word.index < item.index && isWord(word, ',', ';'));
    if (isAsked && clause.every((word) => word.index < item.index || !isAnchor(word))) return false;
    if (opening.has(item.text)) return true;
    return (
      !(item.text === 'may' && sentence[item.index + 1]?.number) &&
      !(item.text === 'should' && clause.some((other) => keyOf(other, 'house'))) &&
      bearsOn(sentence, clause, item)
    );
  });
}
