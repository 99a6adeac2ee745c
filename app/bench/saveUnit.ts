import type { Fault } from '../../shared/contract/fault.ts';
import type { Unit } from '../../shared/contract/unit.ts';
import { door } from '../door/door.ts';
import { briefNotice } from '../shell/briefNotices.ts';
import { useEvidence } from '../stores/evidence.ts';
import { useLibrary } from '../stores/library.ts';

/** One sentence for people, with the mend. */
export function faultSentence(fault: Fault): string {
  const { file, line, column } = fault.place ?? {};
  const where = [file, line, column].filter((part) => part !== undefined).join(':');
  return [where && `${where}:`, fault.sentence, fault.mend].filter(Boolean).join(' ');
}

export function tellFaults(faults: readonly Fault[]): void {
  for (const fault of faults) briefNotice(faultSentence(fault), 'fault');
}

/** Brings the window's copy of one unit up to date after this window changed it. */
export async function readAgain(unit: string): Promise<void> {
  await Promise.all([useEvidence.getState().reloadUnit(unit), useLibrary.getState().load()]);
}

/** Saves a unit's identity and facts; true when the library took it. */
export async function saveUnit(id: string, content: Unit): Promise<boolean> {
  const reply = await door.ask('unit.save', { unit: id, content });
  if (!reply.ok) {
    tellFaults(reply.faults);
    return false;
  }
  await readAgain(id);
  return true;
}
