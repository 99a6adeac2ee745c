import { expect, test } from 'vitest';
import { drawQuantity } from '../../shared/certainty/index.ts';
import { createWorkspace } from '../../shared/certainty/workspace.ts';
import { measureRun } from '../../shared/measure/index.ts';
import { measured } from '../measure/expected.ts';
import { evidenceOf, fullRun, readingsOf } from '../measure/inventedUnit.ts';

function borrower(): { forgotten: number; forget(): void } {
  return {
    forgotten: 0,
    forget() {
      this.forgotten += 1;
    },
  };
}

test('columns of one borrower stay its own from one work to the next', () => {
  const workspace = createWorkspace(4);
  const one = borrower();
  workspace.begin(one);
  const first = workspace.take();
  workspace.begin(one);
  expect(workspace.take()).not.toBe(first);
  expect(one.forgotten).toBe(0);
});

test('another borrower takes them all back, and the former one is told', () => {
  const workspace = createWorkspace(4);
  const [one, other] = [borrower(), borrower()];
  workspace.begin(one);
  const [first, second] = [workspace.take(), workspace.take()];
  expect(second).not.toBe(first);
  workspace.begin(other);
  expect([one.forgotten, other.forgotten]).toEqual([1, 0]);
  expect([workspace.take(), workspace.take()]).toEqual([first, second]);
});

test('more columns than may be out are taken back when a work begins, not before', () => {
  const workspace = createWorkspace(2);
  const one = borrower();
  workspace.begin(one);
  const columns = [workspace.take(), workspace.take()];
  workspace.begin(one);
  expect(one.forgotten).toBe(0);
  columns.push(workspace.take());
  expect(new Set(columns).size).toBe(3);
  workspace.begin(one);
  expect(one.forgotten).toBe(1);
  expect(workspace.take()).toBe(columns[0]);
});

test('runs that take turns do not see each other’s draws', () => {
  const { unit, run } = evidenceOf(readingsOf(...fullRun()));
  const runs = ['one', 'two'].map((digest) => ({ ...run, digest }));
  const ids = ['grey.de2000', 'grey.de2000.total', 'sweep.red.de2000', 'uniformity.grey50', 'angle.de2000'];
  const uncertainties = (found: ReturnType<typeof measureRun>, id: string) => {
    const { values, average, max, min } = measured(found, id);
    return [...values.map(({ u }) => u), average?.u, max?.u, min?.u];
  };
  const alone = runs.map((each) => {
    const found = measureRun(unit, each);
    return ids.map((id) => uncertainties(found, id));
  });
  const together = runs.map((each) => measureRun(unit, each));
  const turns = ids.map((id) => together.map((found) => uncertainties(found, id)));
  expect(runs.map((_, r) => turns.map((both) => both[r]))).toEqual(alone);
  expect(alone[0]).not.toEqual(alone[1]);
  const [draws, again] = [0, 1].map(() => drawQuantity(unit, runs[0]!, 'sweep.red.de2000')!.values);
  drawQuantity(unit, runs[1]!, 'sweep.red.de2000');
  expect(draws).toEqual(again);
});
