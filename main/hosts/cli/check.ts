import { plainTextOfMarkdown } from '../../../shared/article/plainText.ts';
import { createMeasurer } from '../../../shared/certainty/index.ts';
import { type CheckReport, createChecker, exitStatusOf, reportOf } from '../../../shared/claims/index.ts';
import { type Command, report, text } from './command.ts';
import { type EvidenceSource, readEvidenceSource } from './evidenceSource.ts';

export const checkCommand: Command = {
  name: 'check',
  usage: 'check DOSSIER|LIBRARY [--article A] [--json] [--strict]',
  summary: 'Reads articles, ties each claim to the evidence, and reports what holds and what breaks.',
  optionHelp: {
    '--article A': 'only this article',
    '--json': 'the report as JSON',
    '--strict': 'status 1 also for close, unproven and stale claims',
  },
  options: { article: { type: 'string' }, json: { type: 'boolean' }, strict: { type: 'boolean' } },
  positionals: 1,
  async run(input, terminal) {
    const path = input.positionals[0]!;
    const source = await readEvidenceSource(path);
    if (!source.ok) return report(source.faults, terminal);
    const only = text(input, 'article');
    const ids = source.value.articles.map(({ id }) => id);
    if (only !== undefined && !ids.includes(only)) {
      const known = ids.length > 0 ? `It has ${ids.join(', ')}.` : 'It has none.';
      terminal.error(`${path}: There is no article "${only}". ${known}\n`);
      return 2;
    }
    const checked = checkArticles(source.value, only);
    terminal.out(input.values.json === true ? `${JSON.stringify(checked, null, 2)}\n` : checkText(checked));
    return exitStatusOf(checked, input.values.strict === true);
  },
};

/** The report on all articles of a source, or on one; every draw is made before a verdict is given. */
export function checkArticles(
  { evidence, articles, house, scoreSheet }: EvidenceSource,
  only?: string,
): CheckReport {
  const measurer = createMeasurer();
  return reportOf(
    articles
      .filter(({ id }) => only === undefined || id === only)
      .map(({ id, meta, markdown, claims }) => ({
        article: id,
        verdicts: createChecker({ evidence, article: { id, meta }, house, scoreSheet, ...measurer }).check(
          plainTextOfMarkdown(markdown),
          claims,
        ),
      })),
  );
}

function checkText({ articles, totals }: CheckReport): string {
  const lines: string[] = [];
  for (const { article, sentences, lost, agreement, unsaid } of articles) {
    lines.push(article);
    for (const { claims } of sentences)
      for (const { verdict, now, text: words, reason } of claims)
        lines.push(`  ${verdict}${now === undefined ? '' : ` (now ${now})`}: “${words}” ${reason}`);
    for (const { text: words, reason } of lost ?? []) lines.push(`  lost: “${words}” ${reason}`);
    for (const { reason } of agreement) lines.push(`  contradiction: ${reason}`);
    for (const { quantity, reason } of unsaid) lines.push(`  unsaid: ${quantity}: ${reason}`);
    lines.push('');
  }
  lines.push(
    Object.entries(totals)
      .map(([verdict, count]) => `${count} ${verdict}`)
      .join(', '),
  );
  return `${lines.join('\n')}\n`;
}
