import type { SentenceRow } from './row.ts';

/** What a reader adds without thinking: whose number, of what, against what. */
export const leftToGuess: readonly SentenceRow[] = [
  [
    'Orrinvale says the warranty runs to three years; ours came with two.',
    'fact warranty = 36 by maker',
    'fact warranty = 24',
  ],
  [
    'The warranty is two years, where the Plain gives you one.',
    'fact warranty = 24',
    'fact warranty = 12 {veltrane}',
  ],
  [
    'Lag is 9.4 milliseconds, Orrinvale claims eight.',
    'value lag = 9.4 [9.35, 9.45]',
    'fact lag = 8 by maker',
  ],
  [
    'Peak luminance is 912 nits. Orrinvale promises 1,000.',
    'value peak max = 912 [911.5, 912.5]',
    'fact peak = 1000 by maker',
  ],
  [
    'P3 coverage in xy is 96%, exactly what Orrinvale claims.',
    'value coverage.p3.xy = 96 [95.5, 96.5]',
    'fact coverage.p3.xy = 96 by maker',
  ],
  ['By the time you hit full white the error is about six.', 'value grey.de2000 at 100 = 6 [5.5, 6.5]'],
  [
    'The Plain has the lowest average of the five, 2.2, and nothing above 5.',
    'unproven',
    'value grey.de2000 average {veltrane} = 2.2 [2.15, 2.25]',
    'bound grey.de2000 max {veltrane} <= 5',
  ],
  [
    'On a chequerboard that falls to 3,740:1, a loss most of us would take.',
    'value contrast.chequer = 3740 [3735, 3745]',
  ],
  [
    'In HDR10 it follows PQ, within 5% at every step.',
    'direction eotf.error average {signal HDR10} on-target',
    'bound eotf.error max {signal HDR10} <= 5 and eotf.error min {signal HDR10} >= -5',
  ],
  ['Adjusted, it is close to reference.', 'bound grey.de2000 average {stage adjusted} < 1.5'],
  [
    'HDR10+ comes with the Plain and the Hearth but not with the Vane.',
    'fact hdr.formats includes HDR10+ {veltrane}',
    'fact hdr.formats includes HDR10+',
    'fact hdr.formats excludes HDR10+ {kasulind}',
  ],
  [
    'The Plain costs about 20% more than the Hearth and twice as much as the Vane.',
    'ratio fact.price {veltrane} : fact.price = 1.2 [1.19, 1.21]',
    'ratio fact.price {veltrane} : fact.price {kasulind} = 2 [1.8, 2.2]',
  ],
  [
    'Green never misses its saturation target by more than three percent.',
    'bound sweep.green.saturation max <= 3 and sweep.green.saturation min >= -3',
  ],
  ['The 65-inch Hearth gets just as bright.', 'unproven'],
  [
    'On a chequerboard it manages 3,940:1, or 95% of its native contrast.',
    'value contrast.chequer = 3940 [3935, 3945]',
    'ratio contrast.chequer : contrast.native = 0.95 [0.945, 0.955]',
  ],
  [
    'After adjustment the Hearth turns the tables, with an average of 0.4.',
    'value grey.de2000 average {stage adjusted} = 0.4 [0.35, 0.45]',
  ],
  ['Sound reaches 85 dB.', 'unproven'],
  [
    'Contrast collapses from 5,240:1 to 1,310:1 when you step to the side.',
    'value contrast.native = 5240 [5235, 5245]',
    'unproven',
  ],
  ['White measures x 0.3127, y 0.3290.', 'unproven', 'unproven'],
  ['A 10 % window holds 742 nits for thirty seconds and then sags to 690.', 'unproven', 'unproven'],
  ['HDR highlights keep their detail all the way up to 1,000 nits.', 'unproven'],
  ['A full white screen cuts the peak of 742 nits to 412.', 'unproven'],
  [
    'Saturation is spot on, except for blue, which falls 6 % short.',
    'unproven',
    'value sweep.blue.saturation average = -6 [-6.5, -5.5]',
  ],
  ['The corners are 12 to 18 % dimmer.', 'unproven'],
  ['There are no more than two HDMI 2.1 ports on any of the three sets.', 'unproven'],
  [
    "We would not call the black deep: 0.08 nits against the Umbra's 0.02.",
    'value black = 0.08 [0.075, 0.085]',
    'value black {nocthale} = 0.02 [0.015, 0.025]',
  ],
  ['The children were not interested in the 5,240:1 contrast.', 'unproven'],
  [
    'The same is true of the Plain, whose error averages 3.1.',
    'value grey.de2000 average {veltrane} = 3.1 [3.05, 3.15]',
  ],
  ['Adjusting it cost 26 nits of white and cured the blue cast.', 'unproven', 'unproven'],
  [
    'White came down to 6,540 K, which is within 50 K of the target.',
    'value white.cct = 6540 [6535, 6545]',
    'unproven',
  ],
  [
    'The gamma curve, which ran at 2.27, now runs at 2.21.',
    'value gamma.average {unmatched} = 2.27 [2.265, 2.275]',
    'value gamma.average = 2.21 [2.205, 2.215]',
  ],
  ['The average error has crept up to 0.7.', 'value grey.de2000 average = 0.7 [0.65, 0.75]'],
  ['Price per inch: £12.71.', 'unproven'],
  ['No step but the last gets past 3.', 'unproven'],
  ['Every step except 100 % stays under 3.', 'unproven', 'unproven'],
  [
    'Nobody would fault the reds; the blues are 6 % pale.',
    'value sweep.blue.saturation average = -6 [-6.5, -5.5]',
  ],
  ['Sit 45 degrees off and more than half the light is gone.', 'bound angle.luminance at 45 {angle 45} < 50'],
  [
    'The Umbra has the higher native contrast. A white field falls off by 8% across the screen.',
    'order contrast.native {nocthale} higher ahead of orrinvale-hearth-55',
    'unproven',
  ],
  [
    'The curve as a whole never wanders more than 3% from BT.1886.',
    'bound eotf.error max {signal SDR} <= 3 and eotf.error min {signal SDR} >= -3',
  ],
  ['What Orrinvale leaves out is HDR10+.', 'fact hdr.formats excludes HDR10+'],
  ['Leave that window up for a couple of minutes and the figure sinks to 976.', 'unproven'],
  [
    'Should your lounge resemble a railway station, there is a 65-inch Hearth at £1,429, which weighs 31 kg.',
    'fact price = 1429 {variantInches 65}',
    'fact weight = 31 {variantInches 65}',
  ],
  [
    'Those condemned to the far end of the sofa should know that at 45 degrees the Hearth keeps 61 % of its white, the Plain 73 and the Umbra 46.',
    'value angle.luminance at 45 {angle 45} = 61 [60.5, 61.5]',
    'value angle.luminance at 45 {angle 45, veltrane} = 73 [72.5, 73.5]',
    'value angle.luminance at 45 {angle 45, nocthale} = 46 [45.5, 46.5]',
  ],
  [
    'All those zones ought to make a fine sieve, yet white titles on black bloom distractingly on the Hearth.',
    'observed blooming 3–4 {level black}',
  ],
  [
    'The Plain, whose panel might have been made for crowded rooms, keeps about three quarters at 45 degrees.',
    'value angle.luminance at 45 {angle 45, veltrane} = 75 [67.5, 82.5]',
  ],
  ['At £1,359 it stands between two televisions that could hardly be less alike.', 'fact price = 1359'],
  [
    "It's three decibels quieter than the Plain, if you can hear that sort of thing over the kettle.",
    'difference noise {veltrane} : noise = 3 [2.5, 3.5]',
  ],
  [
    'It draws 285 watts, which you will notice in the bill if not in the draught.',
    'value power.calm = 285 [284.5, 285.5]',
  ],
  [
    'While the average, at 2.6, would entitle it to be called accurate, the maximum is 4.8.',
    'value grey.de2000 average = 2.6 [2.55, 2.65]',
    'bound grey.de2000 average < 3',
    'value grey.de2000 max = 4.8 [4.75, 4.85]',
  ],
  [
    'Although its shortcomings in HDR should not be overlooked, the Hearth is awarded 7.5 out of 10.',
    'score total = 7.5 of 10',
  ],
  [
    'Although the Plain should reach 900 nits, the Hearth manages 742.',
    'unproven',
    'value peak max = 742 [741.5, 742.5]',
  ],
  ['The Hearth has a peak above 850 cd/m² and manners that I would trust.', 'bound peak max > 850'],
  ['It reaches 742 nits in a mode that nobody would use.', 'unproven'],
  [
    'The Plain looks dim and reaches 571 nits. The Kasulind is 20 % brighter than this one.',
    'opinion',
    'value peak max {veltrane} = 571 [570.5, 571.5]',
    'unproven',
  ],
  [
    'Since Orrinvale asks £1,229 for it you will probably weigh it against a pair of rivals.',
    'fact price = 1229',
  ],
  [
    'HDR10, HDR10+ and HLG are all accepted, which should spare you any argument.',
    'fact hdr.formats includes HDR10+HDR10++HLG',
  ],
  ['It might take HDR10, which would be nice.', 'unproven'],
  ['The set weighs 19.5 kg, so you will want a patient neighbour on the other end.', 'fact weight = 19.5'],
  [
    'He might have saved his breath, because the Hearth weighs 21.2 kg and was on its stand before the kettle boiled.',
    'fact weight = 21.2',
  ],
  ['Expect 742 nits in a 10 % window.', 'value peak at 10 {window 10} = 742 [741.5, 742.5]'],
  [
    'The shop wants £1,169 for her, and my mother-in-law wants to know whether that includes the wall.',
    'fact price = 1169',
  ],
  ['It does not deserve more than 7.6 out of 10.', 'unproven'],
];
