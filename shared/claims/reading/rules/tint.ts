import type { DirectionCheck, Selector } from '../../../contract/check.ts';
import { carriedConcept } from '../carry.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { hueSaidOfGrey } from '../hueSaid.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { isOffAxis } from '../offAxis.ts';
import { leansAsBefore } from '../ownStatement.ts';
import { plays } from '../parts.ts';
import { saidOf } from '../retarget.ts';
import { firstWith, type Scene } from '../scene.ts';
import { resolveMention } from '../units.ts';
import { hasVerb } from '../verbs.ts';
import { emit, negationBefore, region } from './directionCheck.ts';

/** "The Sedge leans to red and the Mallow to blue": what was said of the greys of one set, of another. */
function readLeanAsBefore(scene: Scene, findings: Findings): undefined {
  if (!leansAsBefore(scene.items)) return;
  const { statement } = scene.carry;
  const before =
    scene.previous?.said?.findLast((check) => check.kind === 'direction') ??
    (scene.previous === null && statement && !statement.asked ? statement.check : undefined);
  if (before?.kind !== 'direction' || before.operand.type !== 'quantity' || before.operand.id !== 'grey.tint')
    return;
  const mention = scene.units[0];
  const id = mention ? resolveMention(mention, scene.carry, scene.context) : scene.context.own;
  const said = id === undefined ? undefined : saidOf(before, id, scene.context.own);
  const hue = scene.items.find((item) => keyOf(item, 'hue') !== undefined)!;
  if (said?.kind !== 'direction') return;
  const { size: _size, negated: _negated, ...rest } = said;
  const at = scene.items.indexOf(hue);
  const size = keyOf(scene.items[at - 1], 'intensity') as DirectionCheck['size'] | undefined;
  propose(findings, scene, 'direction', { ...rest, name: keyOf(hue, 'hue')!, ...(size && { size }) }, [
    mention?.item,
    scene.items[at - 1],
    hue,
  ]);
}

/** "The Sable 55 is bright, quick and slightly green": so much of a hue, said of a set, is its greys'. */
function hueSaidOfSet({ items, units }: Scene, item: Item): { hue: string; words: Item[] } | undefined {
  const hue = keyOf(item, 'hue');
  const at = items.indexOf(item);
  const size = items[at - 1];
  const [subject] = units.filter(({ role }) => role === 'subject');
  if (hue === undefined || keyOf(size, 'intensity') === undefined || !subject) return undefined;
  const next = items[at + 1];
  if (next && next.type !== 'mark' && next.index === item.index + 1 && !isWord(next, 'and', 'but'))
    return undefined;
  const from = items.indexOf(subject.item) + 1;
  const list = items.slice(from + 1, at - 1);
  const isList = list.every(
    (word) => isWord(word, 'and', 'but') || (keyOf(word, 'opinion') ?? keyOf(word, 'equative')) !== undefined,
  );
  return isWord(items[from], 'is', 'looks', 'was') && isList
    ? { hue, words: [subject.item, size!] }
    : undefined;
}

const ofGreys = new Set(['greyError', 'tint', 'whitePoint', 'grey']);

/** "As for the tint, up to 40 % it is a mild blue", "the ramp? It's obviously blue": of the greys that are spoken of. */
function hueSaidOfTopic(scene: Scene, item: Item): { hue: string; words: Item[] } | undefined {
  const { items } = scene;
  const hue = keyOf(item, 'hue');
  const at = items.indexOf(item);
  const size = items[at - 1];
  if (hue === undefined || keyOf(size, 'intensity') === undefined) return undefined;
  const next = items[at + 1];
  const ends = !next || next.type === 'mark' || next.index > item.index + 1;
  if (!ends && !isWord(next, 'and', 'but', 'from', 'at', 'in', 'here')) return undefined;
  const lead = items.slice(Math.max(0, at - 4), at - 1);
  const said = scene.previous?.said?.at(-1);
  const goesOn =
    said?.kind === 'direction' && said.operand.type === 'quantity' && said.operand.id === 'grey.tint';
  const isIt = lead.some((word) => keyOf(word, 'pronoun') === 'it');
  const named = items.find((word) => keyOf(word, 'concept') !== undefined);
  const spoken = keyOf(named, 'concept') ?? scene.concept ?? carriedConcept(scene.carry);
  const other = items.some(
    (word) => keyOf(word, 'concept') !== undefined && !ofGreys.has(keyOf(word, 'concept')!),
  );
  return (isIt || (goesOn && isWord(lead.at(-1), 'a', 'an'))) &&
    !other &&
    (goesOn || ofGreys.has(spoken ?? ''))
    ? { hue, words: [size!] }
    : undefined;
}

/** "Skin tones lean green": a picture of things may be coloured where the greys are not. */
const filmedThings =
  /^(?:skin|skins|skin tones?|flesh|flesh tones?|faces?|complexions?|cheeks?|grass|lawns?|pitch|pitches|snow|sky|skies|clouds?|hair|sea|leaves|foliage|actors?|actresses|logos?|stands?|bezels?|frames?)$/;

/** Tints of the greyscale: "brighter greys take on a faint green cast", "whites lean towards yellow". */
export function readTints(scene: Scene, findings: Findings): undefined {
  readLeanAsBefore(scene, findings);
  for (const item of scene.items) {
    if (scene.used.has(item)) continue;
    let name = keyOf(item, 'tint');
    const words: (Item | undefined)[] = [];
    const lean = keyOf(item, 'lean');
    const at = scene.items.indexOf(item);
    // "Greys are not tinted green" denies the hue, and not every tint.
    const hueDenied = isWord(item, 'not tinted') ? scene.items[at + 1] : undefined;
    if (keyOf(hueDenied, 'hue') !== undefined) {
      refuse(findings, scene, 'direction', 'the words leave open what is denied', [item, hueDenied]);
      continue;
    }
    if (!name && lean) {
      let next = at + 1;
      while (
        plays(scene.items[next], 'leading') ||
        keyOf(scene.items[next], 'intensity') ||
        // "Leans the other way, towards yellow"
        keyOf(scene.items[next], 'idiom') ||
        isWord(scene.items[next], 'to', 'towards', 'toward')
      )
        next += 1;
      const target = scene.items[next];
      name =
        keyOf(target, 'hue') ??
        (isWord(target, 'pink', 'purple') ? 'magenta' : undefined) ??
        (keyOf(target, 'tint') as string | undefined);
      if (!name) continue;
      const subjectHue = scene.items
        .slice(0, at)
        .find((entry) => keyOf(entry, 'hue') && entry.type === 'phrase');
      // "Green is undersaturated; its hue leans towards cyan"
      const taken = subjectHue ? undefined : firstWith(scene, 'concept', 'hueError');
      if (taken && taken.index < item.index && scene.hue === undefined) continue;
      if (taken && taken.index < item.index) {
        emit(scene, findings, `sweep.${scene.hue}.hue`, name, { ...region(scene, {}) }, item, [
          target,
          taken,
        ]);
        scene.used.add(target!);
        continue;
      }
      if (subjectHue) {
        emit(scene, findings, `sweep.${keyOf(subjectHue, 'hue')}.hue`, name, { ...region(scene, {}) }, item, [
          target,
          subjectHue,
        ]);
        scene.used.add(target!);
        continue;
      }
      // "A hint of red" may be said of anything: only of greys it is a tint.
      if (/\b(?:hint|trace|touch|suggestion|whisper|tinge|dash) of$/.test(item.text)) {
        const greys = scene.items.find((entry) => keyOf(entry, 'tone') || plays(entry, 'greys'));
        // "Whites, greys and a dash of blue" heads what is to come.
        if (!greys || (/^a dash/.test(item.text) && !hasVerb(scene.items))) continue;
        words.push(greys);
      }
      words.push(target);
    }
    const ofSet = name ? undefined : (hueSaidOfSet(scene, item) ?? hueSaidOfTopic(scene, item));
    if (ofSet) {
      name = ofSet.hue;
      words.push(...ofSet.words);
    }
    const whole = name ? undefined : hueSaidOfGrey(scene.items, item);
    if (whole) {
      name = whole.hue;
      words.push(whole.subject);
    }
    if (!name) {
      // "a green, clearly visible cast": the hue stands apart from its noun.
      if (keyOf(item, 'concept') !== 'tint') continue;
      // "What cast the Orrinvale has is a slight one towards magenta"
      // "The cast it leaves is a mild blue"
      const next = scene.items[at + 1];
      const isRelative = isWord(next, 'that', 'which') || keyOf(next, 'pronoun') === 'it';
      const far = isWord(scene.items[at - 1], 'what') ? 14 : isRelative ? 8 : 5;
      const hue = scene.items.slice(Math.max(0, at - 4), at + far).find((entry) => keyOf(entry, 'hue'));
      if (!hue) {
        // "Of the tint nothing remains"
        const remains = scene.items.find(
          (entry, place) =>
            isWord(entry, 'nothing', 'little', 'none') &&
            isWord(scene.items[place + 1], 'remains', 'remained', 'left', 'is', 'survives'),
        );
        const negation =
          negationBefore(scene, item) ?? (isWord(remains, 'nothing', 'none') ? remains : undefined);
        if (negation) name = 'none';
        else continue;
        words.push(negation);
        scene.used.add(negation);
      } else {
        name = keyOf(hue, 'hue')!;
        // "The tint leans towards yellow": one statement.
        words.push(
          hue,
          scene.items.slice(at, scene.items.indexOf(hue)).find((entry) => keyOf(entry, 'lean')),
        );
      }
    }
    // "Greenish snow": of what was filmed.
    const noun = scene.items[at + 1];
    const subjectBefore = scene.items
      .slice(0, at)
      .some(
        (entry) => keyOf(entry, 'tone') || plays(entry, 'greys') || keyOf(entry, 'concept') !== undefined,
      );
    if (
      /ish$/.test(item.text) &&
      !subjectBefore &&
      noun?.type === 'word' &&
      noun.meanings.length === 0 &&
      !isWord(noun, 'cast', 'tinge', 'hue', 'shade', 'and', 'in', 'from', 'at', 'on', 'but')
    )
      continue;
    if (name === 'tinted') {
      // "Has a tint towards blue"
      const leads = isWord(scene.items[at + 1], 'towards', 'toward', 'to', 'of') ? at + 2 : at + 1;
      const hue = scene.items[leads];
      if (keyOf(hue, 'hue')) {
        name = keyOf(hue, 'hue')!;
        words.push(hue);
      }
    }
    const gone = scene.items.find(
      (entry) => entry.index > item.index && (/\bgone$/.test(entry.text) || plays(entry, 'vanishing')),
    );
    if (gone && name !== 'none') {
      name = 'none';
      words.push(gone);
    }
    if ((gone ?? (/\bgone$/.test(item.text) || undefined)) && scene.conditions.stage === undefined) {
      refuse(findings, scene, 'direction', 'the words do not say after what it was gone', [item, ...words]);
      continue;
    }
    // "Clean up to 60 %, then bluish": behind where the stretch ends.
    const then = scene.items.find((entry) => entry.index < item.index && isWord(entry, 'then', 'thereafter'));
    if (then && scene.axes.some((axis) => axis.items.every((entry) => entry.index < then.index))) {
      refuse(findings, scene, 'direction', 'the words do not say from which level on', [
        then,
        item,
        ...words,
      ]);
      continue;
    }
    // "A mild blue below 40 % and neutral above": past where the stretch ends.
    const next = scene.items[at + 1];
    if (isWord(next, 'above', 'below', 'beyond', 'thereafter') && !scene.items[at + 2]?.number) {
      refuse(findings, scene, 'direction', 'the words do not say from which level on', [
        item,
        next,
        ...words,
      ]);
      continue;
    }
    // "The adjustment cured the blue cast"
    const cured = scene.items.find(
      (entry) =>
        entry.index < item.index &&
        /^(?:cured?|cures|removed?|removes|fixed|fixes|corrected|corrects|eliminated|eliminates|banished|neutrali[sz]ed)$/.test(
          entry.text,
        ),
    );
    if (cured) {
      refuse(findings, scene, 'direction', 'the words say what was mended, not what is left', [
        cured,
        item,
        ...words,
      ]);
      continue;
    }
    if (isOffAxis(scene)) {
      refuse(findings, scene, 'direction', 'tints are measured from the front only', [item, ...words]);
      continue;
    }
    const subject = scene.items.find(
      (entry) =>
        entry.index < item.index &&
        (keyOf(entry, 'tone') ||
          keyOf(entry, 'concept') === 'greyError' ||
          keyOf(entry, 'concept') === 'whitePoint' ||
          plays(entry, 'greys')),
    );
    const filmed = scene.items.find((entry) => entry.index < item.index && filmedThings.test(entry.text));
    if (filmed && !subject && name !== 'none') {
      const why = 'the words speak of what was filmed, and only greys were measured';
      refuse(findings, scene, 'direction', why, [filmed, item, ...words]);
      continue;
    }
    if (name === 'none' && item.text === 'neutral' && (!subject || isWord(scene.items[at - 1], 'from', 'to')))
      continue;
    const onlyWhite = keyOf(subject, 'concept') === 'whitePoint' && !keyOf(subject, 'tone');
    const selector: Selector = onlyWhite ? { stat: 'at', at: 100 } : region(scene, { from: 50, to: 100 });
    emit(scene, findings, 'grey.tint', name, selector, item, [...words, subject]);
  }
}
