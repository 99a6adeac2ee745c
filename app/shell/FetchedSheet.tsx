import { useLayoutEffect, useRef, useState } from 'react';
import { Fetched, type FetchedPart } from './Fetched.tsx';
import { holdKeys, typeKept } from './heldKeys.ts';

/** A sheet whose program may still be on its way: what one types meanwhile is for the sheet, not for the page beneath. */
export function FetchedSheet({ from }: { from: FetchedPart }) {
  const [isShown, setShown] = useState(from.part() !== null);
  const kept = useRef<string[]>([]);
  // Before the next key: an effect after painting could come too late for it.
  useLayoutEffect(() => (isShown ? undefined : holdKeys(kept.current)), [isShown]);
  return (
    <Fetched
      from={from}
      onShown={() => {
        setShown(true);
        typeKept(kept.current);
      }}
    />
  );
}
