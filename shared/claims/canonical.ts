/**
 * JSON with keys in code-unit order and without absent members: two values that say the same give the same text,
 * whichever host or object literal made them. (Numbers follow ECMAScript's shortest form, as in RFC 8785.)
 */
export function canonicalJson(value: unknown): string {
  switch (typeof value) {
    case 'string':
      return quoted(value);
    case 'object':
      if (value === null) return 'null';
      return Array.isArray(value) ? listOf(value) : recordOf(value as Record<string, unknown>);
    default:
      return JSON.stringify(value) ?? 'null';
  }
}

function listOf(list: readonly unknown[]): string {
  let text = '[';
  for (let at = 0; at < list.length; at++)
    text += at === 0 ? canonicalJson(list[at]) : `,${canonicalJson(list[at])}`;
  return `${text}]`;
}

function recordOf(record: Record<string, unknown>): string {
  const keys = sorted(Object.keys(record));
  let text = '{';
  for (const key of keys) {
    const value = record[key];
    if (value === undefined) continue;
    if (text.length > 1) text += ',';
    text += `${quoted(key)}:${canonicalJson(value)}`;
  }
  return `${text}}`;
}

/** A record has few keys, mostly in order: put in place one by one, which makes nothing new. */
function sorted(keys: string[]): string[] {
  for (let end = 1; end < keys.length; end++) {
    const key = keys[end]!;
    let at = end;
    for (; at > 0 && keys[at - 1]! > key; at--) keys[at] = keys[at - 1]!;
    keys[at] = key;
  }
  return keys;
}

/** Short names as JSON has them: the same few come again and again. */
const names = new Map<string, string>();

/** Far more than a library has, save where they are words that a person typed. */
const kept = 1000;

function quoted(text: string): string {
  // A longer text may be a piece of an article, which it would keep alive.
  if (text.length > 12) return JSON.stringify(text);
  let name = names.get(text);
  if (name === undefined) {
    name = JSON.stringify(text);
    if (names.size >= kept) names.clear();
    names.set(text, name);
  }
  return name;
}
