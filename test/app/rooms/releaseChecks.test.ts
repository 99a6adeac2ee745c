import { describe, expect, it } from 'vitest';
import { releaseChecks } from '../../../app/rooms/releaseChecks.ts';
import { plainTextOfMarkdown } from '../../../shared/article/plainText.ts';
import { createChecker } from '../../../shared/claims/index.ts';
import { benchOf } from '../../fixtures/hearth/index.ts';

const now = '2026-10-02T08:00:00Z';
const checksOf = (markdown: string, embargo: string | null = null) =>
  releaseChecks(createChecker(benchOf()).check(plainTextOfMarkdown(markdown), []), { embargo }, now);
const open = (checks: ReturnType<typeof checksOf>) =>
  checks.filter(({ passed }) => !passed).map(({ id, words }) => [id, words]);

describe('what stands before a release', () => {
  it('is nothing where every sentence holds', () => {
    expect(open(checksOf('A 10% window reaches 742 nits.'))).toEqual([]);
  });

  it('counts what breaks and leads to the first of it', () => {
    const checks = checksOf('A 10% window reaches 742 nits.\n\nA 10% window reaches 900 nits.');
    expect(open(checks)).toEqual([
      ['breaks', 'One sentence breaks.'],
      ['contradictions', expect.stringMatching(/cannot both be true/)],
    ]);
    const at = checks[0]!.at!;
    expect(at).toBeGreaterThan('A 10% window reaches 742 nits.'.length);
    expect(
      checks.every(({ isGrave, id }) => isGrave === ['breaks', 'contradictions', 'embargo'].includes(id)),
    ).toBe(true);
  });

  it('names an embargo until its day or hour', () => {
    expect(open(checksOf('It stood here.', '2026-10-03'))).toEqual([
      ['embargo', 'Under embargo until 2026-10-03.'],
    ]);
    expect(open(checksOf('It stood here.', '2026-10-02'))).toEqual([]);
    expect(open(checksOf('It stood here.', '2026-10-02T10:30:00+02:00')).map(([id]) => id)).toEqual([
      'embargo',
    ]);
    expect(open(checksOf('It stood here.', '2026-10-02T09:30:00+02:00'))).toEqual([]);
  });
});
