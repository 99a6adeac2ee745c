import type { FactCheck } from '../../../contract/check.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { accessoryBefore } from '../foreign.ts';
import { type Item, isWord, keyOf, meaningOf } from '../items.ts';
import type { Scene } from '../scene.ts';
import { splitVariant } from '../variant.ts';
import { denialBefore, factConditions, opOf, withTwin } from './factCheck.ts';

/** Words after "HDMI 2.1" that leave it the version of a socket. */
const plainAfterVersion =
  /^(?:ports?|inputs?|sockets?|connections?|connectors?|terminals?|and|or|but|is|are|was|on|in|at|with|to|for|from|of|as|too|also|here|there|support|version|standard|compatible|compliant|connectivity|one|ones|only|throughout|which|that|though|so|while)$/;

/** "A pair of USB ports": how many a collective word stands for. */
const collectives: Readonly<Record<string, number>> = { both: 2, pair: 2, twin: 2, trio: 3, quartet: 4 };

/** "four HDMI 2.1 ports": number, noun and perhaps a version between. */
export function readCounts(scene: Scene, findings: Findings): undefined {
  for (let at = 0; at < scene.items.length; at += 1) {
    const item = scene.items[at]!;
    const bare = isWord(item, 'hdmi', 'usb');
    const meaning = meaningOf(item, 'fact');
    if (scene.used.has(item) || (!bare && meaning?.data !== 'count')) continue;
    if (accessoryBefore(scene, item)) {
      for (const entry of scene.items.slice(Math.max(0, at - 4), at))
        if (entry.number) entry.number.role = 'ignored';
      continue;
    }
    const lead = scene.items[at - 1];
    const follows = scene.items.slice(at + 1, at + 4);
    // "One HDMI port carries the sound back": one of them, and not how many there are.
    const isOne =
      lead?.number?.spelled === true &&
      lead.number.x === 1 &&
      at === 1 &&
      follows.some((word) =>
        isWord(word, 'is', 'carries', 'supports', 'handles', 'does', 'doubles', 'serves'),
      ) &&
      !follows.some(({ text }) => /^\d\.\d$/.test(text));
    if (isOne) {
      lead.number!.role = 'ignored';
      continue;
    }
    // "One HDMI port fewer": how many less than another set has.
    const apart = scene.items[at + 1];
    if (lead?.number && isWord(apart, 'fewer', 'more', 'less') && !isWord(scene.items[at + 2], 'or')) {
      refuse(findings, scene, 'fact', 'the number says how many more or fewer, not how many', [
        lead,
        item,
        apart,
      ]);
      continue;
    }
    const key = bare ? `${item.text}.count` : meaning!.key;
    const items: Item[] = [item];
    let version: string | undefined;
    const next = scene.items[at + 1];
    const forWhat = scene.items[at - 1];
    const forCount = isWord(forWhat, 'for') ? scene.items[at - 2] : undefined;
    // "USB: 3"
    if (bare && next?.number && !next.number.role && isWord(scene.sentence[item.index + 1], ':')) {
      const conditions = factConditions(scene);
      const noun = scene.items[at + 2];
      propose(findings, scene, 'fact', { kind: 'fact', key, op: opOf(next), x: next.number.x, conditions }, [
        item,
        next,
        isWord(noun, 'sockets', 'ports', 'inputs', 'connectors') ? noun : undefined,
      ]);
      continue;
    }
    // "Inputs: four HDMI, two USB"
    const isNone = scene.borrowed?.has(item) && isWord(forWhat, 'none');
    const direct =
      isNone || (forWhat?.number?.dimension === '' && !forWhat.number.role) ? forWhat : undefined;
    const isAlone = scene.sentence.filter(({ type }) => type !== 'mark').length === 2;
    if (
      bare &&
      direct &&
      (next === undefined || next.type === 'mark' || isWord(next, 'and')) &&
      (scene.borrowed?.has(item) ||
        isAlone ||
        scene.sentence.some(
          (entry) => entry.index < direct.index && /^(?:inputs|sockets|ports|connections)$/.test(entry.text),
        ))
    ) {
      const conditions = factConditions(scene);
      const check: FactCheck = { kind: 'fact', key, op: opOf(direct), x: direct.number?.x ?? 0, conditions };
      propose(findings, scene, 'fact', check, [direct, item]);
      continue;
    }
    if (bare && forCount?.number?.dimension === '' && !forCount.number.role && !next?.number) {
      const check: FactCheck = {
        kind: 'fact',
        key,
        op: opOf(forCount),
        x: forCount.number.x,
        conditions: factConditions(scene),
      };
      propose(findings, scene, 'fact', check, [forCount, item]);
      continue;
    }
    if (bare) {
      if (next?.number && (next.number.place < 1 || next.number.role === 'name')) version = next.text;
      else if (next?.type === 'word' && /^\d+\.\d+$/.test(next.text)) version = next.text;
      if (!version) continue;
      items.push(next!);
      if (next!.number) next!.number.role = 'name';
    }
    const noun = scene.items[at + (version ? 2 : 1)];
    if (
      version &&
      noun &&
      /^(?:ports?|inputs?|sockets?|connections?|connectors?|terminals?)$/.test(noun.text)
    )
      items.push(noun);
    const count = scene.items
      .slice(Math.max(0, at - 4), at)
      .filter((entry) => !scene.used.has(entry))
      .reverse()
      .find(
        (entry) =>
          (entry.number &&
            entry.number.dimension === '' &&
            (!entry.number.role || entry.number.role === 'value')) ||
          keyOf(entry, 'stat') === 'none' ||
          keyOf(entry, 'negation') === 'not' ||
          isWord(entry, 'single', 'both', 'lone', 'pair', 'twin', 'trio', 'quartet'),
      );
    // "Two more USB ports than the Cello" compares.
    if (
      count?.number &&
      (keyOf(scene.items[scene.items.indexOf(count) + 1], 'comparative') ||
        (keyOf(scene.items[at + 1], 'comparative') && isWord(scene.items[at + 2], 'than')))
    )
      continue;
    // "Three HDMI inputs on the side and one at the back": of a place, and no number of all.
    const another = scene.sentence.find(
      (entry, place, all) =>
        entry.index > item.index &&
        entry.number?.dimension === '' &&
        isWord(all[place - 1], 'and', 'plus') &&
        isWord(all[place + 1], 'at', 'on', 'facing', 'underneath', 'below', 'behind', 'more', 'along'),
    );
    if (
      count?.number &&
      another &&
      scene.items.slice(at + 1, at + 5).some((entry) => isWord(entry, 'on', 'at', 'facing'))
    ) {
      refuse(findings, scene, 'fact', 'a part of the ports is no number of them', [count, ...items]);
      another.number!.role = 'ignored';
      continue;
    }
    // "Neither of the USB ports is USB 3": what they are not, and no number of them.
    if (
      count &&
      isWord(count, 'neither', 'none', 'none of the', 'not one of the', 'not one') &&
      isWord(scene.items[at + 1], 'is', 'are', 'has', 'supports', 'takes', 'was')
    ) {
      const rest = scene.items.filter((entry) => entry.index > item.index);
      refuse(findings, scene, 'fact', 'the words do not say how many of the ports', [count, item, ...rest]);
      continue;
    }
    const negated = count && (keyOf(count, 'stat') === 'none' || keyOf(count, 'negation'));
    const after = scene.items.slice(at + 1, at + 5);
    const ofThem = scene.items.find(
      (entry, index) =>
        index > at &&
        entry.number &&
        isWord(scene.items[index + 1], 'of') &&
        isWord(scene.items[index + 2], 'them', 'which'),
    );
    const supported = after.find((entry) => isWord(entry, 'support', 'version'));
    const later = scene.items.find(
      (entry, index) =>
        !isWord(scene.items[index - 1], 'the') &&
        index > at &&
        index <= at + 3 &&
        entry.number &&
        entry.number.dimension === '' &&
        entry.number.place >= 1 &&
        !entry.number.role &&
        // "A row of HDMI sockets, and two of them are 2.1"
        !isWord(scene.items[index + 1], 'of'),
    );
    if (!count && later && !scene.items.some((entry) => keyOf(entry, 'verb'))) {
      propose(
        findings,
        scene,
        'fact',
        {
          kind: 'fact',
          key: version ? `${key}.${version}` : key,
          op: opOf(later),
          x: later.number!.x,
          conditions: factConditions(scene),
        },
        [...items, later],
      );
      continue;
    }
    if (!count) {
      const spread = version && bare ? spreadOver(scene.items, at + items.length) : undefined;
      if (spread) {
        const conditions = factConditions(scene);
        const x = spread.count.number!.x;
        propose(
          findings,
          scene,
          'fact',
          { kind: 'fact', key: `${key}.${version}`, op: opOf(spread.count), x, conditions },
          [...items, ...spread.items],
        );
        continue;
      }
      if (version && bare) {
        // "All its HDMI ports are HDMI 2.1" says more than that one is.
        const share = scene.items.find(
          (entry) =>
            entry.index < item.index &&
            !scene.used.has(entry) &&
            (['all', 'mostly', 'any'].includes(keyOf(entry, 'stat') ?? '') ||
              keyOf(entry, 'multiple') !== undefined ||
              keyOf(entry, 'hedge') === 'vague') &&
            scene.items.some(
              (other) => other.index > entry.index && other.index < item.index && keyOf(other, 'fact'),
            ),
        );
        if (share) {
          refuse(findings, scene, 'fact', 'the words do not say how many of the ports', [share, ...items]);
          continue;
        }
        // "HDMI 2.1 features": what goes with a version is not the version.
        if (noun?.type === 'word' && noun.meanings.length === 0 && !plainAfterVersion.test(noun.text)) {
          refuse(findings, scene, 'fact', 'the words name what goes with a version, and no fact says that', [
            ...items,
            noun,
          ]);
          continue;
        }
        if (!/^(?:ports?|inputs?|sockets?)$/.test(noun?.text ?? '') || supported)
          propose(findings, scene, 'fact', versionCheck(scene, item.text, version), items);
        continue;
      }
      continue;
    }
    // "Three of the HDMI ports are 2.1": a part of them, by its version.
    const between = scene.items.slice(scene.items.indexOf(count) + 1, at);
    if (count.number && !version && isWord(between[0], 'of') && !isWord(between[1], 'them', 'which')) {
      const its = scene.items.find((entry) => entry.index > item.index && /^\d\.\d$/.test(entry.text));
      if (!its) {
        refuse(findings, scene, 'fact', 'a part of the ports is no number of them', [count, ...items]);
        continue;
      }
      if (its.number) its.number.role = 'name';
      const socket = keyOf(item, 'fact') === 'usb.count' ? 'usb' : 'hdmi';
      const conditions = factConditions(scene);
      const partKey = `${socket}.count.${its.text}`;
      propose(
        findings,
        scene,
        'fact',
        { kind: 'fact', key: partKey, op: opOf(count), x: count.number.x, conditions },
        [count, ...items, its],
      );
      continue;
    }
    const x = negated ? 0 : (count.number?.x ?? collectives[count.text] ?? 1);
    const fullKey = version ? `${key}.${version}` : key;
    // "three of the four ports support HDMI 2.1": the part has the version, the whole is the count.
    const part = scene.items.find(
      (entry, index) =>
        entry.index < count.index &&
        ((entry.number && isWord(scene.items[index + 1], 'of')) ||
          isWord(entry, 'one of the', 'one of its')) &&
        !scene.used.has(entry),
    );
    const whole = scene.items.some((entry) => keyOf(entry, 'stat') === 'all' && entry.index < count.index)
      ? count
      : undefined;
    if ((part ?? whole) && !version) {
      const versionItem = scene.items.find(
        (entry) => entry.index > item.index && (entry.number?.place ?? 1) < 1,
      );
      if (versionItem) {
        versionItem.number!.role = 'name';
        propose(
          findings,
          scene,
          'fact',
          {
            kind: 'fact',
            key: `${key}.${versionItem.text}`,
            op: (part ?? count).number ? opOf(part ?? count) : '=',
            x: (part ?? count).number?.x ?? 1,
            conditions: factConditions(scene),
          },
          [part ?? count, item, versionItem],
        );
        for (const entry of scene.items) if (isWord(entry, 'hdmi', 'usb')) scene.used.add(entry);
      }
    }
    const denial = negated ? undefined : denialBefore(scene, count);
    const check: FactCheck = {
      kind: 'fact',
      key: fullKey,
      op: count.number ? opOf(count) : '=',
      x,
      conditions: factConditions(scene),
      ...(denial && { negated: true }),
    };
    withTwin(scene, findings, check, [
      denial,
      count,
      ...items,
      scene.items.find((entry) => entry.index === count.index - 1 && keyOf(entry, 'comparator')),
    ]);
    if (ofThem) continue;
  }
}

/** "HDMI 2.1 is on all four inputs", "HDMI 2.1 on two of its inputs": on how many of them. */
function spreadOver(items: readonly Item[], from: number): { count: Item; items: Item[] } | undefined {
  const rest = items.slice(from, from + 9);
  const on = rest.findIndex((word) => isWord(word, 'on'));
  const noun = rest.findIndex(
    (word, place) =>
      place > on &&
      (isWord(word, 'inputs', 'ports', 'sockets', 'connectors') || keyOf(word, 'fact') !== undefined),
  );
  const between = on < 0 || noun < 0 ? [] : rest.slice(on + 1, noun);
  const count = between.find((word) => word.number?.dimension === '' && !word.number.role);
  const isPlain = between.every(
    (word) =>
      word === count || word.number !== undefined || isWord(word, 'all', 'just', 'only', 'of', 'its', 'the'),
  );
  return count && isPlain ? { count, items: rest.slice(on, noun + 1) } : undefined;
}

/** "It has HDMI 2.1" is true of one such port where they are counted by version, else of the set's version. */
export function versionCheck(scene: Scene, socket: string, version: string): FactCheck {
  const unit = scene.context.units.find(
    (entry) => entry.id === (splitVariant(scene.unit).unit ?? scene.context.own),
  );
  const counted = `${socket}.count.${version}`;
  return unit?.facts.includes(counted)
    ? { kind: 'fact', key: counted, op: '>=', x: 1, conditions: factConditions(scene) }
    : { kind: 'fact', key: `${socket}.version`, op: '=', x: version, conditions: factConditions(scene) };
}
