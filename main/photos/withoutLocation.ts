import { crc32 } from 'node:zlib';
import { blankTiffLocation } from './tiffLocation.ts';

/**
 * A photo's bytes for a copy that leaves the library: where it was taken is gone (GPS data in Exif, maker notes, XMP
 * and IPTC, which may name places), the picture and its orientation stay. JPEG, PNG, WebP and the HEIF family
 * (HEIC, AVIF); other bytes come back as they are. Doing it twice changes nothing more.
 * Exif: CIPA DC-008; JPEG segments: ISO/IEC 10918-1 B.1; PNG chunks: ISO/IEC 15948 (all from memory).
 */
export function withoutLocation(original: Uint8Array): Uint8Array {
  const bytes = Buffer.from(original);
  if (bytes.length > 4 && bytes[0] === 0xff && bytes[1] === 0xd8) return jpegWithout(bytes);
  if (bytes.subarray(0, 8).equals(pngSignature)) return pngWithout(bytes);
  const isRiff = bytes.toString('latin1', 0, 4) === 'RIFF' && bytes.toString('latin1', 8, 12) === 'WEBP';
  const isHeif = bytes.toString('latin1', 4, 8) === 'ftyp';
  return isRiff || isHeif ? blankedInPlace(bytes) : bytes;
}

const pngSignature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
const exifHeader = Buffer.from('Exif\0\0', 'latin1');

function jpegWithout(bytes: Buffer): Buffer {
  const kept: Buffer[] = [bytes.subarray(0, 2)];
  let at = 2;
  while (at + 4 <= bytes.length && bytes[at] === 0xff) {
    const marker = bytes[at + 1]!;
    // Fill bytes may stand before a marker; from start of scan on it is all picture.
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    if (marker === 0xda) break;
    const end = at + 2 + bytes.readUInt16BE(at + 2);
    if (end > bytes.length) break;
    const segment = Buffer.from(bytes.subarray(at, end));
    const body = segment.subarray(4);
    if (marker === 0xe1 && body.subarray(0, 6).equals(exifHeader)) {
      if (blankTiffLocation(body.subarray(6))) kept.push(segment);
    } else if (marker !== 0xe1 && marker !== 0xed) kept.push(segment);
    at = end;
  }
  return Buffer.concat([...kept, bytes.subarray(at)]);
}

const tellingText = /^(XML:com\.adobe\.xmp|Raw profile type (exif|APP1|iptc|xmp)|Location|GPS)/i;

function pngWithout(bytes: Buffer): Buffer {
  const kept: Buffer[] = [bytes.subarray(0, 8)];
  let at = 8;
  while (at + 12 <= bytes.length) {
    const end = at + 12 + bytes.readUInt32BE(at);
    if (end > bytes.length) break;
    const type = bytes.toString('latin1', at + 4, at + 8);
    const chunk = Buffer.from(bytes.subarray(at, end));
    const body = chunk.subarray(8, -4);
    if (type === 'eXIf') {
      if (blankTiffLocation(body)) {
        chunk.writeUInt32BE(crc32(chunk.subarray(4, -4)), chunk.length - 4);
        kept.push(chunk);
      }
    } else if (!(/^(tEXt|iTXt|zTXt)$/.test(type) && tellingText.test(body.toString('latin1', 0, 80))))
      kept.push(chunk);
    at = end;
  }
  return Buffer.concat([...kept, bytes.subarray(at)]);
}

/** Containers that point into themselves keep every length: what tells the place is overwritten where it stands. */
function blankedInPlace(bytes: Buffer): Buffer {
  for (const header of ['II*\0', 'MM\0*']) {
    for (let at = bytes.indexOf(header, 0, 'latin1'); at >= 0; at = bytes.indexOf(header, at + 4, 'latin1'))
      blankTiffLocation(bytes.subarray(at));
  }
  for (const [open, close] of [
    ['<x:xmpmeta', '</x:xmpmeta>'],
    ['<rdf:RDF', '</rdf:RDF>'],
  ] as const) {
    for (let at = bytes.indexOf(open); at >= 0; at = bytes.indexOf(open, at + 1)) {
      const end = bytes.indexOf(close, at);
      if (end < 0) break;
      bytes.fill(0x20, at, end + close.length);
    }
  }
  return bytes;
}
