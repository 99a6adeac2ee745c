import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { crc32 } from 'node:zlib';
import { afterAll, describe, expect, it } from 'vitest';
import { openLibrary } from '../../main/library/openLibrary.ts';
import { withoutLocation } from '../../main/photos/withoutLocation.ts';
import { createWorkbench } from '../../main/workbench.ts';

const folder = mkdtempSync(join(tmpdir(), 'nitproof-photos-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Exif by hand (CIPA DC-008): orientation 6, a GPS directory with latitude reference and 51° 28′ 38″. */
function exif(order: 'II' | 'MM'): Buffer {
  const bytes = Buffer.alloc(100);
  const short = (value: number, at: number) =>
    order === 'II' ? bytes.writeUInt16LE(value, at) : bytes.writeUInt16BE(value, at);
  const long = (value: number, at: number) =>
    order === 'II' ? bytes.writeUInt32LE(value, at) : bytes.writeUInt32BE(value, at);
  const entry = (at: number, tag: number, type: number, count: number) => {
    short(tag, at);
    short(type, at + 2);
    long(count, at + 4);
  };
  bytes.write(order, 0, 'latin1');
  short(42, 2);
  long(8, 4);
  short(2, 8);
  entry(10, 0x0112, 3, 1);
  short(6, 18);
  entry(22, 0x8825, 4, 1);
  long(38, 30);
  short(2, 38);
  entry(40, 1, 2, 2);
  bytes.write('N\0', 48, 'latin1');
  entry(52, 2, 5, 3);
  long(72, 60);
  [51, 1, 28, 1, 38, 1].forEach((value, index) => {
    long(value, 72 + index * 4);
  });
  return bytes;
}

const segment = (marker: number, body: Buffer) =>
  Buffer.concat([Buffer.from([0xff, marker, (body.length + 2) >> 8, (body.length + 2) & 255]), body]);
const scan = Buffer.from([0xff, 0xda, 0, 2, 1, 2, 3, 0xff, 0xd9]);
const jpeg = (order: 'II' | 'MM') =>
  Buffer.concat([
    Buffer.from([0xff, 0xd8]),
    segment(0xe1, Buffer.concat([Buffer.from('Exif\0\0', 'latin1'), exif(order)])),
    segment(
      0xe1,
      Buffer.from('http://ns.adobe.com/xap/1.0/\0<x:xmpmeta exif:GPSLatitude="51,28N"/>', 'latin1'),
    ),
    segment(0xed, Buffer.from('Photoshop 3.0\0 City', 'latin1')),
    segment(0xfe, Buffer.from('kept')),
    scan,
  ]);

describe('a photo that leaves the library', () => {
  it.each(['II', 'MM'] as const)(
    'has no place in its JPEG Exif (%s), but its orientation and picture',
    (order) => {
      const left = Buffer.from(withoutLocation(jpeg(order)));
      expect(left.indexOf(exif(order).subarray(72, 96))).toBe(-1);
      expect(left.includes('GPSLatitude')).toBe(false);
      expect(left.includes('Photoshop')).toBe(false);
      expect(left.includes(exif(order).subarray(10, 22))).toBe(true);
      expect(left.includes('kept')).toBe(true);
      expect(left.subarray(-scan.length)).toEqual(scan);
    },
  );

  it('changes no more when it leaves again', () => {
    const once = withoutLocation(jpeg('II'));
    expect(Buffer.from(withoutLocation(once))).toEqual(Buffer.from(once));
  });

  it('has no place in a PNG, whose checksums stay right', () => {
    const chunk = (type: string, body: Buffer) => {
      const named = Buffer.concat([Buffer.from(type, 'latin1'), body]);
      const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
      length.writeUInt32BE(body.length);
      sum.writeUInt32BE(crc32(named));
      return Buffer.concat([length, named, sum]);
    };
    const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
    const end = chunk('IEND', Buffer.alloc(0));
    const left = Buffer.from(
      withoutLocation(
        Buffer.concat([
          signature,
          chunk('eXIf', exif('MM')),
          chunk('iTXt', Buffer.from('XML:com.adobe.xmp\0GPSLatitude', 'latin1')),
          chunk('tEXt', Buffer.from('Comment\0kept', 'latin1')),
          end,
        ]),
      ),
    );
    expect(left.includes('GPSLatitude')).toBe(false);
    expect(left.includes('kept')).toBe(true);
    expect(left.indexOf(exif('MM').subarray(72, 96))).toBe(-1);
    const type = left.indexOf('eXIf');
    const length = left.readUInt32BE(type - 4);
    expect(left.readUInt32BE(type + 4 + length)).toBe(crc32(left.subarray(type, type + 4 + length)));
    expect(left.subarray(-end.length)).toEqual(end);
  });

  it('has no place in a WebP or HEIF file, whose length stays', () => {
    const riff = Buffer.concat([Buffer.from('RIFF\0\0\0\0WEBPEXIF\0\0\0\0', 'latin1'), exif('II')]);
    const left = Buffer.from(withoutLocation(riff));
    expect(left.length).toBe(riff.length);
    expect(left.indexOf(exif('II').subarray(72, 96))).toBe(-1);
  });

  it('keeps other bytes as they are', () => {
    const bytes = Buffer.from('not a photo');
    expect(Buffer.from(withoutLocation(bytes))).toEqual(bytes);
  });

  it('stays whole inside, loses its place to a window and to an export, and comes back without a conflict', async () => {
    const opened = await openLibrary(join(folder, 'photos.sqlite'));
    if (!opened.ok) throw new Error(opened.faults[0]?.sentence);
    const workbench = createWorkbench(opened.value);
    const unit = 'orrinvale-trial-50';
    await workbench.answer('unit.save', { unit, content: { maker: 'Orrinvale', model: 'Trial 50' } });
    const original = jpeg('II');
    await workbench.answer('photo.add', { unit, name: 'room.jpg', base64: original.toString('base64') });
    const inside = await opened.value.readPhoto(unit, 'room.jpg');
    expect(inside.ok && Buffer.from(inside.value.bytes).equals(original)).toBe(true);
    const served = await workbench.answer('photo.read', { unit, name: 'room.jpg' });
    expect(served.ok && Buffer.from(served.value.base64, 'base64').includes('GPSLatitude')).toBe(false);
    const target = join(folder, 'dossier');
    const out = await workbench.answer('dossier.export', { folder: target, job: 'out' });
    const back = await workbench.answer('dossier.import', { folder: target, job: 'back' });
    expect([out.ok, back.ok]).toEqual([true, true]);
    const still = await opened.value.readPhoto(unit, 'room.jpg');
    expect(still.ok && Buffer.from(still.value.bytes).equals(original)).toBe(true);
    await workbench.close();
  });
});
