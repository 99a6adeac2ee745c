import { describe, expect, it } from 'vitest';
import { housePhrases } from '../../../../app/draft/templates/housePhrases.ts';
import {
  articleOutlines,
  kindOfSet,
  outlineMarkdown,
  sectionsFor,
} from '../../../../app/draft/templates/outlines.ts';
import { fillPlaceholders } from '../../../../app/draft/templates/placeholders.ts';
import { scalar, series, subject } from '../../plots/subjects.ts';

const measured = subject([
  scalar('white', 'cd/m²', 118.3),
  series('grey.de2000', 'ΔE2000', [
    [20, 1],
    [40, 2],
    [60, 2],
    [80, 3],
    [100, 3],
  ]),
]);
const bench = {
  evidence: { units: new Map([[measured.unit.id, measured.unit]]), articles: [] },
  measure: () => measured.measured,
};
const sdr = { signal: 'SDR', stage: 'as-delivered' } as const;
const fill = (text: string, conditions: Parameters<typeof fillPlaceholders>[2] = sdr) =>
  fillPlaceholders(text, measured.unit, conditions, bench, 'en-GB');
const review = articleOutlines.find(({ id }) => id === 'review')!;

describe('a template', () => {
  it('fills its numbers from the library, as links that follow what was measured', () => {
    expect(fill('White reaches {white}.')).toEqual({
      markdown: 'White reaches [118\u00a0cd/m²](measured:orrinvale-hearth-55/calm-as-delivered/white).',
      missing: [],
      runs: [measured.run],
    });
  });

  it('names what was not measured, with its level', () => {
    expect(fill('It reaches {peak@10}.')).toEqual({
      markdown: 'It reaches ….',
      missing: [expect.stringMatching(/^Peak luminance at 10 %/)],
      runs: [],
    });
  });

  it('prints no average of a few levels, no zero and no bound as a finding, and says why', () => {
    const sparse = subject([
      series('grey.de2000', 'ΔE2000', [
        [50, 0],
        [100, 0],
      ]),
      scalar('gamma.average', '', 2.45),
      scalar('black', 'cd/m²', 0.0002),
      { state: 'over', id: 'contrast.native', unit: ':1', over: 27_250, rows: [1], notes: [] },
    ]);
    const sparseBench = {
      evidence: { units: new Map([[sparse.unit.id, sparse.unit]]), articles: [] },
      measure: () => sparse.measured,
    };
    const missing = ['{grey.de2000@average}', '{gamma.average}', '{black}', '{contrast.native}'].flatMap(
      (words) => fillPlaceholders(words, sparse.unit, sdr, sparseBench, 'en-GB').missing,
    );
    expect(missing).toEqual([
      'Colour error of the greyscale (only 2 levels read)',
      'Average gamma (only one level read)',
      'Black luminance (reads as zero)',
      'Native contrast (only a lower bound is known)',
    ]);
  });

  it('speaks only of runs under its own conditions', () => {
    expect(fill('White reaches {white}.', { signal: 'HDR10', stage: 'as-delivered' }).missing).toEqual([
      'White luminance',
    ]);
  });

  it('has the headings that the kind of set needs', () => {
    const headings = (panel: string, backlight: string, zones: number) =>
      sectionsFor(review, kindOfSet({ panel, backlight, zones })).map(({ heading }) => heading);
    expect(headings('LCD VA', 'full-array LED', 240)).toContain('Local dimming');
    expect(headings('organic LED', 'self-emissive', 0)).toContain('Near black');
    expect(headings('organic LED', 'self-emissive', 0)).not.toContain('Local dimming');
    expect(headings('LCD IPS', 'edge LED', 0)).not.toContain('Near black');
  });

  it('writes no blank as if it were a finding', () => {
    const markdown = outlineMarkdown('A title', review, 'plain', fill);
    expect(markdown).toContain('# A title\n\n## Design\n\n## As delivered\n\nWhite reaches [118');
    expect(markdown).not.toContain('…');
    expect(markdown).toContain('*Still unmeasured (HDR10, as delivered): Peak luminance at 10 %');
  });
});

describe('house phrases', () => {
  it('name only quantities that the catalogue has', () => {
    const labels = housePhrases.flatMap((phrase) => fill(phrase.words, phrase).missing);
    expect(labels.filter((label) => /^[a-z]/.test(label))).toEqual([]);
  });
});
