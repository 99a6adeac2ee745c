import { requireFinite } from '../domain.ts';

export type Bits = 8 | 10 | 12;
export type SignalRange = 'narrow' | 'full';

/** Code values of 0 % and 100 % stimulus. */
function ends(bits: Bits, range: SignalRange): readonly [black: number, white: number] {
  return range === 'full' ? [0, 2 ** bits - 1] : [16 * 2 ** (bits - 8), 235 * 2 ** (bits - 8)];
}

/**
 * Stimulus (% of the nominal range of the non-linear signal) that a code value stands for. Codes below black or
 * above white of narrow range give less than 0 or more than 100 %.
 * Source: Rec. ITU-R BT.2100-2 Table 9 (10 and 12 bit), BT.709-6 (8 and 10 bit); 10-bit narrow: code = 64 + 8.76·s.
 * @throws RangeError for a code that is not a number or that the bits cannot hold
 */
export function codeToStimulus(code: number, bits: Bits, range: SignalRange): number {
  if (!(requireFinite(code, 'code') >= 0 && code <= 2 ** bits - 1))
    throw new RangeError(`code ${code} does not fit ${bits} bits`);
  const [black, white] = ends(bits, range);
  return (100 * (code - black)) / (white - black);
}

/**
 * Nearest code value for a stimulus in %; halves go up. The inverse of {@link codeToStimulus} on whole codes.
 * @throws RangeError for a stimulus whose code the bits cannot hold
 */
export function stimulusToCode(stimulus: number, bits: Bits, range: SignalRange): number {
  const [black, white] = ends(bits, range);
  const code = Math.round(black + (requireFinite(stimulus, 'stimulus') / 100) * (white - black));
  if (code < 0 || code > 2 ** bits - 1)
    throw new RangeError(`a stimulus of ${stimulus} % does not fit ${bits} bits`);
  return code;
}
