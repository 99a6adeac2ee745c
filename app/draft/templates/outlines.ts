import type { Unit } from '../../../shared/contract/unit.ts';
import { conditionsText, type FilledText, type TemplateConditions } from './placeholders.ts';

/** What lights the picture decides what a review has to speak of. */
export type KindOfSet = 'self-emissive' | 'zones' | 'plain';

export function kindOfSet(unit: Pick<Unit, 'panel' | 'backlight' | 'zones'>): KindOfSet {
  if (/self-emissive|organic/i.test(`${unit.panel ?? ''} ${unit.backlight ?? ''}`)) return 'self-emissive';
  return (unit.zones ?? 0) > 1 ? 'zones' : 'plain';
}

export const kindNames: Readonly<Record<KindOfSet, string>> = {
  'self-emissive': 'a self-emissive set',
  zones: 'a set with dimming zones',
  plain: 'a set without dimming zones',
};

interface OutlineSection {
  heading: string;
  /** Absent: for every kind of set */
  for?: readonly KindOfSet[];
  conditions?: TemplateConditions;
  /** Sentences with `{quantity@axis}` */
  sentences?: readonly string[];
}

/** Headings and sentences that an article may begin with; signals and stages in headings set what follows. */
export interface ArticleOutline {
  id: string;
  name: string;
  sections: readonly OutlineSection[];
}

const sdr = { signal: 'SDR', stage: 'as-delivered' } as const;
const adjusted = { signal: 'SDR', stage: 'adjusted' } as const;
const hdr = { signal: 'HDR10', stage: 'as-delivered' } as const;

const dark: readonly OutlineSection[] = [
  {
    heading: 'Local dimming',
    for: ['zones'],
    conditions: sdr,
    sentences: ['The chequerboard contrast is {contrast.chequer}.'],
  },
  { heading: 'Near black', for: ['self-emissive'], conditions: sdr, sentences: ['Black stops at {black}.'] },
  {
    heading: 'Evenness',
    for: ['plain', 'zones'],
    conditions: sdr,
    sentences: ['The native contrast is {contrast.native}.'],
  },
];

export const articleOutlines: readonly ArticleOutline[] = [
  {
    id: 'review',
    name: 'Review',
    sections: [
      { heading: 'Design' },
      {
        heading: 'As delivered',
        conditions: sdr,
        sentences: [
          'White reaches {white} in SDR.',
          'The average greyscale error is {grey.de2000@average}, and it peaks at {grey.de2000@max}.',
          'The colour chart averages {chart.de2000@average}.',
        ],
      },
      {
        heading: 'Adjusted',
        conditions: adjusted,
        sentences: ['After adjustment the average greyscale error is {grey.de2000@average}.'],
      },
      ...dark,
      {
        heading: 'High dynamic range',
        conditions: hdr,
        sentences: [
          'A 10% window reaches {peak@10}, a full white screen {peak@100}.',
          'It covers {coverage.p3.uv} of P3.',
        ],
      },
      { heading: 'Off axis' },
      { heading: 'Verdict' },
    ],
  },
  {
    id: 'first-look',
    name: 'First look',
    sections: [
      { heading: 'Out of the box', conditions: sdr, sentences: ['White reaches {white} in SDR.'] },
      { heading: 'What is still to be measured' },
    ],
  },
  {
    id: 'comparison',
    name: 'Comparison',
    sections: [
      { heading: 'The sets' },
      { heading: 'Brightness', conditions: hdr, sentences: ['In HDR a 10% window reaches {peak@10}.'] },
      { heading: 'Colour', conditions: hdr, sentences: ['In HDR it covers {coverage.p3.uv} of P3.'] },
      ...dark,
      { heading: 'Off axis' },
      { heading: 'Which one' },
    ],
  },
  { id: 'blank', name: 'Blank page', sections: [] },
];

/** The sections that a kind of set needs. */
export function sectionsFor(outline: ArticleOutline, kind: KindOfSet): readonly OutlineSection[] {
  return outline.sections.filter((section) => section.for === undefined || section.for.includes(kind));
}

/**
 * The Markdown that a new article begins with. Sentences whose numbers are there are written; what is not measured
 * is named under its heading instead, so that no blank passes for a finding.
 */
export function outlineMarkdown(
  title: string,
  outline: ArticleOutline,
  kind: KindOfSet,
  fill: (sentence: string, conditions: TemplateConditions) => FilledText,
): string {
  const blocks = [`# ${title}`];
  for (const { heading, conditions, sentences = [] } of sectionsFor(outline, kind)) {
    blocks.push(`## ${heading}`);
    if (!conditions) continue;
    const filled = sentences.map((sentence) => fill(sentence, conditions));
    const written = filled.filter(({ missing }) => missing.length === 0).map(({ markdown }) => markdown);
    const missing = [...new Set(filled.flatMap((one) => one.missing))];
    if (written.length > 0) blocks.push(written.join(' '));
    if (missing.length > 0)
      blocks.push(`*Still unmeasured (${conditionsText(conditions)}): ${missing.join('; ')}.*`);
  }
  return `${blocks.join('\n\n')}\n`;
}
