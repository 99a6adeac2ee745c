import { isAmount, isSet } from '../counted.ts';
import { type Findings, propose } from '../finding.ts';
import { isWord, keyOf } from '../items.ts';
import { saidOf } from '../retarget.ts';
import type { Scene } from '../scene.ts';
import { resolveMention } from '../units.ts';
import { opOf } from './factCheck.ts';

const between =
  /^(?:the|'s|has|have|offers|gets|gives|you|us|of|those|them|just|gives|only|just|manages|even|makes do with|with|you|on|and|but)$/;

/** "It has two HDMI 2.1 ports. The Kasulind has four.": of what the sentence before counted. */
export function readSameCount(scene: Scene, findings: Findings): undefined {
  const { statement, counted } = scene.carry;
  const ofThose = scene.sentence.some(
    (item, at) => isWord(item, 'those', 'them') && isWord(scene.sentence[at - 1], 'of'),
  );
  const check = statement ? statement.check : ofThose ? counted : undefined;
  if (check?.kind !== 'fact' || statement?.asked || check.by || scene.index > 0) return;
  if (!/\.count|^zones$/.test(check.key)) return;
  const words = scene.sentence.filter((item) => item.type !== 'mark');
  const amounts = words.filter(isAmount);
  const [amount] = amounts;
  const [set] = words.filter(isSet);
  if (!amount || amounts.length > 1 || !set || scene.used.has(amount)) return;
  const isLast =
    amount === words.at(-1) || (isWord(words.at(-1), 'those', 'them') && amount === words.at(-3));
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
