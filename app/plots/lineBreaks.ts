/**
 * Breaks a text at its spaces into lines that fit, as SVG does not.
 * @param widthOf a line's width in the unit of `room`
 * @returns at least one line; a word wider than the room has a line of its own
 */
export function linesWithin(text: string, room: number, widthOf: (line: string) => number): string[] {
  const lines: string[] = [];
  // No-break spaces keep a number beside its unit.
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    if (last === undefined || widthOf(longer) > room) lines.push(word);
    else lines[lines.length - 1] = longer;
  }
  return lines;
}
