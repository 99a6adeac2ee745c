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
  const carried = { ...carriedConditions(scene.carry), ...(scene.previous ? inherit(scene.previous) : {}) };
  for (const [key, value] of Object.entries(carried)) {
    (conditions as unknown as Record<string, unknown>)[key] = value;
    origin[key] = 'carried';
  }
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

/** Angle, window, level and room last to the sentence's end; so does what an earlier clause named. */
function inherit(previous: Scene): Record<string, unknown> {
  const result: Record<string, unknown> = {};
  for (const key of [
    'stage',
    'mode',
    'signal',
    'dimming',
    'room',
    'window',
    'level',
    'angle',
    'side',
    'plane',
    'sample',
    'firmware',
  ] as const) {
    const value = (previous.now ?? previous.conditions)[key];
    if (value !== undefined) result[key] = value;
  }
  return result;
}
