import { type Item, isWord, keyOf } from './items.ts';
import { isAnchor } from './ownStatement.ts';

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

/** "Since Orrinvale asks £1,229 for it you will probably …": the guess follows from the reason that leads. */
function followsReason(sentence: readonly Item[], clause: readonly Item[], guess: Item): boolean {
  const who = sentence.findLast(
    (item) => item.index < guess.index && isWord(item, 'you', 'we', 'i', 'one', 'most', 'many'),
  );
  const reason = sentence.findLast(
    (item) => item.index < guess.index && isWord(item, 'since', 'because') && item.meanings.length === 0,
  );
  return (
    who !== undefined &&
    reason !== undefined &&
    guess.index - who.index <= 2 &&
    clause.some((item) => item.index > reason.index && item.index < who.index && isAnchor(item)) &&
    !clause.some((item) => item.index > who.index && isAnchor(item))
  );
}

/** "It costs 50 % more and would suit a darkened room": the guess begins another thing that is said, and claims nothing. */
function isSaidBeside(sentence: readonly Item[], clause: readonly Item[], guess: Item): boolean {
  const joiner = sentence[guess.index - 1];
  return (
    joiner !== undefined &&
    isWord(joiner, 'and', 'but') &&
    clause.some((item) => item.index < joiner.index && isAnchor(item)) &&
    !clause.some((item) => item.index > joiner.index && claimsOfSet(item))
  );
}

/** "850 nits and manners that I would trust": the guess is said of the last of a list, which claims nothing. */
function isInLastRelative(sentence: readonly Item[], clause: readonly Item[], guess: Item): boolean {
  const that = sentence[guess.index - 2];
  const noun = sentence[guess.index - 3];
  return (
    isWord(that, 'that', 'which', 'whom') &&
    isWord(sentence[guess.index - 1], 'i', 'you', 'we', 'one', 'nobody', 'anyone', 'anybody') &&
    noun?.type === 'word' &&
    noun.meanings.length === 0 &&
    // "742 nits in a mode that nobody would use" is of that mode.
    isWord(sentence[guess.index - 4], 'and') &&
    clause.some((item) => item.index < noun.index && isAnchor(item)) &&
    !clause.some((item) => item.index > guess.index && claimsOfSet(item))
  );
}

/** "3,740:1, a loss most of us would take": the guess stands behind all that is claimed, parted by a comma. */
function trailsStatement(sentence: readonly Item[], clause: readonly Item[], guess: Item): boolean {
  const mark = sentence.findLast(
    ({ index, type, text }) => index < guess.index && type === 'mark' && (text === ',' || text === ';'),
  );
  // "HDR10 and HLG are accepted, which should …", and not "if it takes HDR10, it would …"
  const isApart = mark?.text === ';' || (mark !== undefined && isWord(sentence[mark.index + 1], 'which'));
  const claims = (item: Item) =>
    isAnchor(item) ||
    keyOf(item, 'lean') !== undefined ||
    item.number?.role === 'axisOrValue' ||
    (isApart && keyOf(item, 'format') !== undefined);
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
  return which !== undefined && !clause.some((item) => item.index < which.index && claimsOfSet(item));
}

/** "He might have saved his breath, because the Hearth weighs 21 kg": what is claimed is the reason, and no guess. */
function leadsToReason(sentence: readonly Item[], clause: readonly Item[], guess: Item): boolean {
  const because = sentence.find((item) => item.index > guess.index && isWord(item, 'because', 'since'));
  return (
    because !== undefined &&
    isWord(guess, 'might', 'may', 'could', 'should', 'would', 'ought') &&
    !clause.some((item) => item.index < because.index && claimsOfSet(item)) &&
    !sentence.some((item) => item.index > because.index && isWord(item, 'if'))
  );
}

/** Does the guess, a modal of the sentence, bear on what the clause claims? */
export function bearsOn(sentence: readonly Item[], clause: readonly Item[], guess: Item): boolean {
  return (
    !isEndedByColon(sentence, clause, guess) &&
    !followsStatement(clause, guess) &&
    !followsReason(sentence, clause, guess) &&
    !isSaidBeside(sentence, clause, guess) &&
    !isInLastRelative(sentence, clause, guess) &&
    !isInRelative(sentence, clause, guess) &&
    !isOverruled(sentence, clause, guess) &&
    !isInLead(sentence, clause, guess) &&
    !leadsToReason(sentence, clause, guess) &&
    !describesOther(sentence, clause, guess) &&
    !trailsStatement(sentence, clause, guess) &&
    !(isWord(guess, 'may', 'might', 'should', 'could') && leadsToRelative(sentence, clause, guess))
  );
}
