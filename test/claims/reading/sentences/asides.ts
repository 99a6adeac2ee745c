import type { SentenceRow } from './row.ts';

/** Numbers that lean on their neighbours or on a word in passing for what they are of. */
export const asides: readonly SentenceRow[] = [
  ['Only the two brightest steps are over the threshold.', 'unproven', 'unproven'],
  [
    'The error climbs steadily, and by 80 per cent it stands at 5.2.',
    'value grey.de2000 at 80 = 5.2 [5.15, 5.25]',
  ],
  [
    'White measures 7,150 kelvin, some 650 above the target.',
    'value white.cct = 7150 [7145, 7155]',
    'unproven',
  ],
  ['There is a trace of magenta in the mid-tones.', 'direction grey.tint average ≥30 ≤70 magenta slight'],
  [
    'Shadows come out a shade too dark, by about 12 per cent at 10 per cent signal.',
    'direction eotf.error average ≥5 ≤30 under slight',
    'value eotf.error at 10 = -12 [-12.6, -11.4]',
  ],
  [
    'It covers 94 per cent of P3 in xy, and 96 in u′v′.',
    'value coverage.p3.xy = 94 [93.5, 94.5]',
    'value coverage.p3.uv = 96 [95.5, 96.5]',
  ],
  [
    'P3 coverage is 94 per cent by xy, BT.2020 71.',
    'value coverage.p3.xy = 94 [93.5, 94.5]',
    'value coverage.bt2020.xy = 71 [70.5, 71.5]',
  ],
  [
    'Red and blue both sit within 5 per cent of target.',
    'bound sweep.red.saturation max <= 5 and sweep.red.saturation min >= -5 and sweep.blue.saturation max <= 5 and sweep.blue.saturation min >= -5',
  ],
  ['The full-screen figure is barely half of that.', 'unproven'],
  ['At 45 degrees colours have shifted by 3.8.', 'value angle.de2000 at 45 {angle 45} = 3.8 [3.75, 3.85]'],
  ['In the Game mode it answers in 11.2 ms.', 'value lag {mode Game} = 11.2 [11.15, 11.25]'],
  [
    'It draws 98 watts on our SDR clip, and 0.4 on standby.',
    'value power.calm {signal SDR} = 98 [97.5, 98.5]',
    'value standby = 0.4 [0.35, 0.45]',
  ],
  ['It is 52 mm deep, 1,230 wide and 710 tall.', 'fact depth = 52', 'fact width = 1230', 'fact height = 710'],
  ['Picture gets an 8, value a 7.', 'score picture = 8', 'score value = 7'],
  [
    'Grey errors averaged 3.8 (anything under 3 is invisible).',
    'value grey.de2000 average = 3.8 [3.75, 3.85]',
    'unproven',
  ],
  ['Input lag is a snappy 11.2 ms in Game mode (60 Hz).', 'value lag {mode Game} = 11.2 [11.15, 11.25]'],
  [
    'Red is oversaturated (+9 %), blue is undersaturated (−6 %).',
    'direction sweep.red.saturation average over',
    'value sweep.red.saturation average = 9 [8.5, 9.5]',
    'direction sweep.blue.saturation average under',
    'value sweep.blue.saturation average = -6 [-6.5, -5.5]',
  ],
  [
    'Average error 3.8 → 0.7 after calibration.',
    'value grey.de2000 average {stage as-delivered} = 3.8 [3.75, 3.85]',
    'value grey.de2000 average {stage adjusted} = 0.7 [0.65, 0.75]',
  ],
  [
    'No HDR10+, average error of 3.8 out of the box.',
    'value grey.de2000 average {stage as-delivered} = 3.8 [3.75, 3.85]',
  ],
  ['The Umbra is better in every way except price.', 'unproven'],
  [
    'If your wall is a modest one there is a 65-inch version at £1,049.',
    'fact price = 1049 {variantInches 65}',
  ],
  ['White field: down 15.3 % at the worst.', 'value uniformity.white {level white} = 15.3 [15.25, 15.35]'],
  [
    'I saw a dirty screen only because I went looking for it, and on a black field there was no clouding.',
    'observed dirty-screen 0–1',
    'observed clouding 0–0 {level black}',
  ],
  [
    'Orrinvale claims 1,600 nits. Veltrane promises 450 for the Plain, and delivers.',
    'fact peak = 1600 by maker',
    'fact peak = 450 by maker {veltrane}',
    'bound peak max {veltrane} >= 450',
  ],
  ['Build: moulded plastic over a steel frame; screws where others use clips.'],
  ['Near-black: no crush; banding: clearly visible.', 'observed near-black 0–0', 'observed banding 2–4'],
  [
    'It draws 98 W. It is the best television I have ever had in this room.',
    'value power.calm = 98 [97.5, 98.5]',
    'unproven',
  ],
  [
    'For now the Hearth takes 8.5 out of 10 and our Recommended award.',
    'score total = 8.5 of 10',
    'score award = Recommended',
  ],
  ['Formats: HDR10 and HLG.', 'fact hdr.formats includes HDR10+HLG'],
  // A guess in a relative clause says nothing of what stands outside it.
  [
    'In the Theatre mode that we would tell anyone to choose, the Plain has an average error of 2.7.',
    'value grey.de2000 average {unmatched, veltrane} = 2.7 [2.65, 2.75]',
  ],
  ['We would expect a set that would suit anyone, and the error is 2.7.', 'unproven'],
  [
    'If you are tempted by a grander screen, the 65-inch Hearth weighs 23.4 kg.',
    'fact weight = 23.4 {variantInches 65}',
  ],
  ['It will cost you about £40 a year.', 'unproven'],
];
