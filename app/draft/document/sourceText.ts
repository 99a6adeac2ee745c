import type { Node } from 'prosemirror-model';

const sources = new WeakMap<Node, string>();

/** Nodes never change, so a block that is still the same node is still the same Markdown. */
export function rememberSource(block: Node, markdown: string): void {
  sources.set(block, markdown);
}

export function sourceOf(block: Node): string | undefined {
  return sources.get(block);
}
