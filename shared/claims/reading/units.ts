import type { ReadingContext } from '../../contract/articleText.ts';
import { type Carry, sectionUnit } from './carry.ts';
import { creditedSet } from './creditedSet.ts';
import { isGapped } from './gapped.ts';
import { type Item, isWord, keyOf } from './items.ts';
import { meets, needBits, shows } from './needs.ts';
import type { Scene, UnitMention } from './scene.ts';
import { sizeNamed } from './sizes.ts';
import { addressesOwn, groupNamed } from './spokenOf.ts';
import { narrowed } from './unitMentions.ts';
import { splitVariant } from './variant.ts';
import { hasVerb } from './verbs.ts';
import {
  antecedentOf,
  isElliptic,
  isSamePredicate,
  startsWithVerb,
  takesUpSet,
  unnamedRelative,
  withoutOwner,
} from './whoseClause.ts';

/** The unit that "its rival" means: the one last compared with, or the only other one. */
export function rivalOf(carry: Carry, context: ReadingContext): string | undefined {
  if (carry.rival) return carry.rival;
  const others = context.units.filter((unit) => unit.id !== context.own);
  return others.length === 1 ? others[0]!.id : undefined;
}

export function resolveMention(
  mention: UnitMention,
  carry: Carry,
  context: ReadingContext,
): string | undefined {
  if (mention.id === 'rival') return rivalOf(carry, context);
  return mention.id.includes('|') ? undefined : mention.id;
}

/** Another size of a set: a unit of its own in the library, else `id@65`; the set itself where that is its size. */
export function unitOfSize(id: string, inches: number, context: ReadingContext): string {
  const named = context.units.find((unit) => unit.id === id);
  if (named?.diagonalInches === inches) return id;
  const sibling = context.units.find(
    (unit) =>
      unit.id !== id &&
      unit.maker === named?.maker &&
      unit.diagonalInches === inches &&
      unit.model.split(' ')[0] === named.model.split(' ')[0],
  );
  return sibling ? sibling.id : `${id}@${inches}`;
}

/** "The Hearth is the heaviest, the Plain (15) the lightest": what goes on behind a bracket is of the set before it. */
function setBeforeBracket({ items, sentence, context }: Scene): string | undefined {
  const first = items[0]?.index ?? 0;
  if (!isWord(sentence[first - 1], ')') || hasVerb(items)) return undefined;
  const opening = sentence.slice(0, first).findLastIndex((item) => isWord(item, '('));
  const id = keyOf(sentence[opening - 1], 'unit');
  return id === undefined ? undefined : narrowed(id, context);
}

/** "Veltrane promises 95 % of P3 from the Plain": the set of which a maker speaks, when it is not the review's own. */
function promisedSet({ units, context }: Scene): string | undefined {
  if (units.length === 0) return undefined;
  const makers = units.filter(({ role }) => role === 'maker');
  const [maker] = makers;
  if (!maker || makers.length > 1 || maker.id.includes('|') || maker.id === context.own) return undefined;
  const others = units.filter(({ role, id }) => role !== 'maker' && id !== maker.id);
  return others.length === 0 ? maker.id : undefined;
}

/** "On my left is the Plain, and you can have that one for £599": the one set that the clause before named. */
function onlySetBefore({ items, previous, carry, context }: Scene): string | undefined {
  const points = items.some(
    (item, at) => isWord(item, 'that') && isWord(items[at + 1], 'one', 'set', 'model', 'television'),
  );
  const [mention, second] = previous?.units ?? [];
  if (!points || !mention || second) return undefined;
  const id = resolveMention(mention, carry, context);
  return id === context.own ? undefined : id;
}

/** "This one runs at 120 Hz, twice what the Plain manages": a set that is named behind the pronoun is not the one it means. */
function namedBehind({ sentence }: Scene, pronoun: Item | undefined, id: string | undefined): boolean {
  return (
    pronoun !== undefined &&
    id !== undefined &&
    sentence.some((item) => item.index > pronoun.index && keyOf(item, 'unit') === id)
  );
}

/** "…, six times the Hearth's contrast": what was just stated, beside another set's. */
function isApposition({ items, units }: Scene): boolean {
  const [first] = items;
  const shares = keyOf(first, 'multiple') !== undefined || first?.number?.dimension === 'times';
  return (
    shares &&
    !hasVerb(withoutOwner(items)) &&
    units.length > 0 &&
    units.every(({ role }) => role !== 'subject')
  );
}

const across = ['across', 'over', 'around', 'of', 'off', 'in', 'on', 'from', 'to'];

const apart = 'the words say how far two sets lie apart, not what was measured';

const between = needBits([{ words: ['between'] }]);

/** "Between the Plain and the Hearth lie £120": of neither of the two. */
function isBetween({ items, units, sentence, signs }: Scene): boolean {
  if (!meets(signs, between)) return false;
  const at = items.findIndex((item) => isWord(item, 'between'));
  // "Between them lie 171 nits"
  if (at >= 0 && at <= 1 && isWord(items[at + 1], 'them', 'these') && isWord(items[at + 2], 'lie', 'lies'))
    return true;
  if (at < 0 || units.length < 2) return false;
  // "Between the other two, the Plain's average is lower than the Umbra's": the mark ends what stands between.
  const { index } = items[at]!;
  if (sentence.slice(index + 1, index + 5).some((item) => isWord(item, ','))) return false;
  const ends = units.filter(
    ({ item }) => item.index > items[at]!.index && item.index <= items[at]!.index + 6,
  );
  const stands = items.slice(at).some((item) => isWord(item, 'lie', 'lies', 'is', 'are', 'stand', 'there'));
  return ends.length === 2 && at <= 1 && stands && !items.some((item) => keyOf(item, 'superlative'));
}

/** "It is not the Hearth that hits back": of another one. */
function setDenied({ items, units }: Scene): boolean {
  return units.some(({ item }) => {
    const at = items.indexOf(item);
    const left = isWord(items[at - 1], 'the') ? at - 2 : at - 1;
    return (
      (keyOf(items[left], 'negation') === 'not' || keyOf(items[left], 'stat') === 'never') &&
      isWord(items[left - 1], 'is', 'was') &&
      keyOf(items[left - 2], 'pronoun') === 'it' &&
      isWord(items[at + 1], 'that', 'which', 'who')
    );
  });
}

/** "The cheapest of the three takes half as long again": a description stands for a set. */
function setDescribed({ items, signs }: Scene): boolean {
  if (!shows(signs, 'superlative')) return false;
  const at = items.findIndex((item) => keyOf(item, 'superlative') !== undefined);
  if (at < 1 || at > 2 || !isWord(items[at - 1], 'the') || !isWord(items[at + 1], 'of')) return false;
  const group = items
    .slice(at + 2, at + 5)
    .findIndex((item) => isWord(item, 'three', 'trio', 'lot', 'bunch') || item.number?.x === 3);
  const next = items[at + 3 + group];
  return (
    group >= 0 &&
    (['keep', 'lose', 'reach', 'cover', 'exceed', 'stay'].includes(keyOf(next, 'verb') ?? '') ||
      isWord(next, 'takes', 'took', 'needs', 'has', 'draws', 'shows', 'weighs'))
  );
}

/** The word that stands for a set. */
function pronounOf({ items, units, signs }: Scene): Item | undefined {
  if (!shows(signs, 'pronoun')) return undefined;
  return items.find(
    (item, at) =>
      keyOf(item, 'pronoun') &&
      keyOf(item, 'pronoun') !== 'rival' &&
      // "A third of ours"
      !units.some((mention) => mention.item === item) &&
      // "A white field falls off across the screen": a place, and no word for a set.
      !(/^the (?:screen|panel|picture|display|image)$/.test(item.text) && isWord(items[at - 1], ...across)),
  );
}

/** Decides whom the clause speaks of: a name, another size, a pronoun, or by ellipsis the unit before. */
export function settleUnit(scene: Scene): void {
  const { context, carry, previous } = scene;
  const subject = scene.units.find((mention) => mention.role === 'subject');
  const named = sectionUnit(carry);
  const section = named === context.own ? undefined : named;
  // "The Kasulind leans to red where the Veltrane leans to green, and its white …": whom the main clause is about.
  const main = previous && isWord(previous.items[0], 'where') ? (previous.previous ?? previous) : previous;
  const earlier = main ? main.unit : (carry.unit ?? section);
  const inSection = section !== undefined && earlier === section;
  const size = shows(scene.signs, 'number') ? sizeNamed(scene.items) : undefined;
  const pronoun = pronounOf(scene);
  const pronounKey = addressesOwn(scene) ? 'own' : keyOf(pronoun, 'pronoun');
  const antecedent = antecedentOf(scene);
  const several = groupNamed(scene);
  const promised = promisedSet(scene);
  const credited = pronounKey === 'it' ? creditedSet(scene) : undefined;
  const bracketed = subject ? undefined : setBeforeBracket(scene);
  if (isBetween(scene) || (previous?.unitProblem === apart && !subject)) {
    scene.unitNamed = true;
    scene.unitProblem = apart;
  } else if (several === 'unnamed') {
    scene.unitNamed = true;
    scene.unitProblem = 'the words speak of several sets at once and name none of them';
  } else if (several && (!subject || subject.id === 'rival')) {
    scene.unitNamed = true;
    scene.unit = several.includes(context.own) ? undefined : several[0];
  } else if (setDenied(scene)) {
    scene.unitNamed = true;
    scene.unitProblem = 'the words say which set it is not';
  } else if (!subject && setDescribed(scene)) {
    scene.unitNamed = true;
    scene.unitProblem = 'the words do not say which set that is';
  } else if (antecedent) {
    const named = resolveMention(antecedent, carry, context);
    // "The 65-inch version of the Hearth, which costs …": that size.
    const ofSize =
      previous && splitVariant(previous.unit).unit === named && splitVariant(previous.unit).inches;
    const id = ofSize ? previous.unit : named;
    scene.unitNamed = true;
    if (id === undefined) scene.unitProblem = `“${antecedent.item.text}” could be more than one set`;
    else scene.unit = id === context.own ? undefined : id;
  } else if (subject) {
    const id = resolveMention(subject, carry, context);
    scene.unitNamed = true;
    scene.conditionItems.add(subject.item);
    if (id === undefined) scene.unitProblem = `“${subject.item.text}” could be more than one set`;
    else if (id !== context.own) scene.unit = id;
    else scene.unit = undefined;
  } else if (promised !== undefined) {
    scene.unitNamed = true;
    scene.unit = promised;
  } else if (bracketed !== undefined && !bracketed.includes('|')) {
    scene.unitNamed = true;
    scene.unit = bracketed === context.own ? undefined : bracketed;
  } else if (carry.askedUnit !== undefined && scene.index === 0 && pronounKey !== 'own') {
    scene.unitNamed = true;
    scene.unit = carry.askedUnit === context.own ? undefined : carry.askedUnit;
  } else if (credited !== undefined) {
    scene.unitNamed = true;
    scene.unit = credited === context.own ? undefined : credited;
  } else if (pronounKey === 'own') {
    scene.unitNamed = true;
    scene.unit = undefined;
  } else if (pronounKey === 'it' || takesUpSet(scene)) {
    scene.unitNamed = true;
    scene.unit = namedBehind(scene, pronoun, earlier) ? undefined : (earlier ?? onlySetBefore(scene));
    if (scene.unit !== undefined && !previous && carry.unitIsOld && earlier !== undefined && !inSection)
      scene.unitProblem = 'the set was named two sentences before, and a pronoun reaches no further than one';
  } else if (inSection) {
    scene.unit = earlier;
  } else if (earlier !== undefined) {
    if (previous && !previous.unitNamed && previous.unitProblem === undefined) scene.unit = earlier;
    else if (previous) scene.unit = startsWithVerb(scene.items) ? earlier : earlier;
    else
      scene.unitProblem = 'the sentence before is about another set and this one does not say which it means';
    const goesOn =
      startsWithVerb(scene.items) ||
      isElliptic(scene.items) ||
      isSamePredicate(scene.items) ||
      isApposition(scene) ||
      // "The Vane's blues are oversaturated, with an error that averages 4.8"
      (isWord(scene.items[0], 'with') && isWord(scene.items[1], 'a', 'an', 'its')) ||
      isGapped(scene.items);
    if (previous && !goesOn)
      scene.unitProblem = 'the words before are about another set and these do not say which they mean';
  }
  if (several && several !== 'unnamed' && several.length > 1) scene.group = several;
  else if (!scene.unitNamed && previous?.group && scene.unit === previous.unit) scene.group = previous.group;
  const relative = subject || size ? undefined : unnamedRelative(scene);
  if (relative) scene.unitProblem = `“${relative.text}” could be more than one set`;
  if (size) {
    const unitId = splitVariant(scene.unit).unit ?? context.own;
    const named = context.units.find((unit) => unit.id === unitId);
    scene.conditionItems.add(size.item);
    if (named && named.diagonalInches !== size.inches) {
      scene.unit = unitOfSize(unitId, size.inches, context);
      scene.unitNamed = true;
      scene.unitProblem = undefined;
    }
  }
}
