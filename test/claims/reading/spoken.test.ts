import { expect, test } from 'vitest';
import { proposalText, read } from './context.ts';

/** Takes as they are said: no marks, no capitals, numbers as words. */
const rows: [string, ...string[]][] = [
  [
    'the average is two point four it peaks at three point six',
    'value grey.de2000 average = 2.4 [2.35, 2.45]',
    'value grey.de2000 max = 3.6 [3.55, 3.65]',
  ],
  [
    'peak luminance is seven hundred and forty two nits in a ten per cent window',
    'value peak at 10 {window 10} = 742 [741.5, 742.5]',
  ],
  ['peak luminance is seven forty two nits', 'value peak max = 742 [741.5, 742.5]'],
  [
    'native contrast is three thousand two hundred and sixty to one',
    'value contrast.native = 3260 [3255, 3265]',
  ],
  ['it covers ninety three per cent of d c i p three in u v', 'value coverage.p3.uv = 93 [92.5, 93.5]'],
  ['the average d e two thousand stays under three', 'bound grey.de2000 average < 3'],
  [
    'rec seven oh nine coverage is ninety nine point one per cent in x y',
    'value coverage.bt709.xy = 99.1 [99.05, 99.15]',
  ],
  ['greyscale errors are visible from sixty per cent upwards', 'onset grey.de2000 over 3 from 60 included'],
  ['it costs ten thirty nine pounds', 'fact price = 1039'],
  [
    'it is a third dearer than the tamarick but thirty per cent brighter',
    'ratio fact.price : fact.price {tamarick} = 1.33333 [1.3, 1.36667]',
    'ratio peak max : peak max {tamarick} = 1.3 [1.295, 1.305]',
  ],
  [
    'there is no banding and blooming is obvious in a dark room',
    'observed banding 0–0',
    'observed blooming 2–4 {room dark}',
  ],
  [
    'it has four h d m i ports and supports h d r ten',
    'fact hdmi.count = 4',
    'fact hdr.formats includes HDR10',
  ],
  [
    'orrinvale claims a thousand nits and we got there',
    'fact peak = 1000 by maker',
    'bound peak max >= 1000',
  ],
  [
    'at forty five degrees it keeps sixty per cent of its luminance',
    'value angle.luminance at 45 {angle 45} = 60 [59.5, 60.5]',
  ],
  ['the remote is plain and the menus are quick to learn'],
];

test.each(rows)('%s', (take, ...expected) => {
  expect(read(take, { spoken: true }).map(proposalText)).toEqual(expected);
});
