import type { Reading } from '../contract/reading.ts';

/** Amplitude of a pattern in % of the signal's range: as stated, else its largest channel sent, else full. */
export function amplitudeOf({ stimulus, signal }: Reading): number {
  return stimulus ?? (signal ? Math.max(...signal) : 100);
}

/** True for a white pattern at full signal: every channel sent, else as stated, else taken as full. */
export function isFullWhite({ stimulus, signal }: Reading): boolean {
  return signal ? signal.every((channel) => channel === 100) : (stimulus ?? 100) === 100;
}
