import type { ReadingContext } from '../../contract/articleText.ts';
import type { Check, Operand } from '../../contract/check.ts';
import type { Carry } from './carry.ts';
import { saysNo } from './echoWords.ts';
import type { Findings } from './finding.ts';
import { isGapped } from './gapped.ts';
import { hueSaidOfGrey } from './hueSaid.ts';
import { type Item, isWord, keyOf } from './items.ts';
import { limitSaid } from './limitSaid.ts';
import { shows } from './needs.ts';
import { countsSockets, portsNamed } from './portCount.ts';
import { setsNamed } from './respectively.ts';
import { onlySaid } from './rules/saidBefore.ts';
import type { Scene } from './scene.ts';
import { resolveMention } from './units.ts';
import { hasVerb } from './verbs.ts';
import { withoutOwner } from './whoseClause.ts';

const carryable = new Set([
  'greyError',
  'error',
  'chartError',
  'deItp',
  'gamma',
  'eotf',
  'cct',
  'coverage',
  'area',
  'peak',
  'sustained',
  'luminance',
  'sdrWhite',
  'black',
  'contrast',
  'contrastChequer',
  'contrastSequential',
  'uniformity',
  'colourUniformity',
  'angle',
  'lag',
  'response',
  'power',
  'standby',
  'noise',
  'saturation',
  'hueError',
  'hold',
  'whitePoint',
  'duv',
  'tint',
]);

/** What a comparison was about, for "the Kasulind manages half as much". */
const conceptOfCompared: Readonly<Record<string, string>> = {
  peak: 'peak',
  white: 'sdrWhite',
  'contrast.native': 'contrast',
  black: 'black',
  lag: 'lag',
  'grey.de2000': 'greyError',
};

/** What later clauses and sentences may mean by "the average" or "it". */
export function noteConcept(scene: Scene, findings: Findings): undefined {
  const { items, said = [], signs } = scene;
  const named = shows(signs, 'concept') ? conceptNamed(items) : undefined;
  const spoke = findings.list.find(({ check }) => check?.kind === 'bound' || check?.kind === 'value')?.check;
  const operand =
    spoke?.kind === 'bound' ? spoke.bounds[0]?.operand : spoke?.kind === 'value' ? spoke.operand : undefined;
  const ofGreys = operand?.type === 'quantity' && operand.id === 'grey.de2000';
  if (ofGreys) scene.concept ??= 'greyError';
  // "The colour error" of the greys is no error of the chart.
  const concept = ofGreys && named === 'chartError' ? 'greyError' : named;
  const compared = said.find((check) => check.kind === 'ratio' || check.kind === 'order');
  const key = compared?.kind === 'ratio' ? compared.a : compared?.kind === 'order' ? compared.key : undefined;
  const comparedConcept = key?.type === 'quantity' ? conceptOfCompared[key.id] : undefined;
  if (comparedConcept) scene.concept ??= comparedConcept;
  // "It is 16 % under its target at 10 %, and still 13 % short at 30 %": what was just judged stays the topic.
  const judged = quantityJudged(said);
  const topic = judged && topicOfJudged(judged.id);
  // "The maker promises 550 nits; on our bench it is 498": what was promised was measured.
  if (said.some((check) => check.kind === 'fact' && check.by === 'maker' && check.key === 'peak'))
    scene.concept ??= 'peak';
  if (topic) scene.concept = topic;
  else if (concept)
    scene.concept =
      concept === 'error' &&
      !(shows(signs, 'hue') && items.some((item) => keyOf(item, 'hue'))) &&
      scene.axes.every((axis) => axis.kind !== 'angle')
        ? (scene.concept ?? 'error')
        : concept;
  else if (scene.axes.some((axis) => axis.kind === 'angle') && findings.list.length > 0)
    scene.concept ??= 'angle';
  const hue = shows(signs, 'hue') ? hueSpokenOf(scene, said) : undefined;
  if (hue !== undefined) scene.hue = hue;
  const gamut = shows(signs, 'gamut') ? items.find((item) => keyOf(item, 'gamut')) : undefined;
  if (gamut) {
    scene.gamut = keyOf(gamut, 'gamut')!;
    scene.concept ??= 'coverage';
  }
}

function conceptNamed(items: readonly Item[]): string | undefined {
  for (const item of items) {
    const key = keyOf(item, 'concept');
    if (key !== undefined && carryable.has(key)) return key;
  }
  return undefined;
}

/** The first quantity that a value or a limit was stated of. */
function quantityJudged(said: readonly Check[]): Extract<Operand, { type: 'quantity' }> | undefined {
  for (const check of said)
    if (check.kind === 'value') {
      if (check.operand.type === 'quantity') return check.operand;
    } else if (check.kind === 'bound')
      for (const { operand } of check.bounds) if (operand.type === 'quantity') return operand;
  return undefined;
}

/** The hue that a clause is about. "It leans blue, and its average error …": the hue that a white leans to is no topic. */
function hueSpokenOf({ items }: Scene, said: readonly Check[]): string | undefined {
  const ofTint = said.some(
    (check) =>
      check.kind === 'direction' &&
      check.operand.type === 'quantity' &&
      check.operand.id.startsWith('grey.tint'),
  );
  const hue = items.find(
    (item, at) =>
      keyOf(item, 'hue') &&
      !hueSaidOfGrey(items, item) &&
      // "The cast it leaves is a mild blue"
      !(ofTint && keyOf(items[at - 1], 'intensity') !== undefined) &&
      keyOf(items[at - 1], 'lean') === undefined &&
      !isWord(items[at - 1], 'towards', 'toward'),
  );
  return keyOf(hue, 'hue');
}

/** Quantities that everyday words speak of without naming them, and what stays the topic after one. */
function topicOfJudged(id: string): string | undefined {
  if (/^uniformity\.[^.]+$/.test(id)) return 'uniformity';
  if (/^sweep\..*\.saturation$/.test(id)) return 'saturation';
  return { 'peak.hold': 'hold', 'eotf.error': 'eotf' }[id];
}

function firstPronounIsOwn({ items, signs }: Scene): boolean {
  return shows(signs, 'pronoun') && items.some((item) => keyOf(item, 'pronoun') === 'own');
}

/** What the sentence spoke of seeing; where it stated nothing, also what it only named. */
function topicsOf(scenes: readonly Scene[], statements: readonly Check[]): ReadonlySet<string> {
  const topics = new Set<string>();
  for (const check of statements) if (check.kind === 'observed') topics.add(check.topic);
  // "Blooming is the glow that leaks around white titles. You won't see it unless …"
  if (statements.length === 0 && shows(scenes[0]!.sentenceSigns, 'topic'))
    for (const { items } of scenes)
      for (const item of items) if (keyOf(item, 'topic')) topics.add(keyOf(item, 'topic')!);
  return topics;
}

/** "Film makers paint from a box of colours known as P3. Kasulind promises 96 % of it.": the one gamut that was named. */
function onlyGamut(scenes: readonly Scene[]): string | undefined {
  if (!shows(scenes[0]!.sentenceSigns, 'gamut')) return undefined;
  const gamuts = new Set(scenes.flatMap(({ items }) => items.flatMap((item) => keyOf(item, 'gamut') ?? [])));
  return gamuts.size === 1 ? [...gamuts][0] : undefined;
}

/** Does the sentence say which set it is about? */
function saysWhichSet(scene: Scene): boolean {
  return (
    scene.units.some(({ role }) => role === 'subject') ||
    (shows(scene.signs, 'number') && scene.items.some(({ number }) => number?.role === 'size')) ||
    firstPronounIsOwn(scene)
  );
}

/** "It takes HLG, whereas the Pith does not": the next "it" still means this review's own set. */
function contrastsOwn(scenes: readonly Scene[]): boolean {
  const [first] = scenes;
  return (
    first?.unit === undefined &&
    first?.unitNamed === true &&
    scenes.some(
      (scene) => scene !== first && isWord(scene.items[0], 'whereas', 'while', 'though', 'although'),
    )
  );
}

/** "If you want the brightest: Kasulind Oboe 65" opens a section on that set; "Against the Kasulind" does not. */
function unitOfHeading(scenes: readonly Scene[], context: ReadingContext): string | undefined {
  const mentions = scenes.flatMap(({ units }) => units).filter(({ role }) => role !== 'maker');
  const [mention] = mentions;
  if (
    mentions.length !== 1 ||
    !mention ||
    mention.id.includes('|') ||
    !context.units.some(({ id }) => id === mention.id)
  )
    return undefined;
  const before = scenes.flatMap(({ items }) => items).filter((item) => item.index < mention.item.index);
  const compares = before.some((item) =>
    isWord(
      item,
      'against',
      'versus',
      'vs',
      'than',
      'beside',
      'with',
      'and',
      'or',
      'from',
      'like',
      'unlike',
      'over',
      'compared',
    ),
  );
  return compares ? undefined : mention.id;
}

/** What ends with the sentence after the one that it was said in, unless that one says it anew. */
export function forgetSentence(carry: Carry): undefined {
  carry.hue = undefined;
  carry.gamut = undefined;
  carry.window = undefined;
  carry.stat = undefined;
  carry.topic = undefined;
  carry.said = undefined;
  carry.statement = undefined;
  carry.counted = undefined;
  carry.limit = undefined;
  carry.sets = undefined;
}

/** "Lag is 9.6 ms, against 11.4 ms on the Umbra and 17.8 ms on the Plain": the sentence is on this review's own set. */
function comparesInPassing(scenes: readonly Scene[]): boolean {
  const [first, ...rest] = scenes;
  return (
    first?.unit === undefined &&
    (first?.said?.length ?? 0) > 0 &&
    rest.length > 0 &&
    rest.every(({ items }) => !hasVerb(withoutOwner(items))) &&
    rest.some(
      ({ items }) =>
        isWord(items[0], 'against', 'versus', 'vs', 'compared with') ||
        // "A white field varies by 13 %, and the Plain's by 19 %"
        (isWord(items[0], 'and') && isGapped(withoutOwner(items))),
    )
  );
}

/** The set of another maker that the sentence states a fact of, as its maker gives it. */
function makersSet(scenes: readonly Scene[]): string | undefined {
  for (const { said } of scenes)
    for (const check of said ?? [])
      if (check.kind === 'fact' && check.by === 'maker') return check.conditions.unit;
  return undefined;
}

/** What a sentence leaves for the next: its unit, quantity, statistic and topic. */
export function handOn(
  scenes: readonly Scene[],
  carry: Carry,
  context: ReadingContext,
  isHeading: boolean,
): undefined {
  const last = scenes[scenes.length - 1];
  if (!last) return;
  if (last.concept && last.concept !== carry.concept) {
    if (carry.concept) carry.earlierConcept = carry.concept;
    carry.concept = last.concept;
  }
  if (last.stat) carry.stat = last.stat;
  else carry.stat = undefined;
  const statements: Check[] = [];
  for (const { said } of scenes) if (said) statements.push(...said);
  const topics = topicsOf(scenes, statements);
  const gamut = statements.length === 0 ? onlyGamut(scenes) : undefined;
  if (gamut !== undefined) carry.gamut = gamut;
  if (topics.size === 1) carry.topic = [...topics][0]!;
  else carry.topic = undefined;
  if (statements.length === 1)
    carry.statement = {
      check: statements[0]!,
      no: saysNo(scenes.find((scene) => scene.said?.length)!.items),
    };
  else carry.statement = undefined;
  carry.counted = statements.findLast(countsSockets);
  for (const { items, signs } of scenes)
    if (shows(signs, 'fact')) carry.ports = portsNamed(items) ?? carry.ports;
  const limit = limitSaid(statements);
  if (limit) carry.limit = limit;
  else carry.limit = undefined;
  const said = onlySaid(statements);
  if (said) carry.said = said;
  else carry.said = undefined;
  const named = scenes.some(saysWhichSet);
  // "Kasulind promises 900 nits": on that maker's set, whatever measures it.
  const ofMaker = named ? undefined : makersSet(scenes);
  if (ofMaker !== undefined && ofMaker !== context.own) {
    carry.unitIsOld = undefined;
    carry.unit = ofMaker;
  } else if (named) {
    carry.unitIsOld = undefined;
    if (last.unit === undefined || contrastsOwn(scenes) || comparesInPassing(scenes)) carry.unit = undefined;
    else carry.unit = last.unit;
  } else if (carry.unit !== undefined) {
    // A pronoun reaches into the next sentence only; what it spoke of still stands beside a bare quantity.
    if (carry.unitIsOld || !scenes.some((scene) => scene.unitNamed)) {
      carry.unit = undefined;
      carry.unitIsOld = undefined;
    } else carry.unitIsOld = true;
  }
  const sets = scenes.some(({ units }) => units.length > 0)
    ? setsNamed(scenes.flatMap(({ units }) => units))
    : [];
  if (sets.length > 1) carry.sets = sets;
  else carry.sets = undefined;
  for (const scene of scenes)
    for (const mention of scene.units)
      if (mention.role !== 'maker' || mention.id !== context.own) {
        const id = resolveMention(mention, carry, context);
        if (id && id !== context.own && !id.includes('@')) carry.rival = id;
      }
  if (isHeading) {
    const conditions = { ...carry.paragraph };
    for (const scene of scenes)
      if (scene.conditions.stage && scene.conditions.origin.stage === 'named')
        conditions.stage = scene.conditions.stage;
    for (const { conditions: said } of scenes) {
      if (said.firmware !== undefined && said.origin.firmware === 'named')
        conditions.firmware = said.firmware;
      if (said.before === 'update') conditions.before = 'update';
    }
    carry.headings[carry.headings.length] = {
      level: 0,
      conditions,
      ...(carry.concept && { concept: carry.concept }),
      ...(unitOfHeading(scenes, context) && { unit: unitOfHeading(scenes, context)! }),
    };
    carry.paragraph = {};
    carry.concept = undefined;
    carry.earlierConcept = undefined;
  }
}
