import { type Findings, refuse } from '../finding.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { findPart, plays } from '../parts.ts';
import type { Problem } from '../problem.ts';
import type { Scene } from '../scene.ts';
import { proposeSeen, setBeside } from './observedCheck.ts';
import { severityOf, unknownDegree } from './severity.ts';
import { readTopicBefore } from './topicBefore.ts';

const noDegree = 'no house word says how much that is';
const ofTwoSets = 'what was seen on two sets is not compared by a check';

/** "There is nothing to bloom", "near-black noise: not assessed", "a banding test": nothing was seen or not seen. */
function saysNothingSeen({ items }: Scene, topic: Item): boolean {
  const at = items.indexOf(topic);
  return (
    plays(items[at + 1], 'testing') ||
    // "It rolls off rather than clipping"
    isWord(items[at - 1], 'rather than') ||
    (isWord(items[at - 1], 'of') && isWord(items[at - 2], 'instead')) ||
    (isWord(items[at - 1], 'without') &&
      items.slice(0, at).some((item) => keyOf(item, 'direction') === 'rolls-off')) ||
    (isWord(items[at - 1], 'to') && plays(topic, 'acting')) ||
    items.some(
      (entry, place) =>
        isWord(entry, 'assessed', 'tested', 'judged', 'checked') && keyOf(items[place - 1], 'negation'),
    )
  );
}

/** "Blooming is the word that keeps turning up in your letters" */
function isWordItself({ items }: Scene, topic: Item): boolean {
  const at = items.indexOf(topic);
  return (
    isWord(items[at + 1], 'is', 'was') &&
    isWord(items[at + 2], 'the', 'a', 'my', 'your', 'our') &&
    isWord(
      items[at + 3],
      'word',
      'question',
      'complaint',
      'subject',
      'topic',
      'thing',
      'test',
      'name',
      'fear',
      'worry',
      'glow',
      'halo',
      'effect',
      'habit',
      'tendency',
      'phenomenon',
      'stutter',
      'band',
      'bands',
    )
  );
}

/** Why the words on a topic are of two sets at once, or of two denials, and so of no severity. */
function comparesOrDeniesTwice(scene: Scene, topic: Item): Problem | undefined {
  const { items, sentence } = scene;
  const at = items.indexOf(topic);
  // "Free of smear, though not of judder"
  const notOf = isWord(items[at - 1], 'of') && isWord(items[at - 2], 'not');
  if (notOf && sentence.some((word) => /^free/.test(word.text) && word.index < topic.index))
    return { why: 'two denials in a row may mean either', words: [items[at - 2]] };
  const compared = comparedThan(scene) ?? comparedWith(items, at);
  if (compared) return { why: ofTwoSets, words: compared };
  // "Blooming is worst on the Umbra": how sets stand to each other.
  const worst = items.find((word) => isWord(word, 'worst') && word.index > topic.index);
  if (worst && items.indexOf(worst) - at <= 2) return { why: ofTwoSets, words: [worst] };
  // "The blooming that we saw on the Umbra is absent here"
  const here = items.find((word) => isWord(word, 'here') && word.index > topic.index);
  if (here && scene.unit !== undefined && items.some((word) => isWord(word, 'that', 'which')))
    return { why: 'the words speak of two sets, and do not say which is which', words: [here] };
  return undefined;
}

/** Why the words on a topic do not say how much was seen of it. */
function leavesDegreeOpen(scene: Scene): Problem | undefined {
  const { items } = scene;
  const harm = deniesHarm(scene);
  // "Judder will not trouble you unless you go looking for it" says how much that is.
  const isSought = items.some((item) => /^unless .*(?:look|hunt|search)/.test(keyOf(item, 'severity') ?? ''));
  if (harm && !isSought && keyOf(harm, 'severity') === undefined) return { why: noDegree, words: [harm] };
  const vague = findPart(items, 'unmeasured');
  const isSaid = items.some(
    (entry) =>
      isWord(entry, 'none') ||
      (keyOf(entry, 'severity') && !['no', 'none', 'never'].includes(keyOf(entry, 'severity')!)),
  );
  return vague && !isSaid ? { why: noDegree, words: vague } : undefined;
}

/** Why what was seen is of several places, or of something that no observation is kept by. */
function placesOpen(scene: Scene): Problem | undefined {
  const { items, axes } = scene;
  const rate = items.find((item) => item.number?.dimension === 'frequency');
  if (rate) return { why: 'what was seen is not kept by refresh rate', words: [rate] };
  const places = axes.filter(({ kind }) => kind === 'angle').length;
  const none = items.find((item) => isWord(item, 'none'));
  const said = items.filter((item) => keyOf(item, 'severity') !== undefined);
  // "None head on, mild at 30 degrees", "mild at 30 degrees and obvious at 60"
  const several = places > 1 || (places > 0 && none !== undefined && said.some((item) => item !== none));
  if (!several) return undefined;
  return { why: 'the words name several places: say what was seen at each', words: [none, ...said] };
}

/** Topics of patterns and content: "You won't see blooming unless you go looking for it". */
export function readObservations(scene: Scene, findings: Findings): undefined {
  // "Judder, a stutter in slow movements, was faint": one topic by two names.
  const topics = scene.items.filter(
    (item, at, all) =>
      keyOf(item, 'topic') !== undefined &&
      !scene.used.has(item) &&
      all.findIndex((other) => keyOf(other, 'topic') === keyOf(item, 'topic')) === at,
  );
  if (topics.length === 0) readTopicBefore(scene, findings);
  // "Neither banding nor judder": one denial serves every topic.
  const usedBefore = new Set(scene.used);
  for (const item of topics) {
    if (saysNothingSeen(scene, item) || isWordItself(scene, item)) continue;
    const problem = comparesOrDeniesTwice(scene, item) ?? leavesDegreeOpen(scene) ?? placesOpen(scene);
    if (problem) {
      refuse(findings, scene, 'observed', problem.why, [item, ...problem.words]);
      continue;
    }
    const severity = severityOf(scene, item, usedBefore);
    const unknown = severity && unknownDegree(scene, item, severity);
    if (unknown) {
      refuse(findings, scene, 'observed', noDegree, [item, unknown]);
      continue;
    }
    if (!severity) {
      const denied = scene.items.find((entry) =>
        /^(?:only|just|hard|difficult) /.test(keyOf(entry, 'severity') ?? ''),
      );
      if (denied) refuse(findings, scene, 'observed', noDegree, [item, denied]);
      continue;
    }
    proposeSeen(scene, findings, keyOf(item, 'topic')!, severity.range, [
      item,
      ...severity.items,
      setBeside(scene, severity.items),
    ]);
  }
  if (topics.some((item) => scene.used.has(item)))
    for (const item of scene.items)
      if (
        keyOf(item, 'house') === 'visible' ||
        keyOf(item, 'house') === 'invisible' ||
        keyOf(item, 'severity')
      )
        scene.used.add(item);
}

/** "Blooming never got in the way": what it did not do, and not whether it was seen. */
function deniesHarm({ items }: Scene): Item | undefined {
  const at = items.findIndex((item) => keyOf(item, 'stat') === 'never' || keyOf(item, 'negation') === 'not');
  // "Judder is visible, and we never quite got used to it"
  if (isWord(items[at - 1], 'we', 'i', 'you')) return undefined;
  const harm =
    /^(?:got|gets?|bother\w*|distracts?|distracted|matter\w*|spoil\w*|spoilt|worr\w*|annoys?|annoyed|disturb\w*|intrud\w*|troubl\w*|irritate\w*|ruin\w*)$/;
  return at < 0 ? undefined : items.slice(at + 1, at + 4).find((item) => harm.test(item.text));
}

/** "Blooming is less visible than on the Kasulind": how it stands to another, not how much it is. */
function comparedThan({ items }: Scene): Item[] | undefined {
  const than = items.findIndex((item) => isWord(item, 'than'));
  const comparative = items.findLast((item, at) => at < than && keyOf(item, 'comparative') !== undefined);
  return comparative && [comparative, items[than]!];
}

/** "The Umbra blooms less", "as visible as on the Plain" */
function comparedWith(items: readonly Item[], topic: number): Item[] | undefined {
  const beside = [items[topic - 1], items[topic + 1]].find((item) => isWord(item, 'less', 'more', 'fewer'));
  const as = items.findIndex(
    (item, at) =>
      isWord(item, 'as') && keyOf(items[at + 1], 'severity') !== undefined && isWord(items[at + 2], 'as'),
  );
  return beside ? [beside] : as < 0 ? undefined : items.slice(as, as + 3);
}
