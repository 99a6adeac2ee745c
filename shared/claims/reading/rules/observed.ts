import type { StatedConditions } from '../../../contract/check.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord, keyOf, meaningOf } from '../items.ts';
import { conditionsFor } from '../operand.ts';
import { findPart, plays } from '../parts.ts';
import type { Scene } from '../scene.ts';

/** Severities as words: [lowest, highest]; intensity adverbs come before plain "visible". */
export function severityOf(
  scene: Scene,
  topic: Item,
  usedBefore: ReadonlySet<Item>,
): { range: [number, number]; items: Item[] } | undefined {
  const zero = scene.items.find(
    (item) => item.number?.spelled && item.number.x === 0 && item.index === topic.index - 1,
  );
  if (zero) return { range: [0, 0], items: [zero] };
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
      // "No crush; banding: clearly visible"
      !scene.sentence.slice(item.index, topic.index).some((mark) => isWord(mark, ';')),
  );
  const severities = scene.items.flatMap((item) => {
    const meaning = meaningOf(item, 'severity');
    return meaning && !['no', 'none', 'never', 'free'].includes(meaning.key)
      ? [{ item, range: meaning.data as [number, number], key: meaning.key }]
      : [];
  });
  const trained = severities.find((entry) => entry.range[1] <= 1 && entry.key.includes(' '));
  // "Not only to a trained eye" leaves open how much more is seen.
  if (
    trained &&
    /^(?:only|just)/.test(trained.key) &&
    scene.items.some(
      (item) =>
        item.index < trained.item.index &&
        trained.item.index - item.index <= 2 &&
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

/** "Blooming never got in the way": what it did not do, and not whether it was seen. */
function deniesHarm({ items }: Scene): Item | undefined {
  const at = items.findIndex((item) => keyOf(item, 'stat') === 'never' || keyOf(item, 'negation') === 'not');
  const harm =
    /^(?:got|gets?|bother\w*|distracts?|distracted|matter\w*|spoil\w*|spoilt|worr\w*|annoys?|annoyed|disturb\w*|intrud\w*|troubl\w*|irritate\w*|ruin\w*)$/;
  return at < 0 ? undefined : items.slice(at + 1, at + 4).find((item) => harm.test(item.text));
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
    if (plays(scene.items[scene.items.indexOf(item) + 1], 'testing')) continue;
    // "There is nothing to bloom" names what could, not what was seen.
    if (isWord(scene.items[scene.items.indexOf(item) - 1], 'to') && plays(item, 'acting')) continue;
    // "Near-black noise: not assessed" says that nobody looked.
    if (
      scene.items.some(
        (entry, at) =>
          isWord(entry, 'assessed', 'tested', 'judged', 'checked') && keyOf(scene.items[at - 1], 'negation'),
      )
    )
      continue;
    const harm = deniesHarm(scene);
    if (harm && keyOf(harm, 'severity') === undefined) {
      refuse(findings, scene, 'observed', 'no house word says how much that is', [item, harm]);
      continue;
    }
    // "Free of smear, though not of judder"
    const at = scene.items.indexOf(item);
    const notOf = isWord(scene.items[at - 1], 'of') && isWord(scene.items[at - 2], 'not');
    if (notOf && scene.sentence.some((word) => /^free/.test(word.text) && word.index < item.index)) {
      refuse(findings, scene, 'observed', 'two denials in a row may mean either', [
        scene.items[at - 2],
        item,
      ]);
      continue;
    }
    const compared = comparedThan(scene) ?? comparedWith(scene.items, at);
    if (compared) {
      const why = 'what was seen on two sets is not compared by a check';
      refuse(findings, scene, 'observed', why, [item, ...compared]);
      continue;
    }
    const vague = findPart(scene.items, 'unmeasured');
    const absent = scene.items.some((entry) => isWord(entry, 'none'));
    if (
      vague &&
      !absent &&
      !scene.items.some(
        (entry) => keyOf(entry, 'severity') && !['no', 'none', 'never'].includes(keyOf(entry, 'severity')!),
      )
    ) {
      refuse(findings, scene, 'observed', 'no house word says how much that is', [item, ...vague]);
      continue;
    }
    // "Blooming is worst on the Umbra": how sets stand to each other.
    const worst = scene.items.find((word) => isWord(word, 'worst') && word.index > item.index);
    if (worst && scene.items.indexOf(worst) - scene.items.indexOf(item) <= 2) {
      refuse(findings, scene, 'observed', 'what was seen on two sets is not compared by a check', [
        item,
        worst,
      ]);
      continue;
    }
    // "The blooming that we saw on the Umbra is absent here": of two sets at once.
    const here = scene.items.find((word) => isWord(word, 'here') && word.index > item.index);
    if (here && scene.unit !== undefined && scene.items.some((word) => isWord(word, 'that', 'which'))) {
      refuse(findings, scene, 'observed', 'the words speak of two sets, and do not say which is which', [
        item,
        here,
      ]);
      continue;
    }
    const severity = severityOf(scene, item, usedBefore);
    const unknown = severity && unknownDegree(scene, item, severity);
    if (unknown) {
      refuse(findings, scene, 'observed', 'no house word says how much that is', [item, unknown]);
      continue;
    }
    if (!severity) continue;
    const conditions = observedConditions(scene);
    propose(
      findings,
      scene,
      'observed',
      {
        kind: 'observed',
        topic: keyOf(item, 'topic')!,
        severity: severity.range,
        conditions,
      },
      [item, ...severity.items, setBeside(scene, severity.items)],
    );
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

/** "… was faint on the Tamarick": the set that stands right behind how much is seen. */
function setBeside({ items, units }: Scene, severity: readonly Item[]): Item | undefined {
  const end = Math.max(...severity.map(({ index }) => index));
  const beside = units.find(({ item }) => item.index > end && item.index <= end + 3)?.item;
  return beside &&
    isWord(items[items.indexOf(beside) - (isWord(items[items.indexOf(beside) - 1], 'the') ? 2 : 1)], 'on')
    ? beside
    : undefined;
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

/** "Smearing is mild", "reflections are awful": how much is said, in a word that the house does not define. */
function unknownDegree(
  scene: Scene,
  topic: Item,
  { range, items }: { range: [number, number]; items: Item[] },
): Item | undefined {
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

/** Is it a thing that a set could own, "the Plain's stand"? */
function isNoun(item: Item | undefined): boolean {
  return (
    item?.type === 'word' &&
    item.meanings.length === 0 &&
    !isWord(item, 'becomes', 'gets', 'stays', 'remains')
  );
}

/** "Banding? None." and "blooming is visible, and from 45 degrees it is unwatchable": the topic stands before. */
function readTopicBefore(scene: Scene, findings: Findings): undefined {
  const { asked } = scene.carry;
  const first = scene.items[0];
  const answer = asked && scene.index === 0 && answerOf(scene);
  if (asked && first && answer) {
    const conditions = observedConditions(scene);
    const check = { kind: 'observed' as const, topic: asked, severity: answer.range, conditions };
    return propose(findings, scene, 'observed', check, answer.items);
  }
  let earlier = scene.previous;
  while (earlier && !earlier.items.some((item) => keyOf(item, 'topic'))) earlier = earlier.previous;
  const topics = earlier
    ? new Set(earlier.items.flatMap((item) => keyOf(item, 'topic') ?? []))
    : new Set<string>((asked ?? scene.carry.topic) !== undefined ? [asked ?? scene.carry.topic!] : []);
  const none = topics.size === 1 ? showsNone(scene) : undefined;
  if (none) {
    const conditions = observedConditions(scene);
    const check = {
      kind: 'observed' as const,
      topic: [...topics][0]!,
      severity: [0, 0] as const,
      conditions,
    };
    return propose(findings, scene, 'observed', check, [...scene.units.map(({ item }) => item), ...none]);
  }
  // "… but nobody could see it on the Hearth"
  const unseen = scene.items.find(
    (item, at) => keyOf(item, 'house') === 'invisible' && isWord(scene.items[at + 1], 'it', 'any'),
  );
  if (topics.size === 1 && unseen && !scene.items.some((item) => keyOf(item, 'severity'))) {
    const conditions = observedConditions(scene);
    const check = {
      kind: 'observed' as const,
      topic: [...topics][0]!,
      severity: [0, 0] as const,
      conditions,
    };
    return propose(findings, scene, 'observed', check, [unseen, setBeside(scene, [unseen])]);
  }
  // "After adjustment it's gone completely"
  const gone = topics.size === 1 ? isGone(scene) : undefined;
  if (gone) {
    const conditions = observedConditions(scene);
    const check = {
      kind: 'observed' as const,
      topic: [...topics][0]!,
      severity: [0, 0] as const,
      conditions,
    };
    return propose(findings, scene, 'observed', check, gone);
  }
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
        (item) => item.type !== 'mark' && !isWord(item, 'and', 'but') && keyOf(item, 'stage') === undefined,
      );
  if (topics.size !== 1 || !severity || (!opens && (!pronoun || pronoun.index > severity.index))) return;
  if (scene.items.some((item) => keyOf(item, 'concept') ?? keyOf(item, 'comparative'))) return;
  const found = severityOf(scene, severity, scene.used);
  if (!found) return;
  const check = {
    kind: 'observed' as const,
    topic: [...topics][0]!,
    severity: found.range,
    conditions: observedConditions(scene),
  };
  const axis = scene.axes.filter(({ kind }) => kind === 'angle').flatMap(({ items }) => items);
  propose(findings, scene, 'observed', check, [pronoun, ...found.items, ...axis]);
}

/** Words by which something is there no more */
export const goneWords: readonly string[] = [
  ...['gone', 'is gone', 'are gone', 'has gone', 'have gone'],
  ...['disappears', 'disappeared', 'vanishes', 'vanished'],
];

/** "It's gone completely", "it has gone": what was seen before is seen no more. */
function isGone({ items }: Scene): Item[] | undefined {
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
  const at = words.findIndex((item) => isWord(item, 'none'));
  // "On the Nocthale none was seen"
  if (
    isWord(words[at + 1], 'was', 'is', 'were') &&
    isWord(words[at + 2], 'seen', 'visible', 'noticed', 'found', 'to be seen')
  )
    return words.slice(at, at + 3);
  const [verb, none, next] = words.slice(Math.max(0, at - 1));
  const thereIs = isWord(verb, 'is', 'was') && isWord(words[at - 2], 'there');
  const ends = next === undefined || isWord(next, 'for', 'on', 'at', 'in', 'from', 'at all', 'whatever');
  return at > 0 &&
    ends &&
    (thereIs || isWord(verb, 'shows', 'show', 'has', 'had', 'showed', 'saw', 'found', 'noticed'))
    ? [verb!, none!]
    : undefined;
}

/** "None.", "Not a trace.", "Faint.": how much, in answer to a question. */
function answerOf(scene: Scene): { range: [number, number]; items: Item[] } | undefined {
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

/** Conditions that matter for something seen: no window, an angle where one is named. */
function observedConditions(scene: Scene): StatedConditions {
  const conditions: StatedConditions & {
    window?: number;
    origin: Record<string, 'named' | 'carried' | 'article'>;
  } = {
    ...conditionsFor(scene, undefined),
  };
  delete conditions.window;
  const origin = { ...conditions.origin };
  delete origin.window;
  const angleSpan = scene.axes.find((axis) => axis.kind === 'angle');
  if (angleSpan?.from !== undefined && (conditions.angle === undefined || origin.angle === 'carried')) {
    conditions.angle = angleSpan.from;
    origin.angle = 'named';
  }
  const offAxis = scene.items.some(
    (entry, at) =>
      (isWord(entry, 'axis', 'centre') && isWord(scene.items[at - 1], 'off')) ||
      (isWord(entry, 'side') && isWord(scene.items[at - 1], 'the') && isWord(scene.items[at - 2], 'from')),
  );
  if (offAxis && conditions.angle === undefined)
    conditions.unmatched = 'off axis at an angle that is not stated';
  return { ...conditions, origin };
}
