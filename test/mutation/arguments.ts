import { type Mutation, mutationsOf } from './tokens.ts';

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
 * How equivalents.md names a mutant: its file and its line after the change. Where several mutants of the file come to
 * the same line, its place among them follows: "(2 of 3)". Line numbers are left out: they shift.
 */
export function nameOf(mutant: Mutant): string {
  const line = lineAfter(mutant);
  const same = startsByLine(mutant).get(line)!;
  const place = same.length > 1 ? ` (${same.indexOf(mutant.start) + 1} of ${same.length})` : '';
  return `\`${mutant.file}\` \`${line}\`${place}`;
}

const known = new Map<string, ReadonlyMap<string, readonly number[]>>();

/** Where the mutants of a source start, by their line after the change. */
function startsByLine({ file, source }: Mutant): ReadonlyMap<string, readonly number[]> {
  let starts = known.get(source);
  if (!starts) {
    const found = new Map<string, number[]>();
    for (const mutation of mutationsOf(source)) {
      const line = lineAfter({ ...mutation, file, source });
      found.set(line, [...(found.get(line) ?? []), mutation.start]);
    }
    starts = found;
    known.set(source, starts);
  }
  return starts;
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
