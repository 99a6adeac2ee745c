const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

/** `2026-09-15` or the date of an RFC 3339 time, as written there: "15 September 2026". */
export function dateText(date: string): string {
  const parts = /^(\d{4})-(\d{2})-(\d{2})/.exec(date);
  const month = months[Number(parts?.[2]) - 1];
  return parts && month ? `${Number(parts[3])} ${month} ${parts[1]}` : date;
}

/** "15 September", for lines where the year is plain. */
export function dayText(date: string): string {
  return dateText(date).replace(/ \d{4}$/, '');
}
