import type { Check } from '../../../contract/check.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { denied, saidOf } from '../retarget.ts';
import type { Scene } from '../scene.ts';
import { resolveMention } from '../units.ts';

const affirming = /^(?:is|are|does|do|did|has|can|will|was)$/;
const denying =
  /^(?:isn't|aren't|doesn't|don't|didn't|hasn't|can't|cannot|won't|wasn't|is not|does not|not)$/;
const fillers =
  /^(?:the|so|and|but|while|whereas|though|yet|on|with|'s|'|too|either|however|certainly|really|sadly|alas|also|not|say|claim|that|as much|much|no|yes|same|for|true|of|likewise|only|one|ones)$/;

const turning = /(?:^|[ ])(?:not?|never|none|nothing|neither|nor|without|cannot|in?visible)(?:[ ]|$)|n't/;

/** Does a statement of these words deny something, so that "nor does it" agrees and "it does" objects? */
export function saysNo(items: readonly Item[]): boolean {
  return items.some(
    (item) => item.type !== 'mark' && (turning.test(item.text) || keyOf(item, 'house') === 'invisible'),
  );
}

export interface Echo {
  /** Whom it is said of */
  set: Item;
  words: Item[];
  /** The statement before is agreed with ("so is"), affirmed ("is") or denied ("isn't"). */
  says: 'same' | 'yes' | 'no';
}

/** "The Kasulind's isn't", "and the Hearth is not", "nor does the Hearth", "not so on the Kasulind": nothing but a set and an answer. */
export function echoOf(all: readonly Item[]): Echo | undefined {
  const items = all.filter((item) => item.type !== 'mark');
  if (items.length < 2 || items.length > 8) return undefined;
  const sets = items.filter(
    (item) =>
      keyOf(item, 'unit') ?? keyOf(item, 'maker') ?? (keyOf(item, 'pronoun') === 'own' ? '' : undefined),
  );
  const [set] = sets;
  if (!set || sets.length > 1) return undefined;
  const rest = items.filter((item) => item !== set);
  if (
    !rest.every(
      (item) =>
        affirming.test(item.text) ||
        denying.test(item.text) ||
        fillers.test(item.text) ||
        isWord(item, 'nor', 'neither'),
    )
  )
    return undefined;
  const verb = rest.find((item) => affirming.test(item.text) || denying.test(item.text));
  const opening = rest.find((item) => isWord(item, 'nor', 'neither'));
  const so = rest.find((item) => isWord(item, 'so'));
  if (opening) return verb && { set, words: items, says: 'same' };
  if (so && verb && verb.index === so.index + 1 && set.index > verb.index && !denying.test(verb.text))
    return { set, words: items, says: 'same' };
  if (rest.some((item) => denying.test(item.text))) return { set, words: items, says: 'no' };
  if (rest.some((item) => isWord(item, 'too', 'likewise', 'same')))
    return { set, words: items, says: 'same' };
  return verb && verb.index > set.index ? { set, words: items, says: 'yes' } : undefined;
}

/** What the clause or the sentence before said, when it said one thing. */
function statementBefore(scene: Scene): { check: Check; no: boolean } | undefined {
  if (!scene.previous) return scene.carry.statement;
  return scene.previous.said?.length === 1
    ? { check: scene.previous.said[0]!, no: saysNo(scene.previous.items) }
    : undefined;
}

/** "No.", "Yes: 742 nits.", "It does.": the words that answer a question, or undefined. */
function answerWords({ sentence, index }: Scene): { items: Item[]; yes: boolean } | undefined {
  const [first, second] = sentence;
  if (index !== 0 || !first) return undefined;
  const ends = second === undefined || second.type === 'mark';
  if (ends && isWord(first, 'yes', 'indeed', 'yep')) return { items: [first], yes: true };
  if (ends && isWord(first, 'no', 'nope', 'not quite', 'hardly')) return { items: [first], yes: false };
  const words = sentence.filter((item) => item.type !== 'mark');
  if (!isWord(first, 'it', 'they') || words.length > 3) return undefined;
  const answer = words.slice(1);
  if (answer.length === 0 || !answer.every((item) => affirming.test(item.text) || denying.test(item.text)))
    return undefined;
  return { items: words, yes: !answer.some((item) => denying.test(item.text)) };
}

/** Does the sentence answer the question before it? */
export function isAnswer(scene: Scene): boolean {
  return answerWords(scene) !== undefined;
}

function readAnswer(scene: Scene, findings: Findings): undefined {
  const answer = scene.carry.statement?.asked && answerWords(scene);
  if (!answer) return;
  const { check } = scene.carry.statement!;
  const said = answer.yes ? check : denied(check);
  if (said) propose(findings, scene, 'echo', said, answer.items);
}

/** An answer that says of another set what was just said. */
export function readEcho(scene: Scene, findings: Findings): undefined {
  const before = statementBefore(scene);
  if (!before) return;
  const echo = echoOf(scene.items);
  if (!echo) return before.check === scene.carry.statement?.check ? readAnswer(scene, findings) : undefined;
  const mention = scene.units.find(({ item }) => item === echo.set);
  const id = mention ? resolveMention(mention, scene.carry, scene.context) : scene.context.own;
  const on = id && saidOf(before.check, id, scene.context.own);
  const agrees = echo.says === 'same' || (echo.says === 'no') === before.no;
  const check = on && (agrees ? on : denied(on));
  const words = echo.words.filter(
    (item) => scene.items.includes(item) && !isWord(item, 'and', 'but', 'while'),
  );
  if (check) propose(findings, scene, 'echo', check, words);
  else refuse(findings, scene, 'echo', 'the words before cannot be said of this set so shortly', words);
}
