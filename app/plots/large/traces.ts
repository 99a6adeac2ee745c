import type { Figure } from '../figure.ts';
import type { InkColours } from '../inkColours.ts';
import { gridTraces } from './grid.ts';
import type { LargeDrawing } from './layout.ts';
import { levelsTraces } from './levels.ts';
import { patchesTraces } from './patches.ts';
import { planeTraces } from './plane.ts';

/** A figure for the large plot: the same numbers, marks and titles, with `customdata` naming each mark's spot. */
export function largeTraces(figure: Figure, ink: InkColours): LargeDrawing {
  switch (figure.form) {
    case 'levels':
      return levelsTraces(figure, ink);
    case 'plane':
      return planeTraces(figure, ink);
    case 'patches':
      return patchesTraces(figure, ink);
    case 'grid':
      return gridTraces(figure, ink);
  }
}
