import { describe, expect, it } from 'vitest';
import { fetchedPart } from '../../../app/shell/Fetched.tsx';

const Part = () => null;

describe('a part of the window whose program is fetched apart', () => {
  it('is fetched once, however often it is asked for', async () => {
    let fetched = 0;
    const from = fetchedPart(async () => {
      fetched += 1;
      return Part;
    });
    expect(from.part()).toBeNull();
    await Promise.all([from.fetch(), from.fetch()]);
    await from.fetch();
    expect([fetched, from.part()]).toEqual([1, Part]);
  });

  it('can be asked for again after it could not be fetched', async () => {
    let fetched = 0;
    const from = fetchedPart(async () => {
      fetched += 1;
      if (fetched === 1) throw new Error('offline');
      return Part;
    });
    await expect(from.fetch()).rejects.toThrow('offline');
    await from.fetch();
    expect(from.part()).toBe(Part);
  });
});
