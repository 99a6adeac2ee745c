import { readFileSync } from 'node:fs';
import {
  converter,
  differenceEuclidean,
  filterDeficiencyDeuter,
  filterDeficiencyProt,
  filterDeficiencyTrit,
  parse,
  wcagContrast,
} from 'culori';
import { describe, expect, it } from 'vitest';

const css = readFileSync(new URL('../../../app/theme/tokens.css', import.meta.url), 'utf8');
const verdicts = ['holds', 'breaks', 'close', 'unproven', 'stale'] as const;
const themes = ['light', 'dark', 'light, high contrast', 'dark, high contrast'] as const;

/** Tokens of one theme, as the style sheet gives them. */
function tokens(theme: (typeof themes)[number]): (name: string) => string {
  const [usual = '', more = ''] = css.split(':root[data-contrast="more"]');
  const side = theme.startsWith('light') ? 1 : 2;
  const read = (text: string, name: string) =>
    new RegExp(`--${name}: light-dark\\((oklch\\([^)]*\\)), (oklch\\([^)]*\\))\\)`).exec(text)?.[side];
  return (name) => {
    const found = (theme.endsWith('contrast') ? read(more, name) : undefined) ?? read(usual, name);
    if (!found) throw new Error(`no token ${name}`);
    return found;
  };
}

describe.each(themes)('%s theme', (theme) => {
  const token = tokens(theme);
  const least = theme.endsWith('contrast') ? 7 : 4.5;

  it(`has text of at least ${least}:1 on paper, page and wash (WCAG 2.2, 1.4.3 and 1.4.6)`, () => {
    const poor: string[] = [];
    for (const text of ['ink', 'quiet', 'accent', 'opinion', ...verdicts]) {
      for (const ground of ['paper', 'page', 'wash']) {
        const contrast = wcagContrast(token(text), token(ground));
        if (contrast < least) poor.push(`${text} on ${ground}: ${contrast.toFixed(2)}`);
      }
    }
    expect(poor).toEqual([]);
  });

  it('has verdict words of at least 4.5:1 and body text of at least 7:1 on the tint behind the words in focus', () => {
    const poor: string[] = [];
    for (const verdict of verdicts) {
      const line = wcagContrast(token(verdict), token(`here-${verdict}`));
      const ink = wcagContrast(token('ink'), token(`here-${verdict}`));
      if (line < 3) poor.push(`underline ${verdict}: ${line.toFixed(2)}`);
      if (ink < 7) poor.push(`ink on ${verdict}: ${ink.toFixed(2)}`);
    }
    expect(poor).toEqual([]);
  });

  it('has lines that carry meaning of at least 3:1 (WCAG 2.2, 1.4.11)', () => {
    const poor = ['rule', ...verdicts]
      .map((name) => [name, wcagContrast(token(name), token('paper'))] as const)
      .filter(([, contrast]) => contrast < 3);
    expect(poor).toEqual([]);
  });

  it('keeps breaks apart from holds, and every pair distinct, for each kind of colour vision', () => {
    const toOklab = converter('oklab');
    const distance = differenceEuclidean('oklab');
    const kinds = {
      usual: (colour: ReturnType<typeof parse>) => colour,
      protanopia: filterDeficiencyProt(1),
      deuteranopia: filterDeficiencyDeuter(1),
      tritanopia: filterDeficiencyTrit(1),
    };
    const alike: string[] = [];
    for (const [kind, filter] of Object.entries(kinds)) {
      for (const [index, one] of verdicts.entries()) {
        for (const other of verdicts.slice(index + 1)) {
          const seen = (name: string) => toOklab(filter(parse(token(name))!)!)!;
          const apart = distance(seen(one), seen(other));
          // 0.02 in OKLab is about one just noticeable difference; glyph, word and underline differ besides.
          const needed = [one, other].sort().join() === 'breaks,holds' ? 0.08 : 0.03;
          if (apart < needed) alike.push(`${one} and ${other}, ${kind}: ${apart.toFixed(3)}`);
        }
      }
    }
    expect(alike).toEqual([]);
  });
});
