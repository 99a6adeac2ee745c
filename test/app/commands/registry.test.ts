import { beforeAll, describe, expect, it, vi } from 'vitest';

// The window's door opens at import.
vi.stubGlobal('window', {
  nitproof: { ask: vi.fn(), subscribe: () => () => undefined },
  addEventListener: vi.fn(),
});
vi.stubGlobal('localStorage', { getItem: () => null, setItem: vi.fn(), removeItem: vi.fn() });
vi.stubGlobal('document', { querySelector: () => null });

let registry: typeof import('../../../app/commands/registry.ts');
beforeAll(async () => {
  registry = await import('../../../app/commands/registry.ts');
});

const command = (id: string, perform: () => void, further: { key?: string; when?: () => boolean } = {}) => ({
  id,
  name: id,
  group: 'Window' as const,
  perform,
  ...further,
});

/** A window that only hears keys. */
function keyboard() {
  let hear: (event: object) => void = () => undefined;
  const target = {
    addEventListener: (_type: string, listener: (event: object) => void) => {
      hear = listener;
    },
    removeEventListener: () => {
      hear = () => undefined;
    },
  };
  const press = (key: string) => {
    const event = { key, preventDefault: vi.fn(), stopPropagation: vi.fn() };
    hear({ ctrlKey: false, metaKey: false, altKey: false, shiftKey: false, isComposing: false, ...event });
    return event.preventDefault.mock.calls.length > 0;
  };
  return { target: target as unknown as Window, press };
}

describe('the registry of commands', () => {
  it('tells who listens of each command that was performed, by id or key, after it was', () => {
    const told: string[] = [];
    const { target, press } = keyboard();
    const stops = [
      registry.onPerformed((id) => told.push(`told ${id}`)),
      registry.registerCommands([command('a', () => told.push('did a'), { key: 'F8' })]),
      registry.listenForCommands(target),
    ];
    expect(registry.performCommand('a')).toBe(true);
    expect(press('F8')).toBe(true);
    expect(told).toEqual(['did a', 'told a', 'did a', 'told a']);
    for (const stop of stops) stop();
    expect([registry.performCommand('a'), press('F8'), told.length]).toEqual([false, false, 4]);
  });

  it('performs nothing that is not possible now', () => {
    const perform = vi.fn();
    const told = vi.fn();
    const stops = [
      registry.onPerformed(told),
      registry.registerCommands([command('b', perform, { key: 'F9', when: () => false })]),
    ];
    expect([registry.performCommand('b'), perform.mock.calls, told.mock.calls]).toEqual([false, [], []]);
    for (const stop of stops) stop();
  });

  it('lets a later command stand in for an earlier one of its id', () => {
    const [earlier, later] = [vi.fn(), vi.fn()];
    const stops = [
      registry.registerCommands([command('c', earlier)]),
      registry.registerCommands([command('c', later)]),
    ];
    registry.performCommand('c');
    expect([earlier.mock.calls.length, later.mock.calls.length]).toEqual([0, 1]);
    for (const stop of stops) stop();
  });
});
