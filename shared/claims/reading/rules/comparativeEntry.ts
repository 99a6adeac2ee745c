/** What a comparing word compares, and which way is more of it. An empty concept takes the clause's own. */
export interface ComparativeEntry {
  concept: string;
  direction: 'higher' | 'lower';
}
