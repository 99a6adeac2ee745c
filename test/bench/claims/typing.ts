import { describeAnchor } from '../../../shared/claims/index.ts';
import type { ArticleText } from '../../../shared/contract/articleText.ts';
import type { JudgedClaim, Span } from '../../../shared/contract/claim.ts';
import type { StoredClaim } from '../../../shared/contract/storedClaim.ts';

/** One change of the plain text within a block. */
export interface Keystroke {
  at: number;
  removed: number;
  inserted: string;
}

/** The text after a keystroke, as the editor's text map makes it. */
export function pressed(text: ArticleText, { at, removed, inserted }: Keystroke): ArticleText {
  const shift = inserted.length - removed;
  return {
    text: text.text.slice(0, at) + inserted + text.text.slice(at + removed),
    blocks: text.blocks.map((block) =>
      block.start > at
        ? { ...block, start: block.start + shift, end: block.end + shift }
        : block.end >= at
          ? { ...block, end: block.end + shift }
          : block,
    ),
  };
}

/**
 * Bursts of typing: at a place in a claim (two of three) or in plain prose, some letters or digits are typed, some of
 * them taken back.
 */
export function* burstsOf(
  claims: readonly Span[],
  length: () => number,
  random: () => number,
): Generator<Keystroke, never> {
  for (;;) {
    const claim = claims[Math.floor(random() * claims.length)]!;
    const inClaim = random() < 2 / 3;
    // A claim's place is only roughly kept: what was typed elsewhere moves it by some letters.
    let at = inClaim
      ? claim.start + Math.floor(random() * (claim.end - claim.start))
      : Math.floor(random() * length());
    at = Math.min(at, length() - 20);
    const burst = 3 + Math.floor(random() * 10);
    const backwards = Math.floor(random() * burst);
    for (let i = 0; i < burst; i++) {
      const inserted = 'etaoin shrdlu, 742'.charAt(Math.floor(random() * 18));
      yield { at, removed: 0, inserted };
      at += 1;
    }
    for (let i = 0; i < backwards; i++) {
      at -= 1;
      yield { at, removed: 1, inserted: '' };
    }
  }
}

/** Stored claims that move with the text, as marks do in the editor. */
export interface Marks {
  kept: readonly { claim: Omit<StoredClaim, 'anchor'>; span: Span }[];
}

export function storedOf({ kept }: Marks, text: string): StoredClaim[] {
  return kept.map(({ claim, span }) => ({ ...claim, anchor: describeAnchor(text, span) }));
}

/** Moves marks over a keystroke; one that loses its last letter is gone. */
export function moved({ kept }: Marks, { at, removed, inserted }: Keystroke): Marks {
  const shift = (offset: number, sticks: number) =>
    offset >= at + removed + sticks
      ? offset + inserted.length - removed
      : Math.min(offset, at + inserted.length);
  return {
    kept: kept
      .map(({ claim, span }) => ({ claim, span: { start: shift(span.start, 0), end: shift(span.end, 1) } }))
      .filter(({ span }) => span.end > span.start),
  };
}

/** The claim as a person accepts it. */
export function accepted(
  claim: JudgedClaim,
  digests: NonNullable<StoredClaim['proof']>['digests'],
): Omit<StoredClaim, 'anchor'> {
  return {
    id: `kept-${claim.start}`,
    origin: 'accepted',
    check: claim.check,
    proof: {
      verdict: claim.judgement.verdict === 'working' ? 'unproven' : claim.judgement.verdict,
      reason: claim.judgement.reason,
      digests,
      by: 'reviewer',
      at: '2026-10-02T10:00:00Z',
    },
  };
}
