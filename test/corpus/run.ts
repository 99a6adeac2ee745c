import { judgeRows } from './judgeRows.ts';
import { type Half, readRows } from './rows.ts';
import { isClean, type RowOutcome, type Score, scoreHalf } from './scoring.ts';

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

function failure({ row, found, matches, wrongHolds }: RowOutcome): string {
  const { heading, before, markdown } = row.context;
  const context = [heading && `[${heading}]`, before, markdown && JSON.stringify(markdown)].filter(Boolean);
  return [
    `${row.id}  ${context.length ? `(${context.join(' ')}) ` : ''}${row.text}`,
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

const verbose = process.argv.includes('--verbose');
const outcomes = await judgeRows(readRows());
for (const half of ['develop', 'held-back'] satisfies Half[]) {
  const own = outcomes.filter((outcome) => outcome.row.half === half);
  const failing = own.filter((outcome) => !isClean(outcome));
  console.log(`\n${half}: ${own.length} sentences, ${own.length - failing.length} without fault\n`);
  console.log(table(scoreHalf(outcomes, half)));
  if (verbose && half === 'develop') for (const outcome of failing) console.log(`\n${failure(outcome)}`);
}
