import { type Item, isWord } from './items.ts';

/** Who speaks in a written conversation; a label such as "Sound:" is none. */
const speakers =
  /^(?:co-?host|host|reviewer|presenter|tester|editor|guest|producer|interviewer|listener|engineer|critic|q|a|question|answer)$/;

const label = /^\p{Lu}[\p{L}-]*(?=:\s)/u;

/** "Reviewer: 742 nits in a 10 % window.": a turn of a conversation, which goes on from the one before it. */
export function isTurn(text: string): boolean {
  const name = label.exec(text)?.[0];
  return name !== undefined && speakers.test(name.toLowerCase());
}

/** The sentence without the name of who says it. */
export function withoutSpeaker(items: readonly Item[]): readonly Item[] {
  const [first, colon] = items;
  if (!first?.capital || !isWord(colon, ':') || !speakers.test(first.text)) return items;
  return items.slice(2).map((item, index) => ({ ...item, index }));
}
