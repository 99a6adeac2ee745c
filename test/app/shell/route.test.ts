import { describe, expect, it } from 'vitest';
import { hashOf, parseRoute } from '../../../app/shell/route.ts';

describe('addresses inside the window', () => {
  it('read back what was written, odd characters included', () => {
    const hash = hashOf('bench', ['orrinvale-hearth-55', 'calm/50 %'], { row: '12' });
    expect(parseRoute(hash)).toEqual({
      room: 'bench',
      path: ['orrinvale-hearth-55', 'calm/50 %'],
      query: { row: '12' },
    });
  });

  it('lead to the Draft when they name no room', () => {
    expect(parseRoute('#/attic')).toEqual({ room: 'draft', path: [], query: {} });
  });
});
