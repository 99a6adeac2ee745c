import { describe, expect, it } from 'vitest';
import { keyLabel, matches, type Press } from '../../../app/commands/keys.ts';

const press = (key: string, held: Partial<Press> = {}): Press => ({
  key,
  ctrlKey: false,
  metaKey: false,
  altKey: false,
  shiftKey: false,
  ...held,
});

describe('keys of commands', () => {
  it('take Mod as Control, and as Command on a Mac', () => {
    expect(matches('Mod+K', press('k', { ctrlKey: true }), false)).toBe(true);
    expect(matches('Mod+K', press('k', { metaKey: true }), false)).toBe(false);
    expect(matches('Mod+K', press('k', { metaKey: true }), true)).toBe(true);
  });

  it('tell F8 from Shift+F8', () => {
    expect(matches('F8', press('F8', { shiftKey: true }), false)).toBe(false);
    expect(matches('Shift+F8', press('F8', { shiftKey: true }), false)).toBe(true);
  });

  it('take a sign with or without Shift, as keyboards differ', () => {
    expect(matches('Mod+=', press('=', { ctrlKey: true, shiftKey: true }), false)).toBe(true);
  });

  it('are printed as each platform prints them', () => {
    expect([keyLabel('Mod+K', false), keyLabel('Mod+K', true)]).toEqual(['Ctrl+K', '⌘K']);
  });
});
