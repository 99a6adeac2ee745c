import { acrossAsides } from './sentences/acrossAsides.ts';
import { asides } from './sentences/asides.ts';
import { asSpoken } from './sentences/asSpoken.ts';
import { changes } from './sentences/changes.ts';
import { comparedByNumber } from './sentences/comparedByNumber.ts';
import { comparedWithBefore } from './sentences/comparedWithBefore.ts';
import { comparisons } from './sentences/comparisons.ts';
import { conversation } from './sentences/conversation.ts';
import { denied } from './sentences/denied.ts';
import { directions } from './sentences/directions.ts';
import { disowned } from './sentences/disowned.ts';
import { distances } from './sentences/distances.ts';
import { echoes } from './sentences/echoes.ts';
import { facts } from './sentences/facts.ts';
import { groups } from './sentences/groups.ts';
import { joined } from './sentences/joined.ts';
import { labReport } from './sentences/labReport.ts';
import { leftOut } from './sentences/leftOut.ts';
import { leftToGuess } from './sentences/leftToGuess.ts';
import { levels } from './sentences/levels.ts';
import { limits } from './sentences/limits.ts';
import { observed } from './sentences/observed.ts';
import { openNumbers } from './sentences/openNumbers.ts';
import { owners } from './sentences/owners.ts';
import { pairedLists } from './sentences/pairedLists.ts';
import { pairs } from './sentences/pairs.ts';
import { parallel } from './sentences/parallel.ts';
import { patchesAndBareNumbers } from './sentences/patchesAndBareNumbers.ts';
import { placesTakenUp } from './sentences/placesTakenUp.ts';
import { ports } from './sentences/ports.ts';
import { prices } from './sentences/prices.ts';
import { promises } from './sentences/promises.ts';
import { ranked } from './sentences/ranked.ts';
import { requests } from './sentences/requests.ts';
import type { SentenceRow } from './sentences/row.ts';
import { scores } from './sentences/scores.ts';
import { settings } from './sentences/settings.ts';
import { silent } from './sentences/silent.ts';
import { states } from './sentences/states.ts';
import { takenUp } from './sentences/takenUp.ts';
import { tints } from './sentences/tints.ts';
import { unproven } from './sentences/unproven.ts';
import { valuesOfColour } from './sentences/valuesOfColour.ts';
import { valuesOfLight } from './sentences/valuesOfLight.ts';
import { valuesOverScreen } from './sentences/valuesOverScreen.ts';
import { valuesOverTime } from './sentences/valuesOverTime.ts';
import { verbFirst } from './sentences/verbFirst.ts';
import { whoseShare } from './sentences/whoseShare.ts';

/**
 * Sentences of reviews in many phrasings → what each says, by what the first of its claims is (`sentences/`). A sentence
 * that makes several claims has several lines. Read each as a reviewer would before changing it.
 */
export const sentences: readonly SentenceRow[] = [
  ...comparisons,
  ...comparedByNumber,
  ...asSpoken,
  ...asides,
  ...whoseShare,
  ...verbFirst,
  ...requests,
  ...joined,
  ...acrossAsides,
  ...changes,
  ...comparedWithBefore,
  ...conversation,
  ...denied,
  ...directions,
  ...tints,
  ...disowned,
  ...distances,
  ...promises,
  ...placesTakenUp,
  ...takenUp,
  ...echoes,
  ...facts,
  ...groups,
  ...labReport,
  ...leftOut,
  ...leftToGuess,
  ...levels,
  ...limits,
  ...observed,
  ...openNumbers,
  ...owners,
  ...pairedLists,
  ...pairs,
  ...parallel,
  ...patchesAndBareNumbers,
  ...ports,
  ...prices,
  ...scores,
  ...settings,
  ...ranked,
  ...silent,
  ...states,
  ...unproven,
  ...valuesOfColour,
  ...valuesOverScreen,
  ...valuesOverTime,
  ...valuesOfLight,
  [
    "The average error is below the visible threshold, but the maximum isn't.",
    'bound grey.de2000 average <= 3',
    'bound grey.de2000 max > 3',
  ],
  ['From half brightness upward, errors are visible.', 'onset grey.de2000 over 3 from 50 included'],
  [
    'Red is 5 % undersaturated at a quarter saturation.',
    'value sweep.red.saturation at 25 = -5 [-5.5, -4.5]',
  ],
  ['At the half-way point the error is 3.', 'value grey.de2000 at 50 = 3 [2.5, 3.5]'],
  ['The peak error is 4.3, at full white.', 'value grey.de2000 at 100 = 4.3 [4.25, 4.35]'],
  [
    'By 60 degrees three quarters of the brightness has gone.',
    'value angle.luminance at 60 {angle 60} = 25 [17.5, 32.5]',
  ],
  [
    'The Kasulind has about half the contrast.',
    'ratio contrast.native {kasulind} : contrast.native = 0.5 [0.45, 0.55]',
  ],
  [
    'Full-screen white manages 372 nits, exactly half of the peak.',
    'value peak at 100 {window 100} = 372 [371.5, 372.5]',
    'ratio peak at 100 {window 100} : peak max = 0.5 [0.45, 0.55]',
  ],
  [
    'A full white screen has a third of the luminance of a 10 % window.',
    'ratio peak at 100 {window 100} : peak at 10 {window 10} = 0.333333 [0.3, 0.366667]',
  ],
  ['No set under £1,000 comes close.', 'unproven'],
  [
    'It falls short of the promised 1,000 nits by almost 260.',
    'difference fact.peak : peak max = 260 [247, 260)',
    'fact peak = 1000 by maker',
  ],
  [
    'Orrinvale claims 1,000 nits and we got within 20 of that.',
    'fact peak = 1000 by maker',
    'bound peak max >= 980 and peak max <= 1020',
  ],
  [
    'Orrinvale claims 1,000 nits, so it comes up about 26 % short.',
    'fact peak = 1000 by maker',
    'ratio peak max : fact.peak = 0.74 [0.727, 0.753]',
  ],
  ['The Kasulind falls 11 nits short of it.', 'unproven'],
  [
    'HDR10 and HLG are on board; Dynamic Glow is not.',
    'fact hdr.formats includes HDR10+HLG',
    'fact hdr.formats excludes dynamic glow',
  ],
  ['It has four HDMI ports, two of which run at 2.1.', 'fact hdmi.count = 4', 'fact hdmi.count.2.1 = 2'],
  [
    'It beats both the Kasulind and the Veltrane for HDR brightness.',
    'order peak max higher ahead of kasulind-vane-50 veltrane-plain-50',
  ],
  ["It isn't as deep as the Kasulind.", 'order fact.depth higher behind of kasulind-vane-50'],
  ["Its blacks aren't as deep as the Kasulind's.", 'order black lower behind of kasulind-vane-50'],
  ['White varies by 6 % across the screen.', 'value uniformity.white = 6 [5.5, 6.5]'],
  ["A year's warranty is all you get.", 'fact warranty = 12'],
  [
    'At £1,039 it sits between the Tamarick and the Nocthale.',
    'fact price = 1039',
    'order fact.price higher position 2 of tamarick-crest-55 nocthale-umbra-55',
  ],
  [
    'White gets to 310 nits, the lowest of the five.',
    'value white = 310 [305, 315]',
    'order white lower best',
  ],
  ['It undercuts the Nocthale by £40.', 'difference fact.price {nocthale} : fact.price = 40 [40, 40]'],
  [
    'At £949, the Kasulind undercuts it by £90.',
    'fact price = 949 {kasulind}',
    'difference fact.price : fact.price {kasulind} = 90 [90, 90]',
  ],
  ['The only rival is the Kasulind, which costs £949.', 'fact price = 949 {kasulind}'],
  ["It isn't cheap at £1,039.", 'fact price = 1039'],
  ['Wall brackets start at £25.'],
  ['The remote weighs 90 grams.'],
  ['The brightest star in that film is a dog.'],
  [
    "The Umbra isn't the brightest, the sharpest or the fastest set.",
    'not order peak max {nocthale} higher best',
    'not order lag {nocthale} lower best',
  ],
  ['No set has a lower average error than the Kasulind.', 'order grey.de2000 average {kasulind} lower best'],
  ['Greens lean neither way in saturation.', 'direction sweep.green.saturation average on-target'],
  ['White is neither warm nor cool.', 'direction white.cct on-target'],
  ['Red is undersaturated at every step.', 'bound sweep.red.saturation max < -5'],
  [
    'Banding is visible. From the side it is distracting.',
    'observed banding 1–3',
    'observed banding 3–4 {unmatched}',
  ],
  [
    'Blooming: visible on axis, distracting at 45°.',
    'observed blooming 1–3 {angle 0}',
    'observed blooming 3–4 {angle 45}',
  ],
  ['The worst level used to be off by 8.1.', 'value grey.de2000 max {unmatched} = 8.1 [8.05, 8.15]'],
  [
    'With the old firmware the average error was 3.8.',
    'value grey.de2000 average {before update} = 3.8 [3.75, 3.85]',
  ],
  ['Whether every level is now under 1, our meter cannot say.', 'unproven'],
  ['After adjustment, luminance falls to 203 nits.', 'value white {stage adjusted} = 203 [202.5, 203.5]'],
  ['White dropped by six nits, to 158.', 'unproven', 'value white = 158 [157.5, 158.5]'],
  ['HLG peaks at 380 nits.', 'value peak max {signal HLG} = 380 [375, 385]'],
  ['Gamma? 2.31.', 'value gamma.average = 2.31 [2.305, 2.315]'],
  ['A chap in the pub says the next one will do 1,500 nits.'],
  ['Every level up to and including 50 % stays below 2.5.', 'bound grey.de2000 max ≤50 < 2.5'],
  [
    'At 71 mm it is fatter than the Kasulind.',
    'fact depth = 71',
    'order fact.depth higher ahead of kasulind-vane-50',
  ],
  ['You save £90 with the Kasulind.'],
  ['Ring me on 0161 496 0122.'],
];
