/**
 * Typography that carries no meaning, made equal: composed characters, any white space, curly and straight quotation
 * marks. Hyphens, dashes and minus signs stay apart: "−3" and "3" must never meet.
 */
export function normaliseQuote(text: string): string {
  return text
    .normalize('NFC')
    .replace(/[\u2018\u2019\u02bc]/gu, "'")
    .replace(/[\u201c\u201d]/gu, '"')
    .replace(/\s+/gu, ' ')
    .trim();
}
