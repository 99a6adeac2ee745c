import type { Route } from '../shell/route.ts';

/** The sets that `#/shelf?beside=a,b` places side by side. */
export function besideIds(route: Route): string[] {
  return (route.query.beside ?? '').split(',').filter(Boolean);
}
