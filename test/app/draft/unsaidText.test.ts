import { expect, it } from 'vitest';
import { unsaidLines } from '../../../app/draft/panels/unsaidText.ts';

it('an unsaid finding is its first clause; conditions stand apart and the heading says the rest', () => {
  expect(
    unsaidLines('the tint reaches 0.015 at 5 %, and no sentence mentions it; as delivered, Studio, SDR.'),
  ).toEqual({ finding: 'The tint reaches 0.015 at 5 %', conditions: 'as delivered, Studio, SDR' });
});
