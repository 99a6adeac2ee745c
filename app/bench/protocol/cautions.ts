/**
 * Cautions of the Bench's own forms, for work that can hurt; those of the protocol come with its steps. They remind:
 * local codes and licensed practice decide.
 */
export const liftCaution = {
  title: 'Lift it with two people',
  text: 'By the frame and upright, never by the panel. On a level surface that bears it, with the strap against tipping fastened. A wall fixing suits wall and weight and is put up by a qualified person where local codes ask for one. The back stays on: parts inside hold a charge after the plug is out, and opening is for licensed service people.',
} as const;

export const flashingCaution =
  'Flashing patterns can cause seizures in people with photosensitive epilepsy. Warn everyone in the room, keep it lit, look away at any unease, and stop. Nothing here starts such a pattern: a person in the room does.';

/** Topics that are looked for with flashing patterns. */
export function needsFlashing(topic: string): boolean {
  return /flicker|flash|strobe|black frame/i.test(topic);
}

/** Does a caution speak of flashing? Such a step is never begun without a person having read it. */
export function mustBeReadFirst(cautions: readonly string[]): boolean {
  return cautions.some((caution) => /flash|seizure|epilep/i.test(caution));
}

const names: readonly (readonly [RegExp, string])[] = [
  [/flash|seizure|epilep/i, 'flashing'],
  [/static pattern/i, 'static pattern'],
  [/bright full field/i, 'bright field'],
  [/\btip\b/i, 'it can tip'],
  [/\bmains\b/i, 'mains'],
];

/** What the cautions of a step are about, for the word that opens them: "Caution: static pattern, bright field". */
export function cautionTitle(cautions: readonly string[]): string {
  const found = cautions.flatMap((caution) => names.find(([words]) => words.test(caution))?.[1] ?? []);
  return found.length > 0 ? `Caution: ${found.join(', ')}` : 'Caution';
}
