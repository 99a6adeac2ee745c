import type { ReadingContext } from '../../contract/articleText.ts';
import type { Check } from '../../contract/check.ts';
import { copyCarry } from './carriedState.ts';
import type { Carry } from './carry.ts';
import type { Findings } from './finding.ts';
import { noteConcept } from './handOn.ts';
import { type Item, isWord, keyOf } from './items.ts';
import { portsNamed } from './portCount.ts';
import { scenesOf } from './prepare.ts';
import { readClause } from './rules/index.ts';
import { patchAsked } from './screenShare.ts';
import { statOf } from './selector.ts';

/** "Banding? None.", "And gamma? 2.39.", "The Plain? 2,000:1.": what a question leaves for its answer. */
export function takeQuestion(
  items: readonly Item[],
  context: ReadingContext,
  carry: Carry,
  angleTalk: boolean,
): undefined {
  const asked = (kind: Parameters<typeof keyOf>[1]) =>
    items.map((item) => keyOf(item, kind)).find((key) => key !== undefined);
  const topic = asked('topic');
  const asksOf =
    isWord(items[0], 'any', 'no') ||
    items.every((item) => keyOf(item, 'concept') === undefined && !item.number);
  if (topic !== undefined && (items.length <= 4 || (items.length <= 7 && asksOf))) carry.asked = topic;
  else carry.asked = undefined;
  // "And gamma? 2.39.", "Magenta? On target.", "What is the average error? Point three!"
  const asksWhat = items.length <= 9 && isWord(items[0], 'what', "what's", 'how', 'so');
  if (items.length <= 4 || asksWhat) {
    const concept = asked('concept');
    const hue = asked('hue');
    const gamut = asked('gamut');
    if (concept ?? gamut) carry.concept = concept ?? 'coverage';
    const stat = asked('stat');
    if (stat === 'average' || stat === 'max' || stat === 'min') carry.stat = stat;
    if (hue !== undefined) carry.hue = hue;
    if (gamut !== undefined) carry.gamut = gamut;
  }
  carry.ports = portsNamed(items) ?? carry.ports;
  carry.askedUnit = setAsked(items);
  carry.askedAgainst = setAskedAgainst(items);
  const window = patchAsked(items);
  if (window !== undefined) carry.window = window;
  noteAsked(items, context, carry, angleTalk);
}

const announcing = /^(?:then|now|next|first|finally|and|so|on|to|for|as|the|lastly|well)$/;

const longestAnnouncement = 7;

/** "Blooming, then.", "Now for judder.": the topic that the next sentence is about, and nothing said of it. */
export function topicAnnounced(items: readonly Item[]): string | undefined {
  if (items.length > longestAnnouncement) return undefined;
  const words = items.filter(({ type }) => type !== 'mark');
  const topics = words.filter((item) => keyOf(item, 'topic') !== undefined);
  const rest = words.filter((item) => keyOf(item, 'topic') === undefined);
  const alone = topics.length === 1 && rest.length > 0 && rest.length <= 3;
  return alone && rest.every(({ text }) => announcing.test(text)) ? keyOf(topics[0], 'topic') : undefined;
}

const troubles =
  /^(?:trouble|troublemaker|problem|culprit|exception|offender|snag|weakness|worst|worry|catch)$/;

/** "Blue's the trouble again.": the hue that the next sentence is about, and nothing said of it. */
export function hueAnnounced(items: readonly Item[]): string | undefined {
  if (items.length > 16) return undefined;
  const words = items.filter(({ type }) => type !== 'mark');
  const hues = words.filter((item) => keyOf(item, 'hue') !== undefined);
  const [hue] = hues;
  if (!hue || hues.length > 1 || words.length > 12 || words.some((item) => item.number)) return undefined;
  const [is, the, noun] = words.slice(words.indexOf(hue) + 1);
  const announces =
    isWord(is, "'s", 'is', 'are') && isWord(the, 'the', 'a') && troubles.test(noun?.text ?? '');
  return announces ? keyOf(hue, 'hue') : undefined;
}

/** "Then you turn to the Umbra.", "Over to the Plain.": the set that the next sentence is about. */
export function setAnnounced(items: readonly Item[]): string | undefined {
  if (items.length > 10) return undefined;
  const words = items.filter(({ type }) => type !== 'mark');
  const sets = words.filter((item) => (keyOf(item, 'unit') ?? keyOf(item, 'maker')) !== undefined);
  const [set] = sets;
  const id = keyOf(set, 'unit') ?? keyOf(set, 'maker');
  if (!set || sets.length > 1 || id === undefined || id.includes('|') || words.length > 8) return undefined;
  const rest = words.filter((item) => item !== set);
  const turns = rest.some((item) =>
    isWord(
      item,
      'turn',
      'turn to',
      'turned',
      'turned to',
      'turns to',
      'moved',
      'move to',
      'moved to',
      'turning',
      'turning to',
      'switch',
      'over',
      'on',
      'move',
      'moving',
      'next',
      'now',
    ),
  );
  return turns && words.at(-1) === set && rest.every(({ text }) => turning.test(text)) ? id : undefined;
}

const turning =
  /^(?:then|now|next|and|so|you|we|i|let's|us|let|turn|turn to|turned|turned to|turns to|moved|moved to|move to|turning to|turning|switch|move|moving|over|on|to|for|the|with|first|again)$/;

/** "The Plain?", "And the Plain's?": the set that the answer is of. */
function setAsked(items: readonly Item[]): string | undefined {
  const sets = items.flatMap((item) => keyOf(item, 'unit') ?? keyOf(item, 'maker') ?? []);
  const short = items.filter(({ type }) => type !== 'mark').length <= 5;
  const isOther = items.some((item) => isWord(item, 'than', 'against', 'versus', 'why', 'who', 'which'));
  const [set] = sets;
  return short && !isOther && sets.length === 1 && !set!.includes('|') ? set : undefined;
}

/** "Against the Plain? Twice as bright.": the set that the answer compares with. */
function setAskedAgainst(items: readonly Item[]): string | undefined {
  const [first, ...rest] = items.filter(({ type }) => type !== 'mark');
  const [set, ...others] = rest.filter((item) => !isWord(item, 'the', 'a', 'and'));
  const id = keyOf(set, 'unit') ?? keyOf(set, 'maker');
  const opens = isWord(first, 'against', 'versus', 'beside');
  return opens && others.length === 0 && id !== undefined && !id.includes('|') ? id : undefined;
}

/** "HDR10+? No." asks of a format by its name alone. */
function formatAsked(items: readonly Item[]): string | undefined {
  const [first, ...rest] = items.filter(({ type }) => type !== 'mark');
  return rest.length === 0 ? keyOf(first, 'format') : undefined;
}

/** "Is it the brightest set this year? No, the Kasulind is": what is asked, for the answer to affirm or deny. */
function noteAsked(
  items: readonly Item[],
  context: ReadingContext,
  carry: Carry,
  angleTalk: boolean,
): undefined {
  carry.statement = undefined;
  if (carry.asked !== undefined) return;
  const format = formatAsked(items);
  if (format !== undefined) {
    const check: Check = {
      kind: 'fact',
      key: 'hdr.formats',
      op: 'includes',
      x: [format],
      conditions: { origin: {} },
    };
    carry.statement = { check, no: false, asked: true };
    return;
  }
  const findings: Findings = { list: [] };
  const scenes = scenesOf(items.slice(0, -1), context, copyCarry(carry), angleTalk);
  for (const scene of scenes) readClause(scene, findings);
  const said = scenes.flatMap((scene) => scene.said ?? []);
  const [check] = said;
  if (!check || said.length > 1 || findings.list.length > 1) return;
  carry.statement = { check, no: false, asked: true };
  // "Does the average stay under 3? Yes: 2.4."
  const asked = scenes.find((scene) => scene.said)!;
  noteConcept(asked, findings);
  if (asked.concept !== undefined) carry.concept = asked.concept;
  const stat = statOf(asked);
  if (stat === 'average' || stat === 'max' || stat === 'min') carry.stat = stat;
}
