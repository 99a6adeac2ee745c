const types: Readonly<Record<string, string>> = {
  jpg: 'image/jpeg',
  jpeg: 'image/jpeg',
  png: 'image/png',
  webp: 'image/webp',
  avif: 'image/avif',
  gif: 'image/gif',
  heic: 'image/heic',
};

/** Media type by the ending of a name; a photo that is none of these is shown as a download. */
export function photoMime(name: string): string {
  const ending = name.slice(name.lastIndexOf('.') + 1).toLowerCase();
  return Object.hasOwn(types, ending) ? types[ending]! : 'application/octet-stream';
}
