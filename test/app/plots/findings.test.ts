import { describe, expect, it } from 'vitest';
import { angleLuminance } from '../../../app/plots/figures/angle.ts';
import { chartPatches, gamutReach, saturationSweep } from '../../../app/plots/figures/colour.ts';
import { channelBalance, greyscaleError } from '../../../app/plots/figures/greyscale.ts';
import { figuresOf } from '../../../app/plots/figures/index.ts';
import { peakByWindow, peakOverTime, uniformityMap } from '../../../app/plots/figures/luminance.ts';
import { nameSubjects } from '../../../app/plots/figures/subjectText.ts';
import { eotfError, gammaByLevel } from '../../../app/plots/figures/tone.ts';
import { defaultHouse } from '../../../shared/claims/house/defaults.ts';
import type { Reading } from '../../../shared/contract/reading.ts';
import { scalar, series, subject } from './subjects.ts';

const { limits } = defaultHouse;
/** Titles are compared with plain spaces. */
const title = (figure: { title: string } | null) => figure?.title.replaceAll(/[\u00a0\u2009\u202f]/g, ' ');

describe('a plot says its finding in the title', () => {
  it('names the level from which the greyscale error is visible', () => {
    const figure = greyscaleError(
      [
        subject([
          series('grey.de2000', 'ΔE2000', [
            [10, 0.5],
            [50, 2.1],
            [60, 3.4],
            [100, 4.3],
          ]),
        ]),
      ],
      limits,
    );
    expect(title(figure)).toBe('Colour error passes the visible threshold from 60 %');
    expect(figure?.lines[0]?.points.map((point) => point.out)).toEqual([false, false, true, true]);
  });

  it('lists the levels when they do not run on to the top', () => {
    const figure = greyscaleError(
      [
        subject([
          series('grey.de2000', 'ΔE2000', [
            [20, 3.2],
            [50, 2.1],
            [60, 3.4],
            [100, 2.3],
          ]),
        ]),
      ],
      limits,
    );
    expect(title(figure)).toBe('Colour error is past the visible threshold at 20 and 60 %');
  });

  it('says how large the largest error is when none can be seen', () => {
    const figure = greyscaleError(
      [
        subject([
          series('grey.de2000', 'ΔE2000', [
            [10, 0.5],
            [100, 2.96],
          ]),
        ]),
      ],
      limits,
    );
    expect(title(figure)).toBe('No grey passes the visible threshold; the largest error is 3.0 at 100 %');
  });

  it('never lets a level that does not count speak, and says why it is hollow', () => {
    const figure = greyscaleError(
      [
        subject([
          series('grey.de2000', 'ΔE2000', [
            [10, 0.5],
            [50, 1.2],
            [90, 9.9, 0.3, false],
          ]),
        ]),
      ],
      limits,
    );
    expect(title(figure)).toBe('No grey passes the visible threshold; the largest error is 1.2 at 50 %');
    expect(figure?.note).toContain('hollow levels do not count');
  });

  it('compares the averages of delivered and adjusted', () => {
    const before = subject([
      series('grey.de2000', 'ΔE2000', [
        [50, 4],
        [100, 4.2],
      ]),
    ]);
    const after = subject(
      [
        series('grey.de2000', 'ΔE2000', [
          [50, 0.5],
          [100, 0.7],
        ]),
      ],
      { stage: 'adjusted' },
    );
    const figure = greyscaleError(nameSubjects([before, after]), limits);
    expect(title(figure)).toBe('Adjusting takes the average error from 4.1 to 0.6');
    expect(figure?.lines.map((line) => [line.label, line.weight, line.mark])).toEqual([
      ['as delivered', 'strong', 'disc'],
      ['adjusted', 'plain', 'ring'],
    ]);
  });

  it('gives the one strong hue to the channel furthest off', () => {
    const figure = channelBalance([
      subject([
        series('grey.balance.red', '%', [
          [50, 97],
          [100, 98],
        ]),
        series('grey.balance.green', '%', [
          [50, 101],
          [100, 101],
        ]),
        series('grey.balance.blue', '%', [
          [50, 104],
          [100, 108],
        ]),
      ]),
    ]);
    expect(title(figure)).toBe('Blue is 8 % over balance at 100 %, the furthest of the three');
    expect(figure?.lines.filter((line) => line.weight === 'strong').map((line) => line.label)).toEqual([
      'Blue',
    ]);
    expect(new Set(figure?.lines.map((line) => line.mark)).size).toBe(3);
  });

  it('gives gamma with its uncertainty and its spread', () => {
    const figure = gammaByLevel(
      [
        subject([
          series('gamma', '', [
            [10, 2.05, 0.02],
            [90, 2.35, 0.05],
          ]),
          scalar('gamma.average', '', 2.213, 0.006),
        ]),
      ],
      limits,
    );
    expect(title(figure)).toBe('Gamma averages 2.21 ± 0.01, from 2.05 to 2.35');
  });

  it('says how far the curve is followed and from where it falls away', () => {
    const figure = eotfError(
      [
        subject(
          [
            series('eotf.error', '%', [
              [20, 4],
              [50, -6],
              [70, -14],
              [100, -60],
            ]),
            scalar('eotf.rolloff', '%', 70),
          ],
          { signal: 'HDR10', target: { gamut: 'BT.2020', white: 'D65', eotf: 'PQ' } },
        ),
      ],
      limits,
    );
    expect(title(figure)).toBe('Follows PQ within 6 %, then falls away from 70 %');
  });

  it('names the hue that misses its saturation most', () => {
    const figure = saturationSweep(
      [
        subject([
          series('sweep.red.saturation', '%', [
            [50, -3],
            [100, -7],
          ]),
          series('sweep.cyan.saturation', '%', [
            [50, 2],
            [100, 1],
          ]),
        ]),
      ],
      limits,
    );
    expect(title(figure)).toBe('Red is 7 % short of its saturation target at 100 %');
  });

  it('names the diagram of a coverage, since the two differ', () => {
    const corner = (row: number, hue: Reading['hue'], x: number, y: number): Reading => ({
      row,
      series: 'primaries',
      ...(hue ? { hue } : {}),
      x,
      y,
      Y: 20,
    });
    const measured = subject(
      [scalar('coverage.bt709.xy', '%', 98.2), scalar('coverage.bt709.uv', '%', 96.9)],
      {},
      [corner(1, 'red', 0.64, 0.33), corner(2, 'green', 0.3, 0.6), corner(3, 'blue', 0.15, 0.06)],
    );
    expect(title(gamutReach([measured], 'xy'))).toBe('Covers 98.2 % of BT.709 in xy');
    expect(title(gamutReach([measured], 'uv'))).toBe('Covers 96.9 % of BT.709 in u′v′');
    // u′v′ of the BT.709 red primary, CIE 1976: (0.4507, 0.5229), as in the shared reference data.
    const red = gamutReach([measured], 'uv')?.areas[1]?.corners[0];
    expect([red?.x, red?.y].map((value) => Number(value?.toFixed(4)))).toEqual([0.4507, 0.5229]);
  });

  it('puts the worst patch first', () => {
    const figure = chartPatches(
      [
        subject([
          series('chart.de2000', 'ΔE2000', [
            ['01', 1.2],
            ['02', 4.2],
            ['03', 3.1],
          ]),
        ]),
      ],
      limits,
    );
    expect(title(figure)).toBe('2 of 3 patches pass the visible threshold, patch 02 worst at 4.2');
    expect(figure?.patches.map((patch) => patch.label)).toEqual(['02', '03', '01']);
  });

  it('gives peak with its window and what the whole screen leaves', () => {
    const figure = peakByWindow([
      subject([
        series('peak', 'cd/m²', [
          [2, 700],
          [10, 742],
          [100, 372],
        ]),
      ]),
    ]);
    expect(title(figure)).toBe('742 cd/m² in a 10 % window, 372 with the whole screen lit');
  });

  it('does not claim that a peak lasts when it was watched too briefly', () => {
    const at = (row: number, seconds: number): Reading => ({
      row,
      series: 'window',
      window: 10,
      seconds,
      x: null,
      y: null,
      Y: 740,
    });
    expect(title(peakOverTime([subject([], {}, [at(1, 1), at(2, 60)])]))).toBe(
      'Watched for 60 s, too short to say whether the peak lasts',
    );
  });

  it('says which corner is darker', () => {
    const figure = uniformityMap([
      subject([
        series('uniformity.white.cell', '%', [
          ['r1c1', -4],
          ['r1c3', -6],
          ['r2c2', 0],
          ['r3c1', -31],
          ['r3c3', -19],
        ]),
      ]),
    ]);
    expect(title(figure)).toBe('Bottom left corner is 31 % darker than the centre');
  });

  it('says from which seat half of the light is gone', () => {
    const figure = angleLuminance([
      subject([
        series('angle.luminance', '%', [
          [-45, 38],
          [-30, 61],
          [0, 100],
          [30, 58],
          [45, 44],
        ]),
      ]),
    ]);
    expect(title(figure)).toBe('More than half of the luminance is gone at 45° left');
  });

  it('draws nothing that the readings do not carry', () => {
    expect(figuresOf([subject([])], limits)).toEqual([]);
  });

  it('names overlaid runs by what tells them apart', () => {
    const label = (one: object, other: object) =>
      nameSubjects([subject([], one), subject([], other)]).map((each) => each.label);
    expect(label({}, { stage: 'adjusted' })).toEqual(['as delivered', 'adjusted']);
    expect(label({}, { mode: 'Day' })).toEqual(['Calm', 'Day']);
    expect(label({ firmware: '3.1.7' }, { firmware: '3.2.0' })).toEqual(['firmware 3.1.7', 'firmware 3.2.0']);
  });
});
