import type { Findings } from '../finding.ts';
import { type Item, isWord, keyOf, meaningOf } from '../items.ts';
import type { Scene } from '../scene.ts';
import { proposeSeen, setBeside } from './observedCheck.ts';
import { goneWords, lookedFor, type Seen, severityOf } from './severity.ts';

/** "Banding? None." and "blooming is visible, and from 45 degrees it is unwatchable": the topic stands before. */
export function readTopicBefore(scene: Scene, findings: Findings): undefined {
  const { asked } = scene.carry;
  const first = scene.items[0];
  const answer = asked && scene.index === 0 && answerOf(scene);
  if (asked && first && answer) {
    return proposeSeen(scene, findings, asked, answer.range, answer.items);
  }
  let earlier = scene.previous;
  while (earlier && !earlier.items.some((item) => keyOf(item, 'topic'))) earlier = earlier.previous;
  const topics = earlier
    ? new Set(earlier.items.flatMap((item) => keyOf(item, 'topic') ?? []))
    : new Set<string>((asked ?? scene.carry.topic) !== undefined ? [asked ?? scene.carry.topic!] : []);
  const [topic] = topics;
  if (topic === undefined || topics.size > 1) return;
  const none = showsNone(scene);
  if (none) {
    return proposeSeen(scene, findings, topic, [0, 0], [...scene.units.map(({ item }) => item), ...none]);
  }
  // "… but nobody could see it on the Hearth"
  const unseen = scene.items.find(
    (item, at) => keyOf(item, 'house') === 'invisible' && isWord(scene.items[at + 1], 'it', 'any'),
  );
  if (unseen && !scene.items.some((item) => keyOf(item, 'severity'))) {
    return proposeSeen(scene, findings, topic, [0, 0], [unseen, setBeside(scene, [unseen])]);
  }
  // "After adjustment it's gone completely"
  const gone = isGone(scene);
  if (gone) {
    return proposeSeen(scene, findings, topic, [0, 0], gone);
  }
  // "… while on the Plain you have to go looking for it"
  const sought = lookedFor(scene.items);
  if (sought && isWord(scene.items[scene.items.indexOf(sought.at(-1)!) + 2], 'it', 'them'))
    return proposeSeen(scene, findings, topic, [0, 1], [...sought, setBeside(scene, sought)]);
  // "but the Plain's becomes distracting": the possessive stands for the topic.
  const pronoun = scene.items.find(
    (item, at) =>
      isWord(item, 'it', 'they') ||
      (isWord(item, "'s") &&
        keyOf(scene.items[at - 1], 'unit') !== undefined &&
        !isNoun(scene.items[at + 1])),
  );
  const severity = scene.items.find((item) => keyOf(item, 'severity') !== undefined && !scene.used.has(item));
  // "Blooming: visible on axis, distracting at 45°": the severity opens the clause and needs no pronoun.
  const opens =
    severity !== undefined &&
    scene.previous !== null &&
    severity ===
      scene.items.find(
        (item) =>
          item.type !== 'mark' &&
          !isWord(item, 'and', 'but', 'where', 'while', 'whereas') &&
          keyOf(item, 'stage') === undefined,
      );
  // "You have to go looking for it"
  const isSought =
    severity !== undefined && / for$/.test(severity.text) && pronoun?.index === severity.index + 1;
  if (!severity || (!opens && !isSought && (!pronoun || pronoun.index > severity.index))) return;
  // "It's clearly visible around white text": what is shown, and no white that was measured.
  const shows = (at: number) =>
    isWord(scene.items[at + 1], 'text', 'titles', 'letters', 'subtitles', 'credits', 'stars');
  const named = scene.items.some(
    (item, at) => (keyOf(item, 'concept') && !shows(at)) || keyOf(item, 'comparative') !== undefined,
  );
  if (named) return;
  const found = severityOf(scene, severity, scene.used);
  if (!found) return;
  const axis = scene.axes.filter(({ kind }) => kind === 'angle').flatMap(({ items }) => items);
  for (const item of scene.items) if (keyOf(item, 'house') === 'invisible') scene.used.add(item);
  proposeSeen(scene, findings, topic, found.range, [pronoun, ...found.items, ...axis]);
}

/** Is it a thing that a set could own, "the Plain's stand"? */
function isNoun(item: Item | undefined): boolean {
  return (
    item?.type === 'word' &&
    item.meanings.length === 0 &&
    !isWord(item, 'becomes', 'gets', 'stays', 'remains', ...goneWords)
  );
}

/** "It's gone completely", "it has gone": what was seen before is seen no more. */
function isGone({ items }: Scene): Item[] | undefined {
  // "… visible as delivered, and gone after adjustment"
  const [first, second, third] = items.filter((item) => item.type !== 'mark');
  // "Gone from the Plain" is seen no more on another set.
  const isOpening = isWord(first, 'and', 'but') && isWord(second, 'gone', 'is gone', 'are gone');
  if (isOpening && !isWord(third, 'from')) return [second!];
  const at = items.findIndex((item) => isWord(item, 'it', 'they'));
  const rest = items.slice(at + 1, at + 5);
  const gone = rest.find((item) => isWord(item, ...goneWords));
  const between = rest.slice(0, gone ? rest.indexOf(gone) : 0);
  const plain = between.every((item) =>
    isWord(item, 'is', "'s", 'are', 'has', 'had', 'all', 'completely', 'entirely'),
  );
  return at >= 0 && gone && plain ? [items[at]!, gone] : undefined;
}

/** "… and the Hearth shows none": of what the clause before spoke of. */
function showsNone({ items }: Scene): Item[] | undefined {
  const words = items.filter((item) => item.type !== 'mark');
  const any = words.findIndex((item) => isWord(item, 'any'));
  const denial = words
    .slice(0, Math.max(0, any))
    .find((item) => keyOf(item, 'negation') ?? keyOf(item, 'stat'));
  // "I never saw any on the Hearth"
  if (
    any > 0 &&
    any <= 5 &&
    isWord(words[any - 1], 'saw', 'see', 'noticed', 'notice', 'spotted', 'spot', 'found', 'find') &&
    isWord(words[any + 1], 'on', 'at', 'in', 'from', 'at all') &&
    denial
  )
    return [denial, words[any - 1]!, words[any]!];
  // "…, nor does any appear from 45 degrees"
  if (
    isWord(words[0], 'nor') &&
    any > 0 &&
    any <= 2 &&
    isWord(words[any + 1], 'appear', 'show', 'turn', 'creep')
  )
    return [words[0]!, words[any]!, words[any + 1]!];
  const at = words.findIndex((item) => isWord(item, 'none'));
  // "On the Nocthale none was seen"
  if (
    isWord(words[at + 1], 'was', 'is', 'were') &&
    isWord(words[at + 2], 'seen', 'visible', 'noticed', 'found', 'to be seen')
  )
    return words.slice(at, at + 3);
  const [verb, none, next] = words.slice(Math.max(0, at - 1));
  // "… where before there had been none"
  const had = isWord(verb, 'been') && isWord(words[at - 2], 'had', 'has') && isWord(words[at - 3], 'there');
  const thereIs = had || (isWord(verb, 'is', 'was', "'s") && isWord(words[at - 2], 'there'));
  const ends =
    next === undefined ||
    isWord(next, 'for', 'on', 'at', 'in', 'from', 'at all', 'whatever', 'either', 'there', 'to');
  return at > 0 &&
    ends &&
    (thereIs || isWord(verb, 'shows', 'show', 'has', 'had', 'showed', 'saw', 'found', 'noticed'))
    ? [verb!, none!]
    : undefined;
}

/** "None.", "Not a trace.", "Faint.": how much, in answer to a question. */
function answerOf(scene: Scene): Seen | undefined {
  const { items } = scene;
  const first = items[0]!;
  if (isWord(first, 'not') && isWord(items[1], 'that') && isWord(items[2], 'i', 'we') && items.length < 9)
    return { range: [0, 0], items: items.slice(0, 3) };
  // "I never saw one", "Not on the Kasulind"
  const never = items.findIndex((item) => isWord(item, 'never'));
  if (
    never >= 0 &&
    never < 3 &&
    items.length < 7 &&
    isWord(items[never + 1], 'saw', 'seen', 'noticed', 'spotted')
  )
    return { range: [0, 0], items: items.slice(never, never + 2) };
  const whole = items.find((item) => keyOf(item, 'severity')?.includes(' '));
  // "Only if you go looking for it."
  if (whole && items.indexOf(whole) <= 2 && items.length <= 9)
    return { range: meaningOf(whole, 'severity')!.data as [number, number], items: [whole] };
  if (items.length > 5) return undefined;
  if (isWord(first, 'not') && isWord(items[1], 'on') && scene.units.length === 1)
    return { range: [0, 0], items: [first] };
  if (['none', 'never'].includes(keyOf(first, 'stat') ?? '') || isWord(first, 'no', 'not a trace'))
    return { range: [0, 0], items: [first] };
  const meaning = meaningOf(first, 'severity');
  return meaning ? { range: meaning.data as [number, number], items: [first] } : undefined;
}
