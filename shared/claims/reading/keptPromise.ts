import { type Item, isWord, keyOf } from './items.ts';

const auxiliaries = ['does', 'did', 'has', 'duly'];
const denials = ['not', 'never', "doesn't", "didn't", "hasn't", 'does not', 'did not', 'has not'];

/** "94 % of P3, a promise that the Hearth keeps": whether the set got there, told in a relative clause on the promise. */
export function nameKeptPromise(items: readonly Item[]): undefined {
  const at = items.findIndex(
    (item, place) =>
      isWord(item, 'promise', 'pledge') &&
      isWord(items[place - 1], 'a') &&
      isWord(items[place - 2], ',', '–', '—'),
  );
  if (at < 0) return;
  let next = at + 1;
  while (isWord(items[next], 'that', 'which', 'the')) next += 1;
  const names = (keyOf(items[next], 'unit') ?? keyOf(items[next], 'pronoun')) !== undefined;
  if (!names) return;
  next += 1;
  let denied = false;
  for (; isWord(items[next], ...auxiliaries, ...denials); next += 1)
    denied ||= isWord(items[next], ...denials);
  const verb = items[next];
  if (!verb || (items[next + 1]?.type ?? 'mark') !== 'mark') return;
  if (isWord(verb, 'breaks', 'broke') && !denied) verb.meanings = [{ kind: 'fellShort', key: 'short' }];
  else if (isWord(verb, 'keeps', 'kept', 'fulfils', 'keep', 'fulfil'))
    verb.meanings = [denied ? { kind: 'fellShort', key: 'short' } : { kind: 'gotThere', key: 'got' }];
}
