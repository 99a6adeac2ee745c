const gpsPointer = 0x8825;
const exifPointer = 0x8769;
const makerNote = 0x927c;
const xmpTag = 0x02bc;
const iptcTag = 0x83bb;

/** Bytes of one value by TIFF field type 1 to 12 (TIFF 6.0, section 2, from memory) */
const sizes = [0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8];
/** A file with more directories than this is not a camera's. */
const mostDirectories = 16;

/**
 * Overwrites with zeros, where it stands, what tells a place in a TIFF structure (the body of Exif): the GPS
 * directory with its values, maker notes, XMP and IPTC. Lengths stay. False: this cannot be read as TIFF, nothing
 * was changed for sure.
 */
export function blankTiffLocation(tiff: Buffer): boolean {
  if (tiff.length < 8) return false;
  const order = tiff.toString('latin1', 0, 2);
  if (order !== 'II' && order !== 'MM') return false;
  const short = (at: number) => (order === 'II' ? tiff.readUInt16LE(at) : tiff.readUInt16BE(at));
  const long = (at: number) => (order === 'II' ? tiff.readUInt32LE(at) : tiff.readUInt32BE(at));
  if (short(2) !== 42) return false;

  const seen = new Set<number>();
  const waiting: { at: number; blank: boolean }[] = [{ at: long(4), blank: false }];
  let first = true;
  while (waiting.length > 0 && seen.size < mostDirectories) {
    const { at, blank } = waiting.pop()!;
    if (at === 0 || seen.has(at)) continue;
    seen.add(at);
    if (at + 2 > tiff.length) {
      if (first) return false;
      continue;
    }
    const count = short(at);
    const foot = at + 2 + count * 12;
    if (foot > tiff.length) {
      if (first) return false;
      // A directory that runs past the end tells nothing that may stay.
      if (blank) tiff.fill(0, at);
      continue;
    }
    first = false;
    for (let entry = at + 2; entry < foot; entry += 12) {
      const tag = short(entry);
      const length = (sizes[short(entry + 2)] ?? 1) * long(entry + 4);
      const value = length <= 4 ? entry + 8 : long(entry + 8);
      if (tag === gpsPointer && !blank) waiting.push({ at: long(entry + 8), blank: true });
      else if (tag === exifPointer && !blank) waiting.push({ at: long(entry + 8), blank: false });
      else if (blank || tag === makerNote || tag === xmpTag || tag === iptcTag) {
        if (value < tiff.length) tiff.fill(0, value, Math.min(tiff.length, value + length));
        // The address of the value goes too; its type and count are harmless and keep the directory readable.
        if (blank) tiff.fill(0, entry, entry + 12);
      }
    }
    if (blank) tiff.fill(0, at, at + 2);
    else if (foot + 4 <= tiff.length) waiting.push({ at: long(foot), blank: false });
  }
  return true;
}
