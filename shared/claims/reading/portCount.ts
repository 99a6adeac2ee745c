import type { Check, FactCheck } from '../../contract/check.ts';

/** Ports of all versions together; those of one version have a key of their own. */
export function isPortCount(key: string | undefined): boolean {
  return key === 'hdmi.count' || key === 'usb.count';
}

/** Does the statement count ports, be it of all versions or of one? */
export function countsSockets(check: Check): check is FactCheck {
  return (
    check.kind === 'fact' &&
    /^(?:hdmi|usb)\.count/.test(check.key) &&
    !check.by &&
    typeof check.x === 'number'
  );
}

/** Does the statement count the ports of a set? */
export function countsPorts(check: Check): check is FactCheck {
  return check.kind === 'fact' && isPortCount(check.key) && !check.by && typeof check.x === 'number';
}
