import type { SentenceRow } from './row.ts';

/** Patches as shares of the screen, and numbers whose unit only the words around them tell. */
export const patchesAndBareNumbers: readonly SentenceRow[] = [
  [
    'HDR peak luminance: we measured 743 with a tenth of the screen lit, and 768 with one percent.',
    'value peak at 10 {window 10} = 743 [742.5, 743.5]',
    'value peak at 1 {window 1} = 768 [767.5, 768.5]',
  ],
  [
    'The peak is 742 nits in a 10% window. Whole screen? 266 nits, a third of the peak.',
    'value peak at 10 {window 10} = 742 [741.5, 742.5]',
    'value peak at 100 {window 100} = 266 [265.5, 266.5]',
    'ratio peak at 100 {window 100} : peak max = 0.333333 [0.3, 0.366667]',
  ],
  [
    'Half the screen: 487. All of it: 306.',
    'value peak at 50 {window 50} = 487 [486.5, 487.5]',
    'value peak at 100 {window 100} = 306 [305.5, 306.5]',
  ],
  [
    'At 735 nits in a 2% window and 618 in a 25% window, HDR highlights have bite.',
    'value peak at 2 {window 2} = 735 [734.5, 735.5]',
    'value peak at 25 {window 25} = 618 [617.5, 618.5]',
  ],
  ['Fill a quarter of the panel and it gives 533 nits.', 'value peak at 25 {window 25} = 533 [532.5, 533.5]'],
  [
    'With a fifth of the display in white it reaches 541 nits.',
    'value peak at 20 {window 20} = 541 [540.5, 541.5]',
  ],
  [
    "In a 10 percent window you get 742, at 25 percent it's 655, at 50 percent it's 510.",
    'value peak at 10 {window 10} = 742 [741.5, 742.5]',
    'value peak at 25 {window 25} = 655 [654.5, 655.5]',
    'value peak at 50 {window 50} = 510 [505, 515]',
  ],
  [
    "Uniformity on a white field is 5 percent, on 50 percent grey it's 9, and the dimmest spot on white is the top left corner.",
    'value uniformity.white {level white} = 5 [4.5, 5.5]',
    'value uniformity.grey50 {level grey50} = 9 [8.5, 9.5]',
    'difference uniformity.white.cell at top left {level grey50} : uniformity.white.cell min {level grey50} = 0 [0, 0]',
  ],
  [
    'The brightest cell is the bottom right corner.',
    'difference uniformity.white.cell at bottom right : uniformity.white.cell max = 0 [0, 0]',
  ],
  [
    'The darkest spot on white is a corner.',
    'difference uniformity.white.cell min corner : uniformity.white.cell min = 0 [0, 0]',
  ],
  [
    'Peak luminance rises from 412 nits full screen to 1,190 in a 10 % window.',
    'value peak at 100 {window 100} = 412 [411.5, 412.5]',
    'value peak at 10 {window 10} = 1190 [1185, 1195]',
  ],
  [
    'Shrink the window to 2% and the Hearth edges out the Plain.',
    'order peak at 2 {window 2} higher ahead of veltrane-plain-50',
  ],
  [
    'Fill the screen and it is the Plain that hits back, about 40% brighter than the Hearth.',
    'ratio peak at 100 {veltrane, window 100} : peak at 100 {window 100} = 1.4 [1.38, 1.42]',
  ],
  [
    'In a 2% window the Hearth beats the Plain.',
    'order peak at 2 {window 2} higher ahead of veltrane-plain-50',
  ],
];
