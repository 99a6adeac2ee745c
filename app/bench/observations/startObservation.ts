import { create } from 'zustand';

interface ObservationDraft {
  /** Topic that the form opens with; null while no form is open */
  topic: string | null;
}

/** The observation form that is open, if any; steps of the protocol open it with their topic. */
export const useObservationDraft = create<ObservationDraft>(() => ({ topic: null }));

export function startObservation(topic: string): void {
  useObservationDraft.setState({ topic });
}
