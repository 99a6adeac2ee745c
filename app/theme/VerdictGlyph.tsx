import type { Verdict } from '../../shared/contract/claim.ts';

/** What a glyph may stand for; `working` is a claim whose draws are still being computed. */
export type Standing = Verdict | 'working';

/** The words for people; the glyph never stands without one of them. */
export const verdictWord: Record<Standing, string> = {
  holds: 'Holds',
  breaks: 'Breaks',
  close: 'Too close to call',
  unproven: 'Unproven',
  stale: 'Stale',
  opinion: 'Opinion',
  working: 'Working',
};

/** One family of rings: whole with a core, broken open, half over a dashed line, dotted, with hands, quotes. */
export function VerdictSymbols() {
  const ring = { fill: 'none', stroke: 'currentColor', strokeWidth: 2.4 } as const;
  return (
    <svg width="0" height="0" style={{ position: 'absolute' }} aria-hidden="true" focusable="false">
      <defs>
        <symbol id="glyph-holds" viewBox="0 0 16 16">
          <circle cx="8" cy="8" r="6" {...ring} />
          <circle cx="8" cy="8" r="2.2" fill="currentColor" />
        </symbol>
        <symbol id="glyph-breaks" viewBox="0 0 16 16">
          <path d="M10.2 2.4A6 6 0 1 0 13.8 9.6" {...ring} />
          <path d="M9.5 6.5 14.5 1.5" {...ring} />
        </symbol>
        <symbol id="glyph-close" viewBox="0 0 16 16">
          <path d="M2 8a6 6 0 0 1 12 0" {...ring} />
          <path d="M2.5 11.6h11" {...ring} strokeDasharray="3 1.6" />
        </symbol>
        <symbol id="glyph-unproven" viewBox="0 0 16 16">
          <circle cx="8" cy="8" r="6" {...ring} strokeDasharray="2.2 2.5" />
        </symbol>
        <symbol id="glyph-stale" viewBox="0 0 16 16">
          <circle cx="8" cy="8" r="6" {...ring} strokeWidth={1.6} />
          <path d="M8 4.4V8l2.6 2" {...ring} strokeWidth={2} />
        </symbol>
        <symbol id="glyph-opinion" viewBox="0 0 16 16">
          <path
            d="M7 4.4A3 3 0 0 0 3 7.4v4h4v-4H3M14 4.4a3 3 0 0 0-4 3v4h4v-4h-4"
            {...ring}
            strokeWidth={1.8}
          />
        </symbol>
        <symbol id="glyph-working" viewBox="0 0 16 16">
          <circle cx="8" cy="8" r="6" {...ring} strokeWidth={1.6} opacity={0.5} />
        </symbol>
      </defs>
    </svg>
  );
}

/** A glyph is decoration beside its word, so assistive technology skips it. */
export function VerdictGlyph({ verdict }: { verdict: Standing }) {
  return (
    <svg className="glyph" aria-hidden="true" focusable="false">
      <use href={`#glyph-${verdict}`} />
    </svg>
  );
}
