import { type Item, isWord } from './items.ts';
import { mannerFillers, mannerWords, reactionWords, wishWords } from './lexicon/grammar.ts';
import { isAnchor } from './ownStatement.ts';

const lookingFor = [
  'look',
  'hunt',
  'search',
  'looking',
  'hunting',
  'go looking',
  'go hunting',
  'know',
  'looked',
  'hunted',
  'searched',
  'went looking',
  'went hunting',
  'sit',
  'watch',
  'stand',
  'view',
];

/**
 * "If that stings", "if you want to be picky", "if you must": the writer's manner or the reader's mind, and what stands
 * beside it holds either way. With a number or a comparison of its own it may be a condition on the set.
 */
function isSpeechAct(items: readonly Item[], at: number): boolean {
  const end = items.findIndex((item, index) => index > at && item.type === 'mark');
  const said = items.slice(at + 1, end < 0 ? items.length : end);
  const [who, ...rest] = said;
  if (!who || rest.length === 0 || said.some((item) => item.number !== undefined || isAnchor(item)))
    return false;
  if (isWord(who, 'that', 'this', 'it')) {
    // "If that's any comfort"
    if (rest.some((item) => isWord(item, 'comfort', 'consolation', 'help'))) return true;
    return reactionWords.has(rest[0]!.text);
  }
  if (!isWord(who, 'you', 'one', 'i', 'we', "you're", "we're", "i'm")) return false;
  const manner = rest.findIndex((item) => !mannerFillers.has(item.text));
  if (manner >= 0 && mannerWords.has(rest[manner]!.text)) return true;
  // "If you care to adjust it" does something to the set.
  return wishWords.has(rest[0]!.text) && !rest.some((item) => isWord(item, 'to'));
}

/** "If your wall is a modest one there is a 55-inch version at £1,049": whom it suits, and what there is either way. */
export function isWish(items: readonly Item[], at: number): boolean {
  const there = items.findIndex(
    (item, index) => index > at && isWord(item, 'there') && isWord(items[index + 1], 'is', "'s", 'are'),
  );
  // "If contrast matters to you, look at the Plain, which …": advice, and what follows is so either way.
  const mark = items.findIndex((item, index) => index > at && item.type === 'mark');
  const advice =
    mark > at &&
    isWord(items[mark], ',') &&
    isWord(
      items[mark + 1],
      'look',
      'consider',
      'keep',
      'bear',
      'remember',
      'note',
      'know',
      'take',
      'buy',
      'choose',
      'pick',
      'get',
      'see',
      'try',
    ) &&
    !items.slice(at, mark).some((item) => item.number !== undefined || isAnchor(item));
  if (advice || isAboutRoom(items, at, mark)) return true;
  return (
    there > at &&
    isWord(items[at + 1], 'you', 'your', "you're") &&
    !items.slice(at, there).some((item) => isAnchor(item))
  );
}

/** "If the wall will not stretch, a 65-inch version costs £1,399": it costs so much whatever the wall does. */
function isAboutRoom(items: readonly Item[], at: number, mark: number): boolean {
  const said = items.slice(at + 1, mark);
  return (
    mark > at &&
    said.length > 0 &&
    said.length <= 7 &&
    isWord(items[mark], ',') &&
    isWord(said[0], 'the', 'your', 'you', 'that', 'this', 'space', 'money') &&
    said.some((item) =>
      isWord(item, 'wall', 'room', 'lounge', 'budget', 'space', 'shelf', 'sofa', 'money', 'purse'),
    ) &&
    !said.some((item) => item.number !== undefined || isAnchor(item)) &&
    items.slice(mark).some(({ number }) => number?.role === 'size')
  );
}

/** "If you hunt for it", "if you ask me", "if only by a whisker": said in passing, no condition. */
export function isIfInPassing(items: readonly Item[], at: number): boolean {
  const next = items[at + 1];
  // "Under 4, if only by a whisker" concedes.
  if (isWord(next, 'only', 'just', 'barely', 'not') && isWord(items[at + 2], 'by', 'just')) return true;
  if (isSpeechAct(items, at) || isWish(items, at)) return true;
  // "You will notice it in the bill, if not in the draught" concedes.
  if (
    isWord(next, 'not') &&
    isWord(items[at + 2], 'in', 'on', 'at', 'by', 'for', 'quite', 'exactly', 'always', 'a', 'the')
  )
    return true;
  // "A remote that feels as if someone had cared" is a likeness.
  if (isWord(items[at - 1], 'as')) return true;
  // "Three decibels quieter, if you can hear that sort of thing"
  if (
    isWord(items[at - 1], ',') &&
    isWord(next, 'you', 'one') &&
    isWord(items[at + 2], 'can', 'could') &&
    isWord(items[at + 3], 'hear', 'see', 'tell', 'spot', 'stand', 'bear', 'believe', 'feel') &&
    !items.slice(at + 4).some(isAnchor)
  )
    return true;
  if (isWord(next, 'you', 'one', 'i', 'we')) {
    const rest = items.slice(at + 2, at + 5).map(({ text }) => text);
    return (rest[0] === 'ask' && rest[1] === 'me') || lookingFor.includes(rest[0] ?? '');
  }
  return false;
}
