import type { SentenceRow } from './row.ts';

/** Scores, awards and what others gave. */
export const scores: readonly SentenceRow[] = [
  ['It misses our award by a whisker.', 'score award = false'],
  ['It not merely earns our award, it scores 8.1.', 'score award = true', 'unproven'],
  ['It scored 8.1 out of 10 last month, and we stand by it.', 'score total = 8.1 of 10'],
  ['It scores 8.1, a tenth more than the Plain.', 'score total = 8.1', 'unproven'],
  ['Not only does it earn our award, it scores 8.1.', 'score award = true', 'score total = 8.1'],
  ['We gave it 8.1 out of 10.', 'score total = 8.1 of 10'],
  ['We gave it 9 out of 10.', 'score total = 9 of 10'],
  ['It has yet to earn our award.', 'score award = false'],
  ['The Hearth scores 7.5 out of 10.', 'score total = 7.5 of 10'],
  ['We give it 7.5/10.', 'score total = 7.5 of 10'],
  ['It earns our award.', 'score award = true'],
  ['The score is 7.5.', 'score total = 7.5'],
  ['Overall score: 7.5/10', 'score total = 7.5 of 10'],
  ['Verdict: 7.5 out of 10.', 'score total = 7.5 of 10'],
  ['It gets 8 out of 10 for picture.', 'score picture = 8 of 10'],
  ['Picture: 8/10', 'score picture = 8 of 10'],
  ['It wins no award.', 'score award = false'],
  ['The Hearth receives our award.', 'score award = true'],
  ['With 7.5 points it scores better than the Kasulind.', 'score total = 7.5', 'unproven'],
  ['We give it 8.5.', 'score total = 8.5'],
  ['It gets 8.5 points out of a possible 10.', 'score total = 8.5 of 10'],
  ['It gets 8.5 from us.', 'score total = 8.5'],
  [
    'It earns an 8 for picture, a 7 for sound and 8.4 overall.',
    'score picture = 8',
    'score sound = 7',
    'score total = 8.4',
  ],
];
