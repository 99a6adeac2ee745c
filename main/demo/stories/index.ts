import type { UnitStory } from '../story.ts';
import { hearth55 } from './hearth55.ts';
import { rivalStories } from './rivals.ts';
import { vane50 } from './vane50.ts';

/** Every invented set with its runs. */
export const stories: readonly UnitStory[] = [hearth55, vane50, ...rivalStories];
