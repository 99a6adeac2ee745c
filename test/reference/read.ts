import { readFileSync } from 'node:fs';
import Papa from 'papaparse';

const text = (name: string) => readFileSync(new URL(`./data/${name}`, import.meta.url), 'utf8');

/** A JSON file of outside check values; the shape is stated by the test that reads it. */
export function referenceJson<T>(name: string): T {
  return JSON.parse(text(name)) as T;
}

/** Rows of a CSV file of outside check values, all cells as text. */
export function referenceCsv(name: string): Record<string, string>[] {
  return Papa.parse<Record<string, string>>(text(name), { header: true, skipEmptyLines: true }).data;
}
