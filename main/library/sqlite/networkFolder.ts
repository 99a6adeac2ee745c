import { statfsSync } from 'node:fs';

/** File system types by their `statfs` magic on Linux (statfs(2), from memory): NFS, SMB, CIFS, SMB 2, AFS, Coda. */
const networkTypes = new Set([0x6969, 0x517b, 0xff534d42, 0xfe534d42, 0x5346414f, 0x73757245]);

/**
 * True where a folder is known to lie on a network drive. SQLite's write-ahead log needs memory that all writers
 * share, which such drives do not give (SQLite documentation, "Write-Ahead Logging", from memory).
 */
export function isOnNetwork(folder: string): boolean {
  if (/^\\\\[^\\?.]/.test(folder)) return true;
  if (process.platform !== 'linux') return false;
  return isNetworkType(statfsSync(folder).type);
}

export function isNetworkType(type: number): boolean {
  return networkTypes.has(type >>> 0);
}
