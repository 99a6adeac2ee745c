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
    'order angle.luminance {veltrane} higher ahead of orrinvale-hearth-55',
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
  [
    'The Hearth handles HDR10+, which the Plain does not.',
    'fact hdr.formats includes HDR10+',
    'not fact hdr.formats includes HDR10+ {veltrane}',
  ],
  [
    'The Plain leans blue, and its average error is lower than the Hearth’s.',
    'direction grey.tint average ≥50 ≤100 {veltrane} blue',
    'order grey.de2000 average {veltrane} lower ahead of orrinvale-hearth-55',
  ],
  [
    'On the Plain green is undersaturated by 8 % and yellow by 9 %.',
    'value sweep.green.saturation average {veltrane} = -8 [-8.5, -7.5]',
    'value sweep.yellow.saturation average {veltrane} = -9 [-9.5, -8.5]',
  ],
  [
    'The Plain manages 1,500:1, so the Hearth has almost four times its contrast.',
    'value contrast.native {veltrane} = 1500 [1462.5, 1537.5]',
    'ratio contrast.native : contrast.native {veltrane} = 4 [3.8, 4)',
  ],
  [
    'On a white field the top left corner of the Hearth is 14 % down, and on mid-grey the falloff reaches 22 %.',
    'value uniformity.white.cell at top left {level white} = -14 [-14.5, -13.5]',
    'value uniformity.grey50 {level grey50} = 22 [21.5, 22.5]',
  ],
  [
    'Blooming is visible on the Hearth. On the Umbra I saw none.',
    'observed blooming 1–3',
    'observed blooming 0–0 {nocthale}',
  ],
  ['The speakers put out 40 watts.', 'unproven'],
  [
    'After adjustment the average error has been cut in half.',
    'ratio grey.de2000 average {stage adjusted} : grey.de2000 average {stage as-delivered} = 0.5 [0.45, 0.55]',
  ],
  [
    'Banding was clearly visible as delivered, and after adjustment there is none.',
    'observed banding 2–4 {stage as-delivered}',
    'observed banding 0–0 {stage adjusted}',
  ],
  ['Red’s saturation is off by 7 %.', 'value sweep.red.saturation average = 7 [6.5, 7.5] either side'],
  [
    'The Umbra’s contrast of 6,200:1 is half as much again as the Hearth’s and five times the Plain’s.',
    'value contrast.native {nocthale} = 6200 [6150, 6250]',
    'ratio contrast.native {nocthale} : contrast.native = 1.5 [1.35, 1.65]',
    'ratio contrast.native {nocthale} : contrast.native {veltrane} = 5 [4.5, 5.5]',
  ],
  // No rivals are known here.
  ['Only the Umbra covers more than 95 % of P3.', 'unproven'],
  ['The dearest of the five is also the heaviest.', 'unproven', 'unproven'],
  ['Between the cheapest and the dearest lie £500.', 'unproven', 'unproven'],
  ['The Umbra has the best contrast, the Plain the worst.', 'order contrast.native {nocthale} higher best'],
  ['I make it a third brighter than last year’s Hearth.', 'unproven'],
  [
    'What I can say without blushing is that it is the brightest set we have tested this year.',
    'order peak max higher best in 2026',
  ],
  [
    'Saturation, averages: red 8.8 % over; green 7.6 % under; blue 9 % over.',
    'value sweep.red.saturation average = 8.8 [8.75, 8.85]',
    'value sweep.green.saturation average = -7.6 [-7.65, -7.55]',
    'value sweep.blue.saturation average = 9 [8.5, 9.5]',
  ],
  [
    'The Plain leans to red and the Hearth to blue, while the Umbra is tinted magenta.',
    'direction grey.tint average ≥50 ≤100 {veltrane} red',
    'direction grey.tint average ≥50 ≤100 blue',
    'direction grey.tint average ≥50 ≤100 {nocthale} magenta',
  ],
  [
    'The Hearth’s white field falls off by 12.1 %, and that of the Plain by 4.7 points more.',
    'value uniformity.white {level white} = 12.1 [12.05, 12.15]',
    'difference uniformity.white {level white, veltrane} : uniformity.white {level white} = 4.7 [4.65, 4.75]',
  ],
  ['The Umbra is ahead by 170 nits.', 'difference peak max {nocthale} : peak max = 170 [165.75, 174.25]'],
  ['It costs the same as the Plain.', 'order fact.price higher matches of veltrane-plain-50'],
  ['The Hearth is heavy, and I have placed all three along the same wall.'],
  ['Blooming is less visible than on the Plain.', 'unproven'],
  [
    'It is as bright as the Kasulind; it holds on to more light at 45 degrees than the Nocthale.',
    'order peak max higher matches of kasulind-vane-50',
    'order angle.luminance at 45 {angle 45} higher ahead of nocthale-umbra-55',
  ],
  [
    'It is on a par with the Plain for contrast, and it uses 20 W less than the Tamarick.',
    'order contrast.native higher matches of veltrane-plain-50',
    'difference power.calm {tamarick} : power.calm = 20 [19.5, 20.5]',
  ],
  ['The Hearth receives our award; the set does not flicker.', 'score award = true', 'observed flicker 0–0'],
  [
    'It wins on price; the Umbra has the best contrast.',
    'unproven',
    'order contrast.native {nocthale} higher best',
  ],
  [
    'The picture leans green; the Kasulind costs £949.',
    'direction grey.tint average ≥50 ≤100 green',
    'fact price = 949 {kasulind}',
  ],
  [
    'One can live with that; less easily with the Plain, whose white comes out at 7,321 K.',
    'value white.cct {veltrane} = 7321 [7320.5, 7321.5]',
  ],
];
