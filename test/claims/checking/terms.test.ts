import { describe, expect, it } from 'vitest';
import { amount } from '../../../shared/claims/checking/terms.ts';

const plainSpaces = (text: string) => text.replaceAll(/\s/g, ' ');

describe('a number in a reason', () => {
  it('keeps its own digits where it was read off or typed in', () => {
    expect(plainSpaces(amount(0.31, null, 'W', 'standby'))).toBe('0.31 W');
    expect(plainSpaces(amount(0.3, null, 'W', 'standby'))).toBe('0.3 W');
    expect(plainSpaces(amount(12.45, null, 'ms', 'lag'))).toBe('12.45 ms');
  });

  it('is cut to the digits of its quantity where it was worked out', () => {
    expect(plainSpaces(amount(0.791234, null, 'ΔE2000', 'grey.de2000'))).toBe('0.8');
    expect(plainSpaces(amount(1612.43, null, 'cd/m²', 'peak'))).toBe('1,612 cd/m²');
  });
});
