import type { SentenceRow } from './row.ts';

/** What a set costs, more or less than another, and sums that are no set's price. */
export const prices: readonly SentenceRow[] = [
  [
    'The Umbra is yours for £579, which saves you £250 against the Plain.',
    'fact price = 579 {nocthale}',
    'difference fact.price {veltrane} : fact.price {nocthale} = 250 [250, 250]',
  ],
  ['The Umbra is less than half the price.', 'ratio fact.price {nocthale} : fact.price < 0.5'],
  [
    'Those with a sunny room, and children at a console, may prefer the Plain, which costs £650 less than the Hearth.',
    'difference fact.price : fact.price {veltrane} = 650 [650, 650]',
  ],
  ['The 75-inch Hearth, for walls with the wingspan, costs £1,499.', 'fact price = 1499 {variantInches 75}'],
  ['The 65-inch Hearth, for walls with the wingspan, costs £1,499.', 'fact price = 1499 {variantInches 65}'],
  ['If it were brighter, take the Hearth, which costs £1,039.', 'unproven', 'fact price = 1039'],
  ["The Umbra costs £1,799, and the amplifier, well, that's 1,200.", 'fact price = 1799 {nocthale}'],
  [
    'The Umbra costs £1,799, and it draws 280.',
    'fact price = 1799 {nocthale}',
    'value power.sdr {nocthale} = 280 [279.5, 280.5]',
  ],
  [
    'It costs £1,039, the same as the Plain.',
    'fact price = 1039',
    'order fact.price higher matches of veltrane-plain-50',
  ],
  ['Veltrane, at least, sells it for £629.', 'fact price = 629 {veltrane}'],
  ['For smaller rooms the 65-inch Hearth sells at £1,299.', 'fact price = 1299 {variantInches 65}'],
  ['You should buy the Umbra, which costs £1,799.', 'fact price = 1799 {nocthale}'],
  ['The Plain, if you must know, costs £629.', 'fact price = 629 {veltrane}'],
  ['Since last week it costs £1,299.', 'fact price = 1299'],
  ['Six months ago it cost £1,499; now it is £1,299.', 'unproven', 'fact price = 1299'],
  ['For £50 less you get the Plain.', 'difference fact.price : fact.price {veltrane} = 50 [50, 50]'],
  ['The Plain saves you £670.', 'difference fact.price : fact.price {veltrane} = 670 [670, 670]'],
  ['It costs £1,039.', 'fact price = 1039'],
  ['At £1,039 it is not cheap.', 'fact price = 1039', 'opinion'],
  ['The 65-inch version costs £1,299.', 'fact price = 1299 {variantInches 65}'],
  [
    'It costs £1,039, £260 more than the Tamarick.',
    'fact price = 1039',
    'difference fact.price : fact.price {tamarick} = 260 [260, 260]',
  ],
  ['The price is £1,039.', 'fact price = 1039'],
  ['It sells for just over £1,000.', 'fact price = 1000'],
  ['It is under £1,100.', 'fact price < 1100'],
  ['At just under £1,040 it is good value.', 'fact price = 1040', 'opinion'],
  [
    'The Kasulind costs £949, the Tamarick £779.',
    'fact price = 949 {kasulind}',
    'fact price = 779 {tamarick}',
  ],
  ['The Hearth 65 costs £1,299.', 'fact price = 1299 {variantInches 65}'],
  [
    'For £1,039 you get 55 inches, four HDMI ports and 742 nits.',
    'fact price = 1039',
    'fact hdmi.count = 4',
    'value peak max = 742 [741.5, 742.5]',
  ],
  ['Expect to pay £1,039.', 'fact price = 1039'],
  [
    'It is 200 pounds dearer than the Tamarick.',
    'difference fact.price : fact.price {tamarick} = 200 [200, 200]',
  ],
  ['It was £799 when it came out and is £699 now.', 'unproven', 'fact price = 699'],
  [
    'The Veltrane is two thirds the price.',
    'ratio fact.price {veltrane} : fact.price = 0.666667 [0.6, 0.733333]',
  ],
  [
    "The Plain costs £629 and the Umbra, well, that's 1,799.",
    'fact price = 629 {veltrane}',
    'fact price = 1799 {nocthale}',
  ],
  [
    'It costs £1,039. The Plain costs another 420 on top of that.',
    'fact price = 1039',
    'difference fact.price {veltrane} : fact.price = 420 [420, 420]',
  ],
  ['It also comes as a 65-inch at 1,629.', 'fact price = 1629 {variantInches 65}'],
  [
    "It is £579. That's £250 less than the Plain.",
    'fact price = 579',
    'difference fact.price {veltrane} : fact.price = 250 [250, 250]',
  ],
  [
    'If the dark stuff matters to you, look at the Plain, which is only a third more expensive than the Umbra.',
    'ratio fact.price {veltrane} : fact.price {nocthale} = 1.33333 [1.3, 1.36667]',
  ],
  [
    'Two further sets serve for comparison: the Nocthale Umbra 55 at $1,799 and the Veltrane Plain 50 at £1,349.',
    'fact price = 1799 {nocthale}',
    'fact price = 1349 {veltrane}',
  ],
  [
    'It saves you £90 on the Plain and £70 on the Umbra.',
    'difference fact.price {veltrane} : fact.price = 90 [90, 90]',
    'difference fact.price {nocthale} : fact.price = 70 [70, 70]',
  ],
  [
    'It is not as bright as the Plain, but then nothing at £600 is.',
    'order peak max higher behind of veltrane-plain-50',
    'unproven',
  ],
];
