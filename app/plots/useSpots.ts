import { type KeyboardEvent, useMemo, useState } from 'react';
import type { Figure, ReadingRef } from './figure.ts';
import { type Spot, spotsOf } from './pointText.ts';
import type { SpotHandling } from './SpotMark.tsx';

/**
 * Moving over a figure's marks: one stop for the Tab key, arrows from mark to mark, Enter or a click picks the
 * mark's readings. `pointed` is the mark under the pointer or the focus.
 */
export function useSpots(
  figure: Figure,
  picked: ReadingRef | null,
  onPick: (ref: ReadingRef) => void,
): { spots: SpotHandling; pointed: Spot | null } {
  const list = useMemo(() => spotsOf(figure), [figure]);
  const [pointedKey, setPointed] = useState<string | null>(null);
  const [tabKey, setTabKey] = useState<string | null>(null);
  const byKey = useMemo(() => new Map(list.map((spot) => [spot.key, spot])), [list]);
  const pickedKeys = useMemo(
    () =>
      new Set(list.filter((spot) => spot.ref && picked && shares(spot.ref, picked)).map((spot) => spot.key)),
    [list, picked],
  );
  const pick = (key: string) => {
    const ref = byKey.get(key)?.ref;
    if (ref) onPick(ref);
  };
  const onKey = (event: KeyboardEvent, key: string) => {
    if (event.key === 'Enter' || event.key === ' ') {
      event.preventDefault();
      pick(key);
      return;
    }
    const at = list.findIndex((spot) => spot.key === key);
    const to = {
      ArrowRight: at + 1,
      ArrowDown: at + 1,
      ArrowLeft: at - 1,
      ArrowUp: at - 1,
      Home: 0,
      End: list.length - 1,
    }[event.key];
    const next = to === undefined ? undefined : list[to];
    if (!next) return;
    event.preventDefault();
    setTabKey(next.key);
    const svg = (event.currentTarget as Element).closest('svg');
    svg?.querySelector<SVGElement>(`[data-spot="${next.key}"]`)?.focus();
  };
  return {
    pointed: pointedKey === null ? null : (byKey.get(pointedKey) ?? null),
    spots: {
      tabKey: tabKey !== null && byKey.has(tabKey) ? tabKey : (list[0]?.key ?? null),
      pickedKeys,
      onPoint: setPointed,
      onPick: pick,
      onKey,
    },
  };
}

function shares(a: ReadingRef, b: ReadingRef): boolean {
  return a.unit === b.unit && a.run === b.run && a.rows.some((row) => b.rows.includes(row));
}
