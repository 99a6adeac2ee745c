import type { ConditionsDraft } from './conditionsDraft.ts';
import { isWord } from './items.ts';
import { meets, needBits, shows } from './needs.ts';
import { needOf, plays } from './parts.ts';
import { earlierTime, speaksOfThePast, speaksOfUpdate, statesPresent } from './past.ts';
import { speaksOfAdjusted } from './states.ts';
import { saysWorkDone } from './workDone.ts';

function setStage({ conditions, origin }: ConditionsDraft, stage: 'adjusted' | 'as-delivered'): undefined {
  conditions.stage = stage;
  origin.stage = 'named';
}

/** Said once of the sentence: an hour with the controls, and then what came of it. */
function takeWork(draft: ConditionsDraft): undefined {
  const { scene, origin, named } = draft;
  const worked =
    scene.index === 0
      ? origin.stage === undefined && saysWorkDone(scene.sentence, scene.sentenceSigns)
      : origin.stage !== 'named' && saysWorkDone(scene.items, scene.signs);
  if (!worked) return;
  setStage(draft, 'adjusted');
  named.stage = 'adjusted';
}

/** "It used to be 3.4", "87 W, down from 94 W": of a former state, by a run of it or by none. */
function takePast(draft: ConditionsDraft, isNow: boolean, former: boolean): undefined {
  const { scene, conditions, origin } = draft;
  const before =
    scene.previous?.conditions.unmatched === earlierTime && !isNow && !statesPresent(scene.items);
  if (!former && !before && !speaksOfThePast(scene, scene.sentence)) return;
  scene.now = { ...conditions, origin: { ...origin } };
  // "I adjusted it. The average is 0.9; it used to be 3.4."
  const updated = scene.sentence.some((item) => isWord(item, 'firmware', 'update', 'patch', 'fix'));
  const delivered = origin.stage === 'named' && conditions.stage !== 'adjusted';
  if (
    (conditions.stage === 'adjusted' && !updated) ||
    (former && !delivered && speaksOfAdjusted(scene.sentence, scene.sentenceSigns, scene.carry))
  )
    setStage(draft, 'as-delivered');
  else if (!former) conditions.unmatched ??= earlierTime;
  else if (!delivered) conditions.before = true;
}

const nowadays = needBits([needOf('nowadays')]);

/** Settles of which state of the set the clause speaks: adjusted, as delivered, before an update, now. */
export function settleStage(draft: ConditionsDraft): undefined {
  const { scene, conditions, origin, carriedStage, isOfReference } = draft;
  takeWork(draft);
  const isNow = meets(scene.signs, nowadays) && scene.items.some((item) => plays(item, 'nowadays'));
  const hasNumbers = shows(scene.signs, 'number');
  const former = hasNumbers && scene.items.some(({ number }) => number?.state === 'before');
  takePast(draft, isNow, former);
  const updated = speaksOfUpdate(scene) || (scene.previous !== null && speaksOfUpdate(scene.previous));
  if (isNow && !former) delete conditions.before;
  else if (updated && !former) conditions.before = 'update';
  // "Adjustment takes the average from 3.2 to 0.5": what the change led to is the adjusted set's.
  const isAfter = !former && hasNumbers && scene.items.some(({ number }) => number?.state === 'now');
  if (
    isAfter &&
    origin.stage !== 'named' &&
    speaksOfAdjusted(scene.sentence, scene.sentenceSigns, scene.carry)
  )
    setStage(draft, 'adjusted');
  if (!isOfReference) return;
  const { stage: _stage, ...now } = conditions;
  const { stage: _origin, ...rest } = origin;
  const { stage, origin: stageOrigin } = carriedStage;
  scene.now ??= {
    ...now,
    ...(stage && { stage }),
    origin: { ...rest, ...(stageOrigin && { stage: stageOrigin }) },
  };
}
