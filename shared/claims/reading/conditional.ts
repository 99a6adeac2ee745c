import { type Item, isWord, keyOf } from './items.ts';
import { mannerFillers, mannerWords, notingWords, reactionWords, wishWords } from './lexicon/grammar.ts';
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
function isWish(items: readonly Item[], at: number): boolean {
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

/** "Should know that", "should bear in mind that": what is told stands behind. */
function isNoted(items: readonly Item[], at: number): boolean {
  return (
    items.slice(at + 1, at + 4).some((item) => isWord(item, 'that')) ||
    // "Gamers should note a lag of 19.5 ms"
    (isWord(items[at], 'note') && isWord(items[at + 1], 'a', 'an', 'the', 'its'))
  );
}

/** "If you hunt for it", "if you ask me", "as you would expect": said in passing, no condition. */
function isPassing(items: readonly Item[], at: number): boolean {
  const item = items[at]!;
  const next = items[at + 1];
  // "Not that I could tell"
  if (isWord(item, 'could') && isWord(items[at - 2], 'that') && isWord(items[at - 3], 'not')) return true;
  // "Under 4, if only by a whisker" concedes.
  if (
    isWord(item, 'if') &&
    isWord(next, 'only', 'just', 'barely', 'not') &&
    isWord(items[at + 2], 'by', 'just')
  )
    return true;
  // "Those with longer walls may have the 75-inch one for £1,449": they are free to.
  if (
    isWord(item, 'may') &&
    isWord(next, 'have', 'buy', 'choose', 'take', 'pick', 'prefer', 'order') &&
    items.slice(at).some((word) => isWord(word, 'for', 'at')) &&
    items.slice(at).some(({ number }) => number?.role === 'money')
  )
    return true;
  // "Gamers may sniff at the lag of 16.9 ms"
  if (isWord(item, 'may', 'might') && isWord(next, 'sniff', 'scoff', 'grumble', 'sneer', 'wince'))
    return true;
  // "So that the Hearth may claim the best greyscale of the three"
  if (isWord(item, 'may', 'can') && isWord(next, 'claim', 'boast', 'fairly', 'rightly', 'justly'))
    return true;
  // "What you may notice is a mild red tint": it is there.
  if (
    isWord(item, 'may', 'might') &&
    isWord(items[at - 1], 'you', 'one') &&
    isWord(
      isWord(next, 'also', 'well', 'even') ? items[at + 2] : next,
      'notice',
      'see',
      'spot',
      'find',
      'catch',
    )
  )
    return true;
  // "Brighter it may be than the Plain, but …" concedes.
  const isConceded =
    isWord(items[at - 1], 'it') && isWord(next, 'be') && keyOf(items[at - 2], 'comparative') !== undefined;
  if (isWord(item, 'may', 'might') && isConceded && items.slice(at).some((word) => isWord(word, 'but')))
    return true;
  // "It may nevertheless be called accurate": the writer's choice of a word.
  if (
    isWord(item, 'may', 'might', 'could', 'should', 'would') &&
    items
      .slice(at + 1, isWord(next, 'entitle', 'allow', 'permit', 'qualify') ? at + 9 : at + 4)
      .some(
        (word, step, rest) =>
          isWord(word, 'be') &&
          isWord(rest[step + 1], 'called', 'described', 'considered', 'termed', 'deemed'),
      )
  )
    return true;
  // "1,148 was the most this sample would give me": what it gave.
  if (
    isWord(item, 'would', 'could') &&
    isWord(next, 'give', 'do', 'manage', 'reach', 'muster', 'deliver') &&
    items.slice(Math.max(0, at - 5), at).some((word) => isWord(word, 'most', 'all', 'highest', 'best'))
  )
    return true;
  // "Only a trained eye would spot blooming": how much there is to see.
  if (
    isWord(item, 'would', 'could', 'might') &&
    items.slice(Math.max(0, at - 4), at).some(({ text }) => /\b(?:eyes?|expert)$/.test(text))
  )
    return true;
  // "It would like a word" is a figure of speech.
  if (isWord(item, 'would') && isWord(next, 'like', 'love') && isWord(items[at + 3], 'word')) return true;
  // "I would call the tint mild": the writer's choice of a word.
  if (
    isWord(item, 'would', 'may', 'might') &&
    isWord(items[at - 1], 'i', 'we') &&
    (isWord(next, 'call', 'describe', 'rate', 'put', 'say') ||
      (isWord(next, 'fairly', 'safely', 'well', 'not', 'never', 'hardly') &&
        isWord(items[at + 2], 'call', 'say', 'describe')))
  )
    return true;
  // "Our buyer would like it noted that it costs £839": the statement stands.
  if (isWord(item, 'would') && isWord(next, 'like', 'love') && notingWords.has(items[at + 3]?.text ?? ''))
    return true;
  if (isWord(item, 'if') && (isSpeechAct(items, at) || isWish(items, at))) return true;
  // "Should your lounge be a railway station, there is a 65-inch Hearth at £1,429"
  if (isWord(item, 'should') && at === 0 && isWish(items, at)) return true;
  // "Buyers should know that it costs £949": the statement stands.
  if (isWord(item, 'should') && isWord(next, 'know', 'note', 'remember', 'bear') && isNoted(items, at + 1))
    return true;
  // "Football fans should be warned that the dirty screen is distracting"
  if (
    isWord(item, 'should') &&
    isWord(next, 'be') &&
    isWord(items[at + 2], 'warned', 'aware', 'told') &&
    isNoted(items, at + 2)
  )
    return true;
  // "You will notice it in the bill, if not in the draught" concedes.
  if (
    isWord(item, 'if') &&
    isWord(next, 'not') &&
    isWord(items[at + 2], 'in', 'on', 'at', 'by', 'for', 'quite', 'exactly', 'always', 'a', 'the')
  )
    return true;
  // "On the Plain you would have to look for it": how much there is to see.
  if (
    isWord(item, 'would', 'might', 'may') &&
    isWord(items[at - 1], 'you', 'one') &&
    keyOf(next, 'severity') !== undefined &&
    /^(?:have|need) to /.test(next!.text)
  )
    return true;
  // "A remote that feels as if someone had cared" is a likeness.
  if (isWord(item, 'if') && isWord(items[at - 1], 'as')) return true;
  // "Which I could not see", "I couldn't hear it": it was not.
  if (
    isWord(item, 'could') &&
    isWord(items[at - 1], 'i', 'we', 'nobody', 'one') &&
    isWord(next, 'not', 'never', 'hardly', 'barely', 'scarcely') &&
    isWord(items[at + 2], 'see', 'hear', 'find', 'tell', 'spot', 'feel', 'detect', 'make')
  )
    return true;
  // "I could find slight banding": it was found.
  if (
    isWord(item, 'could') &&
    isWord(items[at - 1], 'i', 'we') &&
    isWord(next, 'find', 'see', 'spot', 'hear', 'make', 'detect')
  )
    return true;
  // "Three decibels quieter, if you can hear that sort of thing"
  if (
    isWord(item, 'if') &&
    isWord(items[at - 1], ',') &&
    isWord(next, 'you', 'one') &&
    isWord(items[at + 2], 'can', 'could') &&
    isWord(items[at + 3], 'hear', 'see', 'tell', 'spot', 'stand', 'bear', 'believe', 'feel') &&
    !items.slice(at + 4).some(isAnchor)
  )
    return true;
  if (isWord(item, 'if') && isWord(next, 'you', 'one', 'i', 'we')) {
    const rest = items.slice(at + 2, at + 5).map(({ text }) => text);
    return (rest[0] === 'ask' && rest[1] === 'me') || lookingFor.includes(rest[0] ?? '');
  }
  if (isWord(item, 'would', 'might', 'may', 'could'))
    return isWord(next, 'expect', 'hope') && isWord(items[at - 2], 'as');
  if (isWord(item, 'expect') && isWord(next, 'to') && isWord(items[at + 2], 'pay')) return true;
  // "Not what one was led to expect"
  if (
    isWord(item, 'expect') &&
    isWord(items[at - 1], 'to') &&
    isWord(items[at - 2], 'led', 'come', 'learned', 'learnt')
  )
    return true;
  if (isWord(item, 'expect')) return isWord(items[at - 3], 'as') || isWord(items[at - 2], 'as');
  return isWord(item, 'expected') && isWord(items[at - 1], 'as') && !isWord(items[at - 2], 'bright', 'good');
}

/** A colon or semicolon before all that the clause claims ends the reach of a modal: "should lift it: it weighs …". */
function isEndedByColon(sentence: readonly Item[], clause: readonly Item[], item: Item): boolean {
  const mark = sentence.find(
    (other) => other.index > item.index && other.type === 'mark' && isWord(other, ':', ';'),
  );
  return (
    mark !== undefined &&
    clause.some((other) => other.index > mark.index) &&
    !clause.some((other) => other.index < mark.index && isAnchor(other) && other.number?.spelled !== true)
  );
}

/** "No level is above 1, so even side by side you would not know": the guess follows from what is stated. */
function followsStatement(clause: readonly Item[], guess: Item): boolean {
  const joiner = clause.find(
    (item) =>
      item.index < guess.index && isWord(item, 'so', 'because', 'since') && item.meanings.length === 0,
  );
  return (
    joiner !== undefined &&
    clause.some((item) => item.index < joiner.index && isAnchor(item)) &&
    !clause.some((item) => item.index > joiner.index && isAnchor(item))
  );
}

/** "3,740:1, a loss most of us would take": the guess stands behind all that is claimed, parted by a comma. */
function trailsStatement(sentence: readonly Item[], clause: readonly Item[], guess: Item): boolean {
  const mark = sentence.findLast(
    ({ index, type, text }) => index < guess.index && type === 'mark' && (text === ',' || text === ';'),
  );
  const claims = (item: Item) =>
    isAnchor(item) ||
    item.number?.role === 'axisOrValue' ||
    (mark!.text === ';' && keyOf(item, 'format') !== undefined);
  return (
    mark !== undefined &&
    clause.some((item) => item.index < mark.index && claims(item)) &&
    !clause.some((item) => item.index > mark.index && isAnchor(item))
  );
}

/** "In the mode that we would recommend, the error is 2.7": the guess stands in a relative clause, and nothing claimed does. */
function isInRelative(sentence: readonly Item[], clause: readonly Item[], guess: Item): boolean {
  let start = guess.index - 1;
  while (sentence[start] && !isWord(sentence[start], 'that', 'which', 'who', 'whom', 'whose')) {
    if (sentence[start]!.type === 'mark' || isAnchor(sentence[start]!)) return false;
    start -= 1;
  }
  const end = sentence.findIndex((item) => item.index > guess.index && item.type === 'mark');
  // "Not that I would …", and a clause that goes on with "and" is under the guess still.
  if (start <= 0 || end < 0 || isWord(sentence[end + 1], 'and', 'or', 'but', 'nor')) return false;
  const inside = (item: Item) => item.index > start && item.index < end;
  return (
    isWord(sentence[end], ',') &&
    !isWord(sentence[start - 1], 'not', 'so', 'say', 'think', 'hope', 'sure', 'believe', 'expect') &&
    !sentence.some((item) => inside(item) && isAnchor(item)) &&
    clause.some((item) => item.index > end && isAnchor(item))
  );
}

/** "All those zones ought to make a fine sieve, yet …": behind "yet" and "but" the guess is over. */
function isOverruled(sentence: readonly Item[], clause: readonly Item[], guess: Item): boolean {
  const joiner = sentence.find(
    (item) =>
      item.index > guess.index &&
      isWord(item, 'yet', 'but') &&
      (isWord(sentence[item.index - 1], ',', ';') || isWord(sentence[item.index + 1], 'the')),
  );
  return (
    joiner !== undefined &&
    clause.some((item) => item.index > joiner.index) &&
    !clause.some((item) => item.index < joiner.index && claimsOfSet(item))
  );
}

function claimsOfSet(item: Item): boolean {
  return isAnchor(item) || (keyOf(item, 'topic') ?? keyOf(item, 'format')) !== undefined;
}

/** "Although its faults should not be overlooked, the Hearth is awarded 7.5": the guess stays in the clause that leads. */
function isInLead(sentence: readonly Item[], clause: readonly Item[], guess: Item): boolean {
  if (!isWord(sentence[0], 'although', 'though', 'while', 'since', 'because', 'as', 'whereas')) return false;
  const comma = sentence.find((item) => item.index > guess.index && isWord(item, ','));
  return (
    comma !== undefined &&
    clause.some((item) => item.index > comma.index && (claimsOfSet(item) || item.number !== undefined)) &&
    !clause.some((item) => item.index < comma.index && claimsOfSet(item))
  );
}

/** "£1,359, between two sets that could hardly be less alike": the guess is said of what stands in between, behind the claim. */
function describesOther(sentence: readonly Item[], clause: readonly Item[], guess: Item): boolean {
  let start = guess.index - 1;
  while (sentence[start] && !isWord(sentence[start], 'that', 'which', 'who')) {
    if (sentence[start]!.type === 'mark' || isAnchor(sentence[start]!)) return false;
    start -= 1;
  }
  const noun = sentence[start - 1];
  return (
    start > 1 &&
    noun !== undefined &&
    isWord(noun, 'sets', 'televisions', 'screens', 'rivals', 'rooms', 'people', 'cables', 'walls') &&
    clause.some((item) => item.index < start && isAnchor(item))
  );
}

/** "… may prefer the Plain, which costs £650 less": what is claimed stands in a relative clause behind the guess. */
function leadsToRelative(sentence: readonly Item[], clause: readonly Item[], guess: Item): boolean {
  const which = sentence.find(
    (item) =>
      item.index > guess.index && isWord(item, 'which', 'whose') && isWord(sentence[item.index - 1], ','),
  );
  return which !== undefined && !clause.some((item) => item.index < which.index && isAnchor(item));
}

/** Does a condition or a guess govern the clause, so that it says nothing of what was measured? */
export function isConditional(sentence: readonly Item[], clause: readonly Item[]): boolean {
  return clause.some((item) => {
    if (item.type === 'mark') return false;
    if (!opening.has(item.text) && !guesses.has(item.text)) return false;
    if (isPassing(sentence, item.index)) return false;
    if (opening.has(item.text)) return true;
    return (
      guesses.has(item.text) &&
      !(item.text === 'may' && sentence[item.index + 1]?.number) &&
      !(item.text === 'should' && clause.some((other) => keyOf(other, 'house'))) &&
      !isEndedByColon(sentence, clause, item) &&
      !followsStatement(clause, item) &&
      !isInRelative(sentence, clause, item) &&
      !isOverruled(sentence, clause, item) &&
      !isInLead(sentence, clause, item) &&
      !describesOther(sentence, clause, item) &&
      !trailsStatement(sentence, clause, item) &&
      !(isWord(item, 'may', 'might', 'should', 'could') && leadsToRelative(sentence, clause, item))
    );
  });
}
