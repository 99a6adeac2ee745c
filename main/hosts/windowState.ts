import { readFileSync, writeFileSync } from 'node:fs';
import { z } from 'zod';

const bounds = z.object({
  x: z.number().int().optional(),
  y: z.number().int().optional(),
  width: z.number().int().min(640),
  height: z.number().int().min(480),
  maximized: z.boolean().optional(),
});

const stateSchema = z.object({ bounds: bounds.optional(), recent: z.array(z.string()).max(10).default([]) });
export type WindowState = z.infer<typeof stateSchema>;

/** Where the window stood and which libraries were open lately; a damaged file counts as none. */
export function readWindowState(file: string): WindowState {
  try {
    return stateSchema.parse(JSON.parse(readFileSync(file, 'utf8')));
  } catch {
    return { recent: [] };
  }
}

export function writeWindowState(file: string, state: WindowState): void {
  writeFileSync(file, `${JSON.stringify(state, null, 2)}\n`);
}

/** The newest first, each once, ten at most. */
export function withRecent(recent: readonly string[], library: string): string[] {
  return [library, ...recent.filter((file) => file !== library)].slice(0, 10);
}
