import type { Mutation } from './tokens.ts';

/** A mutation with the file it is made in and that file's text. */
export type Mutant = Mutation & { readonly file: string; readonly source: string };

/** The source with the mutation made. */
export function mutated({ source, start, before, after }: Mutant): string {
  return source.slice(0, start) + after + source.slice(start + before.length);
}

/** Line number, from 1, of the mutated token. */
export function lineNumberOf({ source, start }: Mutant): number {
  return source.slice(0, start).split('\n').length;
}

/** The mutated token's line after the change. */
export function lineAfter(mutant: Mutant): string {
  return lineAt(mutated(mutant), mutant.start);
}

/**
 * How equivalents.md names a mutant: its file and its line after the change, which no other mutant of the file may
 * share. Where the same line stands several times in the file, its place among them follows: "(2 of 3)". Line numbers
 * are left out: they shift.
 */
export function nameOf(mutant: Mutant): string {
  const { file, source, start } = mutant;
  const line = lineAt(source, start);
  const same = placesOf(source, line);
  const place = same.indexOf(source.lastIndexOf('\n', start - 1) + 1) + 1;
  return `\`${file}\` \`${lineAfter(mutant)}\`${same.length > 1 ? ` (${place} of ${same.length})` : ''}`;
}

/** The names that equivalents.md argues: list items that begin with one. */
export function arguedNames(text: string): Set<string> {
  return new Set(
    [...text.matchAll(/^- (`[^`]+` `.+?`(?: \(\d+ of \d+\))?) – \S/gm)].map((match) => match[1]!),
  );
}

function lineAt(source: string, place: number): string {
  return source
    .slice(source.lastIndexOf('\n', place - 1) + 1)
    .split('\n', 1)[0]!
    .trim();
}

/** Where the lines begin that read `line`, whatever their indent. */
function placesOf(source: string, line: string): number[] {
  const places: number[] = [];
  let start = 0;
  for (const each of source.split('\n')) {
    if (each.trim() === line) places.push(start);
    start += each.length + 1;
  }
  return places;
}
