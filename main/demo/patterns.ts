import { gamut } from '../../shared/colour/gamuts.ts';
import { apply3, rgbToXyzMatrix } from '../../shared/colour/rgb.ts';
import { pqInverseEotf } from '../../shared/colour/transfer/pq.ts';
import { whiteXy } from '../../shared/colour/whites.ts';
import { type Xy, type Xyz, xyYToXyz, xyzToXy } from '../../shared/colour/xyz.ts';
import { lanternwickChart } from './chart.ts';
import { amountsOf, type Curve, type Display, greyChromaticity, showColour, showGrey } from './display.ts';
import { readPatch } from './meter.ts';
import type { Noise } from './noise.ts';

/** One row of a readings file: column name to text; absent columns are empty. */
export type Row = Readonly<Record<string, string>>;

const d65 = whiteXy('D65');
const hues = {
  red: [1, 0, 0],
  green: [0, 1, 0],
  blue: [0, 0, 1],
  cyan: [0, 1, 1],
  magenta: [1, 0, 1],
  yellow: [1, 1, 0],
} as const;
type Hue = keyof typeof hues;

/** Greys at the given levels. */
export function greyscale(display: Display, levels: readonly number[], noise: Noise): Row[] {
  return levels.map((level) => ({
    series: 'greyscale',
    stimulus: String(level),
    ...readPatch(showGrey(display, level), noise),
  }));
}

/** Full red, green, blue, white and black. */
export function primaries(display: Display, noise: Noise): Row[] {
  const signals = { red: hues.red, green: hues.green, blue: hues.blue, white: [1, 1, 1] } as const;
  const coloured = Object.entries(signals).map(([hue, [r, g, b]]) => ({
    series: 'primaries',
    hue,
    ...readPatch(showColour(display, [100 * r, 100 * g, 100 * b]), noise),
  }));
  return [...coloured, { series: 'primaries', hue: 'black', ...readPatch(showGrey(display, 0), noise) }];
}

function hueChromaticity(name: 'BT.709' | 'P3-D65', hue: Hue): Xy {
  return xyzToXy(apply3(rgbToXyzMatrix(gamut(name).primaries, d65), [...hues[hue]]));
}

/** Where a patch of a hue lies: on the line in x, y from white to the hue at 100 %. */
function towards([x, y]: Xy, percent: number): Xy {
  return [d65[0] + ((x - d65[0]) * percent) / 100, d65[1] + ((y - d65[1]) * percent) / 100];
}

/** Six hues at 25, 50, 75 and 100 % of BT.709 by the default saturation law, full amplitude. */
export function saturation(display: Display, noise: Noise): Row[] {
  return (Object.keys(hues) as Hue[]).flatMap((hue) =>
    [25, 50, 75, 100].map((percent) => {
      const amounts = amountsOf('BT.709', towards(hueChromaticity('BT.709', hue), percent));
      const [r, g, b] = amounts.map((amount) => 100 * amount ** (1 / 2.4));
      const shown = readPatch(showColour(display, [r!, g!, b!]), noise);
      return { series: 'saturation', hue, saturation: String(percent), ...shown };
    }),
  );
}

/** The same hues inside P3 at 50 % PQ, coded in BT.2020; the signal that was sent stands in each row. */
export function saturationHdr(display: Display, noise: Noise): Row[] {
  const amplitude = 92;
  return (Object.keys(hues) as Hue[]).flatMap((hue) =>
    [25, 50, 75, 100].map((percent) => {
      const amounts = amountsOf('BT.2020', towards(hueChromaticity('P3-D65', hue), percent));
      const sent = amounts.map((amount) => (100 * pqInverseEotf(amplitude * amount)).toFixed(2));
      const shown = readPatch(showP3(display, sent.map(Number) as [number, number, number]), noise);
      const [signal_r, signal_g, signal_b] = sent as [string, string, string];
      return {
        series: 'saturation',
        signal_r,
        signal_g,
        signal_b,
        hue,
        saturation: String(percent),
        ...shown,
      };
    }),
  );
}

/** An HDR colour inside what the panel can show: decoded exactly, then pulled towards white by the mode. */
function showP3(display: Display, signal: readonly [number, number, number]): Xyz {
  const native: Display = { ...display, primaries: gamut('BT.2020').primaries };
  const [X, Y, Z] = showColour(native, signal);
  const [x, y] = xyzToXy([X, Y, Z]);
  const pull = 0.965;
  return xyYToXyz(d65[0] + (x - d65[0]) * pull, d65[1] + (y - d65[1]) * pull, Y * 0.97);
}

/** Lanternwick's own 24 colours with their references. */
export function chart(display: Display, noise: Noise): Row[] {
  return lanternwickChart().map(({ patch, Lab, linear }) => {
    const [r, g, b] = linear.map((amount) => 100 * Math.max(0, amount) ** (1 / 2.4));
    const [ref_L, ref_a, ref_b] = Lab.map((value) => value.toFixed(2)) as [string, string, string];
    const shown = readPatch(showColour(display, [r!, g!, b!]), noise);
    return { series: 'chart', patch, ref_L, ref_a, ref_b, ...shown };
  });
}

/** Full white in windows of the given % of the area, at the given seconds. */
export function windows(
  display: Display,
  sizes: Curve,
  noise: Noise,
  held: Readonly<Record<number, Curve>> = {},
): Row[] {
  return sizes.flatMap(([size, Y]) =>
    (held[size] ?? [[2, 100]]).map(([seconds, percent]) => ({
      series: 'window',
      stimulus: '100',
      window: String(size),
      seconds: String(seconds),
      ...readPatch(xyYToXyz(...greyChromaticity(display, 100), (Y * percent) / 100), noise),
    })),
  );
}

const grid = (side: number) =>
  Array.from({ length: side * side }, (_, cell) => [Math.floor(cell / side) + 1, (cell % side) + 1] as const);

/** Full fields and a 4×4 chequerboard whose dark fields read `chequerBlack` cd/m². */
export function contrast(display: Display, levels: ContrastLevels, noise: Noise): Row[] {
  const { white = display.Lw, black = display.Lb, chequerBlack } = levels;
  const at = (pattern: string, stimulus: number, Y: number, position?: string): Row => ({
    series: 'contrast',
    pattern,
    ...(position === undefined ? {} : { position }),
    ...readPatch(xyYToXyz(...greyChromaticity(display, stimulus), Y), noise),
  });
  const fields = grid(4).map(([row, column]) =>
    (row + column) % 2 === 0
      ? at('chequer-white', 100, white * (1 - 0.004 * row), `r${row}c${column}`)
      : at('chequer-black', 0, chequerBlack * (1 + 0.02 * (column - 2.5)), `r${row}c${column}`),
  );
  return [at('full-white', 100, white), at('full-black', 0, black), ...fields];
}
export interface ContrastLevels {
  white?: number;
  black?: number;
  chequerBlack: number;
}

/** A 5×5 grid; `map` is the luminance of each cell in % of the centre, row by row from top left. */
export function uniformity(
  display: Display,
  level: string,
  stimulus: number,
  map: readonly number[],
  noise: Noise,
): Row[] {
  const centre = showGrey(display, stimulus);
  return grid(5).map(([row, column], cell) => {
    const part = map[cell]! / 100;
    // A dark cell is a little bluer, as light that came the longer way through the diffuser is.
    const [x, y] = xyzToXy(centre);
    const drift = 0.02 * (1 - part);
    const patch = xyYToXyz(x - drift * 0.4, y - drift * 0.5, centre[1] * part);
    return { series: 'uniformity', position: `r${row}c${column}`, level, ...readPatch(patch, noise) };
  });
}

/** Off-axis readings: at each angle the luminance in % of 0° and the shift of x and y. */
export type AngleCurve = readonly (readonly [angle: number, percent: number, dx: number, dy: number])[];

/** A sweep of one level over angles in one plane. */
export function angles(
  display: Display,
  level: string,
  stimulus: number,
  curve: AngleCurve,
  noise: Noise,
  plane?: 'vertical',
): Row[] {
  const straight = showGrey(display, stimulus);
  const [x, y] = xyzToXy(straight);
  return curve.map(([angle, percent, dx, dy]) => ({
    series: 'angle',
    level,
    angle: String(angle),
    ...(plane ? { plane } : {}),
    ...readPatch(xyYToXyz(x + dx, y + dy, (straight[1] * percent) / 100), noise),
  }));
}

/** Numbers read from a display or a meter as they stand. */
export function singles(
  values: readonly (readonly [quantity: string, value: string, unit: string])[],
): Row[] {
  return values.map(([quantity, value, unit]) => ({ series: 'single', quantity, value, unit }));
}
