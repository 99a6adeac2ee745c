import { useVirtualizer } from '@tanstack/react-virtual';
import { useEffect, useRef } from 'react';
import type { RunEvidence, UnitEvidence } from '../../shared/contract/evidence.ts';
import type { Reading } from '../../shared/contract/reading.ts';
import { numberText, withUnit } from '../plots/numberText.ts';
import { usePicked } from './picked.ts';
import { runTitle } from './runText.ts';
import './readings.css';

/** Where a reading was taken, in the words of its series. */
export function readingAddress(reading: Reading): string {
  const parts = [
    reading.hue,
    reading.patch && `patch ${reading.patch}`,
    reading.quantity,
    reading.saturation !== undefined && `${withUnit(reading.saturation, '%', 0)} saturation`,
    reading.stimulus !== undefined &&
      `${withUnit(reading.stimulus, '%', reading.stimulus % 1 ? 1 : 0)} stimulus`,
    reading.window !== undefined && `${withUnit(reading.window, '%', 0)} window`,
    reading.seconds !== undefined && withUnit(reading.seconds, 's', 0),
    reading.pattern?.replace('-', ' '),
    reading.position,
    reading.angle !== undefined && withUnit(reading.angle, '°', 0),
    reading.plane === 'vertical' && 'vertical',
    reading.level,
  ];
  return parts.filter(Boolean).join(', ');
}

const luminance = (value: number) => numberText(value, value >= 100 ? 1 : value >= 1 ? 2 : 4);

/** Every reading of a run; only the rows in sight are drawn. Picking a row says which sentences rest on it. */
export function ReadingTable({ unit, run }: { unit: UnitEvidence; run: RunEvidence }) {
  const { ref: picked, pick: pickFor } = usePicked();
  const pick = (row: number) => pickFor({ unit: unit.id, run: run.id, rows: [row] }, run.id);
  const pickedRows = new Set(picked?.unit === unit.id && picked.run === run.id ? picked.rows : []);
  const scroller = useRef<HTMLDivElement>(null);
  const rows = useVirtualizer({
    count: run.readings.length,
    getScrollElement: () => scroller.current,
    estimateSize: () => 26,
    overscan: 12,
  });
  const firstPicked = [...pickedRows][0];
  useEffect(() => {
    if (firstPicked === undefined) return;
    const index = run.readings.findIndex((reading) => reading.row === firstPicked);
    if (index >= 0) rows.scrollToIndex(index, { align: 'center' });
  }, [firstPicked, run.readings, rows]);
  return (
    <div className="readings">
      <div className="readings-head" aria-hidden="true">
        <span>no.</span>
        <span>series</span>
        <span>at</span>
        <span className="figure">Y, cd/m²</span>
        <span className="figure">x</span>
        <span className="figure">y</span>
      </div>
      <div
        ref={scroller}
        className="readings-body"
        role="listbox"
        aria-label={`Readings of ${runTitle(run)}`}
        aria-multiselectable="true"
        tabIndex={0}
        aria-activedescendant={firstPicked === undefined ? undefined : `reading-${run.id}-${firstPicked}`}
        onKeyDown={(event) => {
          const step = { ArrowDown: 1, ArrowUp: -1, PageDown: 10, PageUp: -10 }[event.key];
          if (!step) return;
          event.preventDefault();
          const at = run.readings.findIndex((reading) => reading.row === firstPicked);
          const next = run.readings[Math.min(Math.max(at + step, 0), run.readings.length - 1)];
          if (next) pick(next.row);
        }}
      >
        <div role="presentation" style={{ height: rows.getTotalSize(), position: 'relative' }}>
          {rows.getVirtualItems().map((item) => {
            const reading = run.readings[item.index]!;
            return (
              <ReadingRow
                key={reading.row}
                id={`reading-${run.id}-${reading.row}`}
                reading={reading}
                picked={pickedRows.has(reading.row)}
                offset={item.start}
                place={[item.index + 1, run.readings.length]}
                onPick={() => pick(reading.row)}
              />
            );
          })}
        </div>
      </div>
    </div>
  );
}

function ReadingRow({
  id,
  reading,
  picked,
  offset,
  place,
  onPick,
}: {
  id: string;
  reading: Reading;
  picked: boolean;
  offset: number;
  place: readonly [number, number];
  onPick: () => void;
}) {
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: the list around it takes the keys
    <div
      id={id}
      role="option"
      tabIndex={-1}
      aria-selected={picked}
      aria-posinset={place[0]}
      aria-setsize={place[1]}
      className={`reading${picked ? ' reading-picked' : ''}`}
      style={{ transform: `translateY(${offset}px)` }}
      onClick={onPick}
    >
      <span className="quiet">{reading.row}</span>
      <span>{reading.series}</span>
      <span>{readingAddress(reading)}</span>
      {reading.series === 'single' ? (
        <span className="figure reading-single">
          {reading.value === undefined
            ? ''
            : withUnit(reading.value, reading.unit ?? '', reading.value % 1 ? 1 : 0)}
        </span>
      ) : (
        <>
          <span className="figure">{reading.Y === null ? '' : luminance(reading.Y)}</span>
          <span className="figure">{reading.x === null ? '' : numberText(reading.x, 4)}</span>
          <span className="figure">{reading.y === null ? '' : numberText(reading.y, 4)}</span>
        </>
      )}
    </div>
  );
}
