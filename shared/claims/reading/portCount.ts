import type { Check, FactCheck } from '../../contract/check.ts';
import { type Item, isWord, keyOf } from './items.ts';

/** Ports of all versions together; those of one version have a key of their own. */
export function isPortCount(key: string | undefined): boolean {
  return key === 'hdmi.count' || key === 'usb.count';
}

/** "HDMI sockets": the ports that the words name last, counted or not. */
export function portsNamed(items: readonly Item[]): string | undefined {
  return items.map((item) => keyOf(item, 'fact')).findLast(isPortCount);
}

/** "What about the Plain? Three sockets": of the ports that were spoken of. */
export function nameSockets(items: readonly Item[], ports: string | undefined): undefined {
  let known = ports;
  for (const item of items) {
    const fact = keyOf(item, 'fact');
    if (isPortCount(fact)) known = fact;
    if (
      known !== undefined &&
      (isWord(item, 'sockets', 'ports') || (known === 'hdmi.count' && isWord(item, 'inputs'))) &&
      item.meanings.length === 0 &&
      items[item.index - 1]?.number?.dimension === '' &&
      items[item.index - 1]?.number?.role === undefined
    )
      item.meanings = [{ kind: 'fact', key: known, data: 'count' }];
  }
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
