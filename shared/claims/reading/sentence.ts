import type { ReadingContext } from '../../contract/articleText.ts';
import { settleBareNumbers } from './bareNumbers.ts';
import { copyCarry } from './carriedState.ts';
import { type Carry, carriedConcept } from './carry.ts';
import { doubtClashes } from './clashes.ts';
import type { Finding, Findings } from './finding.ts';
import { forgetSentence, handOn, noteConcept } from './handOn.ts';
import { isSecondHand } from './hearsay.ts';
import { type Item, isWord, keyOf } from './items.ts';
import { lexiconOf } from './lexiconTrie.ts';
import { meets, needBits, shows, signsOfItems } from './needs.ts';
import { type Pair, pairedLists } from './pairedLists.ts';
import { isIdle } from './plainProse.ts';
import { scenesOf } from './prepare.ts';
import { hueAnnounced, setAnnounced, takeQuestion, topicAnnounced } from './questions.ts';
import { readClause } from './rules/index.ts';
import type { Scene } from './scene.ts';
import { statOf } from './selector.ts';
import { settleMeanings } from './settleMeanings.ts';
import { spokenTokens } from './spoken.ts';
import { tagTokens } from './tag.ts';
import { tokenise } from './tokens.ts';
import { withoutSpeaker } from './turns.ts';

/** "HDR10: tone and colour", "HLG": in a heading the format that leads is the signal of what follows. */
function nameSignal(items: readonly Item[]): undefined {
  const [first, next] = items;
  const format = keyOf(first, 'format');
  if (
    !first ||
    (format !== 'HDR10' && format !== 'HLG') ||
    (next && next.type !== 'mark' && !isWord(next, 'and'))
  )
    return;
  first.meanings = [...first.meanings, { kind: 'signal', key: format }];
}

/** "HDR10 tells another story.": the signal of what follows in the paragraph. */
function nameSignalOfStory(items: readonly Item[]): undefined {
  if (items.length > 8) return;
  const [first, verb] = items;
  const isStory =
    isWord(verb, 'tells', 'brings', 'paints', 'is', 'was', 'proves') &&
    items.some((item) =>
      isWord(item, 'story', 'matter', 'picture', 'tale', 'case', 'beast', 'business', 'thing'),
    );
  if (first && isStory && keyOf(first, 'signal') === undefined) nameSignal([first]);
}

/** Masks what stands between quotation marks: somebody else's words, or a word held at arm's length. */
function maskQuotations(items: Item[]): Item[] {
  const marks = items.filter((item) => item.type === 'mark' && item.text === '"');
  if (marks.length < 2) return items;
  const masked = new Set<Item>();
  for (let pair = 0; pair + 1 < marks.length; pair += 2)
    for (const item of items)
      if (item.index > marks[pair]!.index && item.index < marks[pair + 1]!.index) masked.add(item);
  return items.map((item) =>
    masked.has(item)
      ? {
          ...item,
          type: 'word' as const,
          meanings: [],
          ...(item.number && { number: { ...item.number, role: 'ignored' as const } }),
        }
      : item,
  );
}

const quoting = needBits([{ words: ['"'] }]);
const ofAngles = needBits([{ kinds: ['concept'], words: ['colour shift', 'colour shifts', 'axis'] }]);
const ofSet = needBits([{ kinds: ['unit', 'maker'] }]);

function speaksOfAngles(items: readonly Item[]): boolean {
  return items.some(
    (item) =>
      keyOf(item, 'concept') === 'angle' ||
      isWord(item, 'colour shift', 'colour shifts') ||
      (isWord(item, 'axis') && isWord(items[item.index - 1], 'off')),
  );
}

/** Reads one sentence and moves the carried state on. Offsets of findings are the sentence's own. */
export function readSentence(
  text: string,
  context: ReadingContext,
  carry: Carry,
  isHeading: boolean,
): Finding[] {
  const lexicon = lexiconOf(context);
  const written = tokenise(text, context.locale);
  const tokens = context.spoken ? spokenTokens(written) : written;
  let items = tagTokens(tokens, lexicon, context.spoken ?? false);
  if (carry.turn) items = [...withoutSpeaker(items)];
  let signs = settleMeanings(items, carry, context);
  if (meets(signs, quoting)) {
    items = maskQuotations(items);
    signs = signsOfItems(items);
  }
  if (isHeading) nameSignal(items);
  else nameSignalOfStory(items);
  const angleTalk =
    carriedConcept(carry) === 'angle' ||
    carry.said?.angle !== undefined ||
    (meets(signs, ofAngles) && speaksOfAngles(items));
  if (isHeading && items[items.length - 1]?.text === '?') {
    // "Which is the brightest, in HDR?" asks, and what it names still holds for its section.
    const scenes = scenesOf(items.slice(0, -1), context, carry, angleTalk);
    for (const scene of scenes) noteConcept(scene, { list: [] });
    handOn(scenes, carry, context, true);
    return [];
  }
  if (items[items.length - 1]?.text === '?') {
    takeQuestion(items, context, carry, angleTalk);
    carry.questioned = true;
    return [];
  }
  carry.questioned = undefined;
  const announced = isHeading || !shows(signs, 'topic') ? undefined : topicAnnounced(items);
  if (announced !== undefined) {
    forgetSentence(carry);
    carry.asked = announced;
    return [];
  }
  const set = isHeading || !meets(signs, ofSet) ? undefined : setAnnounced(items);
  const hue = isHeading || !shows(signs, 'hue') ? undefined : hueAnnounced(items);
  if (set !== undefined || hue !== undefined) {
    forgetSentence(carry);
    carry.askedUnit = set;
    carry.hue = hue;
    return [];
  }
  if (!isHeading && isAfterthought(items)) return [];
  if (isSecondHand(items, signs)) return [];
  if (!isHeading && isIdle(items, signs, carry, context.own)) {
    forgetSentence(carry);
    return [];
  }
  const pairs = shows(signs, 'number') ? pairedLists(items) : undefined;
  if (pairs) return readPairs(pairs, context, carry, isHeading, angleTalk);
  return readClauses(items, context, carry, isHeading, angleTalk);
}

/** "In a ten per cent window.": a condition alone, of what stands before; what that leaves for the next stays. */
function isAfterthought(items: readonly Item[]): boolean {
  if (items.length > 8 || !isWord(items[0], 'in', 'at', 'on', 'with')) return false;
  const words = items.filter(({ type }) => type !== 'mark');
  return (
    words.length > 1 &&
    words
      .slice(1)
      .every(
        (item) =>
          isWord(item, 'a', 'an', 'the', 'window', 'patch') ||
          item.number?.role === 'window' ||
          item.number?.dimension === 'percent',
      ) &&
    words.some((item) => isWord(item, 'window', 'patch'))
  );
}

/** Each pair of two lists is read as a sentence of its own, from the same state; what it states is only its number. */
function readPairs(
  pairs: readonly Pair[],
  context: ReadingContext,
  carry: Carry,
  isHeading: boolean,
  angleTalk: boolean,
): Finding[] {
  const before = copyCarry(carry);
  const readings = pairs.map(({ items }, order) =>
    readClauses(items, context, order === pairs.length - 1 ? carry : copyCarry(before), isHeading, angleTalk),
  );
  const states = (finding: Finding, { stated }: Pair) =>
    finding.words.some(({ start }) => start === stated.start);
  const paired = readings.flatMap((findings, order) => {
    const pair = pairs[order]!;
    const { start, end } = pair.stated;
    return findings.filter((finding) => states(finding, pair)).map((finding) => ({ ...finding, start, end }));
  });
  // What else the sentence says has to be the same whichever pair is in force.
  const others = (readings[0] ?? []).filter((finding) => !states(finding, pairs[0]!));
  const rest = others.map((finding) =>
    readings.every((findings) => findings.some((other) => isSame(finding, other)))
      ? finding
      : { ...finding, check: null, why: 'the words do not say which of the numbers is meant' },
  );
  return settleOverlaps([...paired, ...rest]);
}

function isSame(one: Finding, other: Finding): boolean {
  return one.start === other.start && JSON.stringify(one.check) === JSON.stringify(other.check);
}

/** "At 20 % saturation cyan is undersaturated, and its hue is out by 17°": at that saturation still. */
function takeSaturation(scene: Scene, previous: Scene): undefined {
  const [first] = scene.items;
  const leads = isWord(first, 'its') || (isWord(first, 'and', 'but') && isWord(scene.items[1], 'its'));
  const there = scene.items.slice(0, 5).some((item) => isWord(item, 'there'));
  if (!leads || scene.hue === undefined || scene.axes.length > 0) return;
  const axis = previous.axes.find(
    ({ kind, at, items }) =>
      kind === 'stimulus' &&
      at !== undefined &&
      (there || items[0]?.index === 0 || items.some((item) => previous.borrowed?.has(item) ?? false)) &&
      items.some((item) => isWord(item, 'saturation')),
  );
  if (axis) scene.axes = [axis];
}

/** "Blue is undersaturated. Its error never climbs above 3.": of the hue that the sentence before was about. */
function hueTakenUp(items: readonly Item[], { said, statement, unit }: Carry): string | undefined {
  const check = statement?.asked ? undefined : statement?.check;
  const ofDirection =
    check?.kind === 'direction' && check.operand.type === 'quantity' ? check.operand.id : undefined;
  const hue = /^sweep\.([a-z]+)\./.exec(ofDirection ?? said?.id ?? '')?.[1];
  // "At full saturation its error reaches 7.0"
  const its = items.slice(0, 5).findIndex((item) => isWord(item, 'its'));
  const ofPlace =
    its > 0 &&
    items.slice(0, its).some((item) => isWord(item, 'saturation') || /saturation$/.test(item.text));
  const leads =
    (its === 0 || ofPlace) &&
    items.slice(its + 1, its + 4).some((item) => keyOf(item, 'concept') === 'error');
  return leads && unit === undefined ? hue : undefined;
}

/** Reads a sentence clause by clause, whatever it is about. */
export function readClauses(
  items: readonly Item[],
  context: ReadingContext,
  carry: Carry,
  isHeading: boolean,
  angleTalk: boolean,
): Finding[] {
  const findings: Findings = { list: [] };
  const scenes = scenesOf(items, context, carry, angleTalk);
  const hue = carry.hue ?? hueTakenUp(items, carry);
  if (hue !== undefined && scenes[0]) scenes[0].hue = hue;
  if (carry.gamut !== undefined && scenes[0]) scenes[0].gamut = carry.gamut;
  carry.hue = undefined;
  carry.window = undefined;
  carry.gamut = undefined;
  const { askedUnit } = carry;
  for (const scene of scenes) {
    for (const mark of scene.conditionItems)
      if (
        keyOf(mark, 'stage') ||
        keyOf(mark, 'signal') ||
        keyOf(mark, 'mode') ||
        keyOf(mark, 'dimming') ||
        keyOf(mark, 'room')
      )
        scene.used.add(mark);
    if (scene.previous) {
      scene.concept ??= scene.previous.concept;
      scene.hue ??= scene.previous.hue;
      takeSaturation(scene, scene.previous);
      scene.gamut ??= scene.previous.gamut;
    }
    settleBareNumbers(scene);
    readClause(scene, findings);
    noteConcept(scene, findings);
    const stat = statOf(scene);
    const ranked = scene.said?.findLast((check) => check.kind === 'order');
    if (stat === 'average' || stat === 'max' || stat === 'min') scene.stat = stat;
    // "It has the lowest average error, 2.5 against 3.3"
    else if (
      ranked?.kind === 'order' &&
      ranked.key.type === 'quantity' &&
      ranked.key.selector.stat === 'average'
    )
      scene.stat = 'average';
  }
  const { asked } = carry;
  carry.asked = undefined;
  carry.askedUnit = undefined;
  carry.askedAgainst = undefined;
  handOn(scenes, carry, context, isHeading);
  // "Blooming? Yep. It's clearly visible around white text."
  if (asked !== undefined && findings.list.length === 0 && items.length <= 4) carry.topic = asked;
  // "The Plain? Cheaper. It costs £579."
  if (askedUnit !== undefined && scenes.at(-1)?.unit === askedUnit) {
    carry.unit = askedUnit;
    carry.unitIsOld = undefined;
  }
  return settleOverlaps(doubtClashes(findings.list, items));
}

/** Findings in order of the text; equal spans with equal checks are one. */
function settleOverlaps(list: Finding[]): Finding[] {
  if (list.length < 2) return list;
  const seen = new Set<string>();
  return list
    .filter((finding) => {
      const key = `${finding.start}-${finding.end}-${JSON.stringify(finding.check)}-${finding.why ?? ''}`;
      if (seen.has(key)) return false;
      seen.add(key);
      return true;
    })
    .sort((a, b) => a.start - b.start || a.end - b.end);
}
