import type { Check } from '../../../contract/check.ts';
import { isAmount, isSet } from '../counted.ts';
import { type Findings, propose } from '../finding.ts';
import { isWord, keyOf } from '../items.ts';
import { countsSockets } from '../portCount.ts';
import { saidOf } from '../retarget.ts';
import type { Scene } from '../scene.ts';
import { resolveMention } from '../units.ts';
import { opOf } from './factCheck.ts';

const between =
  /^(?:the|'s|has|have|offers|gets|gives|you|us|of|those|them|just|only|manages|provides|provide|such|similar|inputs|ports|sockets|even|makes|do|settles|for|with|on|and|but|while|whereas|though|also|too)$/;

/** What was counted before: in the clause before, else in the sentence before. */
function countBefore({ previous, carry, sentence }: Scene): Check | undefined {
  for (let before = previous; before; before = before.previous) {
    // "Two of them are 2.1" counts a part of what was counted.
    const isPart = before.items.some(
      (item, at) => isWord(item, 'them', 'which', 'these') && isWord(before!.items[at - 1], 'of'),
    );
    const said = isPart ? undefined : before.said?.findLast(countsSockets);
    if (said) return said;
  }
  if (previous) return undefined;
  const { statement, counted } = carry;
  if (statement) return statement.asked ? undefined : statement.check;
  // "Four ports, every one of them a 2.1. The Kasulind gives you two of those."
  const ofThose = sentence.some(
    (item, at) => isWord(item, 'those', 'them') && isWord(sentence[at - 1], 'of'),
  );
  return ofThose ? counted : undefined;
}

/** "It has two HDMI 2.1 ports. The Kasulind has four.", "… and the Kasulind makes do with two": of what was counted before. */
export function readSameCount(scene: Scene, findings: Findings): undefined {
  const check = countBefore(scene);
  if (check?.kind !== 'fact' || check.by || !/\.count|^zones$/.test(check.key)) return;
  const words = scene.items.filter((item) => item.type !== 'mark');
  const amounts = words.filter(isAmount);
  const [amount] = amounts;
  const [set] = words.filter(isSet);
  if (!amount || amounts.length > 1 || !set || scene.used.has(amount)) return;
  const suchPorts =
    isWord(words.at(-1), 'inputs', 'ports', 'sockets') && isWord(words.at(-2), 'such', 'similar');
  const isLast =
    (suchPorts && amount === words.at(-3)) ||
    amount === words.at(-1) ||
    (isWord(words.at(-1), 'those', 'them') && amount === words.at(-3));
  if (amount.number && (amount.number.dimension !== '' || !isLast)) return;
  if (
    !words.every(
      (item) => item === amount || item === set || between.test(item.text) || keyOf(item, 'comparator'),
    )
  )
    return;
  const mention = scene.units.find(({ item }) => item === set);
  const id = mention ? resolveMention(mention, scene.carry, scene.context) : scene.context.own;
  const said = id ? saidOf(check, id, scene.context.own) : undefined;
  if (said?.kind !== 'fact') return;
  const { negated: _negated, ...rest } = said;
  const x = isWord(amount, 'none') ? 0 : amount.number!.x;
  propose(findings, scene, 'fact', { ...rest, op: opOf(amount), x }, words);
}
