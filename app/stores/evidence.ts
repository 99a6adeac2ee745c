import { create } from 'zustand';
import type { Evidence, UnitEvidence } from '../../shared/contract/evidence.ts';
import type { Fault } from '../../shared/contract/fault.ts';
import type { House } from '../../shared/contract/house.ts';
import type { ScoreSheet } from '../../shared/contract/scoreSheet.ts';
import { door } from '../door/door.ts';

interface EvidenceStore {
  evidence: Evidence | null;
  house: House | null;
  /** Null: the house has none; articles carry their own score. */
  scoreSheet: ScoreSheet | null;
  faults: readonly Fault[];
  load(): Promise<void>;
  /** Reads one unit again and leaves the others as they are, identity included. */
  reloadUnit(unit: string): Promise<void>;
  reloadHouse(): Promise<void>;
}

/** Every run and fact that verdicts rest on, cached in the window so that typing never waits for the backend. */
export const useEvidence = create<EvidenceStore>((set, get) => ({
  evidence: null,
  house: null,
  scoreSheet: null,
  faults: [],
  async load() {
    // The house's rules are small and enough to begin with; they do not wait for the evidence.
    const rules = door.ask('house.read', {});
    const reading = door.ask('evidence.read', {});
    const house = await rules;
    if (!house.ok) return set({ faults: house.faults });
    set({ ...house.value, faults: [] });
    const evidence = await reading;
    if (!evidence.ok) return set({ faults: evidence.faults });
    set({
      evidence: {
        units: new Map(evidence.value.units.map((unit) => [unit.id, unit])),
        articles: evidence.value.articles,
      },
    });
  },
  async reloadUnit(unit) {
    const reply = await door.ask('unit.read', { unit });
    const { evidence } = get();
    if (!evidence) return;
    const units = new Map<string, UnitEvidence>(evidence.units);
    if (reply.ok) units.set(unit, reply.value);
    else if (reply.faults.some((fault) => fault.code === 'not-found')) units.delete(unit);
    else return set({ faults: reply.faults });
    set({ evidence: { ...evidence, units } });
  },
  async reloadHouse() {
    const reply = await door.ask('house.read', {});
    if (reply.ok) set(reply.value);
  },
}));
