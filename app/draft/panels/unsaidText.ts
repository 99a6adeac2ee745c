import type { Unsaid } from '../../../shared/contract/claim.ts';

/** A finding in two lines: what was found, without its full stop, and under which conditions (none: empty). */
export function unsaidLines({ reason, conditions = '' }: Pick<Unsaid, 'reason' | 'conditions'>): {
  finding: string;
  conditions: string;
} {
  const behind = conditions === '' ? '.' : `; ${conditions}.`;
  return { finding: reason.endsWith(behind) ? reason.slice(0, -behind.length) : reason, conditions };
}
