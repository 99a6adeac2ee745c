import type { FactCheck } from '../../../contract/check.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { countsPorts, isPortCount, portsNamed } from '../portCount.ts';
import type { Scene } from '../scene.ts';
import { factConditions, opOf } from './factCheck.ts';

type Counted = Pick<FactCheck, 'key' | 'x' | 'conditions'>;

/** The ports that were counted before: in this clause or an earlier one, else in the sentence before. */
function countedBefore(scene: Scene, share: Item): Counted | undefined {
  const here = scene.items.findIndex(
    (item, at) =>
      item.index < share.index &&
      isPortCount(keyOf(item, 'fact')) &&
      scene.items.slice(Math.max(0, at - 2), at).some(({ number }) => number?.dimension === ''),
  );
  if (here >= 0) {
    const count = scene.items
      .slice(0, here)
      .reverse()
      .find(({ number }) => number?.dimension === '')!;
    return { key: keyOf(scene.items[here], 'fact')!, x: count.number!.x, conditions: factConditions(scene) };
  }
  // "HDMI: four sockets, all of them version 2.1"
  const label = scene.sentence[0];
  const count = scene.sentence[2];
  const isLabel =
    isWord(label, 'hdmi', 'usb') && isWord(scene.sentence[1], ':') && count?.number?.dimension === '';
  if (isLabel && share.index > 2)
    return { key: `${label!.text}.count`, x: count!.number!.x, conditions: factConditions(scene) };
  for (let before = scene.previous; before; before = before.previous) {
    const said = before.said?.find(countsPorts);
    if (said) return said;
  }
  const { statement, ports } = scene.carry;
  if (scene.index === 0 && statement && !statement.asked && countsPorts(statement.check))
    return statement.check;
  // "A row of HDMI sockets, and two of them are 2.1": of ports that nobody counted.
  const named = portsNamed(scene.sentence.filter(({ index }) => index < share.index)) ?? ports;
  return named === undefined ? undefined : { key: named, x: 0, conditions: factConditions(scene) };
}

const meant = ['which', 'them', 'these', 'those'];

interface PortShare {
  items: Item[];
  /** How many; undefined for "all of them" */
  count?: Item;
  x?: number;
  /** "All but one": of all, so many are not. */
  but?: true;
}

/** "two of which", "all four", "both of them", "none of these", "all" before a version. */
function shareAt(items: readonly Item[], at: number): PortShare | undefined {
  const item = items[at]!;
  if (item.number?.dimension !== '' && !isWord(item, 'one', 'both') && keyOf(item, 'stat') === undefined)
    return undefined;
  const ofThem = (next: number) => isWord(items[next], 'of') && isWord(items[next + 1], ...meant);
  const bare = item.number?.dimension === '' && !item.number.role;
  // "All but one are 2.1", "all but two of them 2.1"
  if (isWord(items[at - 1], 'all but')) {
    const last = ofThem(at + 1) ? at + 3 : at + 1;
    return bare ? { items: items.slice(at - 1, last), x: item.number!.x, but: true } : undefined;
  }
  if ((bare || isWord(item, 'one')) && ofThem(at + 1))
    return { items: items.slice(at, at + 3), count: item, x: item.number?.x ?? 1 };
  // "On the Plain, three of the sockets are 2.1"
  const ofSockets =
    isWord(items[at + 1], 'of') &&
    isWord(items[at + 2], 'the', 'its') &&
    isWord(items[at + 3], 'sockets', 'ports', 'inputs', 'connectors');
  // "Three of the Hearth's HDMI sockets are of the 2.1 sort"
  const owner = items.slice(at + 1, at + 7);
  const sockets = owner.findIndex(
    (word) => isWord(word, 'sockets', 'ports', 'inputs', 'connectors') || isPortCount(keyOf(word, 'fact')),
  );
  const owned =
    isWord(owner[0], 'of') &&
    sockets > 1 &&
    owner
      .slice(1, sockets)
      .every((word) => isWord(word, 'the', "'s", 'hdmi', 'usb') || keyOf(word, 'unit') !== undefined);
  if (bare && owned && !ofSockets)
    return { items: items.slice(at, at + 2 + sockets), count: item, x: item.number!.x };
  if (bare && ofSockets) return { items: items.slice(at, at + 4), count: item, x: item.number!.x };
  // "Of the four HDMI inputs, three are of version 2.1"
  if (bare && isWord(items[at + 1], 'are', 'is', 'being'))
    return { items: [item], count: item, x: item.number!.x };
  // "… of which just one is up to the 2.1 standard"
  const led = isWord(items[at - 1], 'just', 'only') ? at - 2 : at - 1;
  const ofWhich = isWord(items[led], 'which', 'them') && isWord(items[led - 1], 'of');
  if (
    ofWhich &&
    (item.number?.dimension === '' || isWord(item, 'one')) &&
    isWord(items[at + 1], 'is', 'are', 'runs', 'run', 'supports', 'accepts')
  )
    return { items: items.slice(led - 1, at + 1), count: item, x: item.number?.x ?? 1 };
  if (isWord(item, 'both')) return { items: items.slice(at, ofThem(at + 1) ? at + 3 : at + 1), x: 2 };
  const stat = keyOf(item, 'stat');
  // "None of its HDMI sockets is of the 2.1 kind", "four sockets, and none is 2.1"
  if (stat === 'none' && isNoPort(items, at, owner, sockets))
    return { items: items.slice(at, Math.max(at + 1, at + 2 + sockets)), x: 0 };
  if (stat === 'none' && ofThem(at + 1)) return { items: items.slice(at, at + 3), x: 0 };
  if (stat !== 'all') return undefined;
  const next = items[at + 1];
  // "All 4 of the Hearth's HDMI inputs are of the 2.1 type"
  const counted =
    isWord(item, 'all') && next?.number?.dimension === '' && isWord(items[at + 2], 'of')
      ? shareAt(items, at + 1)
      : undefined;
  if (counted) return { ...counted, items: [item, ...counted.items] };
  // "Every single one of them"
  if (isWord(next, 'one') && ofThem(at + 2)) return { items: items.slice(at, at + 4) };
  if (next?.number?.dimension === '' && next.number.spelled && !next.number.role)
    return { items: items.slice(at, ofThem(at + 2) ? at + 4 : at + 2), count: next, x: next.number.x };
  return { items: items.slice(at, ofThem(at + 1) ? at + 3 : at + 1) };
}

function isNoPort(items: readonly Item[], at: number, behind: readonly Item[], sockets: number): boolean {
  if (!/^(?:none|not one|not any)/.test(items[at]!.text)) return false;
  if (isWord(behind[0], 'is', 'are')) return true;
  return (
    sockets >= 0 &&
    (isWord(behind[0], 'of') || / of(?: the)?$/.test(items[at]!.text)) &&
    behind
      .slice(0, sockets)
      .every(
        (word) => isWord(word, 'of', 'the', 'its', "'s", 'hdmi', 'usb') || keyOf(word, 'unit') !== undefined,
      )
  );
}

/** "Of which two run at 120 Hz", "two of its four HDMI ports handle 144 Hz": said of some of the ports. */
export function namesPortShare(scene: Scene): boolean {
  const { items, previous } = scene;
  // "Two run at 4K and 120 Hz": the clause goes on.
  if (previous && isWord(items[0], 'and') && items.length <= 4 && namesPortShare(previous)) return true;
  return items.some((item, at) => {
    const share = shareAt(items, at);
    const isPart = isWord(items[at + 1], 'of') && item.number?.dimension === '';
    const ofPorts = items.slice(at + 1, at + 7).some((word) => isPortCount(keyOf(word, 'fact')));
    return (isPart && ofPorts) || (share !== undefined && countedBefore(scene, item) !== undefined);
  });
}

const links =
  /^(?:do|does|works?|made|speak|speaks|is|are|'s|being|run|runs|to|the|of|hdmi|usb|version|at|with|support|supports|supporting|a|full|fully|true|genuine|kind|as|per|built|meets?|conforms?|compl(?:y|ies)|up to|'re|rated|they|proper|real|quick|quicker|fast|faster|modern|newer|latest|sort|type|kind|variety)$/;

/** "four HDMI ports, two of which run at 2.1", "all four are 2.1": so many of the ports before, by their version. */
export function readPartOfPorts(scene: Scene, findings: Findings): undefined {
  const { items } = scene;
  let at = 0;
  let share: PortShare | undefined;
  for (; at < items.length && !share; at += 1) if (!scene.used.has(items[at]!)) share = shareAt(items, at);
  if (!share) return;
  // Whose sockets these are, their version tells: no USB socket is a 2.1.
  const isHdmi =
    share.items.some(
      (item) => isWord(item, 'sockets', 'ports', 'inputs') || isPortCount(keyOf(item, 'fact')),
    ) && items.some(({ text }) => /^(?:1\.4|2\.[01])$/.test(text));
  // "None of the HDMI sockets is 2.1", whichever ports were counted before.
  const named = share.items.some((item) => keyOf(item, 'fact') === 'hdmi.count');
  const counted =
    (named && isHdmi ? undefined : countedBefore(scene, share.items[0]!)) ??
    (isHdmi ? { key: 'hdmi.count', x: 0, conditions: factConditions(scene) } : undefined);
  if (!counted) return;
  const rest = items.filter((item) => item.index > share.items.at(-1)!.index);
  const end = rest.find((item) => !links.test(item.text));
  const words = [
    ...share.items,
    ...rest.filter((item) => isWord(item, 'hdmi', 'usb') && item.index < (end?.index ?? 0)),
  ];
  if (end?.number?.dimension === 'frequency') {
    refuse(findings, scene, 'fact', 'no fact says what a single port takes', [...words, end]);
    return;
  }
  const version = end && versionOf(end);
  if (!end || version === undefined) return;
  if (end.number) end.number.role = 'name';
  const denied = items.find(
    (item) => item.index < share.items[0]!.index && keyOf(item, 'negation') === 'not',
  );
  if (denied) {
    refuse(findings, scene, 'fact', 'the words do not say how many of the ports', [denied, ...words, end]);
    return;
  }
  if (share.but && typeof counted.x === 'number' && counted.x <= share.x!) {
    refuse(findings, scene, 'fact', 'the words do not say how many ports there are', [...words, end]);
    return;
  }
  const check: FactCheck = {
    kind: 'fact',
    key: `${counted.key}.${version}`,
    op: share.count ? opOf(share.count) : '=',
    x: share.but ? Number(counted.x) - share.x! : (share.x ?? counted.x),
    conditions: ofTheSame(scene, counted),
  };
  propose(findings, scene, 'fact', check, [...words, end]);
}

/** "2.1", "two point one" */
function versionOf({ text, number }: Item): string | undefined {
  if (/^\d\.\d$/.test(text)) return text;
  return number?.spelled && number.dimension === '' && number.place === 0.1 ? number.x.toFixed(1) : undefined;
}

/** The ports are those of the set that they were counted of, whatever the clause would mean by itself. */
function ofTheSame(scene: Scene, { conditions }: Counted): FactCheck['conditions'] {
  return scene.unitNamed ? factConditions(scene) : conditions;
}
