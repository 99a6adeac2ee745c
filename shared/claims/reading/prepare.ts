import type { ReadingContext } from '../../contract/articleText.ts';
import type { AxisSpan } from './axis.ts';
import type { Carry } from './carry.ts';
import { isConditional } from './conditional.ts';
import { settleEllipsis } from './ellipticUnits.ts';
import type { Item } from './items.ts';
import { partsOf } from './leftOut.ts';
import { settleLeftOutDirections } from './leftOutDirection.ts';
import { leansOn } from './mainClause.ts';
import { meets, needBits, shows, signsOfItems } from './needs.ts';
import { sharesOf, takeShare } from './respectively.ts';
import type { Scene } from './scene.ts';
import { settleScreenShares } from './screenShare.ts';
import { settleAxes } from './settleAxes.ts';
import { settleConditions } from './settleConditions.ts';
import { settleBareSizes } from './sizes.ts';
import { markStates, partStates } from './states.ts';
import { isDistance, isFromTarget } from './toneDirection.ts';
import { toneSpans } from './toneSpans.ts';
import { unitMentions } from './unitMentions.ts';
import { settleUnit } from './units.ts';

const naming = needBits([{ kinds: ['unit', 'maker', 'rival'], words: ['ours'] }]);

function axesIn(clause: readonly Item[], axes: readonly AxisSpan[]): AxisSpan[] {
  return axes.filter((axis) => axis.items.some((item) => clause.includes(item)));
}

/** The scenes of a sentence, one a clause, with conditions and units settled, and what they hand on. */
export function scenesOf(
  tagged: readonly Item[],
  context: ReadingContext,
  carry: Carry,
  angleTalk: boolean,
): Scene[] {
  const shown = signsOfItems(tagged);
  const hasNumbers = shows(shown, 'number');
  if (hasNumbers) settleBareSizes(tagged, context);
  settleScreenShares(tagged, shown);
  const items = markStates(tagged, shown, carry);
  if (shows(shown, 'direction')) settleLeftOutDirections(items, context.house);
  const axes = hasNumbers
    ? settleAxes(items, angleTalk || items.some((item) => item.number?.dimension === 'angle'))
    : [];
  const shares = sharesOf(items, shown, context, carry);
  const scenes: Scene[] = [];
  for (const { items: clause, borrowed, problem } of partsOf(items).flatMap(partStates)) {
    const signs = signsOfItems(clause);
    const previous = leansOn(scenes, clause, items);
    const scene: Scene = {
      context,
      carry,
      sentence: items,
      items: clause,
      index: scenes.length,
      previous,
      signs,
      sentenceSigns: shown,
      axes: [...axesIn(clause, axes), ...toneSpans(clause, signs)],
      conditions: { origin: {} },
      conditionItems: new Set(),
      isCurveSignal: false,
      units: meets(signs, naming) ? unitMentions(clause, context) : [],
      unitNamed: false,
      conditional: isConditional(items, clause, signs),
      used: new Set(),
      borrowed,
      unknownMode: undefined,
      // Every member from the beginning: all scenes are of one shape to the engine.
      unit: undefined,
      unitProblem: undefined,
      group: undefined,
      share: undefined,
      concept: previous?.concept,
      hue: previous?.hue,
      gamut: previous?.gamut,
      focus: undefined,
      said: undefined,
      stat: undefined,
      now: undefined,
    };
    // "The 10 % step is too bright, by 16 %": the place was named before.
    if (previous && scene.axes.length === 0 && (isDistance(scene) || isFromTarget(scene)))
      scene.axes = previous.axes;
    settleUnit(scene);
    if (problem) scene.unitProblem = problem;
    if (shares) takeShare(scene, shares);
    settleEllipsis(scene);
    Object.assign(carry.paragraph, settleConditions(scene));
    scenes.push(scene);
  }
  return scenes;
}
