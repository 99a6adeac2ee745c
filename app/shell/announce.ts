/** Says a sentence through assistive technology without moving the focus. */
export function announce(sentence: string): void {
  const region = document.getElementById('announcements');
  if (!region) return;
  region.textContent = '';
  // A fresh text node in the next frame, so that the same sentence is spoken again.
  requestAnimationFrame(() => {
    region.textContent = sentence;
  });
}
