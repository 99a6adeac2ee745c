import { foldedWord, interned, tokenise } from './tokens.ts';

/** Longest phrase first, over token texts; one node a word. */
interface Node<T> {
  /** The trie that may write on this node; a fork copies it first */
  owner: object;
  next: Map<string, Node<T>> | null;
  meanings: T[] | null;
  /** The phrase, where it means something */
  text: string;
  /** How many of the meanings were added in front */
  front: number;
}

function emptyNode<T>(owner: object): Node<T> {
  return { owner, next: null, meanings: null, text: '', front: 0 };
}

/** A phrase that tokens begin with. */
interface Match<T> {
  meanings: readonly T[];
  text: string;
  /** How many tokens it is */
  length: number;
}

export class PhraseTrie<T> {
  private root: Node<T> = emptyNode(this);

  /** A trie with all that is in this one; what is added to it is not added here. */
  fork(): PhraseTrie<T> {
    const fork = new PhraseTrie<T>();
    fork.root = fork.own(this.root);
    return fork;
  }

  private own(node: Node<T>): Node<T> {
    if (node.owner === this) return node;
    const { next, meanings, text, front } = node;
    return { owner: this, next: next && new Map(next), meanings: meanings && [...meanings], text, front };
  }

  /**
   * A phrase may mean several things; rules choose.
   * @param where `front`: before the meanings that the phrase has already, behind earlier ones of the front
   */
  add(words: readonly string[], meaning: T, where: 'front' | 'end' = 'end'): void {
    let node = this.root;
    for (const word of words) {
      node.next ??= new Map();
      const known = node.next.get(word);
      const following = known ? this.own(known) : emptyNode<T>(this);
      if (following !== known) node.next.set(word, following);
      node = following;
    }
    if (!node.meanings) {
      node.meanings = [];
      node.text = interned(words.join(' '));
    }
    if (node.meanings.includes(meaning)) return;
    if (where === 'front') node.meanings.splice(node.front++, 0, meaning);
    else node.meanings.push(meaning);
  }

  /** The phrases that begin at token `from`, longest first; null when there is none. */
  match(tokens: readonly { text: string }[], from: number): Match<T>[] | null {
    let node = this.root;
    let found: Match<T>[] | null = null;
    for (let at = from; at < tokens.length; at += 1) {
      const following: Node<T> | undefined = node.next?.get(tokens[at]!.text);
      if (!following) break;
      node = following;
      if (node.meanings) {
        found ??= [];
        found.push({ meanings: node.meanings, text: node.text, length: at - from + 1 });
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
    if (plainWords.test(pattern)) {
      result.push(wordsOf(pattern));
      continue;
    }
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

/** Nothing but small letters and single spaces: most of the lexicon, which the tokeniser need not take apart. */
const plainWords = /^[a-z]+(?: [a-z]+)*$/;

/** The token texts of a phrase, by the same tokeniser that reads the article. */
export function wordsOf(phrase: string): string[] {
  if (plainWords.test(phrase)) return phrase.split(' ').map(foldedWord);
  return tokenise(phrase, 'en').map((token) => token.text);
}
