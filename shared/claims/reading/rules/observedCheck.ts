import type { StatedConditions } from '../../../contract/check.ts';
import { type Findings, propose } from '../finding.ts';
import { type Item, isWord } from '../items.ts';
import { conditionsFor } from '../operand.ts';
import type { Scene } from '../scene.ts';

/** States that this much was seen of a topic, under the conditions of the clause; severities 0 to 4. */
export function proposeSeen(
  scene: Scene,
  findings: Findings,
  topic: string,
  severity: readonly [number, number],
  words: readonly (Item | undefined)[],
): undefined {
  propose(
    findings,
    scene,
    'observed',
    { kind: 'observed', topic, severity, conditions: observedConditions(scene) },
    words,
  );
}

/** "… was faint on the Tamarick": the set that stands right behind how much is seen. */
export function setBeside({ items, units }: Scene, severity: readonly Item[]): Item | undefined {
  const end = Math.max(...severity.map(({ index }) => index));
  const beside = units.find(({ item }) => item.index > end && item.index <= end + 3)?.item;
  return beside &&
    isWord(items[items.indexOf(beside) - (isWord(items[items.indexOf(beside) - 1], 'the') ? 2 : 1)], 'on')
    ? beside
    : undefined;
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
      (isWord(entry, 'side') && isWord(scene.items[at - 1], 'the') && isWord(scene.items[at - 2], 'from')) ||
      (isWord(entry, 'angle') &&
        isWord(scene.items[at - 1], 'an') &&
        isWord(scene.items[at - 2], 'from', 'at')),
  );
  // "Visible on axis and distracting from the side": what was said before is of another place.
  if (offAxis && (conditions.angle === undefined || origin.angle === 'carried' || !angleSpan)) {
    delete conditions.angle;
    delete origin.angle;
    conditions.unmatched = 'off axis at an angle that is not stated';
  }
  return { ...conditions, origin };
}
