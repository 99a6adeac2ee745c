import { type DoorEvent, door, type Workbench } from '../shared/contract/door.ts';
import type { Fault } from '../shared/contract/fault.ts';
import type { Library } from './library/library.ts';
import { createAnswers } from './workbench/answers.ts';
import { Jobs } from './workbench/jobs.ts';

/**
 * The backend behind the door: parses every request, answers it from the library, and tells every window what
 * changed. Whatever a request causes comes back as a value; a mistake of ours comes back as `internal`.
 */
export function createWorkbench(library: Library): Workbench {
  const listeners = new Set<(event: DoorEvent) => void>();
  const publish = (event: DoorEvent): void => {
    for (const listener of listeners) listener(event);
  };
  const jobs = new Jobs(publish);
  const answers = createAnswers(library, jobs, publish);

  return {
    async answer(name, input) {
      if (!Object.hasOwn(door, name))
        return refuse({ code: 'bad-input', sentence: `There is no request "${String(name)}".` });
      const parsed = door[name].input.safeParse(input);
      if (!parsed.success)
        return refuse(
          ...parsed.error.issues.map(
            (issue): Fault => ({
              code: 'bad-input',
              sentence: `${name}: ${issue.path.map(String).join('.') || 'the request'}: ${issue.message}.`,
            }),
          ),
        );
      try {
        const answer = answers[name] as (input: unknown) => ReturnType<(typeof answers)[typeof name]>;
        return (await answer(parsed.data)) as Awaited<ReturnType<Workbench['answer']>> as never;
      } catch (error) {
        return refuse({ code: 'internal', sentence: `Something went wrong here: ${messageOf(error)}.` });
      }
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
      };
    },
    async close() {
      await jobs.cancelAll();
      listeners.clear();
      await library.close();
    },
  };
}

function refuse(...faults: Fault[]): { ok: false; faults: Fault[] } {
  return { ok: false, faults };
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
