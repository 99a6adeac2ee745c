import type { Cohort, OrderCheck, Selector } from '../../../contract/check.ts';
import { type Item, isWord, keyOf } from '../items.ts';
import { operandOf } from '../operand.ts';
import type { Quantity } from '../quantity.ts';
import type { Scene } from '../scene.ts';
import { selectorOf } from '../selector.ts';
import { resolveMention } from '../units.ts';
import { groupNamed, groupOf } from './group.ts';

/** Who takes part in a ranking: price, year, number, exceptions. */
export function cohortOf(scene: Scene): { cohort: Cohort; items: Item[] } {
  const cohort: Cohort = {};
  const items: Item[] = [];
  const all = scene.items;
  for (let at = 0; at < all.length; at += 1) {
    const item = all[at]!;
    if (item.number?.role === 'money') {
      const comparator = item.number.comparator;
      const price = { amount: item.number.x * item.number.factor, currency: item.number.unit };
      if (comparator === '<' || comparator === '<=')
        cohort.priceUnder = { ...price, ...(comparator === '<=' && { included: true }) };
      else if (comparator === '>' || comparator === '>=')
        cohort.priceOver = { ...price, ...(comparator === '>=' && { included: true }) };
      else continue;
      items.push(item);
      item.number.role = 'cohort';
    }
    if (isWord(item, 'this') && isWord(all[at + 1], 'year') && scene.context.date) {
      cohort.year = Number(scene.context.date.slice(0, 4));
      items.push(item, all[at + 1]!);
    }
    // "The brightest set of the year"
    if (
      isWord(item, 'the') &&
      isWord(all[at - 1], 'of') &&
      isWord(all[at + 1], 'year') &&
      scene.context.date
    ) {
      cohort.year = Number(scene.context.date.slice(0, 4));
      items.push(all[at - 1]!, item, all[at + 1]!);
    }
    if (isWord(item, 'last') && all[at + 1] && isWord(all[at + 1], 'year') && scene.context.date) {
      cohort.year = Number(scene.context.date.slice(0, 4)) - 1;
      items.push(item, all[at + 1]!);
    } else if (isWord(item, 'last', 'past') && all[at + 1]?.number && all[at + 1]!.number!.dimension === '') {
      cohort.last = all[at + 1]!.number!.x;
      all[at + 1]!.number!.role = 'cohort';
      items.push(item, all[at + 1]!);
    }
    if (item.number?.role === 'year' && isWord(all[at - 1], 'in', 'of')) {
      cohort.year = item.number.x;
      items.push(item);
    }
    if (item.number?.role === 'size' && all.some((entry) => keyOf(entry, 'superlative'))) {
      cohort.diagonalInches = item.number.x;
      items.push(item);
    }
    if (isWord(item, 'ips', 'va', 'oled')) {
      cohort.panel = item.text.toUpperCase();
      items.push(item);
    }
  }
  const group = groupNamed(scene);
  const members = group && groupOf(scene, group.n);
  if (group && members) {
    Object.assign(cohort, members);
    items.push(...group.items);
    for (const { number } of group.items) if (number) number.role = 'cohort';
  }
  const barred = scene.units.filter((mention) => mention.role === 'barred');
  const except = barred
    .map((mention) => resolveMention(mention, scene.carry, scene.context))
    .filter((id) => id !== undefined);
  if (except.length > 0) cohort.except = except;
  items.push(...barred.map((mention) => mention.item));
  return { cohort, items };
}

export function orderCheck(
  scene: Scene,
  quantity: Quantity,
  direction: 'higher' | 'lower',
  rank: OrderCheck['rank'],
  cohort: Cohort,
  more: Partial<OrderCheck> = {},
): OrderCheck {
  return {
    kind: 'order',
    key: operandOf(scene, quantity, orderSelector(scene, quantity)),
    direction,
    rank,
    cohort,
    ...more,
  };
}

/** "More accurate": accurate is a word on the average, where nothing else is named (`judging.md`, "House words"). */
function orderSelector(scene: Scene, quantity: Quantity): Selector {
  const selector = selectorOf(scene, quantity, 'value');
  const accuracy = scene.items.some(
    (item) =>
      (keyOf(item, 'comparative') ?? keyOf(item, 'superlative')) !== undefined &&
      /accurate|precise|faithful|truer|truest/.test(item.text),
  );
  // Errors of which no statistic is named are compared by their averages, as accuracy is.
  const ofErrors = quantity.axis !== null && quantity.axis !== 'angle' && /\.de2000$/.test(quantity.id);
  // "No set is more accurate", "the Plain the least": no word on the levels.
  const named = scene.items.some((item) => ['average', 'max'].includes(keyOf(item, 'stat') ?? ''));
  const isOpen = selector.stat === 'scalar' || (accuracy && !named && ['max', 'min'].includes(selector.stat));
  return ((accuracy && quantity.id === 'grey.de2000') || ofErrors) && isOpen
    ? { ...selector, stat: 'average' }
    : selector;
}
