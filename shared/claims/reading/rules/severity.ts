import { type Item, isWord, keyOf, meaningOf } from '../items.ts';
import { plays } from '../parts.ts';
import type { Scene } from '../scene.ts';

/** How much was seen: the lowest and the highest severity, 0 to 4, and the words that say so */
export interface Seen {
  range: [number, number];
  items: Item[];
}

/** Severities as words: [lowest, highest]; intensity adverbs come before plain "visible". */
export function severityOf(clause: Scene, topic: Item, usedBefore: ReadonlySet<Item>): Seen | undefined {
  const scene = { ...clause, items: ownPart(clause.items, topic) };
  const zero = scene.items.find(
    (item) => item.number?.spelled && item.number.x === 0 && item.index === topic.index - 1,
  );
  if (zero) return { range: [0, 0], items: [zero] };
  // "A touch of smear", "a hint of banding": slight.
  const bit = scene.items.find(
    (item) =>
      keyOf(item, 'lean') !== undefined &&
      / of$/.test(item.text) &&
      topic.index - item.index <= 2 &&
      item.index < topic.index,
  );
  const denied = scene.items.some(
    (item) => bit && item.index < bit.index && (keyOf(item, 'negation') ?? keyOf(item, 'stat')) !== undefined,
  );
  if (bit && !denied) return { range: [1, 1], items: [bit] };
  const negations = scene.items.filter(
    (item, place) =>
      (nobodySaw(scene.items, place) ||
        keyOf(item, 'negation') !== undefined ||
        ['none', 'never'].includes(keyOf(item, 'stat') ?? '') ||
        isWord(item, 'free', 'absent', 'absence')) &&
      !usedBefore.has(item) &&
      reachesTopic(scene.items, place, topic) &&
      // "Shows haloes at 45 degrees, not from the front"
      !(
        isWord(item, 'not') &&
        item.index > topic.index &&
        isWord(scene.sentence[item.index - 1], ',', 'but') &&
        isWord(scene.items[place + 1], 'from', 'on', 'in', 'at', 'with')
      ) &&
      // "Judder is visible, and we never got used to it": what is denied is how somebody took it.
      !(
        item.index > topic.index &&
        isWord(scene.items[place - 1], 'we', 'i') &&
        scene.items.slice(0, place).some((word) => saysHowMuch(word) && word.index > topic.index)
      ) &&
      !isPartedFrom(scene, item, topic),
  );
  const severities = scene.items.flatMap((item) => {
    const meaning = meaningOf(item, 'severity');
    return meaning && !['no', 'none', 'never', 'free'].includes(meaning.key)
      ? [{ item, range: meaning.data as [number, number], key: meaning.key }]
      : [];
  });
  const trained = severities.find((entry) => entry.range[1] <= 1 && entry.key.includes(' '));
  // "Not only to a trained eye", "you don't have to look for it" leave open how much more is seen.
  if (
    trained &&
    /^(?:only|just|have|had|hard|difficult) /.test(trained.key) &&
    scene.items.some(
      (item) =>
        item.index < trained.item.index &&
        trained.item.index - item.index <= 3 &&
        (negations.includes(item) || keyOf(item, 'house') === 'invisible'),
    )
  )
    return undefined;
  if (trained) return { range: trained.range, items: [trained.item, ...negations] };
  const specific =
    severities.find((entry) => !['visible', 'visibly', 'noticeable', 'noticeably'].includes(entry.key)) ??
    severities[0];
  if (specific) {
    const negated = negations.some(
      (item) => item.index < specific.item.index && keyOf(item, 'hedge') === undefined,
    );
    if (!negated) return { range: specific.range, items: severities.map((entry) => entry.item) };
    // "not visible" is unseen; "not distracting" may still be visible.
    const plain = ['visible', 'visibly', 'noticeable', 'noticeably', 'just visible'].includes(specific.key);
    return {
      range: [0, plain ? 0 : Math.max(0, specific.range[0] - 1)],
      items: [specific.item, ...negations],
    };
  }
  // "The banding was gone too"
  const gone = scene.items.find(
    (item) =>
      item.index > topic.index && (isWord(item, ...goneWords) || /^(?:was|were|had) gone$/.test(item.text)),
  );
  if (gone && isWord(scene.items[scene.items.indexOf(gone) + 1], 'from')) return undefined;
  if (gone && negations.length === 0) return { range: [0, 0], items: [gone] };
  const hadToLook = lookedFor(scene.items, topic);
  if (hadToLook) return { range: [0, 1], items: hadToLook };
  const sought = scene.items.findIndex(
    (item, at) =>
      isWord(item, 'if', 'because') &&
      isWord(scene.items[at + 1], 'you', 'one', 'i', 'we') &&
      (isWord(
        scene.items[at + 2],
        'look',
        'looked',
        'hunt',
        'search',
        'go looking',
        'go hunting',
        'went looking',
      ) ||
        (isWord(scene.items[at + 2], 'went', 'go') && isWord(scene.items[at + 3], 'looking', 'hunting'))),
  );
  if (sought >= 0) return { range: [0, 1], items: scene.items.slice(sought, sought + 5) };
  const hardly = negations.find((item) => isWord(item, 'hardly', 'barely', 'scarcely'));
  if (hardly) return { range: [0, 1], items: [hardly] };
  if (negations.length > 0) return { range: [0, 0], items: negations };
  const verb = scene.items.find((item) => plays(item, 'showing') || keyOf(item, 'house') === 'visible');
  const house = scene.items.find((item) => keyOf(item, 'house') === 'invisible');
  if (house) return { range: [0, 0], items: [house] };
  const acts = plays(topic, 'acting');
  if (acts) return { range: [1, 4], items: [] };
  // "The haze is gone, and with it the banding"
  if (isWord(verb, 'with') && isWord(scene.items[scene.items.indexOf(verb!) + 1], 'it', 'them', 'that'))
    return undefined;
  if (verb && !(isWord(verb, 'with') && scene.items.indexOf(topic) < scene.items.indexOf(verb)))
    return { range: [1, 4], items: [verb] };
  return undefined;
}

/** "No crush; banding: clearly visible", "skies are not so lucky: there is obvious banding" */
function isPartedFrom({ items, sentence }: Scene, denial: Item, topic: Item): boolean {
  const between = sentence.slice(denial.index, topic.index);
  const colon = between.find((mark) => isWord(mark, ':'));
  return (
    between.some((mark) => isWord(mark, ';')) ||
    (colon !== undefined && items.some((item) => item.index > colon.index && saysHowMuch(item)))
  );
}

/** "Noise was visible, banding showed itself only when I went looking": what is said between two topics is of the first. */
function ownPart(items: readonly Item[], topic: Item): readonly Item[] {
  const key = keyOf(topic, 'topic');
  const at = items.indexOf(topic);
  const isOther = (item: Item) => keyOf(item, 'topic') !== undefined && keyOf(item, 'topic') !== key;
  const before = items.findLastIndex((item, place) => place < at && isOther(item));
  const after = items.findIndex((item, place) => place > at && isOther(item));
  if (before < 0 && after < 0) return items;
  const saysOf = (from: number, to: number) =>
    items.findLastIndex((item, place) => place > from && place < to && saysHowMuch(item));
  const end = after < 0 ? items.length : after;
  const own = saysOf(at, end);
  if (own < 0) return before < 0 ? items : items.slice(startOfOwn(items, before, at));
  const next = items.findIndex((item, place) => place > end && isOther(item));
  const goesOn = after >= 0 && saysOf(after, next < 0 ? items.length : next) >= 0;
  return items.slice(before < 0 ? 0 : saysOf(before, at) + 1, goesOn ? own + 1 : items.length);
}

/** "There is obvious banding, and football brings out a dirty screen": what was said before is not said of this too. */
function startOfOwn(items: readonly Item[], before: number, topic: number): number {
  const verb = items.findLastIndex((item, at) => at > before && at < topic && plays(item, 'showing'));
  const joiner = items.findLastIndex((item, at) => at > before && at < verb && isWord(item, 'and', 'but'));
  return joiner > 0 && verb - joiner > 1 ? joiner : 0;
}

function saysHowMuch(item: Item): boolean {
  const severity = keyOf(item, 'severity');
  return (
    (severity !== undefined && !['no', 'none', 'never', 'free'].includes(severity)) ||
    ['visible', 'invisible'].includes(keyOf(item, 'house') ?? '') ||
    plays(item, 'showing') ||
    isWord(item, 'looking', 'hunting', 'searching')
  );
}

/** "You have to go looking for it", "showed itself only when I went looking": seen by who looks for it. */
export function lookedFor(items: readonly Item[], topic?: Item): Item[] | undefined {
  const from = topic ? items.indexOf(topic) : -1;
  const at = items.findIndex((item, place) => place > from && isWord(item, ...lookingWords));
  if (at < 0) return undefined;
  const lead = items.slice(Math.max(0, at - 5), at);
  const must = lead.findIndex(
    (item, place) => isWord(item, 'have', 'has', 'had', 'need') && isWord(lead[place + 1], 'to'),
  );
  const only = lead.findIndex(
    (item, place) => isWord(item, 'only') && isWord(lead[place + 1], 'when', 'if', 'once', 'after'),
  );
  const start = must >= 0 ? must : only;
  // "Not something you have to look for" is plain to see.
  if (start < 0 || lead.some((item) => keyOf(item, 'negation') !== undefined)) return undefined;
  return [...lead.slice(start), items[at]!];
}

/** "Faint judder, no blooming", "no blooming, some judder": a bare "no" is said of the topic beside it. */
function reachesTopic(items: readonly Item[], no: number, topic: Item): boolean {
  if (!isWord(items[no], 'no', 'none', 'without', 'zero')) return true;
  const at = items.indexOf(topic);
  const first = items.findIndex((item, place) => place > no && keyOf(item, 'topic') !== undefined);
  if (at < no) return first < 0 || first - no > 3;
  const between = items.slice(no + 1, at);
  // "No crush, faint banding", and not "no visible, distracting banding"
  const parted = between.some(
    (item, place) =>
      keyOf(item, 'severity') === undefined &&
      ((between[place + 1] ?? topic).index > item.index + 1 ||
        isWord(between[place + 1], 'but', 'and', 'yet', 'though')),
  );
  if (first === at && !parted) return true;
  return (
    between.some((item) => isWord(item, 'or', 'nor')) ||
    !between.some(
      (item) =>
        isWord(item, 'some', 'but', 'there', 'it', 'a', 'a little', 'a bit of', 'plenty', 'yet', 'though') ||
        (keyOf(item, 'severity') !== undefined && item.index > no + 1),
    )
  );
}

/** "Nobody in our panel saw any flicker" */
function nobodySaw(items: readonly Item[], at: number): boolean {
  return (
    isWord(items[at], 'nobody', 'no one', 'none of us') &&
    items.slice(at + 1, at + 7).some((item) => isWord(item, 'saw', 'sees', 'noticed', 'spotted', 'could'))
  );
}

/** "Smearing is mild", "reflections are awful": how much is said, in a word that the house does not define. */
export function unknownDegree(scene: Scene, topic: Item, { range, items }: Seen): Item | undefined {
  const [verb] = items;
  const isOpen = range[0] === 1 && range[1] === 4;
  if (!isOpen || !verb || verb.index !== topic.index + 1 || !plays(verb, 'copula')) return undefined;
  let at = scene.items.indexOf(verb) + 1;
  while (isWord(scene.items[at], 'very', 'rather', 'quite', 'so', 'too', 'really', 'pretty', 'fairly'))
    at += 1;
  const next = scene.items[at];
  if (!next || plays(next, 'present') || keyOf(next, 'house') !== undefined) return undefined;
  return next.type === 'word' || (keyOf(next, 'intensity') ?? keyOf(next, 'opinion')) !== undefined
    ? next
    : undefined;
}

/** Words of looking for what is not plain to see */
export const lookingWords: readonly string[] = [
  ...['looking', 'look', 'hunt', 'hunting', 'search', 'searching'],
  ...['go looking', 'go hunting', 'went looking', 'went hunting'],
];

/** Words by which something is there no more */
export const goneWords: readonly string[] = [
  ...['gone', 'is gone', 'are gone', 'has gone', 'have gone'],
  ...['disappears', 'disappeared', 'vanishes', 'vanished'],
];
