import type { Command } from '../commands/command.ts';
import { isTourPossible, tellTour, useTour } from './tourStore.ts';

const isShown = () => isTourPossible() && useTour.getState().state !== 'ended';

/** The first steps, for the palette and the keys. */
export const tourCommands: readonly Command[] = [
  {
    id: 'tour.begin',
    name: 'First steps, from the beginning',
    keywords: 'tour tutorial learn introduction restart help',
    group: 'Window',
    when: isTourPossible,
    perform: () => tellTour({ type: 'begin' }),
  },
  {
    id: 'tour.go',
    name: 'To the line of first steps',
    keywords: 'tour focus',
    key: 'Shift+F1',
    group: 'Window',
    when: isShown,
    perform: () => document.querySelector<HTMLElement>('.tour')?.focus(),
  },
  {
    id: 'tour.end',
    name: 'End the first steps',
    keywords: 'tour stop close dismiss',
    group: 'Window',
    when: isShown,
    perform: () => tellTour({ type: 'end' }),
  },
];
