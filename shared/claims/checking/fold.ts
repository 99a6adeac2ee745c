/** Case, spaces, hyphens and compatibility forms do not tell two names apart: "HDR Calm" is "hdr-calm". */
export function fold(text: string): string {
  let folded = known.get(text);
  if (folded === undefined) {
    folded = text
      .normalize('NFKC')
      .toLowerCase()
      .replace(/[\s_\-‐‑–—/]+/gu, '');
    if (known.size >= kept) known.clear();
    known.set(text, folded);
  }
  return folded;
}

/** Names folded before: each claim asks for the same few. */
const known = new Map<string, string>();
const kept = 1000;

/** Words of a short text, folded, for inclusion ("IPS" in "LCD IPS"). */
export function foldedWords(text: string): string[] {
  return text
    .normalize('NFKC')
    .toLowerCase()
    .split(/[^\p{L}\p{N}.+]+/u)
    .filter(Boolean);
}
