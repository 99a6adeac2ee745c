import type { Carry } from './carry.ts';

/** A copy that a reader may write on: headings themselves are never changed, only their list. */
export function copyCarry(carry: Carry): Carry {
  const copy = { ...carry };
  copy.headings = [...carry.headings];
  copy.paragraph = { ...carry.paragraph };
  if (carry.header) copy.header = [...carry.header];
  return copy;
}

/** Do two states hand the same on? Compared by content, since each reading makes its own. */
export function sameCarry(one: Carry, other: Carry): boolean {
  return sameContent(one, other);
}

function sameContent(one: unknown, other: unknown): boolean {
  if (one === other) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  if (Array.isArray(one)) {
    if (!Array.isArray(other) || one.length !== other.length) return false;
    for (let i = 0; i < one.length; i++) if (!sameContent(one[i], other[i])) return false;
    return true;
  }
  const [first, second] = [one as Record<string, unknown>, other as Record<string, unknown>];
  // A member that is undefined is as good as absent.
  for (const key in first) if (!sameContent(first[key], second[key])) return false;
  for (const key in second) if (first[key] === undefined && second[key] !== undefined) return false;
  return true;
}
