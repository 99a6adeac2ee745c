import { join } from 'node:path';
import type { Fault } from '../../shared/contract/fault.ts';
import type { Dossier } from './dossier.ts';
import { placeOfPath } from './jsonNode.ts';

/** Articles that name units which neither the dossier nor the library (`known`) has, each with its place. */
export function missingUnits(dossier: Dossier, folder: string, known: ReadonlySet<string>): Fault[] {
  const units = new Set([...known, ...dossier.units.map(({ id }) => id)]);
  return dossier.articles.flatMap(({ id, document }) => {
    const file = join(folder, 'articles', `${id}.json`);
    const named: [unit: string, path: PropertyKey[]][] = [
      [document.value.unit, ['unit']],
      ...(document.value.against ?? []).map((unit, index): [string, PropertyKey[]] => [
        unit,
        ['against', index],
      ]),
    ];
    return named
      .filter(([unit]) => !units.has(unit))
      .map(
        ([unit, path]): Fault => ({
          code: 'bad-input',
          sentence: `The article names the unit "${unit}", which is not there.`,
          mend: `Add units/${unit}/unit.json, or mend the id.`,
          place: placeOfPath(document.node, path, document.source, file),
        }),
      );
  });
}
