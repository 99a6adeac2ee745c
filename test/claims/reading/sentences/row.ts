/** A sentence, and what each of its claims says in one line (`context.ts` writes them). */
export type SentenceRow = readonly [sentence: string, ...says: string[]];
