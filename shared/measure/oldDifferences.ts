import { cie94 } from '../colour/cie94.ts';
import { deltaE76 } from '../colour/deltaE76.ts';
import type { Lab } from '../colour/lab.ts';
import { type Item, type Outcome, planOf } from './plan.ts';
import type { World } from './points.ts';
import type { PreparedRun } from './prepare.ts';

/**
 * The same comparison in the formulas of older records: `<stem>.de76` (ΔE*ab) and `<stem>.de94` (CIE94, graphic
 * arts, target as reference). They are for comparing with such records only.
 */
export function oldDifferencePlans(
  run: PreparedRun,
  stem: string,
  items: readonly Item[],
  labs: (world: World, i: number) => readonly [reading: Lab, target: Lab],
  notes: readonly string[],
  otherwise: string,
): Outcome[] {
  const common = { items, uses: 'both', law: 'magnitude', notes, otherwise } as const;
  return [
    planOf(run, {
      ...common,
      id: `${stem}.de76`,
      value: (w, i) => {
        const [reading, target] = labs(w, i);
        return deltaE76(reading, target);
      },
    }),
    planOf(run, {
      ...common,
      id: `${stem}.de94`,
      value: (w, i) => {
        const [reading, target] = labs(w, i);
        return cie94(target, reading);
      },
    }),
  ];
}
