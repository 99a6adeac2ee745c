/** A sentence that is true of the corpus library, and one that only differs in being false. */
export type Twins = readonly [holds: string, isFalse: string];

/** Written for the Tamarick Alder 55 of `library/`, compared with the Kasulind Fjord 55 and the Nocthale Umbra 55. */
export const twins: readonly Twins[] = [
  // What a clause leaves out
  ['Peak in nits: Fjord 512, Umbra 914, Alder 905.', 'Peak in nits: Fjord 914, Umbra 512, Alder 905.'],
  ['Lag (ms): Kasulind 24.8 / Tamarick 12.4.', 'Lag (ms): Kasulind 12.4 / Tamarick 24.8.'],
  ['USB: Alder three, Fjord two.', 'USB: Alder two, Fjord three.'],
  ['It has two HDMI 2.1 ports, the Umbra has four.', 'It has two HDMI 2.1 ports, the Umbra has two.'],
  ['It has two HDMI 2.1 ports. The Fjord has none.', 'It has two HDMI 2.1 ports. The Umbra has none.'],
  [
    'It has four HDMI ports and three USB ports, the Umbra four and two.',
    'It has four HDMI ports and three USB ports, the Umbra two of each.',
  ],
  ['The Umbra has four HDMI ports; all four are 2.1.', 'It has four HDMI ports; all four are 2.1.'],
  ['It has four HDMI ports, two of them 2.1.', 'It has four HDMI ports, none of them 2.1.'],
  // A limit that is taken up again
  [
    'In SDR no step below 40 % exceeds 3, but from 40 % upwards every step does.',
    'In SDR no step below 40 % exceeds 3, but from 30 % upwards every step does.',
  ],
  [
    'In SDR no step below 40 % exceeds 3. From 40 % upwards every step is over it.',
    'In SDR no step below 40 % exceeds 3. From 40 % upwards every step is under it.',
  ],
  // A condition on what is said, none on the set
  ['If that stings, it has two HDMI 2.1 ports.', 'If that stings, it has three HDMI 2.1 ports.'],
  ['It has four HDMI ports, if you want to be picky.', 'It has five HDMI ports, if you want to be picky.'],
  // Between two sets that are not named
  ['On price it falls between the other two.', 'The Fjord falls between the other two on price.'],
  [
    'Its input lag lies between those of its two rivals.',
    'Its input lag does not lie between those of its two rivals.',
  ],
  // Kinds of panel and backlight
  ["It's a VA panel with a full-array backlight.", "It's a VA panel with a mini-LED backlight."],
  [
    'The Umbra is an OLED and the Fjord an edge-lit LCD.',
    'The Umbra is an LCD and the Fjord an edge-lit OLED.',
  ],
  ["It isn't an OLED.", "The Umbra isn't an OLED."],
  ['Its VA panel is lit by 120 zones.', 'Its VA panel is lit by 1,152 zones.'],
];
