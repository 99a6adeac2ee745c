import { expect, test } from 'vitest';
import { createWorkspace } from '../../shared/certainty/workspace.ts';

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
