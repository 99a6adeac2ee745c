import { tokenise } from './tokens.ts';

/** Longest phrase first, over token texts; one node a word. */
interface Node<T> {
  next: Map<string, Node<T>>;
  meanings?: T[];
}

export class PhraseTrie<T> {
  private readonly root: Node<T> = { next: new Map() };

  /** A phrase may mean several things; rules choose. */
  add(words: readonly string[], meaning: T): void {
    let node = this.root;
    for (const word of words) {
      let following = node.next.get(word);
      if (!following) {
        following = { next: new Map() };
        node.next.set(word, following);
      }
      node = following;
    }
    node.meanings ??= [];
    if (!node.meanings.includes(meaning)) node.meanings.push(meaning);
  }

  /** Lengths and meanings of the phrases that begin at token `from`, longest first; null when there is none. */
  match(
    tokens: readonly { text: string }[],
    from: number,
  ): { meanings: readonly T[]; length: number }[] | null {
    let node = this.root;
    let found: { meanings: readonly T[]; length: number }[] | null = null;
    for (let at = from; at < tokens.length; at += 1) {
      const following = node.next.get(tokens[at]!.text);
      if (!following) break;
      node = following;
      if (node.meanings) {
        found ??= [];
        found.push({ meanings: node.meanings, length: at - from + 1 });
      }
    }
    return found === null || found.length === 1 ? found : found.reverse();
  }
}

/**
 * Phrases written by people: one a line or parted by `;`. "grey/white error(s)" stands for all four
 * combinations, a word in [brackets] may be missing.
 */
export function expandPhrases(lines: string): string[][] {
  const result: string[][] = [];
  for (const line of lines.split(/[;\n]/)) {
    const pattern = line.trim();
    if (!pattern) continue;
    let variants: string[][] = [[]];
    for (const part of pattern.split(/\s+/)) {
      const optional = part.length > 2 && part.startsWith('[') && part.endsWith(']');
      const inner = optional ? part.slice(1, -1) : part;
      const choices: string[][] = [];
      for (const choice of inner.includes('cd/') || inner.length < 3 ? [inner] : inner.split('/')) {
        const plural = choice.match(/^(.+)\((s|es)\)$/);
        const stem = plural ? plural[1]! : choice;
        choices.push(wordsOf(stem));
        if (plural) choices.push(wordsOf(stem + plural[2]!));
      }
      if (optional) choices.push([]);
      variants = variants.flatMap((variant) => choices.map((choice) => [...variant, ...choice]));
    }
    result.push(...variants.filter((variant) => variant.length > 0));
  }
  return result;
}

/** The token texts of a phrase, by the same tokeniser that reads the article. */
export function wordsOf(phrase: string): string[] {
  return tokenise(phrase, 'en').map((token) => token.text);
}
