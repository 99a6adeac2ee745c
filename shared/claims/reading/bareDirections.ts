import { type Item, isWord, keyOf } from './items.ts';

const sides: Readonly<Record<string, string>> = { over: 'over', under: 'under' };

/** Does nothing stand behind the word that it could be a limit of? */
function endsThere(next: Item | undefined): boolean {
  return next === undefined || next.type === 'mark' || isWord(next, 'and', 'but', 'it', 'while', 'though');
}

/** "Red is over, green under and blue on target": where the sentence names a target, the side of it alone says as much. */
export function nameBareDirections(items: readonly Item[]): undefined {
  const named = items.some(
    (item) => /\btarget$|satur/.test(item.text) && keyOf(item, 'direction') !== undefined,
  );
  if (!named) return;
  for (const [at, item] of items.entries()) {
    const side = sides[item.text];
    if (side === undefined || !endsThere(items[at + 1])) continue;
    const before = isWord(items[at - 1], 'is', 'are', 'was', 'were', 'runs', 'comes')
      ? items[at - 2]
      : items[at - 1];
    if (keyOf(before, 'hue') !== undefined) item.meanings = [{ kind: 'direction', key: side }];
  }
}
