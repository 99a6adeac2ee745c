import type { ReadingContext } from '../../contract/articleText.ts';
import { nameBareDirections } from './bareDirections.ts';
import { nameBoth } from './bothRivals.ts';
import type { Carry } from './carry.ts';
import { nameClippingPlace } from './clippingPlace.ts';
import { nameFormerAndLatter } from './formerLatter.ts';
import { nameHueAgain } from './hueAgain.ts';
import type { Item } from './items.ts';
import { nameKeptPromise } from './keptPromise.ts';
import { takeUpLimit } from './limitSaid.ts';
import { nameMakersSets } from './makersSets.ts';
import { nameCrush } from './nearBlackCrush.ts';
import { meets, type Needs, needBits, type Signs, signsOfItems } from './needs.ts';
import { nameSockets } from './portCount.ts';
import { nameShortOfTarget } from './shortOfTarget.ts';

/** Gives some words the meaning that only their sentence, or the one before, leaves them. */
interface Step {
  /** A sentence that lacks one of these has no such words. */
  needs: Needs;
  settle(items: readonly Item[], carry: Carry, context: ReadingContext): undefined;
}

const steps = (
  [
    { needs: [{ kinds: ['maker'] }], settle: (items, _, context) => nameMakersSets(items, context) },
    {
      needs: [
        { words: ['it', 'that', 'this', 'does', 'do', 'is', 'are'] },
        { kinds: ['comparator', 'verb', 'limit'] },
      ],
      settle: (items, { limit }) => takeUpLimit(items, limit),
    },
    {
      needs: [{ words: ['sockets', 'ports', 'inputs'] }],
      settle: (items, { ports }) => nameSockets(items, ports),
    },
    {
      needs: [{ words: ['former', 'latter'] }],
      settle: (items, { sets }, context) => nameFormerAndLatter(items, sets, context),
    },
    { needs: [{ words: ['both'] }], settle: nameBoth },
    { needs: [{ words: ['clipping'] }, { kinds: ['number'] }], settle: nameClippingPlace },
    { needs: [{ kinds: ['direction'] }, { kinds: ['comparator'] }], settle: nameShortOfTarget },
    {
      needs: [{ kinds: ['hue'] }, { kinds: ['number'] }, { words: ['they', 'it', 'and', 'but'] }],
      settle: nameHueAgain,
    },
    { needs: [{ words: ['promise', 'pledge'] }], settle: nameKeptPromise },
    { needs: [{ words: ['crushed', 'crushes', 'crush', 'crushing'] }], settle: nameCrush },
    { needs: [{ kinds: ['direction'] }, { words: ['over', 'under'] }], settle: nameBareDirections },
  ] satisfies Step[]
).map(({ needs, settle }) => ({ needs: needBits(needs), settle }));

/**
 * Settles what some words of a sentence mean by the words around them.
 * @returns what the sentence shows to the rules, when that is done
 */
export function settleMeanings(items: readonly Item[], carry: Carry, context: ReadingContext): Signs {
  const signs = signsOfItems(items);
  let settled = false;
  for (const { needs, settle } of steps) {
    if (!meets(signs, needs)) continue;
    settle(items, carry, context);
    settled = true;
  }
  return settled ? signsOfItems(items) : signs;
}
