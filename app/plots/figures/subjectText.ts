import type { Run } from '../../../shared/contract/run.ts';
import type { Subject } from '../figure.ts';

/** `SDR as delivered, Calm`: a run's conditions in the order in which people name them. */
export function conditionsText(run: Run): string {
  const stage = run.stage === 'as-delivered' ? 'as delivered' : 'adjusted';
  return `${run.signal} ${stage}, ${run.mode}`;
}

/** `Orrinvale Hearth 55` */
export function unitName(subject: Pick<Subject, 'unit'>): string {
  return `${subject.unit.unit.maker} ${subject.unit.unit.model}`;
}

/** The quiet lines of a plot: its definition, and the run or runs that it is drawn from. */
export function noteText(definition: string, subjects: readonly Subject[]): { note: string; runs: string } {
  const runs = subjects.map((subject) => `${unitName(subject)}, ${conditionsText(subject.run.conditions)}`);
  return { note: definition, runs: runs.join(' against ') };
}

/**
 * Gives overlaid runs the shortest names that tell them apart: the stage when only that differs, else the model,
 * the mode, the signal, or the run's id.
 */
export function nameSubjects(pair: readonly Omit<Subject, 'label'>[]): Subject[] {
  const [first, second] = pair;
  if (!first) return [];
  const stage = (s: Omit<Subject, 'label'>) =>
    s.run.conditions.stage === 'as-delivered' ? 'as delivered' : 'adjusted';
  if (!second) return [{ ...first, label: '' }];
  const spellings: ((s: Omit<Subject, 'label'>) => string)[] = [
    (s) => (first.unit.id === second.unit.id ? '' : s.unit.unit.model),
    stage,
    (s) => s.run.conditions.mode,
    (s) => s.run.conditions.signal,
    (s) => (s.run.conditions.firmware ? `firmware ${s.run.conditions.firmware}` : ''),
    (s) => s.run.id,
  ];
  const spell = spellings.find((spelling) => spelling(first) !== '' && spelling(first) !== spelling(second));
  return pair.map((s) => ({ ...s, label: spell?.(s) ?? s.run.id }));
}
