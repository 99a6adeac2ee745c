import type { BoundOp, StatedConditions } from '../../../contract/check.ts';
import { carriedConcept } from '../carry.ts';
import { type Findings, propose, refuse } from '../finding.ts';
import { type Item, isWord, keyOf, type NumberPhrase } from '../items.ts';
import { conditionsFor, operandOf } from '../operand.ts';
import { type Quantity, quantityById } from '../quantity.ts';
import type { Scene } from '../scene.ts';
import { selectorOf } from '../selector.ts';
import { isSettled, type Subject, settled } from '../settled.ts';
import { statedOf } from '../stated.ts';
import { subjectOf } from '../subject.ts';
import { resolveMention } from '../units.ts';
import { splitVariant } from '../variant.ts';
import { factConditions, opOf } from './factCheck.ts';
import { opposite } from './levelCount.ts';
import { makerKey, promisedOp, sideOf } from './makersNumber.ts';
import { readNearMiss, readShareOfPromise, readShareOfQuoted, readShortfall, shortBy } from './promise.ts';
import { saidBefore } from './saidBefore.ts';
import { isClaimOf, isPassive } from './unsignedClaim.ts';
import { readWhatIsClaimed } from './whatIsClaimed.ts';

/** "Orrinvale claims 1,000 nits", "and we got there". */
export function readMakerClaims(scene: Scene, findings: Findings): undefined {
  const saying = scene.items.find((item) => keyOf(item, 'saying') !== undefined);
  const maker = scene.units.find((mention) => mention.role === 'maker') ?? undefined;
  const makerItem =
    maker?.item ??
    scene.items.find((item) => keyOf(item, 'makerWord') !== undefined) ??
    (saying && /paper|box|sheet|specification/.test(saying.text) ? saying : undefined) ??
    promisingSet(scene, saying);
  // "the promised 1,000 nits": the participle stands for the maker.
  const participle = scene.items.find(
    (item, at) =>
      isClaimOf(scene.items, at) ||
      isPassive(scene.items, at) ||
      (keyOf(item, 'saying') !== undefined &&
        /(?:ed|quoted)$/.test(item.text) &&
        (scene.items[at + 1]?.number !== undefined ||
          // "The promised lag of 10 ms"
          (isWord(scene.items[at - 1], 'the', 'its', 'a') &&
            keyOf(scene.items[at + 1], 'concept') !== undefined &&
            isWord(scene.items[at + 2], 'of') &&
            scene.items[at + 3]?.number !== undefined))),
  );
  const figure = maker
    ? scene.items.find((item) =>
        isWord(item, 'figure', 'figures', 'number', 'claim', 'promise', 'spec', 'pledge'),
      )
    : // "The 1,000 nits of the brochure"
      scene.items.find(
        (item, at) =>
          isWord(item, 'of', 'on', 'in') &&
          keyOf(scene.items[at + 1], 'makerWord') !== undefined &&
          scene.items[at - 1]?.number !== undefined,
      );
  if ((saying ?? figure) && (makerItem ?? participle)) {
    const conditions = factConditions(scene);
    if (maker && !maker.id.includes('|') && maker.id !== scene.context.own) {
      conditions.unit = splitVariant(maker.id).unit!;
      (conditions.origin as Record<string, string>).unit = 'named';
    }
    // "…, and 14.7 ms on the Umbra; Orrinvale itself quotes 8 ms": of its own set again.
    if (maker?.id === scene.context.own && conditions.origin.unit === 'carried') {
      delete conditions.unit;
      delete (conditions.origin as Record<string, string>).unit;
    }
    const distance = shortBy(scene);
    for (const item of scene.items) {
      const number = item.number;
      if (!number || scene.used.has(item) || (number.role && number.role !== 'value')) continue;
      if (isSetAside(scene, item)) continue;
      // "The lag is 12 ms against a promise of 11 ms": what stands before was measured.
      const at = participle ? scene.items.indexOf(participle) : -1;
      if (!maker && isClaimOf(scene.items, at) && item.index < participle!.index) continue;
      if (item === distance || isWritersOwn(scene, item, makerItem) || isShareOfNumber(scene, item)) continue;
      const subject = subjectOrBefore(scene, item);
      const words = [makerItem, participle ?? saying ?? figure, item];
      const factNoun = scene.items.find((entry) => keyOf(entry, 'fact') && !scene.used.has(entry));
      const absurd = isSettled(subject) && subject.quantity.id === 'white.distance' && number.x >= 1;
      if (!isSettled(subject) || absurd || subject.quantity.id === 'fact:price') {
        if (factNoun) continue;
        // What was claimed before is not what "and delivers" answers now.
        scene.carry.claimed = undefined;
        refuse(findings, scene, 'maker', 'the words do not say what the maker’s number is of', words);
        continue;
      }
      // "A little more than the 1,000 that Nocthale advertises": the hedge is the writer's.
      const spokenFor = (participle ?? saying)?.index ?? 0;
      const quoted =
        item.index < spokenFor && number.hedge
          ? { ...number, hedge: undefined, hedgeText: undefined }
          : number;
      const stated = statedOf(quoted as NumberPhrase, subject.quantity.family);
      const unit = number.unit || subject.quantity.unit;
      propose(
        findings,
        scene,
        'maker',
        {
          kind: 'fact',
          key: makerKey(scene, subject.quantity.id, conditions.unit),
          // "short of the 1,000 nits that Orrinvale promises": the limit word is the writer's, not the maker's.
          op: writersLimit(scene, item, participle ?? saying) ? '=' : opOf(item),
          x: stated.x,
          stated,
          ...(unit && { unit }),
          by: 'maker',
          conditions,
        },
        [...words, ...subject.items],
      );
      const key = subject.quantity.id;
      scene.carry.claimed = {
        key,
        x: stated.x,
        place: stated.place ?? 1,
        unit,
        factKey: makerKey(scene, key, conditions.unit),
        ...(conditions.unit !== undefined && { of: conditions.unit }),
      };
      readShareOfQuoted(scene, findings, item, scene.carry.claimed);
      // "It covers 96 %, exactly what Nocthale claims": measured, and claimed.
      const isMeasuredToo = scene.items.some(
        (word) =>
          isWord(word, 'what', 'as', 'figure', 'number') &&
          word.index > item.index &&
          makerItem &&
          word.index < makerItem.index,
      );
      if (quoted !== number || isMeasuredToo)
        propose(
          findings,
          scene,
          'maker',
          {
            kind: 'value',
            operand: operandOf(scene, subject.quantity, selectorOf(scene, subject.quantity, 'value')),
            stated: { ...statedOf(number, subject.quantity.family), ...(unit && { unit }) },
          },
          [item, ...subject.items],
        );
      const limit = writersLimit(scene, item, participle ?? saying);
      const limitWord = scene.items.find((entry) => keyOf(entry, 'comparator') !== undefined);
      if (limit && distance) readShortfall(scene, findings, scene.carry.claimed, limit.startsWith('>'));
      else if (limit)
        propose(
          findings,
          scene,
          'maker',
          {
            kind: 'bound',
            bounds: [
              {
                operand: operandOf(
                  scene,
                  subject.quantity,
                  selectorOf(scene, subject.quantity, limit.startsWith('<') ? 'under' : 'over'),
                ),
                op: limit,
                x: stated.x,
                ...(unit && { unit }),
              },
            ],
          },
          [limitWord ?? item, ...subject.items],
        );
    }
  }
  if (
    readWhatIsClaimed(scene, findings, makerItem, saying) ||
    readNearMiss(scene, findings) ||
    readShareOfPromise(scene, findings)
  )
    return;
  const claimedBefore = scene.carry.claimed;
  const refersBack = scene.items.some((item) =>
    isWord(item, 'promise', 'claim', 'that', 'it', 'figure', 'target', 'promised', 'claimed'),
  );
  if (
    claimedBefore &&
    refersBack &&
    !scene.said &&
    scene.items.some((item) => /^(?:short|shy|comes up|short of)$/.test(item.text))
  )
    readShortfall(scene, findings, claimedBefore, false);
  // "The Hearth beats that by a third"
  const beaten = scene.items.findIndex(
    (item, at) =>
      isWord(item, 'beats', 'exceeds', 'tops', 'surpasses', 'misses') &&
      isWord(scene.items[at + 1], 'it', 'that', 'this') &&
      isWord(scene.items[at + 2], 'by'),
  );
  if (claimedBefore && !scene.said && beaten >= 0)
    readShortfall(scene, findings, claimedBefore, !isWord(scene.items[beaten], 'misses'));
  const answer =
    makerItem &&
    scene.items.find(
      (item) =>
        item.index < makerItem.index &&
        isWord(
          item,
          'meets',
          'keeps',
          'fulfils',
          'fulfills',
          'honours',
          'reaches',
          'misses',
          'exceeds',
          'beats',
          'undercuts',
        ),
    );
  if (answer && scene.carry.claimed && !scene.used.has(answer)) {
    const { key, x, unit } = scene.carry.claimed;
    const subject = subjectOf(scene, key.startsWith('peak') ? 'luminance' : undefined);
    const negated =
      isWord(answer, 'misses', 'undercuts') ||
      scene.items.some((item) => item.index < answer.index && keyOf(item, 'negation'));
    const promised = isSettled(subject) && promisedOp(subject.quantity);
    if (isSettled(subject) && promised && subject.quantity.id === key)
      propose(
        findings,
        scene,
        'maker',
        {
          kind: 'bound',
          bounds: [
            {
              operand: operandOf(
                scene,
                subject.quantity,
                selectorOf(scene, subject.quantity, sideOf(promised)),
              ),
              op: negated ? opposite[promised] : answerOp(answer, promised),
              x,
              unit,
            },
          ],
        },
        [answer],
      );
  }
  const claimed = scene.carry.claimed;
  const got = scene.items.find(
    (item) => keyOf(item, 'gotThere') !== undefined || keyOf(item, 'fellShort') !== undefined,
  );
  // "Nobody misses it": of people, and of no promise.
  const ofPeople = scene.items.some((item) =>
    isWord(item, 'nobody', 'anybody', 'anyone', 'everybody', 'everyone'),
  );
  if (!claimed || !got || ofPeople || scene.used.has(got)) return;
  const short =
    keyOf(got, 'fellShort') !== undefined ||
    scene.items.some((item) => item.index < got.index && keyOf(item, 'negation'));
  // "Orrinvale quotes 700 nits. The Plain gets there.": what one maker promises, another's set does not keep.
  const [named] = scene.units.filter(({ role }) => role === 'subject');
  const id = named && resolveMention(named, scene.carry, scene.context);
  if (named && id !== (claimed.of ?? scene.context.own))
    return refuse(findings, scene, 'maker', 'the words do not say whose promise is meant', [named.item, got]);
  // "Blacks are deep. Orrinvale claims 1,000 nits and delivers": of what was claimed, where no other thing is named.
  const isUnnamed =
    !/^(?:fact:|coverage|area)/.test(claimed.key) && !scene.items.some((item) => keyOf(item, 'concept'));
  const subject = isUnnamed ? settled(claimed.key, claimed.key, []) : subjectOf(scene, undefined);
  const quantity = isSettled(subject) && subject.quantity.id === claimed.key ? subject.quantity : undefined;
  if (!quantity)
    return refuse(findings, scene, 'maker', 'the words do not say which measurement answers the claim', [
      got,
    ]);
  const promised = promisedOp(quantity);
  propose(
    findings,
    scene,
    'maker',
    {
      kind: 'bound',
      bounds: [
        {
          operand: operandOf(
            scene,
            quantity,
            selectorOf(scene, quantity, sideOf(promised)),
            ofClaimed(scene, quantity),
          ),
          op: short ? opposite[promised] : promised,
          x: claimed.x,
          unit: claimed.unit,
        },
      ],
    },
    [got],
  );
}

/** "2 ms quicker than Orrinvale says": how far apart, and not what the maker says. */
function isSetAside({ items }: Scene, number: Item): boolean {
  const at = items.indexOf(number);
  return (
    keyOf(items[at + 1], 'comparative') !== undefined &&
    items.slice(at + 2, at + 5).some((item) => isWord(item, 'than'))
  );
}

/** "74 % of the 1,000 nits that Orrinvale promises" */
function isShareOfNumber({ items }: Scene, item: Item): boolean {
  const at = items.indexOf(item);
  const number = isWord(items[at + 2], 'the') ? items[at + 3] : items[at + 2];
  return item.number!.dimension === 'percent' && isWord(items[at + 1], 'of') && number?.number !== undefined;
}

/** "It reaches 742 nits when the maker promises 900": what stands before the joiner was measured. */
function isWritersOwn({ items }: Scene, number: Item, maker: Item | undefined): boolean {
  return (
    maker !== undefined &&
    number.index < maker.index &&
    items.some(
      (item) =>
        item.index > number.index &&
        item.index < maker.index &&
        isWord(item, 'when', 'where', 'while', 'though', 'although', 'but'),
    )
  );
}

/** "Exceeds the maker's figure" is over it, "beats" it better than it; "meets" it keeps it. */
function answerOp(answer: Item, promised: '<=' | '>='): BoundOp {
  if (isWord(answer, 'exceeds')) return '>';
  if (isWord(answer, 'beats')) return promised === '<=' ? '<' : '>';
  return promised;
}

/** "Lag is 9.4 ms, Nocthale claims eight": a bare number is of what was stated just before, in its unit. */
function subjectOrBefore(scene: Scene, item: Item): Subject {
  const number = item.number!;
  const subject = subjectOf(scene, number.dimension, item);
  if (isSettled(subject) || number.dimension !== '' || scene.items.some((word) => keyOf(word, 'fact')))
    return subject;
  const spoken = carriedConcept(scene.carry);
  const isLight = ['peak', 'luminance', 'sustained'].includes(spoken ?? '') && number.x >= 100;
  const said = saidBefore(scene) ?? (isLight ? quantityById('peak') : undefined);
  if (!said || said.id.startsWith('fact:') || said.dimension === '') return subject;
  Object.assign(number, { dimension: said.dimension, unit: said.unit });
  return settled(said.id, '', []);
}

/** "Veltrane claims 1,000 nits for the Plain and delivers": measured on the set that was promised. */
function ofClaimed(scene: Scene, quantity: Quantity): StatedConditions {
  const conditions = conditionsFor(scene, quantity);
  const of = scene.carry.claimed?.of;
  if (of === undefined || scene.unit !== undefined || scene.unitNamed) return conditions;
  return { ...conditions, unit: of, origin: { ...conditions.origin, unit: 'carried' } };
}

/** "The Forge promises 750 nits": a set that promises stands for its maker. */
function promisingSet(scene: Scene, saying: Item | undefined): Item | undefined {
  if (!saying) return undefined;
  // "It promises 1,600 nits, too": the maker that was quoted just before, or the set for it.
  const before = scene.items[scene.items.indexOf(saying) - 1];
  if (isWord(before, 'it', 'they') && /^(?:promise[sd]|claim(?:s|ed)|advertise[sd])$/.test(saying.text))
    return before;
  if (!/^(?:promises|claims|advertises|touts|boasts)$/.test(saying.text)) return undefined;
  return scene.units.find(({ role, item }) => role === 'subject' && item.index === saying.index - 1)?.item;
}

/** The limit that the writer puts before the maker's number; what stands behind "claims" is the maker's own. */
function writersLimit(scene: Scene, number: Item, saying: Item | undefined): BoundOp | undefined {
  if (!saying) return undefined;
  const own = opOf(number);
  if (number.index < saying.index) return own === '=' ? undefined : own;
  const word = scene.items.find(
    (item) => item.index < saying.index && keyOf(item, 'comparator') !== undefined,
  );
  return word && (keyOf(word, 'comparator') as BoundOp);
}
