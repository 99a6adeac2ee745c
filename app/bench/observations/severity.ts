/** What each severity says, 0 to 4. */
export const severityWords = [
  'not seen',
  'just visible to a trained eye',
  'visible',
  'distracting',
  'unusable',
] as const;

export function severityWord(severity: number): string {
  return severityWords[severity] ?? String(severity);
}
