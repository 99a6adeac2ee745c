import { basename } from 'node:path';
import { parseArgs } from 'node:util';
import { judgeRows } from './judgeRows.ts';
import { judgeReviews, reviewFolders } from './reviews.ts';
import { type Half, type Row, readRows } from './rows.ts';
import { type Gold, isClean, type Outcome, type Score, sumOf } from './scoring.ts';

const percent = (part: number, whole: number) =>
  whole === 0 ? '–' : `${((100 * part) / whole).toFixed(1)} %`;

function table({ kinds, ...sums }: Score): string {
  const line = (name: string, cells: readonly string[]) =>
    name.padEnd(12) + cells.map((cell) => cell.padStart(11)).join('');
  const rowOf = (name: string, kind: { expected: number; found: number; matched: number; right: number }) =>
    line(name, [
      String(kind.expected),
      percent(kind.matched, kind.expected),
      percent(kind.matched, kind.found),
      percent(kind.right, kind.expected),
    ]);
  return [
    line('kind', ['claims', 'recall', 'precision', 'verdicts']),
    ...[...kinds].sort(([one], [other]) => one.localeCompare(other)).map(([name, kind]) => rowOf(name, kind)),
    rowOf('all', sums),
    `wrong holds ${sums.wrongHolds}`,
  ].join('\n');
}

function failure(head: string, { row, found, matches, wrongHolds }: Outcome): string {
  return [
    head,
    ...row.expect.map((expected, e) => {
      const mark = matches.some(([matched]) => matched === e) ? '=' : '−';
      return `    ${mark} expected ${expected.verdict} ${expected.kind} ${expected.quantity}: ${expected.text}`;
    }),
    ...found.map((claim, f) => {
      const mark = wrongHolds.includes(f) ? '!' : matches.some(([, matched]) => matched === f) ? '=' : '+';
      return `    ${mark} found ${claim.verdict} ${claim.kind} ${claim.quantity}: ${claim.text} (${claim.reason})`;
    }),
  ].join('\n');
}

function headOf({ id, context: { heading, before, markdown }, text }: Row): string {
  const context = [heading && `[${heading}]`, before, markdown && JSON.stringify(markdown)].filter(Boolean);
  return `${id}  ${context.length ? `(${context.join(' ')}) ` : ''}${text}`;
}

function report<One extends Gold>(
  name: string,
  outcomes: readonly Outcome<One>[],
  listed: boolean,
  head: (row: One) => string,
): undefined {
  const failing = outcomes.filter((outcome) => !isClean(outcome));
  console.log(`\n${name}: ${outcomes.length} sentences, ${outcomes.length - failing.length} without fault\n`);
  console.log(table(sumOf(outcomes)));
  if (listed) for (const outcome of failing) console.log(`\n${failure(head(outcome.row), outcome)}`);
}

const { values } = parseArgs({ options: { verbose: { type: 'boolean' }, reviews: { type: 'string' } } });
const verbose = values.verbose ?? false;
if (values.reviews === undefined) {
  const outcomes = await judgeRows(readRows());
  for (const half of ['develop', 'held-back'] satisfies Half[]) {
    const own = outcomes.filter(({ row }) => row.half === half);
    report(half, own, verbose && half === 'develop', headOf);
  }
}
for (const folder of values.reviews === undefined ? reviewFolders() : [values.reviews])
  report(basename(folder), await judgeReviews(folder), verbose, ({ article, text }) => `${article}  ${text}`);
