import type { Item } from '../items.ts';
import { hasKey, type Scene } from '../scene.ts';

/** A word of direction in its clause. */
export interface SaidDirection {
  item: Item;
  key: string;
  /** What it says; of "blues a little under" what was said of reds before it */
  text: string;
  /** The clause states a number with a unit. */
  hasValue: boolean;
}

/** Does the word, or the clause, speak of saturation: "pale", "too vivid"? */
export function isSaturation(scene: Scene, text: string): boolean {
  return (
    /satur|pale|vivid|rich|washed|overcooked|lively|overdone|strong|weak|mute/.test(text) ||
    hasKey(scene, 'concept', 'saturation')
  );
}

/** Does the word, or the clause, speak of an amount of light: "too dark", "lifted"? */
export function isLight(scene: Scene, text: string): boolean {
  return (
    /bright|dark|dim|light|lumin|lifted|raised|crushed/.test(text) || hasKey(scene, 'concept', 'luminance')
  );
}
