import type { SentenceRow } from './row.ts';

/** Sentences that state a value of lag, power, noise, or how long a peak is held. */
export const valuesOverTime: readonly SentenceRow[] = [
  ['Input lag is 14.2 ms.', 'value lag = 14.2 [14.15, 14.25]'],
  ['Input lag comes to 14 milliseconds in Game mode.', 'value lag {mode Game} = 14 [13.5, 14.5]'],
  ['It draws 98 W in SDR.', 'value power.calm {signal SDR} = 98 [97.5, 98.5]'],
  ['Standby power is 0.4 W.', 'value standby = 0.4 [0.35, 0.45]'],
  ['It holds 93 % of its peak after two minutes.', 'value peak.hold max = 93 [92.5, 93.5]'],
  ['The fan is inaudible at 22 dB.', 'value noise = 22 [21.5, 22.5]'],
  ['It sustains 93 % of its peak.', 'value peak.hold max = 93 [92.5, 93.5]'],
  ['Input lag of 14.2 ms is fine for gaming.', 'value lag = 14.2 [14.15, 14.25]', 'opinion'],
  ['In Game mode the input lag falls to 14.2 ms.', 'value lag {mode Game} = 14.2 [14.15, 14.25]'],
  ['Power consumption is 98 W in Calm mode.', 'value power.calm {mode Calm} = 98 [97.5, 98.5]'],
  ['In standby it draws 0.4 W.', 'value standby = 0.4 [0.35, 0.45]'],
  ['It consumes 98 watts.', 'value power.calm = 98 [97.5, 98.5]'],
  ['Lag is 14.2 ms at 120 Hz.', 'value lag = 14.2 [14.15, 14.25]'],
  ['Input lag is a respectable 14 ms.', 'value lag = 14 [13.5, 14.5]'],
  [
    "It draws 52.6 W, and 0.27 W when it's asleep.",
    'value power.calm = 52.6 [52.55, 52.65]',
    'value standby = 0.27 [0.265, 0.275]',
  ],
  ['It wastes little: 0.36 W at rest.', 'value standby = 0.36 [0.355, 0.365]'],
  [
    'The meter says 89 W on, 0.63 W off.',
    'value power.calm = 89 [88.5, 89.5]',
    'value standby = 0.63 [0.625, 0.635]',
  ],
  ['It draws 80 W with dimming off.', 'value power.calm {dimming off} = 80 [79.5, 80.5]'],
  [
    'Lag is 7.7 ms for the Veltrane, 14.6 for the Kasulind.',
    'value lag {veltrane} = 7.7 [7.65, 7.75]',
    'value lag {kasulind} = 14.6 [14.55, 14.65]',
  ],
  ['The peak has sunk to 90% after two minutes.', 'value peak.hold max = 90 [89.5, 90.5]'],
  ['After a few minutes the peak is down by 11%.', 'value peak.hold max = 89 [88.5, 89.5]'],
  ['It drops to 87 percent of where it started.', 'value peak.hold max = 87 [86.5, 87.5]'],
  [
    'A 10% window opens at 742 nits and holds 94% of it.',
    'value peak at 10 {window 10} = 742 [741.5, 742.5]',
    'value peak.hold at 10 {window 10} = 94 [93.5, 94.5]',
  ],
  [
    'A 10% window opens at 742 nits and loses 8% of that in the long run.',
    'value peak at 10 {window 10} = 742 [741.5, 742.5]',
    'value peak.hold at 10 {window 10} = 92 [91.5, 92.5]',
  ],
  [
    'The 10 percent window keeps 94 percent of its light.',
    'value peak.hold at 10 {window 10} = 94 [93.5, 94.5]',
  ],
  [
    'Lag is 9.6 milliseconds, which is exactly what Orrinvale promises.',
    'value lag = 9.6 [9.55, 9.65]',
    'fact lag = 9.6 by maker',
  ],
  [
    'The Plain has a lag of 12.6 ms, and the Umbra manages it in half the time.',
    'value lag {veltrane} = 12.6 [12.55, 12.65]',
    'ratio lag {nocthale} : lag {veltrane} = 0.5 [0.45, 0.55]',
  ],
  [
    'All this has to be paid for, and the meter at the wall read 172 watts in HDR.',
    'value power.hdr-calm {signal HDR} = 172 [171.5, 172.5]',
  ],
  [
    "The Hearth's input lag is 9.4 ms, less than half that of the Plain, and the Umbra takes 11.7 ms.",
    'value lag = 9.4 [9.35, 9.45]',
    'ratio lag : lag {veltrane} < 0.5',
    'value lag {nocthale} = 11.7 [11.65, 11.75]',
  ],
  [
    'It draws 139 W in HDR, half as much again as the SDR figure.',
    'value power.hdr-calm {signal HDR} = 139 [138.5, 139.5]',
    'ratio power.hdr-calm {signal HDR} : power.calm {signal SDR} = 1.5 [1.35, 1.65]',
  ],
  [
    "The Hearth's lag is 9.6 ms, within a millisecond of the Plain's.",
    'value lag = 9.6 [9.55, 9.65]',
    'difference lag : lag {veltrane} = 0 [-1, 1]',
  ],
  [
    'The Plain answers in 12 ms; the Umbra answers in half the time, says the maker.',
    'value lag {veltrane} = 12 [11.5, 12.5]',
    'ratio lag {nocthale} : lag {veltrane} = 0.5 [0.45, 0.55]',
  ],
  [
    'Lag is 9.6 ms, the same as on the Plain.',
    'value lag = 9.6 [9.55, 9.65]',
    'order lag higher matches of veltrane-plain-50',
  ],
  ['The Umbra draws 180 W, twice that of a fridge.', 'value power.sdr {nocthale} = 180 [179.5, 180.5]'],
  [
    'Input lag is 9.8 ms in game mode, 60 in film mode.',
    'value lag {mode Game} = 9.8 [9.75, 9.85]',
    'unproven',
  ],
  [
    'Lag of 9.8 ms is what the maker claims, and what we got.',
    'value lag = 9.8 [9.75, 9.85]',
    'fact lag = 9.8 by maker',
  ],
  ['Our 50-inch rival, the Plain, draws 61 W.', 'value power.sdr {veltrane} = 61 [60.5, 61.5]'],
  [
    'The Hearth draws 98 W, the Plain 61 W, the Umbra 110 W.',
    'value power.calm = 98 [97.5, 98.5]',
    'value power.calm {veltrane} = 61 [60.5, 61.5]',
    'value power.calm {nocthale} = 110 [109.5, 110.5]',
  ],
  ['Standby power is 0.3 W.', 'value standby = 0.3 [0.25, 0.35]'],
  [
    'It draws 0.3 W in standby and 98 W in use.',
    'value standby = 0.3 [0.25, 0.35]',
    'value power.calm = 98 [97.5, 98.5]',
  ],
  ['It drew between 60 and 98 W.', 'value power.calm = 60 [59.5, 60.5] to 98 [97.5, 98.5]'],
  [
    'In a 10 % window it peaks at 742 nits. Keep that patch on for three minutes and the Hearth still gives 690 nits.',
    'value peak at 10 {window 10} = 742 [741.5, 742.5]',
    'value peak.sustained max = 690 [685, 695]',
  ],
  [
    'In a 10 % window it peaks at 742 nits. Give that window a couple of minutes and it settles at 690, so it hangs on to 93 % of what it started with.',
    'value peak at 10 {window 10} = 742 [741.5, 742.5]',
    'value peak.sustained max = 690 [685, 695]',
    'value peak.hold max = 93 [92.5, 93.5]',
  ],
  [
    'In a 10 % window it peaks at 742 nits. It settles at 690 after three minutes.',
    'value peak at 10 {window 10} = 742 [741.5, 742.5]',
    'value peak.sustained max = 690 [685, 695]',
  ],
  [
    'In a 10 % window it peaks at 742 nits. After three minutes it has fallen to 690.',
    'value peak at 10 {window 10} = 742 [741.5, 742.5]',
    'unproven',
  ],
  [
    'In a 10 % window it peaks at 742 nits. Give that window a couple of minutes and it settles at 690.',
    'value peak at 10 {window 10} = 742 [741.5, 742.5]',
    'value peak.sustained max = 690 [685, 695]',
  ],
  [
    'In a 10 % window it peaks at 742 nits. Give it a couple of minutes and it settles at 690 nits.',
    'value peak at 10 {window 10} = 742 [741.5, 742.5]',
    'value peak.sustained max = 690 [685, 695]',
  ],
  [
    'In a 10 % window it peaks at 742 nits. After a couple of minutes it settles at 690 nits.',
    'value peak at 10 {window 10} = 742 [741.5, 742.5]',
    'value peak.sustained max = 690 [685, 695]',
  ],
  [
    'In a 10 % window it peaks at 742 nits. After a couple of minutes it settles at 690.',
    'value peak at 10 {window 10} = 742 [741.5, 742.5]',
    'value peak.sustained max = 690 [685, 695]',
  ],
  [
    'In a 10 % window it peaks at 742 nits. It settles at 690.',
    'value peak at 10 {window 10} = 742 [741.5, 742.5]',
    'unproven',
  ],
  [
    'The price of all this is light: a white screen now gives 203 nits.',
    'value peak at 100 {window 100} = 203 [202.5, 203.5]',
  ],
  ['You may also catch visible flicker on the Hearth at low brightness.', 'observed flicker 1–3'],
  [
    "Left on for minutes, the Hearth's 10 % highlight holds on to 95 % of its strength.",
    'value peak.hold at 10 {window 10} = 95 [94.5, 95.5]',
  ],
  [
    'After two minutes that 10 percent window has settled at 1,762 nits, whereas the Plain holds 97 percent of its own peak.',
    'value peak.sustained at 10 {window 10} = 1762 [1761.5, 1762.5]',
    'value peak.hold at 10 {veltrane, window 10} = 97 [96.5, 97.5]',
  ],
  [
    'After a few minutes the 10 % window holds 95 % of its peak.',
    'value peak.hold at 10 {window 10} = 95 [94.5, 95.5]',
  ],
  [
    'Leave that 10% patch up for a few minutes and the Hearth sags to 658 nits.',
    'value peak.sustained at 10 {window 10} = 658 [657.5, 658.5]',
  ],
  [
    'Leave a 10% window up for a while and it holds 98.5% of its peak.',
    'value peak.hold at 10 {window 10} = 98.5 [98.45, 98.55]',
  ],
  ['Leave it on for a while and it reaches 700 nits.', 'unproven'],
  [
    'Leave it alone with the ten per cent patch and it hangs on to 92 per cent of its peak.',
    'value peak.hold at 10 {window 10} = 92 [91.5, 92.5]',
  ],
  ['It keeps 92 % of its peak once it has sat down.', 'value peak.hold max = 92 [91.5, 92.5]'],
  [
    'Over minutes the Plain holds on to 97% of its 10% peak.',
    'value peak.hold at 10 {veltrane, window 10} = 97 [96.5, 97.5]',
  ],
  ['A full white screen pulls the Hearth down to 398 nits.', 'unproven'],
  [
    'A full white screen drags the peak down to 398 nits.',
    'value peak at 100 {window 100} = 398 [397.5, 398.5]',
  ],
  [
    'A 10 per cent window holds 98 per cent of its peak.',
    'value peak.hold at 10 {window 10} = 98 [97.5, 98.5]',
  ],
  [
    'The Hearth gave me 567 cd/m² in a 10 % window, 434 in a 25 % one and, over the whole screen, 346.',
    'value peak at 10 {window 10} = 567 [566.5, 567.5]',
    'value peak at 25 {window 25} = 434 [433.5, 434.5]',
    'value peak at 100 {window 100} = 346 [345.5, 346.5]',
  ],
  [
    'Left on for the evening, the 10 % patch keeps 92 % of its first luminance.',
    'value peak.hold at 10 {window 10} = 92 [91.5, 92.5]',
  ],
  [
    'In a 10 per cent window it holds at least 90 per cent of its peak.',
    'bound peak.hold at 10 {window 10} >= 90',
  ],
  [
    'Over a full screen it sustains 300 nits.',
    'value peak.sustained at 100 {window 100} = 300 [292.5, 307.5]',
  ],
  [
    'After adjustment the greyscale error falls from an average of 4.4 to an average of 0.5.',
    'value grey.de2000 average {stage as-delivered} = 4.4 [4.35, 4.45]',
    'value grey.de2000 average {stage adjusted} = 0.5 [0.45, 0.55]',
  ],
  ['Its colour shift passes 3 at 31 degrees.', 'onset angle.de2000 over 3 from 31 included'],
  [
    'At 20 % saturation cyan is under-saturated, its hue is out by 17°, and its ΔE2000 goes past 3.',
    'direction sweep.cyan.saturation at 20 under',
    'value sweep.cyan.hue at 20 = 17 [16.5, 17.5] either side',
    'bound sweep.cyan.de2000 at 20 > 3',
  ],
  [
    'On a white field the unevenness of luminance is 21 per cent, and on 50 per cent grey it is 24 per cent.',
    'value uniformity.white {level white} = 21 [20.5, 21.5]',
    'value uniformity.grey50 {level grey50} = 24 [23.5, 24.5]',
  ],
  [
    "Leave a 10% window up (make tea, I'll wait) and the Hearth settles at 766 nits, keeping at least 90% of its peak.",
    'value peak.sustained at 10 {window 10} = 766 [765.5, 766.5]',
    'bound peak.hold at 10 {window 10} >= 90',
  ],
  [
    'Black was measured at 0.32 cd/m², about five and a half times the level of the Kasulind.',
    'value black = 0.32 [0.315, 0.325]',
    'ratio black : black {kasulind} = 5.5 [5.225, 5.775]',
  ],
];
