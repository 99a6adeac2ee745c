import type { SentenceRow } from './row.ts';

/** Whose a number is: lists and replies, the other side of "against", "us", "here", "yours", other sizes. */
export const owners: readonly SentenceRow[] = [
  [
    'The Hearth opens at £1,039, the Kasulind counters with £549.',
    'fact price = 1039',
    'fact price = 549 {kasulind}',
  ],
  ['Ours is £1,039; the Kasulind, £949.', 'fact price = 1039', 'fact price = 949 {kasulind}'],
  [
    'Coverage of P3: 99.5 % (xy) for the Kasulind, 99.8 % (xy) for us.',
    'value coverage.p3.xy {kasulind} = 99.5 [99.45, 99.55]',
    'value coverage.p3.xy = 99.8 [99.75, 99.85]',
  ],
  [
    'The greyscale averages 1.2 on the Kasulind, 3.4 here.',
    'value grey.de2000 average {kasulind} = 1.2 [1.15, 1.25]',
    'value grey.de2000 average = 3.4 [3.35, 3.45]',
  ],
  [
    'The Kasulind manages 5,370:1 against 3,940:1.',
    'value contrast.native {kasulind} = 5370 [5365, 5375]',
    'value contrast.native = 3940 [3935, 3945]',
  ],
  [
    'The Kasulind manages 742 nits to our 571.',
    'value peak max {kasulind} = 742 [741.5, 742.5]',
    'value peak max = 571 [570.5, 571.5]',
  ],
  [
    'The Kasulind peaks at 742 nits versus 571 here.',
    'value peak max {kasulind} = 742 [741.5, 742.5]',
    'value peak max = 571 [570.5, 571.5]',
  ],
  // Five sets are in the library: nobody says whose the second contrast is.
  [
    'Contrast is 5,370:1 against 3,940:1.',
    'value contrast.native = 5370 [5365, 5375]',
    'value contrast.native {unmatched} = 3940 [3935, 3945]',
  ],
  [
    "It draws 201 W in HDR against the Kasulind's 140.",
    'value power.hdr-calm {signal HDR} = 201 [200.5, 201.5]',
    'value power.hdr-calm {kasulind, signal HDR} = 140 [139.5, 140.5]',
  ],
  [
    'The Kasulind reaches 731 nits; we got 742 from ours.',
    'value peak max {kasulind} = 731 [730.5, 731.5]',
    'value peak max = 742 [741.5, 742.5]',
  ],
  [
    'The Kasulind fades. To be fair, yours does not tire, with more than 99 % of its output left after two minutes.',
    'bound peak.hold max > 99',
  ],
  [
    'The Kasulind is brighter. Your white is warm.',
    'order peak max {kasulind} higher ahead of orrinvale-hearth-55',
    'direction white.cct warm',
  ],
  ['The 65 costs £1,299.', 'fact price = 1299 {variantInches 65}'],
  [
    'The 65-inch Hearth is £200 dearer than the 55.',
    'difference fact.price {variantInches 65} : fact.price = 200 [200, 200]',
  ],
  [
    'The bigger one, the 65, costs £1,299 and weighs 21 kg.',
    'fact price = 1299 {variantInches 65}',
    'fact weight = 21 {variantInches 65}',
  ],
  [
    'With the Umbra you get four HDMI inputs altogether and a refresh rate of 60 Hz.',
    'fact hdmi.count = 4 {nocthale}',
    'fact refresh = 60 {nocthale}',
  ],
  ['It rests on a single plate, 880 mm wide.', 'fact stand.width = 880'],
  ['The Plain answers a button in 12.8 ms.', 'value lag {veltrane} = 12.8 [12.75, 12.85]'],
  [
    'In ordinary television full white comes out at about 6,000 K.',
    'value white.cct {signal SDR} = 6000 [5880, 6120]',
  ],
  // Numbers of another set, of the maker or of a mount are none of this set's.
  ['A rival at £999 reaches 800 nits.', 'unproven', 'unproven'],
  ['The set is rated for 1,000 nits.', 'unproven'],
  ['You can hang it on a 300 × 300 mm mount.'],
  ['The lag rises to 24 ms outside Game mode.', 'value lag {unmatched} = 24 [23.5, 24.5]'],
  ['The blooming that we saw on the Umbra is absent here.', 'unproven'],
  ['The error at 45° stays under 3 in every hue.', 'unproven'],
  ['Last year’s model cost £1,299.', 'unproven'],
  ['The 2025 model reached 600 nits.', 'unproven'],
  ['A good set reaches 1,000 nits.', 'unproven'],
  ['HDR films are mastered at 4,000 nits.', 'unproven'],
  ['We set white to 120 nits for the test.', 'unproven'],
  ['The box weighs 23 kg.'],
  ['Our award goes to the Umbra.', 'unproven'],
  [
    'The first sample reached 700 nits, ours 742.',
    'value peak max {unmatched} = 700 [682.5, 717.5]',
    'value peak max = 742 [741.5, 742.5]',
  ],
  [
    'Blacks measure 0.04 nits. Orrinvale claims 1,000 nits and delivers: it peaks at 742 nits in a 10 % window.',
    'value black = 0.04 [0.035, 0.045]',
    'fact peak = 1000 by maker',
    'bound peak max >= 1000',
    'value peak at 10 {window 10} = 742 [741.5, 742.5]',
  ],
  [
    'Blacks measure 0.04 nits. Orrinvale promises 1,000 nits and, which is rarer than you think, we got there: 742 in a 10 % window.',
    'value black = 0.04 [0.035, 0.045]',
    'fact peak = 1000 by maker',
    'bound peak max >= 1000',
    'value peak at 10 {window 10} = 742 [741.5, 742.5]',
  ],
  [
    'Veltrane promises 95 % of P3 from the Plain, and we made it 96 %.',
    'fact coverage.p3.xy = 95 by maker {veltrane}',
    'value coverage.p3.xy {veltrane} = 96 [95.5, 96.5]',
  ],
  ['You do get a three-year warranty from Orrinvale.', 'fact warranty = 36'],
  [
    'The Plain costs £799. You do get a three-year warranty from Orrinvale.',
    'fact price = 799 {veltrane}',
    'fact warranty = 36',
  ],
  [
    "The Plain is dim. With Orrinvale's set, blue is oversaturated, with an error of 3.4 at full saturation.",
    'opinion',
    'direction sweep.blue.saturation average over',
    'value sweep.blue.de2000 at 100 = 3.4 [3.35, 3.45]',
  ],
  [
    'Veltrane promises 1,000 nits from the Plain, and we measured 742 nits.',
    'fact peak = 1000 by maker {veltrane}',
    'value peak max {veltrane} = 742 [741.5, 742.5]',
  ],
  ['It weighs 17.4 kg, against 15 kg for the Plain.', 'fact weight = 17.4', 'fact weight = 15 {veltrane}'],
  ['On my left is the Veltrane Plain 50, and you can have that one for £599.', 'fact price = 599 {veltrane}'],
  ['Here is the Plain, which costs £599.', 'fact price = 599 {veltrane}'],
  [
    'Its contrast is 5,803:1. The Plain is the tidy sibling here, averaging 1.9.',
    'value contrast.native = 5803 [5802.5, 5803.5]',
    'opinion',
    'unproven',
  ],
  ['If the wall will not stretch, a 65-inch version costs £1,399.', 'fact price = 1399 {variantInches 65}'],
  ['Orrinvale quotes a lag of 15 ms, and delivers.', 'fact lag = 15 by maker', 'bound lag <= 15'],
  ['Orrinvale quotes a lag of 15 ms, and falls short.', 'fact lag = 15 by maker', 'bound lag > 15'],
  ['Orrinvale claims 1,000 nits and delivers.', 'fact peak = 1000 by maker', 'bound peak max >= 1000'],
  ['Orrinvale claims 1,000 nits. It falls short.', 'fact peak = 1000 by maker', 'bound peak max < 1000'],
  [
    "Orrinvale quotes a lag of 15 ms. It meets the maker's figure.",
    'fact lag = 15 by maker',
    'bound lag <= 15',
  ],
  ["Orrinvale quotes a lag of 15 ms. It does not meet the maker's figure.", 'fact lag = 15 by maker'],
  [
    'Orrinvale promises 15 ms of lag, and the set delivers what Orrinvale promises.',
    'fact lag = 15 by maker',
    'bound lag <= 15',
  ],
  [
    "None of this is alarming; the Plain's greyscale error, for comparison, averages 5.3.",
    'value grey.de2000 average {veltrane} = 5.3 [5.25, 5.35]',
  ],
  [
    "The Plain shows no dirty screen. Football was another matter, because in that dark room the Hearth's dirty screen effect was distracting.",
    'observed dirty-screen 0–0 {veltrane}',
    'observed dirty-screen 3–4 {room dark}',
  ],
  [
    'The Plain costs £599. In a dark room and from dead ahead, the Hearth shows no blooming, and on the Umbra it is visible.',
    'fact price = 599 {veltrane}',
    'observed blooming 0–0 {room dark}',
    'observed blooming 1–3 {nocthale, room dark}',
  ],
  [
    'It stands between the Plain, which is £260 cheaper, and the Umbra, which is a third dearer.',
    'difference fact.price : fact.price {veltrane} = 260 [260, 260]',
    'ratio fact.price {nocthale} : fact.price = 1.33333 [1.3, 1.36667]',
  ],
  [
    "Its grey errors become visible from 60 percent up, as do the Plain's, and the Hearth's brighter half has a blue tint.",
    'onset grey.de2000 over 3 from 60 included',
    'onset grey.de2000 {veltrane} over 3 from 60 included',
    'direction grey.tint average ≥50 ≤100 blue',
  ],
  ["It's the set behind me, and it costs £679.", 'fact price = 679'],
];
