/** Letters compared: lower case, without accents. */
const plain = (text: string) => text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();

/**
 * How well typed words find something by its name and further words, 0 (not at all) to 1. Every typed word must
 * begin or stand in one; the name counts more than the rest, the beginning of a word more than its inside, and
 * letters strewn over a name find nothing.
 */
export function paletteMatch(typed: string, name: string, further: readonly string[] = []): number {
  const wanted = plain(typed).split(/\s+/).filter(Boolean);
  if (wanted.length === 0) return 1;
  const places = [plain(name), plain(further.join(' '))];
  let sum = 0;
  for (const word of wanted) {
    const best = Math.max(...places.map((place, index) => (index === 0 ? 1 : 0.4) * found(word, place)));
    if (best === 0) return 0;
    sum += best;
  }
  const isWhole = places[0]!.startsWith(wanted.join(' '));
  return (sum / wanted.length) * (isWhole ? 1 : 0.9);
}

function found(word: string, place: string): number {
  const at = place.indexOf(word);
  if (at < 0) return 0;
  const isStart = place.split(/[^\p{L}\p{N}]+/u).some((one) => one.startsWith(word));
  return isStart ? 1 : 0.5;
}
