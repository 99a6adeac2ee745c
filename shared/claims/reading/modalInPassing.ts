import { isWish } from './ifInPassing.ts';
import { type Item, isWord, keyOf } from './items.ts';
import { notingWords } from './lexicon/grammar.ts';

/** "Should know that", "should bear in mind that": what is told stands behind. */
function isNoted(items: readonly Item[], at: number): boolean {
  return (
    items.slice(at + 1, at + 4).some((item) => isWord(item, 'that')) ||
    // "Gamers should note a lag of 19.5 ms"
    (isWord(items[at], 'note') && isWord(items[at + 1], 'a', 'an', 'the', 'its'))
  );
}

/** "As you would expect", "may claim", "should know that": a modal said in passing, and no guess. */
export function isModalInPassing(items: readonly Item[], at: number): boolean {
  const item = items[at]!;
  const next = items[at + 1];
  // "Not that I could tell"
  if (isWord(item, 'could') && isWord(items[at - 2], 'that') && isWord(items[at - 3], 'not')) return true;
  // "The Plain, I should say in fairness, covers more": thrown in.
  if (
    isWord(item, 'should', 'would', 'may') &&
    isWord(items[at - 1], 'i', 'we') &&
    isWord(next, 'say', 'add', 'stress', 'note', 'mention')
  )
    return true;
  // "11 nits more than the Kasulind could find": what it has.
  if (
    isWord(item, 'could', 'would') &&
    isWord(next, 'find', 'manage', 'muster', 'offer', 'reach', 'do', 'show', 'give', 'produce') &&
    keyOf(items[at - 1], 'unit') !== undefined &&
    items.slice(Math.max(0, at - 4), at).some((word) => isWord(word, 'than', 'what'))
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
  // "On the Plain you would have to look for it": how much there is to see.
  if (
    isWord(item, 'would', 'might', 'may') &&
    isWord(items[at - 1], 'you', 'one') &&
    keyOf(next, 'severity') !== undefined &&
    /^(?:have|need) to /.test(next!.text)
  )
    return true;
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
