/**
 * Checks a written time: RFC 3339, with a space for the T, without seconds, or a date alone. Returns what is wrong,
 * a note, or null. A day that does not exist is never rolled over.
 */
export function checkTime(text: string): { fault: string } | { note: string } | null {
  const match =
    /^(\d{4})-(\d{2})-(\d{2})(?:[T ](\d{2}):(\d{2})(?::(\d{2})(?:\.\d+)?)?(Z|[+-]\d{2}:\d{2})?)?$/i.exec(
      text,
    );
  if (match === null) {
    if (/^\d{1,2}[/.]\d{1,2}[/.]\d{2,4}/.test(text))
      return { fault: `"${text}" does not say which number is the day and which the month` };
    return { fault: `"${text}" is not a time like 2026-09-15T10:20:00+01:00` };
  }
  const [, year, month, day, hour, minute, second, zone] = match;
  const days = new Date(Date.UTC(Number(year), Number(month), 0)).getUTCDate();
  if (Number(month) < 1 || Number(month) > 12 || Number(day) < 1 || Number(day) > days)
    return { fault: `"${text}" names a day that does not exist` };
  if (Number(hour ?? 0) > 23 || Number(minute ?? 0) > 59 || Number(second ?? 0) > 60)
    return { fault: `"${text}" names a time of day that does not exist` };
  if (hour !== undefined && zone === undefined)
    return { note: `"${text}" has no time zone and counts as local time` };
  return null;
}
