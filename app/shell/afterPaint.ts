/** How long a window that draws no frames is waited for, ms: one that is not on show still does its work. */
const patience = 300;

/** Calls back once what stands in the page now has been shown. Returns the way to stop waiting. */
export function afterPaint(act: () => void): () => void {
  let timer: ReturnType<typeof setTimeout>;
  let done = false;
  const once = () => {
    if (done) return;
    stop();
    act();
  };
  const frame = requestAnimationFrame(() => {
    clearTimeout(timer);
    // A frame is drawn after its callbacks: what follows in a task of its own comes after the drawing.
    timer = setTimeout(once);
  });
  timer = setTimeout(once, patience);
  function stop(): void {
    done = true;
    cancelAnimationFrame(frame);
    clearTimeout(timer);
  }
  return stop;
}
