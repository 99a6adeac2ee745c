import type { RunEvidence } from '../../contract/evidence.ts';

/** Which signal a quantity means when the sentence names none (`judging.md`, "Conditions"). */
export type SignalDefault = 'hdr' | 'wide' | 'sdr-only' | 'sdr-first';

/**
 * `peak*` and `eotf.rolloff` mean HDR; coverage and area of P3 and BT.2020 mean runs with a wide target gamut;
 * BT.709 coverage and gamma mean SDR; anything else SDR, and where HDR has it too and the verdicts differ, a person
 * is asked (`sdr-first`).
 */
export function signalDefault(id: string): SignalDefault {
  if (/^peak(\.|$)/.test(id) || id === 'eotf.rolloff') return 'hdr';
  if (/^(coverage|area)\.(p3|bt2020)\./.test(id)) return 'wide';
  if (/^(coverage|area)\.bt709\./.test(id) || /^gamma(\.|$)/.test(id)) return 'sdr-only';
  return 'sdr-first';
}

export function isSdr(signal: string): boolean {
  return signal.toUpperCase() === 'SDR';
}

export function isWide(run: RunEvidence): boolean {
  const { gamut } = run.conditions.target;
  return gamut === 'P3-D65' || gamut === 'BT.2020';
}

/** "HDR" in words means any signal that is not SDR; otherwise names are equal but for case. */
export function signalMatches(wanted: string, signal: string): boolean {
  if (wanted.toUpperCase() === 'HDR') return !isSdr(signal);
  return wanted.toUpperCase() === signal.toUpperCase();
}
