import type { Check } from '../../../contract/check.ts';
import { affirming, denying, echoOf, saysNo } from '../echoWords.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isOneOf, isWord, keyOf } from '../items.ts';
import { isAnchor } from '../ownStatement.ts';
import { denied, ofHue, saidOf } from '../retarget.ts';
import type { Scene } from '../scene.ts';
import { resolveMention } from '../units.ts';

/** What the clause or the sentence before said, when it said one thing. */
function statementBefore(scene: Scene): { check: Check; no: boolean } | undefined {
  if (!scene.previous) return scene.carry.statement;
  return scene.previous.said?.length === 1
    ? { check: scene.previous.said[0]!, no: saysNo(scene.previous.items) }
    : undefined;
}

const agreeing = ['yes', 'indeed', 'yep'];
const objecting = ['no', 'nope', 'not quite', 'hardly'];
/** Words that answer a question by themselves */
export const answers: readonly string[] = [...agreeing, ...objecting];

/** "No.", "Yes: 742 nits.", "It does.": the words that answer a question, or undefined. */
function answerWords({ sentence, index }: Scene): { items: Item[]; yes: boolean } | undefined {
  const [first, second] = sentence;
  if (index !== 0 || !first) return undefined;
  const ends = second === undefined || second.type === 'mark';
  if (ends && isOneOf(first, agreeing)) return { items: [first], yes: true };
  if (ends && isOneOf(first, objecting)) return { items: [first], yes: false };
  const words = sentence.filter((item) => item.type !== 'mark');
  if (!isWord(first, 'it', 'they') || words.length > 3) return undefined;
  const answer = words.slice(1);
  if (answer.length === 0 || !answer.every((item) => affirming.test(item.text) || denying.test(item.text)))
    return undefined;
  return { items: words, yes: !answer.some((item) => denying.test(item.text)) };
}

function readAnswer(scene: Scene, findings: Findings): undefined {
  const answer = scene.carry.statement?.asked && answerWords(scene);
  if (!answer) return;
  const { check } = scene.carry.statement!;
  // "Yes: the average is lower than the Plain's" says itself what it affirms.
  const spelledOut = scene.sentence.some(
    (item) => isWord(item, ':', ',', '—') && scene.sentence.slice(item.index + 1).some(isAnchor),
  );
  if (spelledOut) return;
  const said = answer.yes ? check : denied(check);
  if (said) propose(findings, scene, 'echo', said, answer.items);
}

function quantityOf(check: Check): string {
  return (check.kind === 'direction' || check.kind === 'value') && check.operand.type === 'quantity'
    ? check.operand.id
    : '';
}

/** An answer that says of another set what was just said. */
export function readEcho(scene: Scene, findings: Findings): undefined {
  const before = statementBefore(scene);
  if (!before) return;
  const echo = echoOf(scene.items);
  if (!echo) return before.check === scene.carry.statement?.check ? readAnswer(scene, findings) : undefined;
  const mention = scene.units.find(({ item }) => item === echo.set);
  const id = mention ? resolveMention(mention, scene.carry, scene.context) : scene.context.own;
  const hue = keyOf(echo.set, 'hue');
  if (hue !== undefined && !/^sweep/.test(quantityOf(before.check))) return;
  const on = hue ? ofHue(before.check, hue) : id && saidOf(before.check, id, scene.context.own);
  // "It lacks HDR10+, which the Plain has": of what is lacking, and not of the lack.
  const lacking = (scene.previous?.items ?? []).some((item) => isWord(item, 'lacks', 'lack', 'lacked'));
  const turned = lacking && echo.words.some((item) => isWord(item, 'has', 'have', "hasn't", 'can'));
  const agrees = (echo.says === 'same' || (echo.says === 'no') === before.no) !== turned;
  const check = on && (agrees ? on : denied(on));
  const words = echo.words.filter(
    (item) => scene.items.includes(item) && !isWord(item, 'and', 'but', 'while'),
  );
  if (check) propose(findings, scene, 'echo', check, words);
  else refuse(findings, scene, 'echo', 'the words before cannot be said of this set so shortly', words);
}
