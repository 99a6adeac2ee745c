import type { Check, Operand } from '../../contract/check.ts';
import { speaksOfAnyWindow } from './anyWindow.ts';
import { crossesBetween } from './crossing.ts';
import { denialProblem } from './denials.ts';
import { disownedProblem } from './disowned.ts';
import { exceptionProblem } from './exceptions.ts';
import { deniedOfOthers, onlyWord } from './exclusive.ts';
import { type Item, isWord } from './items.ts';
import { saidInPlaceOf } from './retarget.ts';
import type { Scene } from './scene.ts';
import { spanEnd } from './spanEnd.ts';

/** What a rule found, before it becomes a proposal with offsets of the article. */
export interface Finding {
  /** Offsets in the sentence */
  start: number;
  end: number;
  check: Check | null;
  why: string | undefined;
  asks: readonly Check[] | undefined;
  opinion: boolean | undefined;
  rule: string;
  words: { start: number; end: number }[];
}

/** Collects the findings of a sentence and marks the words they rest on. */
export interface Findings {
  list: Finding[];
}

/** Ends of the span where the words' hull would take in another claim's number. */
interface Part {
  start?: number;
  end?: number;
}

function hull(items: readonly Item[]): { start: number; end: number } {
  let start = Number.POSITIVE_INFINITY;
  let end = 0;
  for (const item of items) {
    if (item.start < start) start = item.start;
    if (item.end > end) end = item.end;
  }
  return { start, end };
}

function record(
  findings: Findings,
  scene: Scene,
  items: readonly (Item | undefined)[],
  finding: Pick<Finding, 'check' | 'rule'> & Partial<Pick<Finding, 'why' | 'asks' | 'opinion'>>,
  part: Part = {},
): undefined {
  const own: Item[] = [];
  const inside: Item[] = [];
  for (const item of items) {
    if (item === undefined) continue;
    own.push(item);
    if (scene.items.includes(item) && !scene.borrowed?.has(item)) inside.push(item);
    scene.used.add(item);
  }
  if (own.length === 0) return;
  const span = hull(inside.length > 0 ? inside : own);
  const last = inside.find(({ end }) => end === span.end);
  if (last && finding.check) span.end = spanEnd(scene, last);
  if (finding.check) {
    scene.said ??= [];
    scene.said.push(finding.check);
  }
  findings.list.push({
    start: part.start ?? span.start,
    end: part.end ?? span.end,
    check: finding.check,
    why: finding.why,
    asks: finding.asks,
    opinion: finding.opinion,
    rule: finding.rule,
    words: own.map(({ start, end }) => ({ start, end })),
  });
}

/** "priced at £1,189 in 2024", "a year ago it cost £1,499", "will drop to £899": not today's price. */
function namesOtherTime({ items, context }: Scene): boolean {
  return items.some(
    (item, at) =>
      (item.number?.role === 'year' &&
        isWord(items[at - 1], 'in', 'during', 'of', 'by', 'from', 'until') &&
        context.date !== undefined &&
        item.number.x !== Number(context.date.slice(0, 4))) ||
      isWord(item, 'ago') ||
      (isWord(item, 'will') && isWord(items[at + 1], 'drop', 'fall', 'rise', 'sink', 'come', 'go')) ||
      (isWord(item, 'last', 'next') &&
        isWord(items[at + 1], 'week', 'month', 'year', 'spring', 'summer', 'autumn', 'winter', 'season') &&
        !isWord(items[at - 1], 'since')),
  );
}

/** A check, unless the clause is conditional or does not say whom it means. */
export function propose(
  findings: Findings,
  scene: Scene,
  rule: string,
  check: Check,
  items: readonly (Item | undefined)[],
  part: Part = {},
): undefined {
  if (scene.conditional)
    return refuse(
      findings,
      scene,
      rule,
      'a condition or a guess says nothing about what was measured',
      items,
    );
  if (scene.unitProblem && !('by' in check && check.by))
    return refuse(findings, scene, rule, scene.unitProblem, items);
  // "Neither rival is as bright as the Plain", which is one of them
  if (comparesWithItself(scene, check))
    return refuse(findings, scene, rule, 'a set is not compared with itself', items);
  const atLaunch = scene.items.some(
    (item, at) => isWord(item, 'launch', 'release') && isWord(scene.items[at - 1], 'at'),
  );
  if (check.kind === 'fact' && check.key === 'price' && atLaunch)
    return refuse(findings, scene, rule, 'the price at launch is not kept', items);
  const changes =
    (check.kind === 'fact' && check.key === 'price') || (check.kind === 'score' && check.x === true);
  if (changes && namesOtherTime(scene))
    return refuse(findings, scene, rule, 'prices and awards of another time are not kept', items);
  if ((check.kind === 'order' || check.kind === 'ratio') && speaksOfAnyWindow(scene.items))
    return refuse(findings, scene, rule, 'every window at once is no check: say it of one', items);
  const crossing = check.kind === 'bound' ? crossesBetween(scene) : undefined;
  if (crossing)
    return refuse(findings, scene, rule, 'the words leave open at which level it is crossed', [
      ...crossing,
      ...items,
    ]);
  const disowned = disownedProblem(scene);
  if (disowned) return refuse(findings, scene, rule, disowned.why, [...disowned.words, ...items]);
  const denial = denialProblem(scene, check, items);
  if (denial) return refuse(findings, scene, rule, denial, items);
  const exception = exceptionProblem(scene, check, items);
  if (exception) return refuse(findings, scene, rule, exception.why, [...exception.words, ...items]);
  const only = exclusive.has(check.kind) && isOfSubject(check, scene) ? onlyWord(scene) : undefined;
  if (only) {
    const others = deniedOfOthers(scene, check);
    const words = [only.word, only.set, ...items];
    if (!others)
      return refuse(findings, scene, rule, 'the words do not say which other sets are left out', words);
    for (const one of [check, ...others]) record(findings, scene, words, { check: one, rule }, part);
    return;
  }
  if (scene.group && isOfSubject(check, scene))
    return proposeOfEach(findings, scene, rule, check, items, part);
  record(findings, scene, items, { check, rule }, part);
}

function comparesWithItself({ group, context }: Scene, check: Check): boolean {
  if (check.kind === 'ratio' || check.kind === 'difference') return areSame(check.a, check.b);
  return (
    check.kind === 'order' &&
    !group &&
    ['ahead', 'behind', 'matches'].includes(check.rank.type) &&
    check.cohort.units?.length === 1 &&
    check.cohort.units[0] === (check.key.conditions.unit ?? context.own)
  );
}

function areSame(one: Operand, other: Operand): boolean {
  const { origin: _one, ...first } = one.conditions;
  const { origin: _other, ...second } = other.conditions;
  return JSON.stringify({ ...one, conditions: first }) === JSON.stringify({ ...other, conditions: second });
}

/** Kinds of statement of which "only the Umbra" says that they are not so of the others. */
const exclusive = new Set<Check['kind']>(['bound', 'fact', 'observed', 'direction', 'onset']);

/** Is it said of the set that the clause is about, not of another that it names? */
function isOfSubject(check: Check, scene: Scene): boolean {
  const conditions =
    check.kind === 'fact' || check.kind === 'observed'
      ? check.conditions
      : check.kind === 'bound'
        ? check.bounds[0]?.operand.conditions
        : 'operand' in check
          ? check.operand.conditions
          : check.kind === 'order'
            ? check.key.conditions
            : undefined;
  const id = scene.unit === scene.context.own ? undefined : scene.unit;
  // "Both rivals are 30 % brighter": either side may be theirs.
  if (check.kind === 'ratio' || check.kind === 'difference')
    return check.a.conditions.unit === id || check.b.conditions.unit === id;
  return conditions !== undefined && conditions.unit === id;
}

/** "The Kasulind and the Umbra have four ports": said of each of them. */
function proposeOfEach(
  findings: Findings,
  scene: Scene,
  rule: string,
  check: Check,
  items: readonly (Item | undefined)[],
  part: Part,
): undefined {
  const number = items.find((item) => item?.number && (!item.number.role || item.number.role === 'value'));
  const near = scene.unitNamed && scene.index > 0 ? scene.items : scene.sentence;
  const alike = near.filter(
    (item) =>
      item.number !== undefined &&
      (item.number.dimension === number?.number?.dimension ||
        (item.number.dimension === '' && !item.number.spelled)) &&
      (!item.number?.role || item.number.role === 'value'),
  );
  // "…, the Plain and the Umbra 412 and 468"
  const [and, next] = scene.sentence.slice((scene.items.at(-1)?.index ?? 0) + 1);
  const goesOn = isWord(and, 'and') && next?.number !== undefined;
  if (number && (alike.length > 1 || goesOn))
    return refuse(findings, scene, rule, 'the words do not say which number is whose', items);
  const { own } = scene.context;
  const all = scene.group!.map((id) => saidInPlaceOf(check, scene.unit ?? own, id, own));
  const isPlace = check.kind === 'order' && !['ahead', 'behind', 'matches'].includes(check.rank.type);
  if (isPlace || all.some((said) => said === undefined))
    return refuse(findings, scene, rule, 'two sets at once are no check: say it of each', items);
  for (const said of all) record(findings, scene, items, { check: said!, rule }, part);
}

/** A claim that no check covers, with the reason. */
export function refuse(
  findings: Findings,
  scene: Scene,
  rule: string,
  why: string,
  items: readonly (Item | undefined)[],
): undefined {
  record(findings, scene, items, { check: null, why, rule });
}

/** A claim that can mean several things; a person chooses. */
export function ask(
  findings: Findings,
  scene: Scene,
  rule: string,
  why: string,
  asks: readonly Check[],
  items: readonly (Item | undefined)[],
): undefined {
  if (scene.conditional || scene.unitProblem)
    return refuse(
      findings,
      scene,
      rule,
      scene.unitProblem ?? 'a condition or a guess says nothing about what was measured',
      items,
    );
  record(findings, scene, items, { check: null, why, asks, rule });
}

/** An adjective without a definition. */
export function opine(
  findings: Findings,
  scene: Scene,
  rule: string,
  items: readonly (Item | undefined)[],
): undefined {
  record(findings, scene, items, { check: null, why: 'no house word defines it', opinion: true, rule });
}
