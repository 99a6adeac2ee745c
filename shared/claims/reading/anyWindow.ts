import { type Item, isWord } from './items.ts';

const openWords = /^(?:whatever|regardless|any|every|all|each|irrespective|whichever|no matter)\b/;

/** "Whatever the window", "in any window", "at every size": the statement binds all windows. */
export function speaksOfAnyWindow(items: readonly Item[]): boolean {
  return items.some(
    (item, at) =>
      openWords.test(item.text) &&
      items
        .slice(at, at + 6)
        .some((other) => isWord(other, 'window', 'windows', 'size', 'sizes', 'patch', 'patches', 'area')),
  );
}
