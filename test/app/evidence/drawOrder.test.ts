import { describe, expect, it } from 'vitest';
import { createDrawQueue } from '../../../app/evidence/drawQueue.ts';
import { mostUrgentFirst } from '../../../app/evidence/urgency.ts';

const takeAll = (queue: ReturnType<typeof createDrawQueue>) => {
  const taken: string[] = [];
  for (let work = queue.next(); work; work = queue.next()) taken.push(work.ticket);
  return taken;
};

describe('draws that wait', () => {
  it('are made in the order of the text while nothing is preferred', () => {
    const queue = createDrawQueue();
    for (const ticket of ['a', 'b', 'c']) queue.add({ ticket });
    expect(takeAll(queue)).toEqual(['a', 'b', 'c']);
  });

  it('are made first where a person looks, then in the order of the text', () => {
    const queue = createDrawQueue();
    for (const ticket of ['a', 'b', 'c', 'd', 'e']) queue.add({ ticket });
    queue.prefer(['d', 'gone', 'b']);
    expect(takeAll(queue)).toEqual(['d', 'b', 'a', 'c', 'e']);
  });

  it('follow the newest wish: scrolling on takes the haste from what was left behind', () => {
    const queue = createDrawQueue();
    for (const ticket of ['a', 'b', 'c', 'd']) queue.add({ ticket });
    queue.prefer(['d', 'c']);
    expect(queue.next()?.ticket).toBe('d');
    queue.prefer(['b']);
    expect(takeAll(queue)).toEqual(['b', 'a', 'c']);
  });

  it('are made even when they are asked for after they were preferred', () => {
    const queue = createDrawQueue();
    queue.add({ ticket: 'a' });
    queue.prefer(['z']);
    queue.add({ ticket: 'z' });
    expect(takeAll(queue)).toEqual(['z', 'a']);
  });
});

it('the open proof comes first, then those in view, then former problems, then the rest', () => {
  const claim = (name: string, isOpened: boolean, isInView: boolean, before: 'holds' | 'breaks' | null) => ({
    claim: name,
    isOpened,
    isInView,
    before,
  });
  expect(
    mostUrgentFirst([
      claim('far, held', false, false, 'holds'),
      claim('far, broke', false, false, 'breaks'),
      claim('seen', false, true, null),
      claim('open', true, false, null),
      claim('far, new', false, false, null),
      claim('seen, broke', false, true, 'breaks'),
    ]),
  ).toEqual(['open', 'seen', 'seen, broke', 'far, broke', 'far, held', 'far, new']);
});
