/**
 * A check and the evidence to a verdict. Reading order: bench (what may be looked at), sight (the evidence as one
 * claim sees it), resolve (which run), operand (which number), decide (how sure), one file a kind, then signals and
 * definitions (what the words leave open), judge (all of it).
 */
export type { JudgingBench } from './bench.ts';
export { judge, judgeReasoned, type Reasoned } from './judge.ts';
export { currentRuns, type Dependency, dependencyState } from './sight.ts';
