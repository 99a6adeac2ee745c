import type { Piece } from './clausePieces.ts';
import { isWord, keyOf } from './items.ts';
import { hasVerb } from './verbs.ts';

const subordinators = [
  'when',
  'where',
  'now',
  'because',
  'since',
  'as',
  'once',
  'while',
  'although',
  'though',
];
/** Words of another time, of work on the set or of a person that does something: these may bear on what follows. */
const bearing =
  /^(?:was|were|had|will|would|launch\w*|arriv\w*|came|comes?|new|i|we|you|they|one|people|adjust\w*|calibrat\w*|tun\w+|set|updat\w*|firmware|measur\w*|gam(?:e|es|ing)|play\w*|watch\w*|s[ia]t|seen|view\w*|look\w*|dim\w*|switch\w*|turn\w*|on|off|warm\w*)$/;

/** "When the sun is out, the lag of the Plain is 13.5 ms": a clause before it that says nothing of a set. */
function isIdleLeadIn({ items }: Piece): boolean {
  return (
    isWord(items[0], ...subordinators) &&
    (hasVerb(items) || !isWord(items[0], 'now', 'since', 'as')) &&
    items.every(
      (item) =>
        item.type !== 'number' &&
        !bearing.test(item.text) &&
        item.meanings.every(({ kind }) => kind === 'verb' || kind === 'idiom' || kind === 'pronoun') &&
        keyOf(item, 'pronoun') !== 'own',
    )
  );
}

/** Leaves out a clause before the first comma that says nothing of a set, so that neither its verb nor its "it" is taken for the statement's. */
export function dropLeadIn(pieces: Piece[]): undefined {
  const [first, next] = pieces;
  if (first && next?.mark === ',' && next.joiner === '' && isIdleLeadIn(first)) pieces.shift();
  // "Look at the rivals: the Plain costs less"
  const [look, at] = first?.items ?? [];
  const isLook =
    isWord(look, 'look', 'consider', 'take') && (isWord(at, 'at', 'the') || keyOf(at, 'pronoun') === 'rival');
  if (isLook && next?.mark === ':' && first!.items.length <= 5) pieces.shift();
}

const sets = ['television', 'tv', 'set', 'screen', 'panel', 'display'];

/** Leaves out "…, because a television that cannot keep its greys neutral is unlikely to be kind to faces": said of any set. */
export function dropGenerality(pieces: Piece[]): undefined {
  for (let at = pieces.length - 1; at > 0; at -= 1) {
    const { items, joiner } = pieces[at]!;
    const [article, noun, that] = items.slice(1);
    const isAny =
      ['because', 'since', 'for', 'as'].includes(joiner) &&
      isWord(article, 'a', 'any', 'no') &&
      sets.includes(noun?.text ?? '') &&
      isWord(that, 'that', 'which', 'whose');
    if (isAny && items.every(({ number }) => number === undefined)) pieces.splice(at, 1);
  }
}
