import type { Operand } from '../../../contract/check.ts';
import { type Findings, propose } from '../finding.ts';
import { type Item, isWord, keyOf, meaningOf } from '../items.ts';
import { conditionsFor, operandOf } from '../operand.ts';
import { powerId } from '../powerName.ts';
import { quantityById } from '../quantity.ts';
import type { Scene } from '../scene.ts';
import type { ComparativeEntry } from './comparativeEntry.ts';
import { denialOf, hedgeBefore, limitOn, multipleAt, ratioStated } from './ratioNumber.ts';

/** Concepts of which one set has two that are compared with one another, and the quantity of each. */
const quantityOfConcept: Readonly<Record<string, string>> = {
  contrast: 'contrast.native',
  contrastChequer: 'contrast.chequer',
  peak: 'peak',
  sustained: 'peak.sustained',
  sdrWhite: 'white',
};

/**
 * Two quantities of one set: "the chequerboard contrast is a third of the native contrast", "HDR takes 62 % more power
 * than SDR", "in HDR it is three times as bright as in SDR".
 */
export function readWithin(scene: Scene, findings: Findings): undefined {
  if (scene.units.some(({ role }) => role !== 'subject')) return;
  const multiple = multipleAt(scene);
  const number = scene.items.find(
    (item) =>
      (item.number?.dimension === 'percent' || item.number?.dimension === 'times') &&
      !scene.used.has(item) &&
      (item.number.role === undefined || item.number.role === 'value'),
  );
  const share = number ?? multiple?.item;
  if (!share) return;
  const sides = concepts(scene, share) ?? ofItsOther(scene, share) ?? signals(scene);
  if (!sides || denialOf(scene, share)) return;
  const comparative = scene.items.find((item) => keyOf(item, 'comparative'));
  const lower = (meaningOf(comparative, 'comparative')?.data as ComparativeEntry)?.direction === 'lower';
  const isComparative = comparative !== undefined;
  const ofShare = number ? undefined : multiple;
  const hedge = number ? undefined : hedgeBefore(scene, share);
  const stated = ratioStated(number, ofShare, hedge, isComparative, lower);
  if (!stated) return;
  const limit = limitOn(scene, number, ofShare, { comparative: isComparative, lower, denied: false });
  const ratio = { kind: 'ratio' as const, a: operand(scene, sides.a), b: operand(scene, sides.b) };
  propose(
    findings,
    scene,
    'within',
    limit
      ? { ...ratio, op: limit.op, stated: { x: limit.x, low: limit.x, high: limit.x } }
      : { ...ratio, stated },
    [share, hedge, limit?.item, comparative, ...sides.items],
  );
}

interface Sides {
  a: string;
  b: string;
  items: Item[];
}

/** Two different quantities, one on each side of the share. */
function concepts(scene: Scene, share: Item): Sides | undefined {
  const named = scene.items.filter((item) => quantityOfConcept[keyOf(item, 'concept') ?? ''] !== undefined);
  const first = named.find((item) => item.index < share.index);
  const second = named.findLast((item) => item.index > share.index);
  if (!first || !second) return undefined;
  const [a, b] = [first, second].map((item) => quantityOfConcept[keyOf(item, 'concept')!]!) as [
    string,
    string,
  ];
  return a === b ? undefined : { a, b, items: [first, second] };
}

/** "It manages 3,940:1 on a chequerboard, or 95 % of its native contrast": the first side was stated just before. */
function ofItsOther(scene: Scene, share: Item): Sides | undefined {
  const at = scene.items.indexOf(share);
  const [of, its, second] = scene.items.slice(at + 1, at + 4);
  const said = scene.previous?.said?.at(-1);
  const isOf = isWord(of, 'of') || / of$/.test(share.text);
  const noun = isOf && isWord(of, 'its') ? its : second;
  const b = quantityOfConcept[keyOf(noun, 'concept') ?? ''];
  const a = said?.kind === 'value' && said.operand.type === 'quantity' ? said.operand.id : undefined;
  if (!isOf || b === undefined || a === undefined || a === b) return undefined;
  if (!Object.values(quantityOfConcept).includes(a)) return undefined;
  return { a, b, items: [noun!] };
}

/** One quantity under two signals, of which the second follows "than", "as", "of" or "in". */
function signals(scene: Scene): Sides | undefined {
  const named = scene.items.filter((item) => keyOf(item, 'signal') !== undefined);
  const [first, second] = named;
  if (!first || !second || named.length > 2) return undefined;
  const [isSdr, isOtherSdr] = [first, second].map((item) => keyOf(item, 'signal') === 'SDR');
  if (isSdr === isOtherSdr) return undefined;
  const lead = scene.items[scene.items.indexOf(second) - 1];
  const before = scene.items[scene.items.indexOf(second) - 2];
  if (!isWord(lead, 'than', 'as', 'of') && !(isWord(lead, 'in') && isWord(before, 'than', 'as', 'of')))
    return undefined;
  const key = scene.items.some((item) => keyOf(item, 'concept') === 'power') ? 'power' : 'light';
  const light = scene.items.find(
    (item) =>
      (meaningOf(item, 'comparative') ?? meaningOf(item, 'equative'))?.kind !== undefined &&
      ((meaningOf(item, 'comparative') ?? meaningOf(item, 'equative'))!.data as ComparativeEntry).concept ===
        'peak',
  );
  if (key === 'light' && !light) return undefined;
  const under = (signal: 'SDR' | 'HDR') =>
    key === 'power'
      ? powerId({ ...scene, conditions: { ...scene.conditions, signal } })
      : signal === 'SDR'
        ? 'white'
        : 'peak';
  return {
    a: under(isSdr ? 'SDR' : 'HDR'),
    b: under(isOtherSdr ? 'SDR' : 'HDR'),
    items: [first, second, ...(light ? [light] : [])],
  };
}

/** The operand without the clause's signals, each of which is that of one side alone; a quantity knows its own. */
function operand(scene: Scene, id: string): Operand {
  const quantity = quantityById(id);
  const { signal: _signal, unmatched: _unmatched, ...conditions } = conditionsFor(scene, quantity);
  const { signal: _origin, ...origin } = conditions.origin;
  const isSeries = id === 'peak' || id === 'peak.sustained';
  return operandOf(scene, quantity, { stat: isSeries ? 'max' : 'scalar' }, { ...conditions, origin });
}
