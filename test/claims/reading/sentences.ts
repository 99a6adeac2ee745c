import { comparisons } from './sentences/comparisons.ts';
import { directions } from './sentences/directions.ts';
import { facts } from './sentences/facts.ts';
import { limits } from './sentences/limits.ts';
import { observed } from './sentences/observed.ts';
import type { SentenceRow } from './sentences/row.ts';
import { silent } from './sentences/silent.ts';
import { unproven } from './sentences/unproven.ts';
import { valuesOfColour } from './sentences/valuesOfColour.ts';
import { valuesOfLight } from './sentences/valuesOfLight.ts';

/**
 * Sentences of reviews in many phrasings → what each says, by what the first of its claims is (`sentences/`). A sentence
 * that makes several claims has several lines. Read each as a reviewer would before changing it.
 */
export const sentences: readonly SentenceRow[] = [
  ...comparisons,
  ...directions,
  ...facts,
  ...limits,
  ...observed,
  ...silent,
  ...unproven,
  ...valuesOfColour,
  ...valuesOfLight,
];
