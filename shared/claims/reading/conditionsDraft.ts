import { type Carry, carriedConditions } from './carry.ts';
import type { Item } from './items.ts';
import type { Scene } from './scene.ts';

/** The conditions of a clause while they are being settled. */
export interface ConditionsDraft {
  scene: Scene;
  conditions: Scene['conditions'];
  origin: Record<string, 'named' | 'carried' | 'article'>;
  /** What lasts beyond the sentence */
  named: Carry['paragraph'];
  /** The stage that was carried, before the clause named one */
  carriedStage: { stage: Scene['conditions']['stage']; origin: 'carried' | undefined };
  /** The stage that the clause names is of what it is compared with, and lasts no longer. */
  isOfReference: boolean;
}

/** The conditions that are carried into a clause. */
export function draftOf(scene: Scene): ConditionsDraft {
  const origin: ConditionsDraft['origin'] = {};
  const conditions: Scene['conditions'] = { origin };
  Object.assign(conditions, carriedConditions(scene.carry));
  if (scene.previous) inherit(scene.previous, conditions);
  for (const key in conditions) if (key !== 'origin') origin[key] = 'carried';
  const carriedStage = {
    stage: conditions.stage,
    origin: origin.stage === undefined ? undefined : ('carried' as const),
  };
  return { scene, conditions, origin, named: {}, carriedStage, isOfReference: false };
}

/** Takes a condition that an item of the clause names. */
export function name(
  { scene, conditions, origin }: ConditionsDraft,
  key: string,
  value: unknown,
  item: Item,
): undefined {
  (conditions as unknown as Record<string, unknown>)[key] = value;
  origin[key] = 'named';
  scene.conditionItems.add(item);
}

const inherited = [
  ...(['stage', 'mode', 'signal', 'dimming', 'room', 'window', 'level', 'angle', 'side'] as const),
  ...(['plane', 'sample', 'firmware'] as const),
];

/** Angle, window, level and room last to the sentence's end; so does what an earlier clause named. */
function inherit(previous: Scene, conditions: Scene['conditions']): undefined {
  const before = previous.now ?? previous.conditions;
  for (const key of inherited)
    if (before[key] !== undefined) (conditions as unknown as Record<string, unknown>)[key] = before[key];
}
