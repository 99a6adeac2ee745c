import { readFile } from 'node:fs/promises';
import { extname, join, normalize, sep } from 'node:path';

const mimeTypes: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.map': 'application/json; charset=utf-8',
};

export interface AppFile {
  bytes: Uint8Array;
  mime: string;
  /** Built assets carry a digest in their name and may be kept for good. */
  immutable: boolean;
}

/**
 * Reads one file of the built window by the path of its address (`/`, `/assets/…`); null when there is none
 * or when the path would leave the folder.
 */
export async function readAppFile(appFolder: string, urlPath: string): Promise<AppFile | null> {
  let decoded: string;
  try {
    decoded = decodeURIComponent(urlPath);
  } catch {
    return null;
  }
  if (decoded.includes('\0')) return null;
  const wanted = normalize(join(appFolder, decoded === '/' ? 'index.html' : decoded));
  if (!wanted.startsWith(normalize(appFolder) + sep)) return null;
  const mime = mimeTypes[extname(wanted)];
  if (mime === undefined) return null;
  try {
    return { bytes: await readFile(wanted), mime, immutable: decoded.startsWith('/assets/') };
  } catch {
    return null;
  }
}
