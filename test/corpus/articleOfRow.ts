import type { Article } from '../../shared/contract/article.ts';
import type { Row } from './rows.ts';

const modes: Record<string, string> = {
  'tamarick-alder-55': 'Evening',
  'kasulind-fjord-55': 'Studio',
  'nocthale-umbra-55': 'Still',
  'orrinvale-beacon-50': 'Calm',
  'veltrane-sill-50': 'Film',
};

/** The small article that a row stands in: its data and its Markdown. */
export function articleOfRow({ context, text }: Row): { meta: Article; markdown: string } {
  const mode = modes[context.unit]!;
  const meta: Article = {
    title: 'A sentence',
    unit: context.unit,
    state: 'draft',
    date: '2026-11-06',
    locale: context.locale ?? 'en-GB',
    conditions: {
      SDR: { mode, stage: 'as-delivered', dimming: context.unit === 'nocthale-umbra-55' ? 'none' : 'off' },
      HDR10: { mode: `HDR ${mode}`, stage: 'as-delivered' },
    },
    score: 8,
    score_max: 10,
    award: 'Best Buy',
    ...context.article,
  };
  const heading = context.heading ? `## ${context.heading}\n\n` : '';
  if (context.markdown) return { meta, markdown: context.markdown.replace('{{}}', () => text) };
  return { meta, markdown: `${heading}${context.before ? `${context.before} ` : ''}${text}\n` };
}
