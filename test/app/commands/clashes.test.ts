import { expect, it, vi } from 'vitest';

// The window's door opens at import; commands are only listed here, never performed.
vi.stubGlobal('window', {
  nitproof: { ask: vi.fn(), subscribe: vi.fn() },
  matchMedia: vi.fn(),
  location: { hash: '' },
  addEventListener: vi.fn(),
});
vi.stubGlobal('localStorage', { getItem: () => null, setItem: vi.fn(), removeItem: vi.fn() });

it('no two commands of one room answer to the same key', async () => {
  const { shellCommands } = await import('../../../app/shell/shellCommands.ts');
  const { draftCommands } = await import('../../../app/draft/draftCommands.ts');
  const { blockCommands } = await import('../../../app/draft/blockCommands.ts');
  const { benchCommands } = await import('../../../app/bench/benchCommands.ts');
  const rooms = {
    draft: [...shellCommands, ...draftCommands, ...blockCommands],
    bench: [...shellCommands, ...benchCommands(() => undefined)],
  };
  for (const [room, commands] of Object.entries(rooms)) {
    const keys = commands.flatMap(({ key }) => (key ? [key] : []));
    const ids = commands.map(({ id }) => id);
    expect([room, keys.filter((key, index) => keys.indexOf(key) !== index)]).toEqual([room, []]);
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
    expect(keys.length).toBeGreaterThan(10);
  }
});
