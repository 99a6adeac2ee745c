import { type Fault, fail, type Place, type Result, succeed } from '../../shared/contract/fault.ts';
import { placeAt } from './placeAt.ts';

/**
 * JSON with everything that `JSON.parse` throws away and a dossier must keep: the text of each number, the
 * order of keys, and where each value stands in its file.
 */
export type JsonNode =
  | { type: 'object'; start: number; members: { key: string; keyStart: number; value: JsonNode }[] }
  | { type: 'array'; start: number; items: JsonNode[] }
  | { type: 'string'; start: number; value: string }
  | { type: 'number'; start: number; source: string }
  | { type: 'literal'; start: number; value: boolean | null };

const deepest = 200;
const numberPattern = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
// biome-ignore lint/suspicious/noControlCharactersInRegex: RFC 8259 forbids exactly these inside a string
const stringPattern = /"(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/y;
const spacePattern = /[ \t\n\r]*/y;

class JsonFault extends Error {
  readonly offset: number;
  readonly mend: string | undefined;
  constructor(sentence: string, offset: number, mend?: string) {
    super(sentence);
    this.offset = offset;
    this.mend = mend;
  }
}

/**
 * Parses strict JSON (RFC 8259). Keys that occur twice are refused, since one of the two would be lost in silence.
 * Errors: `bad-input` with file, line and column.
 */
export function parseJson(text: string, file: string): Result<JsonNode> {
  let offset = 0;

  function skip(): void {
    spacePattern.lastIndex = offset;
    spacePattern.exec(text);
    offset = spacePattern.lastIndex;
  }
  function expectMark(mark: string, meaning: string): void {
    if (text[offset] !== mark) throw unexpected(meaning);
    offset += 1;
  }
  function unexpected(wanted: string): JsonFault {
    const found = offset >= text.length ? 'the file ends' : `${JSON.stringify(text[offset])} stands`;
    return new JsonFault(`This is not JSON: ${found} where ${wanted} should be.`, offset);
  }
  function parseString(): string {
    stringPattern.lastIndex = offset;
    const match = stringPattern.exec(text);
    if (match === null)
      throw new JsonFault('This is not JSON: a string is not closed or holds a forbidden character.', offset);
    offset = stringPattern.lastIndex;
    return JSON.parse(match[0]) as string;
  }
  function parseValue(depth: number): JsonNode {
    if (depth > deepest)
      throw new JsonFault(`JSON nested deeper than ${deepest} levels is not read.`, offset);
    const start = offset;
    const mark = text[offset];
    if (mark === '{') return parseObject(start, depth);
    if (mark === '[') return parseArray(start, depth);
    if (mark === '"') return { type: 'string', start, value: parseString() };
    for (const [word, value] of [
      ['true', true],
      ['false', false],
      ['null', null],
    ] as const)
      if (text.startsWith(word, offset)) {
        offset += word.length;
        return { type: 'literal', start, value };
      }
    numberPattern.lastIndex = offset;
    const match = numberPattern.exec(text);
    if (match === null) throw unexpected('a value');
    if (!Number.isFinite(Number(match[0])))
      throw new JsonFault(`The number ${match[0]} is too large to compute with.`, offset);
    offset = numberPattern.lastIndex;
    return { type: 'number', start, source: match[0] };
  }
  function parseObject(start: number, depth: number): JsonNode {
    const node: JsonNode & { type: 'object' } = { type: 'object', start, members: [] };
    const seen = new Set<string>();
    offset += 1;
    skip();
    if (text[offset] === '}') {
      offset += 1;
      return node;
    }
    for (;;) {
      skip();
      const keyStart = offset;
      if (text[offset] !== '"') throw unexpected('a key in double quotes');
      const key = parseString();
      if (seen.has(key))
        throw new JsonFault(`The key ${JSON.stringify(key)} occurs twice.`, keyStart, 'Keep one of the two.');
      seen.add(key);
      skip();
      expectMark(':', 'a colon');
      skip();
      node.members.push({ key, keyStart, value: parseValue(depth + 1) });
      skip();
      if (text[offset] === '}') {
        offset += 1;
        return node;
      }
      expectMark(',', 'a comma or }');
    }
  }
  function parseArray(start: number, depth: number): JsonNode {
    const node: JsonNode & { type: 'array' } = { type: 'array', start, items: [] };
    offset += 1;
    skip();
    if (text[offset] === ']') {
      offset += 1;
      return node;
    }
    for (;;) {
      skip();
      node.items.push(parseValue(depth + 1));
      skip();
      if (text[offset] === ']') {
        offset += 1;
        return node;
      }
      expectMark(',', 'a comma or ]');
    }
  }

  try {
    skip();
    const node = parseValue(0);
    skip();
    if (offset < text.length) throw unexpected('the end of the file');
    return succeed(node);
  } catch (error) {
    if (!(error instanceof JsonFault)) throw error;
    const fault: Fault = {
      code: 'bad-input',
      sentence: error.message,
      mend: error.mend ?? 'Mend it in a text editor; commas stand between values, none after the last.',
      place: placeAt(text, error.offset, file),
    };
    return fail(fault);
  }
}

/** The plain value of a node, as `JSON.parse` would give it. */
export function plainValue(node: JsonNode): unknown {
  switch (node.type) {
    case 'object': {
      const object: Record<string, unknown> = {};
      for (const { key, value } of node.members)
        Object.defineProperty(object, key, {
          value: plainValue(value),
          writable: true,
          enumerable: true,
          configurable: true,
        });
      return object;
    }
    case 'array':
      return node.items.map(plainValue);
    case 'number':
      return Number(node.source);
    default:
      return node.value;
  }
}

/** The written form of every JSON file of a dossier: two spaces, LF, number texts as they came, a final LF. */
export function formatJson(node: JsonNode): string {
  return `${formatNode(node, '\n')}\n`;
}

function formatNode(node: JsonNode, lineStart: string): string {
  const inner = `${lineStart}  `;
  switch (node.type) {
    case 'object':
      if (node.members.length === 0) return '{}';
      return `{${node.members.map(({ key, value }) => `${inner}${JSON.stringify(key)}: ${formatNode(value, inner)}`).join(',')}${lineStart}}`;
    case 'array':
      if (node.items.length === 0) return '[]';
      return `[${node.items.map((item) => `${inner}${formatNode(item, inner)}`).join(',')}${lineStart}]`;
    case 'number':
      return node.source;
    default:
      return JSON.stringify(node.value);
  }
}

/** The node of a plain value. With `former`, equal numbers keep their text and known keys their order. */
export function nodeOf(value: unknown, former?: JsonNode): JsonNode {
  if (Array.isArray(value)) {
    const formerItems = former?.type === 'array' ? former.items : [];
    return { type: 'array', start: 0, items: value.map((item, index) => nodeOf(item, formerItems[index])) };
  }
  if (typeof value === 'object' && value !== null) {
    const formerMembers = new Map(
      former?.type === 'object' ? former.members.map((member) => [member.key, member.value]) : [],
    );
    const entries = Object.entries(value).filter(([, entry]) => entry !== undefined);
    const present = new Map(entries);
    const keys = [
      ...[...formerMembers.keys()].filter((key) => present.has(key)),
      ...entries.map(([key]) => key).filter((key) => !formerMembers.has(key)),
    ];
    return {
      type: 'object',
      start: 0,
      members: keys.map((key) => ({
        key,
        keyStart: 0,
        value: nodeOf(present.get(key), formerMembers.get(key)),
      })),
    };
  }
  if (typeof value === 'number') {
    if (former?.type === 'number' && Number(former.source) === value) return former;
    return { type: 'number', start: 0, source: JSON.stringify(value) };
  }
  if (typeof value === 'string') return { type: 'string', start: 0, value };
  return { type: 'literal', start: 0, value: typeof value === 'boolean' ? value : null };
}

/** Where the value at a path stands; for a missing key, where its object begins. */
export function placeOfPath(root: JsonNode, path: readonly PropertyKey[], text: string, file: string): Place {
  let node = root;
  for (const step of path) {
    const next: JsonNode | undefined =
      node.type === 'object'
        ? node.members.find(({ key }) => key === String(step))?.value
        : node.type === 'array'
          ? node.items[Number(step)]
          : undefined;
    if (next === undefined) break;
    node = next;
  }
  return placeAt(text, node.start, file);
}
