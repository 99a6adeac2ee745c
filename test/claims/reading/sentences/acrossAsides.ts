import type { SentenceRow } from './row.ts';

/** A subject and its verb with an aside between them, or a relative clause that says nothing of the set. */
export const acrossAsides: readonly SentenceRow[] = [
  [
    'At 20 kg it wants help on the stairs, though the stand – a sober affair, thank heaven – needs just 464 mm of shelf.',
    'fact weight = 20',
    'fact stand.width = 464',
  ],
  ['The stand – a sober affair, thank heaven – needs 464 mm of shelf.', 'fact stand.width = 464'],
  [
    'Blue (it is always blue, in this house) is over-saturated.',
    'direction sweep.blue.saturation average over',
  ],
  [
    'Gamma, the recipe that decides how fast dark turns to light, averages 2.36 out of the box.',
    'value gamma.average {stage as-delivered} = 2.36 [2.355, 2.365]',
  ],
  [
    'Clouding is visible on an empty screen, and the dirty-screen effect, which so loves a football pitch, is obvious.',
    'observed clouding 1–3',
    'observed dirty-screen 2–4',
  ],
  ['The dirty-screen effect, which so loves a football pitch, is obvious.', 'observed dirty-screen 2–4'],
  [
    "In a dark room, I saw no blooming around white text, whereas the Plain's blooming, from straight ahead, was distracting.",
    'observed blooming 0–0 {room dark}',
    'observed blooming 3–4 {angle 0, room dark, veltrane}',
  ],
  [
    'The cast it leaves is a mild blue, like skimmed milk, or a moderate politician.',
    'direction grey.tint average ≥50 ≤100 blue mild',
  ],
  [
    'Its greyscale error averages 0.9 and exceeds 1 from 50 % upwards, and the cast, though blue again, is slight.',
    'value grey.de2000 average = 0.9 [0.85, 0.95]',
    'onset grey.de2000 over 1 from 50 included',
    'direction grey.tint average ≥50 ≤100 blue slight',
  ],
  [
    'Contrast, the thing that most people see first, is 3,260:1.',
    'value contrast.native = 3260 [3255, 3265]',
  ],
  ['The peak, and this is what I came for, is 742 nits.', 'value peak max = 742 [741.5, 742.5]'],
  ['The lag (a nuisance for some) is 9.6 ms.', 'value lag = 9.6 [9.55, 9.65]'],
  [
    "The Hearth's average error, once you have let it warm up for an hour, is 1.4.",
    'value grey.de2000 average = 1.4 [1.35, 1.45]',
  ],
  ['Its price, as you may have seen, is £839.', 'fact price = 839'],
  ['Its weight – I asked a friend to help – is 17 kg.', 'fact weight = 17'],
  [
    'Its gamma averages 2.20, and the Plain’s, at 2.38, is written for people who draw the curtains.',
    'value gamma.average = 2.2 [2.195, 2.205]',
    'value gamma.average {veltrane} = 2.38 [2.375, 2.385]',
  ],
  [
    'Its contrast is 1,095:1, which the chequerboard (that cruel game) reduces to 822:1.',
    'value contrast.native = 1095 [1094.5, 1095.5]',
    'value contrast.chequer = 822 [821.5, 822.5]',
  ],
  [
    'The Plain has four HDMI sockets and, I regret to say, costs £20 more.',
    'fact hdmi.count = 4 {veltrane}',
    'difference fact.price {veltrane} : fact.price = 20 [20, 20]',
  ],
  [
    'The 65-inch Hearth offers the same four HDMI sockets and, by a joke that only a pricing department could tell, costs £20 more.',
    'fact hdmi.count = 4 {variantInches 65}',
    'fact hdmi.count = 4',
    'difference fact.price {variantInches 65} : fact.price = 20 [20, 20]',
  ],
];
