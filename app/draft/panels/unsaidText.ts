/**
 * A finding in two lines: what was found, with a capital and no full stop, and under which conditions. That nobody
 * mentions it is said by the heading over it.
 */
export function unsaidLines(reason: string): { finding: string; conditions: string } {
  const [first = '', ...besides] = reason.replace(/\.$/, '').split('; ');
  const finding = first.replace(/,? (and|which) no sentence mentions( it)?/, '').trim();
  return {
    finding: finding.charAt(0).toUpperCase() + finding.slice(1),
    conditions: besides.join('; '),
  };
}
