import type { Item } from '../items.ts';
import type { Scene } from '../scene.ts';

const sizeWords = [
  'considerably',
  'slightly',
  'barely',
  'clearly',
  'much',
  'far',
  'marginally',
  'somewhat',
  'notably',
  'noticeably',
  'significantly',
  'visibly',
  'markedly',
  'substantially',
  'decidedly',
  'even',
  'vastly',
  'distinctly',
];

/** "considerably brighter": a word of size, which has no definition and only repeats the order. */
export function sizeWordOf(scene: Scene, item: Item): { sizeWord?: string; item?: Item } {
  const before = scene.items[scene.items.indexOf(item) - 1];
  return before && sizeWords.includes(before.text) ? { sizeWord: before.text, item: before } : {};
}
