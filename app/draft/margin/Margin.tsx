import { useCallback, useLayoutEffect, useRef } from 'react';
import { createPortal } from 'react-dom';
import { useSession } from '../currentSession.ts';
import { useFoldPlaces } from '../proofs/foldPlugin.ts';
import { useProofs } from '../proofs/proofStore.ts';
import { keepMarginLaidOut, type MarginLayout } from './layoutMargin.ts';
import { Proof } from './Proof.tsx';
import { backToText, focusHead } from './proofPlaces.ts';

/** Up and down from proof to proof of `.margin` or the text, Escape back to the words. */
function onKeyDown(event: React.KeyboardEvent<HTMLElement>) {
  if (event.key === 'Escape') {
    event.preventDefault();
    backToText();
    return;
  }
  if (event.key !== 'ArrowDown' && event.key !== 'ArrowUp') return;
  const target = event.target as HTMLElement;
  if (!target.classList.contains('proof-head')) return;
  const heads = [...document.querySelectorAll<HTMLElement>('.spread .proof-head')];
  const next = heads[heads.indexOf(target) + (event.key === 'ArrowDown' ? 1 : -1)];
  if (!next) return;
  event.preventDefault();
  focusHead(next);
  next.click();
}

/** The proofs beside the text. */
export function Margin() {
  const items = useProofs((state) => state.items);
  const focus = useProofs((state) => state.focus);
  const session = useSession((state) => state.session);
  const margin = useRef<HTMLElement>(null);
  const layout = useRef<MarginLayout>(null);
  const onContent = useCallback((proof: HTMLElement) => layout.current?.changed(proof), []);

  useLayoutEffect(() => {
    if (!session || !margin.current) return;
    const kept = keepMarginLaidOut(session.view, margin.current);
    layout.current = kept;
    return () => {
      layout.current = null;
      kept.stop();
    };
  }, [session]);

  const reachable = focus ?? items[0]?.key;
  return (
    <aside className="margin" aria-label="Proofs" ref={margin} onKeyDown={onKeyDown}>
      {items.map((item) => (
        <Proof
          key={item.key}
          item={item}
          focused={item.key === focus}
          reachable={item.key === reachable}
          onContent={onContent}
        />
      ))}
    </aside>
  );
}

/** On narrow windows: the same proofs under their sentences. */
export function FoldedProofs() {
  const items = useProofs((state) => state.items);
  const focus = useProofs((state) => state.focus);
  const places = useFoldPlaces((state) => state.places);
  const folded = items.map((item) => {
    const place = places.get(item.key);
    if (!place) return null;
    const focused = item.key === focus;
    return createPortal(
      <Proof item={item} focused={focused} reachable form={focused ? 'open' : 'brief'} />,
      place,
      item.key,
    );
  });
  // What happens in a portal is heard by its parent here, not by the text that it stands in.
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: hears the keys of the buttons in its portals
    <div style={{ display: 'contents' }} onKeyDown={onKeyDown}>
      {folded}
    </div>
  );
}
