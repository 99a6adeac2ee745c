import { type Findings, refuse } from '../finding.ts';
import { type Item, isOneOf, isWord } from '../items.ts';
import { changeWords } from '../lexicon/grammar.ts';
import { firstWith, type Scene } from '../scene.ts';
import { isSettled } from '../settled.ts';
import { subjectOf } from '../subject.ts';

/**
 * "The average falls from 4.1 to 0.6", "1,200:1 at 45°, down from 3,260:1": numbers of a change of which the words do
 * not say whether it is one of the set's state (`states.ts`) or one along a scale.
 */
export function readFromTo(scene: Scene, findings: Findings, numbers: readonly Item[]): undefined {
  for (const item of numbers) {
    const number = item.number!;
    const leads =
      number.rangeWord === 'from' ||
      (number.rangeWord === 'to' &&
        scene.items.some((other) => isWord(other, 'from') && other.index < item.index));
    // "Cuts the peak of 742 nits to 412": no range is told from its top.
    const descends = number.rangeWord === 'to' && number.to !== undefined && number.to.x < number.x;
    const range = number.to !== undefined && (leads || descends) && number.dimension !== 'money';
    if (!range && number.state !== 'open') continue;
    const verb =
      firstWith(scene, 'verb', 'fall', 'rise', 'cut') ??
      firstWith(scene, 'multiple') ??
      scene.items.find((entry) => isOneOf(entry, changeWords));
    if (range && !verb && !number.moves && !descends) continue;
    const subject = subjectOf(scene, number.dimension, item);
    refuse(
      findings,
      scene,
      'fromTo',
      isSettled(subject)
        ? 'the words do not say under which conditions each of the two numbers was measured'
        : subject.problem,
      [item, verb, ...(isSettled(subject) ? subject.items : [])],
    );
  }
}
