import { fail, type Result, succeed } from '../../shared/contract/fault.ts';

/**
 * A file's bytes in base64, in pieces so that large files do not overflow the call stack. A file on a stick that was
 * pulled out, or that another program changed since it was chosen, cannot be read: that comes back as a fault.
 */
export async function base64Of(file: Blob): Promise<Result<string>> {
  let bytes: Uint8Array;
  try {
    bytes = new Uint8Array(await file.arrayBuffer());
  } catch {
    return fail({
      code: 'unreadable',
      sentence: 'The file cannot be read any more.',
      mend: 'See that it is still there, and choose it again.',
    });
  }
  let binary = '';
  for (let at = 0; at < bytes.length; at += 0x8000)
    binary += String.fromCharCode(...bytes.subarray(at, at + 0x8000));
  return succeed(btoa(binary));
}
