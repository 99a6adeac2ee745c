import { type Item, isWord, keyOf } from './items.ts';
import { meets, needBits, type Signs } from './needs.ts';

const hearsay = new Set([
  'reportedly',
  'apparently',
  'allegedly',
  'supposedly',
  'rumoured',
  'rumour',
  'rumours',
  'forums',
]);

const people = new Set([
  'some',
  'others',
  'readers',
  'people',
  'many',
  'owners',
  'users',
  'critics',
  'colleagues',
  'friend',
  'colleague',
  'reader',
  'owner',
  'neighbour',
  'chap',
  'bloke',
  'pub',
  'man',
  'woman',
  'mother',
  'father',
  'sister',
  'brother-in-law',
  'uncle',
  'aunt',
  'dealer',
  'shop',
  'salesman',
  'salesperson',
  'forum',
  'rumour',
  'intern',
  'assistant',
  'wife',
  'husband',
  'partner',
  'son',
  'daughter',
  'neighbours',
  'friends',
  'guest',
  'guests',
  'visitor',
  'visitors',
  'children',
  'she',
  'he',
  'somebody',
  'someone',
]);

const opining = new Set([
  'think',
  'thinks',
  'believe',
  'report',
  'reports',
  'find',
  'complain',
  'feel',
  'argue',
  'swear',
  'insist',
  'insists',
  'believes',
  'told',
  'reckon',
  'reckons',
  'reckoned',
  'thought',
  'swore',
  'swears',
  'insisted',
  'remarked',
  'asked',
]);

/** "Our readers gave it 9 out of 10" */
const scoring = /^(?:gave|give|gives|scored?|scores|rated?|rates|award(?:ed|s)?)$/;

const needs = needBits([{ words: [...hearsay, ...people] }]);

/**
 * "One reader says", "reportedly": somebody else's word, which this review does not vouch for.
 * @param signs what the sentence shows
 */
export function isSecondHand(items: readonly Item[], signs: Signs): boolean {
  if (!meets(signs, needs)) return false;
  for (let at = 0; at < items.length; at += 1) {
    const item = items[at]!;
    // "It is, apparently, 71 mm deep": the writer's own statement, with a raised eyebrow.
    if (isWord(item, 'apparently') && isWord(items[at - 1], ',') && isWord(items[at + 1], ',')) continue;
    // "Which turns the fan into a rumour" is a figure of speech.
    if (hearsay.has(item.text) && !isWord(items[at - 2], 'into', 'to', 'than')) return true;
    if (!people.has(item.text)) continue;
    const next = items[at + 1];
    // "Like a man told that the bar has closed": nobody tells anything of the set.
    if (isWord(items[at - 2], 'like') && isWord(items[at - 1], 'a', 'an')) continue;
    // "The thumb drives that people insist on handing me": what they do.
    if (isWord(items[at + 2], 'on')) continue;
    // "She said it with feeling" tells how, and nothing of the set.
    if (isWord(items[at + 2], 'it') && isWord(items[at + 3], 'with', 'again', 'twice', 'once', ',')) continue;
    if (next && (keyOf(next, 'saying') !== undefined || opining.has(next.text))) return true;
    if (next && scoring.test(next.text) && isWord(items[at + 2], 'it', 'this', 'the set')) return true;
  }
  return false;
}
