import { expect, it } from 'vitest';
import { unsaidLines } from '../../../app/draft/panels/unsaidText.ts';

it('conditions of an unsaid finding stand below it, and the finding has no full stop', () => {
  expect(
    unsaidLines({
      reason: 'Blue is 11 % short of its saturation target; HDR10 as delivered; sample 2.',
      conditions: 'HDR10 as delivered; sample 2',
    }),
  ).toEqual({
    finding: 'Blue is 11 % short of its saturation target',
    conditions: 'HDR10 as delivered; sample 2',
  });
  expect(unsaidLines({ reason: 'Judder is visible in slow pans.' })).toEqual({
    finding: 'Judder is visible in slow pans',
    conditions: '',
  });
});
