import { type ReactNode, useEffect, useRef } from 'react';
import { closeSheet } from './sheets.ts';

/** A sheet over the window: the platform's dialog, so focus stays inside and Escape closes it. */
export function SheetFrame({
  label,
  className,
  children,
}: {
  label: string;
  className?: string;
  children: ReactNode;
}) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const element = dialog.current!;
    const before = document.activeElement;
    element.showModal();
    element.querySelector<HTMLElement>('[data-first]')?.focus();
    return () => {
      element.close();
      if (before instanceof HTMLElement) before.focus();
    };
  }, []);
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: Escape closes a dialog by itself; the click is on the backdrop
    <dialog
      ref={dialog}
      className={`sheet ${className ?? ''}`}
      aria-label={label}
      onCancel={(event) => {
        event.preventDefault();
        closeSheet();
      }}
      onClick={(event) => {
        if (event.target === dialog.current) closeSheet();
      }}
    >
      {children}
    </dialog>
  );
}
