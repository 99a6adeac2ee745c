import type { Command } from '../commands/command.ts';
import { go } from '../shell/route.ts';
import { startObservation } from './observations/startObservation.ts';

/** What can be done on a unit's notebook page by key or from the palette. */
export function benchCommands(beginRun: () => void): readonly Command[] {
  return [
    {
      id: 'bench.note-observation',
      name: 'Note an observation',
      keywords: 'banding blooming flicker severity photo',
      key: 'Alt+O',
      group: 'Bench',
      perform: () => startObservation(''),
    },
    {
      id: 'bench.begin-run',
      name: 'Begin another run',
      keywords: 'measure readings conditions',
      key: 'Alt+B',
      group: 'Bench',
      perform: () => beginRun(),
    },
    {
      id: 'bench.log-unit',
      name: 'Log a unit',
      keywords: 'new set television loan',
      group: 'Bench',
      perform: () => go('bench', ['new']),
    },
  ];
}
