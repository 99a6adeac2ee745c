import chardet from 'chardet';
import iconv from 'iconv-lite';
import { fail, type Result, succeed } from '../../shared/contract/fault.ts';

export interface DecodedText {
  text: string;
  encoding: string;
  /** What a reader of the import must know: a guessed encoding. */
  notes: string[];
}

/**
 * Decodes a text file: byte order mark first, then UTF-8 if the bytes are valid, then UTF-16 without a mark
 * (by its many NUL bytes), else a guess, which the notes name. Never replaces bytes in silence.
 */
export function decodeText(bytes: Uint8Array): DecodedText {
  if (startsWith(bytes, [0xef, 0xbb, 0xbf])) {
    const text = strictUtf8(bytes.subarray(3));
    if (text !== null) return { text, encoding: 'utf-8', notes: [] };
  }
  if (startsWith(bytes, [0xff, 0xfe])) return utf16(bytes.subarray(2), 'utf-16le', []);
  if (startsWith(bytes, [0xfe, 0xff])) return utf16(bytes.subarray(2), 'utf-16be', []);
  const unmarked = unmarkedUtf16(bytes);
  if (unmarked !== null)
    return utf16(bytes, unmarked, [`The bytes look like ${unmarked.toUpperCase()} and were decoded so.`]);
  const text = strictUtf8(bytes);
  if (text !== null) return { text, encoding: 'utf-8', notes: [] };
  const encoding = guessEncoding(bytes);
  return {
    text: iconv.decode(Buffer.from(bytes), encoding),
    encoding,
    notes: [`The bytes are not valid UTF-8; they were decoded as ${encoding}.`],
  };
}

/** For the files of a dossier, which are UTF-8 by definition: anything else is `unreadable` with its line. */
export function decodeUtf8(bytes: Uint8Array, file: string): Result<string> {
  const start = startsWith(bytes, [0xef, 0xbb, 0xbf]) ? 3 : 0;
  const text = strictUtf8(bytes.subarray(start));
  if (text !== null) return succeed(text);
  return fail({
    code: 'unreadable',
    sentence: 'This file is not valid UTF-8.',
    mend: 'Save it as UTF-8.',
    place: { file, line: firstInvalidLine(bytes) },
  });
}

function startsWith(bytes: Uint8Array, mark: readonly number[]): boolean {
  return mark.every((byte, index) => bytes[index] === byte);
}

function strictUtf8(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return null;
  }
}

function utf16(bytes: Uint8Array, encoding: 'utf-16le' | 'utf-16be', notes: string[]): DecodedText {
  return { text: iconv.decode(Buffer.from(bytes), encoding, { stripBOM: false }), encoding, notes };
}

/** Western text in UTF-16 has a NUL in nearly every pair of bytes, always on the same side. */
function unmarkedUtf16(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | null {
  const pairs = Math.floor(bytes.length / 2);
  if (pairs < 4 || bytes.length % 2 !== 0) return null;
  let even = 0;
  let odd = 0;
  for (let index = 0; index < pairs * 2; index += 2) {
    if (bytes[index] === 0) even += 1;
    if (bytes[index + 1] === 0) odd += 1;
  }
  if (odd > pairs * 0.4 && even < pairs * 0.05) return 'utf-16le';
  if (even > pairs * 0.4 && odd < pairs * 0.05) return 'utf-16be';
  return null;
}

/** On a short table the statistics say little, so that a Western guess is always read as its superset. */
function guessEncoding(bytes: Uint8Array): string {
  const undefinedIn1252 = [0x81, 0x8d, 0x8f, 0x90, 0x9d];
  const guess = chardet.analyse(bytes)[0];
  const western = !bytes.some((byte) => undefinedIn1252.includes(byte));
  if (
    guess === undefined ||
    (western && (guess.confidence < 80 || /^(ISO-8859-1|windows-1252)$/i.test(guess.name)))
  )
    return 'windows-1252';
  return iconv.encodingExists(guess.name) && guess.name !== 'UTF-8' ? guess.name : 'windows-1252';
}

function firstInvalidLine(bytes: Uint8Array): number {
  let line = 1;
  let lineStart = 0;
  for (let index = 0; index <= bytes.length; index += 1)
    if (index === bytes.length || bytes[index] === 10) {
      if (strictUtf8(bytes.subarray(lineStart, index)) === null) return line;
      line += 1;
      lineStart = index + 1;
    }
  return 1;
}
