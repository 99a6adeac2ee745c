import { type ComponentType, useEffect, useRef, useState } from 'react';

/** A part of the window whose program is fetched apart. */
export interface FetchedPart {
  /** Fetches it ahead; however often it is asked for, it is fetched once. */
  fetch(): Promise<void>;
  /** null until it is there */
  part(): ComponentType | null;
}

export function fetchedPart(program: () => Promise<ComponentType>): FetchedPart {
  let part: ComponentType | null = null;
  let coming: Promise<void> | null = null;
  return {
    fetch() {
      coming ??= program().then(
        (found) => {
          part = found;
        },
        (reason: unknown) => {
          coming = null;
          throw reason;
        },
      );
      return coming;
    },
    part: () => part,
  };
}

/**
 * Shows a part as soon as its program is there, at once where it is there already. React holds a lazy component in a
 * suspense boundary back for 300 ms after the boundary has stood empty; nothing here needs that. A program that cannot
 * be fetched fails as the part itself would.
 */
export function Fetched({ from, onShown }: { from: FetchedPart; onShown?: () => void }) {
  const [failure, setFailure] = useState<{ reason: unknown } | null>(null);
  const [, setThere] = useState(from.part() !== null);
  useEffect(() => {
    if (from.part()) return;
    let gone = false;
    from.fetch().then(
      () => gone || setThere(true),
      (reason: unknown) => gone || setFailure({ reason }),
    );
    return () => {
      gone = true;
    };
  }, [from]);
  const Part = from.part();
  const isShown = Part !== null;
  const shown = useRef(onShown);
  // After the part's own effects, which give it the focus.
  useEffect(() => {
    if (isShown) shown.current?.();
  }, [isShown]);
  if (failure) throw failure.reason;
  return Part ? <Part /> : null;
}
