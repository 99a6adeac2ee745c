import type { ZodError } from 'zod';

/** A form's fields as a person filled them in; what cannot be read is listed by the field's name. */
export interface Fields {
  /** Undefined where nothing stands in it */
  text(name: string): string | undefined;
  number(name: string): number | undefined;
  /** Names of fields that hold no number where one is asked for, in the order in which they were read */
  readonly unread: readonly string[];
}

export function readFields(data: Pick<FormData, 'get'>): Fields {
  const unread: string[] = [];
  const text = (name: string) => String(data.get(name) ?? '').trim() || undefined;
  return {
    text,
    number(name) {
      const typed = text(name);
      if (typed === undefined) return undefined;
      const value = numberOf(typed);
      if (value === null) unread.push(name);
      return value ?? undefined;
    },
    unread,
  };
}

/**
 * A number as typed: a point for decimals, a hyphen or the true minus, thousands in groups of three. Null for
 * anything else: "12,5" is refused, since a comma parts thousands in this house's language.
 */
export function numberOf(typed: string): number | null {
  const plain = typed.replaceAll(/[\s\u2009\u202f\u00a0]/g, '').replace('\u2212', '-');
  if (!/^[+-]?(\d{1,3}(,\d{3})+|\d+)?(\.\d+)?(e[+-]?\d+)?$/i.test(plain) || !/\d/.test(plain)) return null;
  const value = Number(plain.replaceAll(',', ''));
  return Number.isFinite(value) ? value : null;
}

/** A copy without what was left empty, inner objects too: what a field does not say, the file does not say either. */
export function withoutBlanks(value: object): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, each]) => {
      if (each === undefined) return [];
      const isObject = typeof each === 'object' && each !== null && !Array.isArray(each);
      return [[key, isObject ? withoutBlanks(each) : each]];
    }),
  );
}

/** The field that a refused value came from: `names` by the value's path, else the last word of the path. */
export function fieldOfIssue(error: ZodError, names: Readonly<Record<string, string>>): string {
  const path = error.issues[0]?.path.map(String) ?? [];
  return names[path.join('.')] ?? path.at(-1) ?? '';
}
