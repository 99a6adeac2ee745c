import { lstat, readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { type Fault, fail, type Result, succeed } from '../../shared/contract/fault.ts';

/** Folders of version control: they belong to the folder, not to what it says. */
const leftOut = new Set(['.git', '.hg', '.svn']);

/**
 * Reads every file below a folder, by path with forward slashes, in code-unit order. Symbolic links are not followed.
 * Errors: `unreadable`, `not-found`.
 */
export async function readFolder(
  folder: string,
): Promise<Result<{ files: Map<string, Buffer>; notes: string[] }>> {
  const files = new Map<string, Buffer>();
  const notes: string[] = [];
  const faults: Fault[] = [];

  async function walk(path: string): Promise<void> {
    const entries = await readdir(join(folder, path), { withFileTypes: true });
    for (const entry of entries) {
      const inner = path === '' ? entry.name : `${path}/${entry.name}`;
      if (entry.isDirectory()) {
        if (leftOut.has(entry.name)) notes.push(`${inner} belongs to version control and was left out.`);
        else await walk(inner);
      } else if (entry.isFile()) files.set(inner, await readFile(join(folder, inner)));
      else notes.push(`${inner} is a link or device and was left out.`);
    }
  }

  try {
    if (!(await lstat(folder)).isDirectory())
      return fail({
        code: 'bad-input',
        sentence: `${folder} is not a folder.`,
        mend: 'Name the folder that holds dossier.json.',
        place: { file: folder },
      });
    await walk('');
  } catch (error) {
    faults.push(fileFault(error, folder));
  }
  if (faults.length > 0) return fail(...faults);
  return succeed({ files: new Map([...files].sort(([one], [other]) => (one < other ? -1 : 1))), notes });
}

/** Turns an error of the file system into a fault; anything else is a programmer's mistake and thrown on. */
export function fileFault(error: unknown, fallbackPath: string): Fault {
  const { code, path, message } = error as NodeJS.ErrnoException;
  const file = path ?? fallbackPath;
  const place = { file };
  switch (code) {
    case 'ENOENT':
      return {
        code: 'not-found',
        sentence: 'There is no such file or folder.',
        mend: 'Check the path.',
        place,
      };
    case 'EACCES':
    case 'EPERM':
    case 'EROFS':
      return {
        code: 'unreadable',
        sentence: 'Access is not allowed.',
        mend: 'Check the permissions.',
        place,
      };
    case 'ENOSPC':
      return { code: 'unreadable', sentence: 'The disk is full.', mend: 'Make room and try again.', place };
    case 'EISDIR':
      return { code: 'bad-input', sentence: 'This is a folder, not a file.', mend: 'Name a file.', place };
    case 'ENOTDIR':
      return { code: 'bad-input', sentence: 'This is a file, not a folder.', mend: 'Name a folder.', place };
    case undefined:
      throw error;
    default:
      return { code: 'unreadable', sentence: `It cannot be read or written (${message}).`, place };
  }
}
