import type { FactStatement, Facts } from './unit.ts';

/** All statements about one key, oldest spelling first: a single statement counts as a list of one. */
export function factStatements(facts: Facts | undefined, key: string): FactStatement[] {
  const entry = facts && Object.hasOwn(facts, key) ? facts[key] : undefined;
  if (entry === undefined) return [];
  return Array.isArray(entry) ? entry : [entry];
}
