import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { articleOfRow } from './articleOfRow.ts';
import { createMarkdownReader, evidenceOf } from './judgeRows.ts';
import { twins } from './twins.ts';

const read = createMarkdownReader(await evidenceOf(join(import.meta.dirname, 'library')));

function verdictsOf(text: string): string[] {
  const unit = 'tamarick-alder-55';
  const { meta, markdown } = articleOfRow({
    id: 'twin-001',
    half: 'develop',
    context: { unit },
    text,
    expect: [],
  });
  const against = ['kasulind-fjord-55', 'nocthale-umbra-55'];
  return read({ ...meta, against }, markdown).map(({ verdict }) => verdict);
}

describe('a sentence that is true holds, its false twin does not', () => {
  it.each(twins)('%s', (holds, isFalse) => {
    const verdicts = verdictsOf(holds);
    expect(verdicts.length).toBeGreaterThan(0);
    expect(verdicts.filter((verdict) => verdict !== 'holds')).toEqual([]);
    expect(verdictsOf(isFalse)).toContain('breaks');
  });
});
