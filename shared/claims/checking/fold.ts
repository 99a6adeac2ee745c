/** Case, spaces, hyphens and compatibility forms do not tell two names apart: "HDR Calm" is "hdr-calm". */
export function fold(text: string): string {
  return text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[\s_\-‐‑–—/]+/gu, '');
}

/** Words of a short text, folded, for inclusion ("IPS" in "LCD IPS"). */
export function foldedWords(text: string): string[] {
  return text
    .normalize('NFKC')
    .toLowerCase()
    .split(/[^\p{L}\p{N}.+]+/u)
    .filter(Boolean);
}
