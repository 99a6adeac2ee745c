import { closeSheet } from './sheets.ts';

/**
 * Keeps what is typed between the key that asks for a sheet and the sheet's program, so that no letter of it falls into
 * the page beneath. Escape takes the sheet back.
 * @param kept takes the keys in their order
 * @returns ends it
 */
export function holdKeys(kept: string[]): () => void {
  const hold = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    if (event.key === 'Escape') closeSheet();
    else if (event.key.length === 1 || event.key === 'Enter') kept.push(event.key);
  };
  window.addEventListener('keydown', hold, { capture: true });
  return () => window.removeEventListener('keydown', hold, { capture: true });
}

/** Types the kept keys where the focus is now: letters at once, and what chooses once the page has answered them. */
export function typeKept(kept: string[]): void {
  const keys = kept.splice(0);
  const field = document.activeElement;
  if (keys.length === 0 || !(field instanceof HTMLInputElement)) return;
  const letters = keys.filter((key) => key.length === 1).join('');
  // React hears a change of the value only where the element's own setter made it.
  const { set } = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')!;
  set!.call(field, field.value + letters);
  field.dispatchEvent(new InputEvent('input', { bubbles: true, data: letters, inputType: 'insertText' }));
  if (!keys.includes('Enter')) return;
  requestAnimationFrame(() =>
    requestAnimationFrame(() =>
      field.dispatchEvent(
        new KeyboardEvent('keydown', { key: 'Enter', code: 'Enter', bubbles: true, cancelable: true }),
      ),
    ),
  );
}
