import { crc32, deflateSync } from 'node:zlib';

/** Colour of a pixel at x, y (each 0 to 1), channels 0 to 255. */
export type Painter = (x: number, y: number) => readonly [number, number, number];

const size = { width: 96, height: 54 };

function chunk(type: string, body: Buffer): Buffer {
  const head = Buffer.alloc(4);
  head.writeUInt32BE(body.length);
  const named = Buffer.concat([Buffer.from(type, 'latin1'), body]);
  const check = Buffer.alloc(4);
  check.writeUInt32BE(crc32(named) >>> 0);
  return Buffer.concat([head, named, check]);
}

/**
 * A small PNG (ISO/IEC 15948) of a painted pattern: 8-bit RGB, no metadata, so no place and no time. Stored without
 * compression, because compressed bytes may differ between versions of zlib.
 */
export function paintPng(paint: Painter): Buffer {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(size.width, 0);
  header.writeUInt32BE(size.height, 4);
  header.set([8, 2, 0, 0, 0], 8);
  const rows = Array.from({ length: size.height }, (_, row) => {
    const pixels = Array.from({ length: size.width }, (_, column) =>
      paint((column + 0.5) / size.width, (row + 0.5) / size.height).map((channel) =>
        Math.round(Math.min(255, Math.max(0, channel))),
      ),
    );
    return Buffer.from([0, ...pixels.flat()]);
  });
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([
    signature,
    chunk('IHDR', header),
    chunk('IDAT', deflateSync(Buffer.concat(rows), { level: 0 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

const grey = (level: number) => [level, level, level * 1.04] as const;

/** Patterns that the demo's photos show. */
export const paintings = {
  /** A bright square on black with its light spilling over zones */
  blooming: (x, y) => {
    const distance = Math.hypot((x - 0.5) * 1.78, y - 0.5);
    return grey(distance < 0.12 ? 250 : 90 * Math.exp(-distance * 7) + 4);
  },
  /** Patches of light in the corners of a black picture */
  clouding: (x, y) => {
    const corner = Math.min(Math.hypot(x, y - 1), Math.hypot(x - 1, y) * 1.6);
    return grey(8 + 46 * Math.exp(-corner * 5));
  },
  /** A slow grey ramp in coarse steps */
  banding: (x) => grey(30 + Math.floor(x * 14) * 13),
  /** Faint vertical stripes and a dark corner on mid grey */
  dirtyScreen: (x, y) => grey(120 + 5 * Math.sin(x * 40) - 46 * Math.exp(-Math.hypot(x, y - 1) * 5)),
} satisfies Record<string, Painter>;
