/**
 * Claims: from an article's text and the evidence to verdicts. Reading order: reading/ (sentence to checks),
 * checking/ (check and evidence to verdict), memo (each judged once), anchors, anchoring, placing and staleness (what
 * edits do to accepted proofs), agreement, unsaid, checker (all of it for one article), report (what leaves the house).
 */
export { describeAnchor } from './anchors.ts';
export { type ArticleChecker, type ArticleVerdicts, createChecker, type Totals } from './checker.ts';
export { type JudgingBench, judge } from './checking/index.ts';
export { readingContextOf } from './context.ts';
export { type CheckReport, exitStatusOf, reportOf } from './report.ts';
export { digestsOf } from './staleness.ts';
