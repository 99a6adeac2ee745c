/** Words → an id of a dossier: "Hearth 55, Calm" → `hearth-55-calm`. */
export function idFrom(...words: readonly string[]): string {
  return words
    .join('-')
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '')
    .slice(0, 80);
}

/** The id, or with the lowest number that makes it free. */
export function freeId(id: string, taken: ReadonlySet<string>): string {
  if (!taken.has(id)) return id;
  let number = 2;
  while (taken.has(`${id}-${number}`)) number++;
  return `${id}-${number}`;
}
