import { describe, expect, it } from 'vitest';
import { plainTextOfMarkdown } from '../../shared/article/plainText.ts';
import { createChecker } from '../../shared/claims/index.ts';
import type { JudgedClaim } from '../../shared/contract/claim.ts';
import type { UnitEvidence } from '../../shared/contract/evidence.ts';
import { benchOf, greyscale, hearth, hearthWith, run, sdrRun } from '../fixtures/hearth/index.ts';

/** Claims of a text, on the Hearth unless other units are given. */
function claimsOf(text: string, ...units: UnitEvidence[]): readonly JudgedClaim[] {
  return createChecker(benchOf(units)).check(plainTextOfMarkdown(text)).claims;
}

/** The verdict on the one claim whose words contain `part` (the last of several over the same words). */
function verdictOn(claims: readonly JudgedClaim[], part: string, kind?: string) {
  const found = claims.filter(
    ({ text, check }) => text.includes(part) && (kind === undefined || check?.kind === kind),
  );
  expect(found.map(({ text }) => text)).not.toEqual([]);
  return found.at(-1)!.judgement.verdict;
}

/** A Hearth whose greyscale error at 50 % is as given. */
function hearthAt50(error: number): UnitEvidence {
  const errors = {
    0: 0,
    10: 1,
    20: 1.1,
    30: 1.2,
    40: 1.3,
    50: error,
    60: 3.2,
    70: 3.4,
    80: 3.6,
    90: 3.9,
    100: 6.8,
  };
  return hearthWith([run('sdr-grey', sdrRun, greyscale(errors))]);
}

describe('the twelve sentences that must come out right', () => {
  it('1: "got there" is measured against claimed, and breaks', () => {
    const claims = claimsOf('Orrinvale claims 1,000 nits, and we got there: 742 in a 10% window.');
    expect(verdictOn(claims, 'got there', 'bound')).toBe('breaks');
    expect(verdictOn(claims, 'claims 1,000', 'fact')).toBe('holds');
    expect(verdictOn(claims, '742', 'value')).toBe('holds');
  });

  it('2: a fine average does not make a maximum of 6.8 invisible', () => {
    const claims = claimsOf('The average is just under 3, so nothing here should be visible.');
    expect(verdictOn(claims, 'average')).toBe('holds');
    expect(verdictOn(claims, 'nothing')).toBe('breaks');
  });

  it('3: a bare quantity after a sentence on another set is unproven', () => {
    const claims = claimsOf('The Veltrane manages 412 nits. Blacks are a deep 0.04 cd/m².');
    expect(verdictOn(claims, '412')).toBe('holds');
    expect(verdictOn(claims, '0.04')).toBe('unproven');
  });

  it('4: 2.8 at 50 % is too close to call under a limit of 3; 2.1 holds', () => {
    const sentence = 'No error rises above 3 until 60%.';
    expect(verdictOn(claimsOf(sentence, hearthAt50(2.8)), '3 until')).toBe('close');
    expect(verdictOn(claimsOf(sentence, hearthAt50(2.1)), '3 until')).toBe('holds');
    expect(verdictOn(claimsOf(sentence, hearthAt50(4.4)), '3 until')).toBe('breaks');
  });

  it('5: "stays" after an adjustment needs an adjusted HDR run', () => {
    const claims = claimsOf(
      'After adjustment the average falls from 4.1 to 0.6, and peak luminance stays at 742 nits.',
    );
    expect(verdictOn(claims, 'stays')).toBe('unproven');
    expect(verdictOn(claims, '0.6')).toBe('holds');
  });

  it('6: a coverage whose diagrams differ asks which one is meant', () => {
    const claims = claimsOf('It covers 98% of P3.');
    expect(verdictOn(claims, '98%')).toBe('unproven');
    const asks = claims[0]!.judgement.asks?.map((check) => check.kind === 'value' && check.operand);
    expect(asks).toMatchObject([{ id: 'coverage.p3.xy' }, { id: 'coverage.p3.uv' }]);
  });

  it('7: 1.89 is not far off twice', () => {
    expect(verdictOn(claimsOf("Its contrast is not far off twice the Kasulind's."), 'twice')).toBe('holds');
  });

  it('8: a third dearer and 30 % brighter', () => {
    const claims = claimsOf('It is a third dearer than the Tamarick but 30% brighter.');
    expect(verdictOn(claims, 'third')).toBe('holds');
    expect(verdictOn(claims, '30%')).toBe('holds');
  });

  it('9: 742 ± 15 against 731 ± 15 is too close to call', () => {
    const claims = claimsOf(
      'At £1,039 it is the brightest set under £1,100 we have tested this year, bar the Nocthale.',
    );
    expect(verdictOn(claims, 'brightest', 'order')).toBe('close');
    expect(verdictOn(claims, '£1,039', 'fact')).toBe('holds');
  });

  it('10: three ports are not four; the other size is unproven; punchy is opinion', () => {
    const claims = claimsOf('The 65-inch Hearth has the same four HDMI 2.1 ports and looks just as punchy.');
    const ports = claims.filter(({ judgement }) => judgement.kind === 'fact');
    expect(ports.map(({ judgement }) => judgement.verdict).sort()).toEqual(['breaks', 'unproven']);
    expect(verdictOn(claims, 'punchy')).toBe('opinion');
  });

  it('11: blooming for a trained eye only', () => {
    const sentence = "You won't see blooming unless you go looking for it.";
    const [row] = hearth.observations;
    expect(verdictOn(claimsOf(sentence), 'blooming')).toBe('holds');
    expect(verdictOn(claimsOf(sentence, hearthWith([], [{ ...row!, severity: 2 }])), 'blooming')).toBe(
      'breaks',
    );
    expect(verdictOn(claimsOf(sentence, hearthWith([], [])), 'blooming')).toBe('unproven');
  });

  it('12: the worse side keeps 38 %, so more than 60 % is lost', () => {
    const claims = claimsOf('Even 45 degrees off it loses 60% of its luminance at most.');
    expect(verdictOn(claims, '60%')).toBe('breaks');
  });
});
