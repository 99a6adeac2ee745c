import type { SentenceRow } from './row.ts';

/** What is said of two sets or of all that are compared, and whose each number is. */
export const pairs: readonly SentenceRow[] = [
  [
    'It is brighter than the Plain, though not by much: 742 nits against 721.',
    'order peak max higher ahead of veltrane-plain-50',
    'value peak max = 742 [741.5, 742.5]',
    'value peak max {veltrane} = 721 [720.5, 721.5]',
  ],
  [
    'The Vane is the quickest of the five at 9.6 ms.',
    'order lag {kasulind} lower best',
    'value lag {kasulind} = 9.6 [9.55, 9.65]',
  ],
  [
    'Neither the Plain nor the Vane gets past 700 nits.',
    'bound peak max {veltrane} <= 700',
    'bound peak max {kasulind} <= 700',
  ],
  [
    'All five have four HDMI inputs.',
    'fact hdmi.count = 4',
    'fact hdmi.count = 4 {veltrane}',
    'fact hdmi.count = 4 {kasulind}',
    'fact hdmi.count = 4 {tamarick}',
    'fact hdmi.count = 4 {nocthale}',
  ],
  [
    'The Plain keeps more of its brightness off axis: 62 per cent at 45 degrees, against 48 here.',
    'value angle.luminance at 45 {angle 45, veltrane} = 62 [61.5, 62.5]',
    'value angle.luminance at 45 {angle 45} = 48 [47.5, 48.5]',
  ],
  ['Off axis the Vane is the better set.', 'unproven'],
  [
    'It is on a par with the Plain for contrast.',
    'order contrast.native higher matches of veltrane-plain-50',
  ],
  [
    'The Hearth meets the Plain here. There is nothing between them for input lag.',
    'order lag lower matches of veltrane-plain-50',
  ],
  ['On colour accuracy the two are level.', 'unproven'],
  [
    'Neither covers all of P3: the Hearth gets to 94 per cent, the Umbra to 97.',
    'unproven',
    'value coverage.p3.xy = 94 [93.5, 94.5]',
    'value coverage.p3.xy {nocthale} = 97 [96.5, 97.5]',
  ],
  [
    'For a quarter more money the Umbra gives you twice the contrast.',
    'ratio fact.price {nocthale} : fact.price = 1.25 [1.225, 1.275]',
    'ratio contrast.native {nocthale} : contrast.native = 2 [1.8, 2.2]',
  ],
  [
    'Both are VA panels, but the Umbra has a mini-LED backlight.',
    'fact backlight includes mini-LED {nocthale}',
  ],
  ['Blooming is less visible than on the Plain.', 'unproven', 'unproven'],
];
