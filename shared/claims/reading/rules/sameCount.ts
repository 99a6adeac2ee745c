import { isAmount, isSet } from '../counted.ts';
import { type Findings, propose } from '../finding.ts';
import { isWord, keyOf } from '../items.ts';
import { saidOf } from '../retarget.ts';
import type { Scene } from '../scene.ts';
import { resolveMention } from '../units.ts';
import { opOf } from './factCheck.ts';

const between =
  /^(?:the|'s|has|have|offers|gets|gives|only|just|manages|even|makes do with|with|you|on|and|but)$/;

/** "It has two HDMI 2.1 ports. The Kasulind has four.": of what the sentence before counted. */
export function readSameCount(scene: Scene, findings: Findings): undefined {
  const { check, asked } = scene.carry.statement ?? {};
  if (check?.kind !== 'fact' || asked || check.by || scene.index > 0) return;
  if (!/\.count|^zones$/.test(check.key)) return;
  const words = scene.sentence.filter((item) => item.type !== 'mark');
  const amounts = words.filter(isAmount);
  const [amount] = amounts;
  const [set] = words.filter(isSet);
  if (!amount || amounts.length > 1 || !set || scene.used.has(amount)) return;
  if (amount.number && (amount.number.dimension !== '' || amount !== words.at(-1))) return;
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
