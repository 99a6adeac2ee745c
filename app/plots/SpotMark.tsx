import type { KeyboardEvent, ReactNode } from 'react';

/** How a plot treats its marks: which is picked, which takes the Tab key, what pressing and pointing do. */
export interface SpotHandling {
  tabKey: string | null;
  pickedKeys: ReadonlySet<string>;
  onPoint: (key: string | null) => void;
  onPick: (key: string) => void;
  onKey: (event: KeyboardEvent, key: string) => void;
}

/** One measured mark: shows its value when pointed at, and stands for its readings when pressed. */
export function SpotMark({
  handling,
  spotKey,
  text,
  at,
  tone,
  whisker,
  children,
}: {
  handling: SpotHandling;
  spotKey: string;
  text: string;
  at: readonly [number, number];
  tone: 'in' | 'out' | 'apart';
  /** Ends of the uncertainty, y in px */
  whisker: readonly [number, number] | null;
  children: ReactNode;
}) {
  const transform = `translate(${at[0].toFixed(2)} ${at[1].toFixed(2)})`;
  const picked = handling.pickedKeys.has(spotKey);
  return (
    // biome-ignore lint/a11y/useSemanticElements: an HTML button cannot stand inside SVG
    <g
      className={`plot-spot plot-${tone}${picked ? ' plot-picked' : ''}`}
      transform={transform}
      role="button"
      aria-label={text}
      aria-pressed={picked}
      data-spot={spotKey}
      tabIndex={handling.tabKey === spotKey ? 0 : -1}
      onMouseEnter={() => handling.onPoint(spotKey)}
      onMouseLeave={() => handling.onPoint(null)}
      onFocus={() => handling.onPoint(spotKey)}
      onBlur={() => handling.onPoint(null)}
      onClick={() => handling.onPick(spotKey)}
      onKeyDown={(event) => handling.onKey(event, spotKey)}
    >
      <circle className="plot-reach" r={9} />
      {whisker && (
        <line
          className="plot-whisker"
          y1={(whisker[0] - at[1]).toFixed(2)}
          y2={(whisker[1] - at[1]).toFixed(2)}
        />
      )}
      {children}
    </g>
  );
}
