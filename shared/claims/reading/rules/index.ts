import { signsOf } from '../clauseSigns.ts';
import { echoing } from '../echoWords.ts';
import type { Findings } from '../finding.ts';
import { meets, type NeedBits, type Needs, needBits } from '../needs.ts';
import type { Scene } from '../scene.ts';
import { readAdjusting } from './adjusting.ts';
import { readAgainst } from './against.ts';
import { readByFactor } from './byFactor.ts';
import { readRatiosAndDifferences } from './compare.ts';
import { readDirections } from './direction.ts';
import { multiplied, readDoubledBy } from './doubledBy.ts';
import { resolveDoubtfulAxes } from './doubtfulAxis.ts';
import { answers, readEcho } from './echo.ts';
import { readEllipsis } from './ellipsis.ts';
import { readEvenMatch } from './evenMatch.ts';
import { readEveryHue } from './everyHue.ts';
import { exceeding, readExceededBy } from './exceededBy.ts';
import { readFormatOf } from './formatOf.ts';
import { readFormats } from './formats.ts';
import { readHouseWords } from './house.ts';
import { readHowFar } from './howFar.ts';
import { copulas, readLeftovers, readOpinions } from './leftover.ts';
import { readLimits } from './limit.ts';
import { readLimitAgain } from './limitAgain.ts';
import { readMakerClaims } from './maker.ts';
import { readMeasures } from './measures.ts';
import { readNearTo } from './nearTo.ts';
import { readNextRank } from './nextRank.ts';
import { readObservations } from './observed.ts';
import { readOrders } from './order.ts';
import { readPaidMore } from './paidMore.ts';
import { readPanel, readResolution } from './panel.ts';
import { readParallel } from './parallel.ts';
import { readPartOfPorts } from './partOfPorts.ts';
import { readPrice } from './price.ts';
import { readRankList } from './rankList.ts';
import { readLeavesCurve, readRolloffAgain } from './rolloff.ts';
import { readSameCount } from './sameCount.ts';
import { readScores, scoreNeed } from './score.ts';
import { readSetApart } from './setApart.ts';
import { goneWords, lookingWords } from './severity.ts';
import { readCounts } from './socket.ts';
import { readBetween, readEquals, readRanks, readSameAs, readWindowLost } from './standing.ts';
import { losing, winning } from './than.ts';
import { readTints } from './tint.ts';
import { readValues } from './value.ts';
import { readVisibleFrom } from './visibleFrom.ts';
import { readWindowRatios } from './windows.ts';
import { readWithin } from './within.ts';
import { readCulprit, readWorstCell } from './worstCell.ts';

export interface Rule {
  read(scene: Scene, findings: Findings): undefined;
  /** A clause that lacks them is not shown to the rule: most clauses lack what most rules read. */
  needs: NeedBits;
}

const extremes = [
  ...['narrowest', 'widest'],
  ...['shortest', 'longest', 'lowest', 'highest'],
  ...['smallest', 'largest', 'greatest', 'biggest', 'least', 'most', 'worst'],
];

/** One file a kind; the order decides who may take a number first. */
const table: readonly (Pick<Rule, 'read'> & { needs: Needs })[] = [
  { read: readScores, needs: [{ kinds: ['number', 'scoreWord'] }, scoreNeed] },
  { read: readParallel, needs: [{ kinds: ['saidBefore'] }] },
  // Ports, dimensions, weight, refresh rate, warranty, HDR formats, resolution, prices.
  {
    read: readSetApart,
    needs: [{ kinds: ['number'] }, { words: ['within'] }, { kinds: ['unit', 'maker', 'rival', 'pronoun'] }],
  },
  {
    read: readMakerClaims,
    needs: [
      { kinds: ['saying', 'maker', 'makerWord', 'claimed'] },
      { kinds: ['maker', 'makerWord', 'number', 'set', 'claimed'], words: ['what'] },
      {
        kinds: ['saying', 'maker', 'makerWord', 'number', 'multiple', 'gotThere', 'fellShort'],
        words: ['short', 'shy', 'comes up', 'short of'],
      },
      // A number, or one that was quoted before.
      { kinds: ['number', 'claimed'], words: ['what'] },
    ],
  },
  {
    read: readPartOfPorts,
    needs: [
      { kinds: ['number'] },
      { kinds: ['fact', 'statement', 'saidBefore', 'portsBefore'], words: ['sockets', 'ports', 'inputs'] },
    ],
  },
  {
    read: readCounts,
    needs: [
      { kinds: ['countable'], words: ['hdmi', 'usb'] },
      {
        kinds: ['number', 'stat', 'negation'],
        words: ['hdmi', 'usb', 'single', 'both', 'lone', 'pair', 'twin', 'trio', 'quartet'],
      },
    ],
  },
  {
    read: readSameCount,
    needs: [
      { kinds: ['statement', 'saidBefore'], words: ['those', 'them'] },
      { kinds: ['number'], words: ['none'] },
    ],
  },
  { read: readMeasures, needs: [{ kinds: ['number'], words: ['year', 'twelvemonth'] }] },
  { read: readResolution, needs: [{ kinds: ['resolution'] }] },
  { read: readPanel, needs: [{ kinds: ['panelKind'] }] },
  {
    read: readFormatOf,
    needs: [{ kinds: ['format'] }, { kinds: ['set'] }, { words: ['comes', 'works', 'is', 'comes with'] }],
  },
  { read: readFormats, needs: [{ kinds: ['format'] }] },
  {
    read: readPaidMore,
    needs: [
      { kinds: ['number', 'multiple'] },
      { kinds: ['number'], words: ['money'] },
      {
        kinds: ['saidBefore'],
        words: ['another', 'extra', 'further', 'additional', 'more', 'less', 'saves', 'save'],
      },
    ],
  },
  { read: readPrice, needs: [{ kinds: ['number'] }] },
  {
    read: readAdjusting,
    needs: [
      {
        kinds: ['adjusted'],
        words: ['adjustment', 'calibration', 'adjusting', 'calibrating', 'correction'],
      },
      { kinds: ['number', 'multiple'] },
    ],
  },
  { read: readWithin, needs: [{ kinds: ['number', 'multiple'] }, { kinds: ['concept', 'signal'] }] },
  { read: readWindowRatios, needs: [{ kinds: ['window'] }, { kinds: ['number', 'multiple'] }] },
  { read: readDoubledBy, needs: [{ words: multiplied }, { kinds: ['set'] }] },
  {
    read: readRatiosAndDifferences,
    needs: [
      { kinds: ['number', 'multiple'] },
      {
        kinds: ['comparative', 'equative', 'multiple', 'times', 'standing', 'comparator'],
        words: [
          ...['than', 'as', 'of', 'by', 'what', 'former', 'original', 'initial', 'previous'],
          ...['exceeds', 'surpasses', 'tops', 'leads', ...winning, ...losing],
        ],
      },
      // A word that compares, what is compared, or a state of the set to compare with.
      {
        kinds: [
          ...(['comparative', 'equative', 'comparator', 'standing', 'unit', 'maker', 'rival'] as const),
          ...(['concept', 'stage', 'signal', 'mode', 'dimming', 'adjusted'] as const),
          ...(['saidBefore', 'quantityBefore'] as const),
        ],
        words: [
          ...['exceeds', 'surpasses', 'tops', 'leads', ...winning, ...losing],
          ...['more', 'less', 'dearer', 'cheaper', 'ahead', 'behind', 'short of', 'up on'],
          ...['long', 'high', 'large', 'great', 'big', 'wide', 'strong', 'much'],
          ...['as high as', 'as many as', 'as much as', 'ahead of', 'down on'],
        ],
      },
    ],
  },
  {
    read: readWorstCell,
    needs: [{ words: ['darkest', 'dimmest', 'brightest', 'weakest', 'worst'] }],
  },
  // Rankings and comparisons without a number.
  { read: readExceededBy, needs: [{ words: exceeding }, { kinds: ['set'] }] },
  {
    read: readEquals,
    needs: [
      { kinds: ['set', 'equative'], words: ['neither'] },
      {
        kinds: ['equative'],
        words: [
          'neither',
          'matches',
          'match',
          'matching',
          'equals',
          'rivals',
          'same',
          'identical',
          'unchanged',
          'as much as',
        ],
      },
    ],
  },
  {
    read: readEvenMatch,
    needs: [
      {
        words: [
          ...[
            'level',
            'even',
            'par',
            'neck',
            'nothing',
            'little',
            'tie',
            'tied',
            'ties',
            'inseparable',
            'heat',
          ],
        ],
      },
      {
        words: [
          ...['are', 'is', 'were', 'was', 'draws', 'draw', "isn't", 'a', 'neck', 'between'],
          ...['tie', 'tied', 'ties', 'inseparable', 'dead'],
        ],
      },
    ],
  },
  {
    read: readNextRank,
    needs: [{ kinds: ['ordinal'], words: ['last'] }, { kinds: ['set'] }, { kinds: ['saidBefore'] }],
  },
  {
    read: readRankList,
    needs: [{ kinds: ['ordinal'], words: ['last'] }, { kinds: ['concept', 'unit', 'maker', 'saidBefore'] }],
  },
  {
    read: readRanks,
    needs: [
      { kinds: ['ordinal'] },
      { words: ['ranks', 'rank', 'ranked', 'finishes', 'places', 'placed', 'comes', 'came', 'is', 'was'] },
    ],
  },
  {
    read: readAgainst,
    needs: [
      { kinds: ['standing', 'unit', 'maker', 'rival'] },
      { kinds: ['standing', 'verb', 'comparator'] },
      { kinds: ['unit', 'maker', 'rival', 'concept', 'quantityBefore'], words: ['both'] },
    ],
  },
  {
    read: readBetween,
    needs: [
      { words: ['between'] },
      { kinds: ['unit', 'maker', 'rival'], words: ['other', 'others', 'rivals'] },
    ],
  },
  { read: readWindowLost, needs: [{ kinds: ['verb'] }, { kinds: ['number'] }, { kinds: ['set'] }] },
  {
    read: readOrders,
    needs: [
      {
        kinds: ['comparative', 'superlative'],
        words: extremes,
      },
      {
        kinds: [
          ...(['comparison', 'superlative', 'concept', 'unit', 'maker', 'rival'] as const),
          ...(['stat', 'negation', 'equative'] as const),
        ],
        words: [
          ...extremes,
          ...['than', 'hardly', 'scarcely', 'yet', "haven't", 'not'],
          ...['set', 'television', 'model', 'screen', 'tv', 'panel'],
        ],
      },
      {
        kinds: ['set', 'pronoun', 'unit', 'maker', 'superlative', 'stat', 'negation', 'concept', 'number'],
        words: [...['than', 'hardly', 'scarcely', 'yet'], ...['set', 'television', 'model', 'screen', 'tv']],
      },
    ],
  },
  {
    read: readObservations,
    needs: [
      {
        kinds: ['topic', 'severity', 'asked', 'house'],
        words: ['none', 'any', ...goneWords, ...lookingWords],
      },
      { kinds: ['topic', 'asked', 'topicBefore'] },
    ],
  },
  {
    read: readLeavesCurve,
    needs: [{ words: ['leaves', 'leave', 'left', 'departs', 'parts'] }, { kinds: ['number'] }],
  },
  { read: readLimitAgain, needs: [{ kinds: ['number'] }, { kinds: ['saidBefore'] }, { words: ['from'] }] },
  {
    read: readRolloffAgain,
    needs: [{ kinds: ['set'], words: ['does', 'did'] }, { kinds: ['number'] }, { kinds: ['saidBefore'] }],
  },
  { read: readEllipsis, needs: [{ kinds: ['stat'] }, { kinds: ['saidBefore'] }] },
  {
    read: readEcho,
    needs: [
      { kinds: ['statement'] },
      { kinds: ['unit', 'maker', 'pronoun', 'hue'], words: answers },
      { words: [...answers, ...echoing] },
    ],
  },
  {
    read: readVisibleFrom,
    needs: [{ kinds: ['statement'] }, { kinds: ['axis'] }, { words: ['it', 'they'] }],
  },
  { read: resolveDoubtfulAxes, needs: [{ kinds: ['axis'] }] },
  {
    read: readEveryHue,
    needs: [{ kinds: ['number'] }, { kinds: ['limit', 'verb'] }, { kinds: ['stat', 'hue'], words: ['both'] }],
  },
  { read: readNearTo, needs: [{ kinds: ['limit'] }, { words: ['of'] }] },
  {
    read: readLimits,
    needs: [{ kinds: ['number'] }, { kinds: ['limit', 'verb'], words: ['misses', 'missed', 'miss'] }],
  },
  { read: readHouseWords, needs: [{ kinds: ['house', 'adjective'] }] },
  { read: readTints, needs: [{ kinds: ['tint', 'lean', 'hue', 'concept'], words: ['pink', 'purple'] }] },
  { read: readDirections, needs: [{ kinds: ['direction'] }] },
  {
    read: readByFactor,
    needs: [{ kinds: ['times', 'multiple'] }, { words: ['by'] }, { kinds: ['saidBefore'] }],
  },
  { read: readHowFar, needs: [{ kinds: ['number'] }, { words: ['by'] }, { kinds: ['saidBefore'] }] },
  { read: readValues, needs: [{ kinds: ['number', 'multiple'] }] },
  { read: readSameAs, needs: [{ words: ['same'] }, { kinds: ['unit', 'maker', 'rival'] }] },
  {
    read: readCulprit,
    needs: [
      {
        words: [
          ...['culprit', 'offender', 'weakest', 'weak', 'worst', 'darkest', 'dimmest', 'sits'],
          ...['at worst', 'at its worst'],
        ],
      },
    ],
  },
  {
    read: readLeftovers,
    needs: [
      {
        kinds: ['number', 'multiple', 'gamut', 'superlative', 'hedge', 'concept'],
      },
      {
        kinds: ['number', 'concept', 'gamut', 'unit', 'rival', 'fullScreen', 'measure'],
        words: ['tested', 'set', 'sets', 'we', 'televisions', 'class', 'rivals'],
      },
      { kinds: ['number', 'concept', 'gamut', 'unit', 'rival', 'fullScreen', 'superlative'] },
    ],
  },
  { read: readOpinions, needs: [{ kinds: ['opinion'] }, { words: copulas }] },
];

export const rules: readonly Rule[] = table.map(({ read, needs }) => ({ read, needs: needBits(needs) }));

/** Shows a clause to every rule that finds what it needs there. */
export function readClause(scene: Scene, findings: Findings): undefined {
  const signs = signsOf(scene);
  for (const { read, needs } of rules) if (meets(signs, needs)) read(scene, findings);
}
