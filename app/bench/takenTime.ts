/**
 * The value of a date-and-time field and the time that the file keeps. The field has no zone; the file's stays while
 * the clock time stays, and a new one takes the zone of the machine it was typed on.
 */

/** `2026-09-15T10:20:00+01:00` → `2026-09-15T10:20`; empty where there is none. */
export function fieldTime(taken: string | undefined): string {
  return /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}/.exec(taken ?? '')?.[0] ?? '';
}

/** What the file says for a field's text; `before` unchanged where the clock time is the same. */
export function takenText(typed: string | undefined, before: string | undefined): string | undefined {
  if (typed === undefined) return fieldTime(before) === '' ? before : undefined;
  const clock = typed.slice(0, 16);
  if (fieldTime(before) === clock) return before;
  return `${clock}:00${zoneText(new Date(clock))}`;
}

/** `+01:00` of the machine's zone on that day */
function zoneText(local: Date): string {
  const minutes = -local.getTimezoneOffset();
  const size = Math.abs(minutes);
  const two = (value: number) => String(value).padStart(2, '0');
  return `${minutes < 0 ? '-' : '+'}${two(Math.floor(size / 60))}:${two(size % 60)}`;
}

/** Now, for the field of a run that is about to be taken. */
export function nowForField(now = new Date()): string {
  const shifted = new Date(now.getTime() - now.getTimezoneOffset() * 60_000);
  return shifted.toISOString().slice(0, 16);
}
