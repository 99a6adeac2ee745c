import { describe, expect, it } from 'vitest';
import { paletteMatch } from '../../../app/shell/paletteMatch.ts';

describe('what is typed into the palette', () => {
  const best = (typed: string, ...names: string[]) =>
    names
      .map((name) => ({ name, score: paletteMatch(typed, name) }))
      .filter(({ score }) => score > 0)
      .sort((a, b) => b.score - a.score)
      .map(({ name }) => name);

  it('finds by the beginning of words before their inside, and not by letters strewn about', () => {
    expect(
      best('thin', 'First steps, from the beginning', 'Nothing to hide', 'Thin, quick and a little blue'),
    ).toEqual(['Thin, quick and a little blue', 'Nothing to hide']);
  });

  it('needs every word, in any order', () => {
    expect(best('theme dark', 'Dark theme', 'Light theme')).toEqual(['Dark theme']);
    expect(best('dark th', 'Dark theme', 'Light theme')).toEqual(['Dark theme']);
  });

  it('lets further words find too, after names', () => {
    expect(paletteMatch('zoom', 'Larger', ['zoom in'])).toBeGreaterThan(0);
    expect(paletteMatch('zoom', 'Larger', ['zoom in'])).toBeLessThan(paletteMatch('larg', 'Larger'));
  });

  it('takes accents for what they are on', () => {
    expect(paletteMatch('decor', 'Décor')).toBe(1);
  });
});
