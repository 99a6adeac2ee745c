import { stripTypeScriptTypes } from 'node:module';

/** One token that can be replaced: where it starts in the file, what stands there, what to put instead. */
export type Mutation = { readonly start: number; readonly before: string; readonly after: string };

const swaps: Record<string, string> = {
  '+': '-',
  '-': '+',
  '*': '/',
  '/': '*',
  '%': '*',
  '**': '*',
  '<': '<=',
  '<=': '<',
  '>': '>=',
  '>=': '>',
  '===': '!==',
  '!==': '===',
  '&&': '||',
  '||': '&&',
  '+=': '-=',
  '-=': '+=',
  '*=': '/=',
  '/=': '*=',
  'Math.max': 'Math.min',
  'Math.min': 'Math.max',
  'Math.sin': 'Math.cos',
  'Math.cos': 'Math.sin',
  'Math.floor': 'Math.ceil',
  'Math.ceil': 'Math.floor',
  true: 'false',
  false: 'true',
};

const space = /\s+/y;
const comment = /\/\/[^\n]*|\/\*[\s\S]*?\*\//y;
const text = /'(?:\\.|[^'\\])*'|"(?:\\.|[^"\\])*"/y;
const regularExpression = /\/(?:\\.|\[(?:\\.|[^\]\\])*\]|[^/\\\n])+\/[a-z]*/y;
const number = /(?:\d[\d_]*\.?[\d_]*|\.\d+)(?:e[+-]?\d+)?/iy;
const word = /[\p{L}_$][\p{L}\p{N}_$]*(?:\.(?:max|min|sin|cos|floor|ceil)\b)?/uy;
const operator =
  /=>|\.\.\.|>>>=?|<<=?|>>=?|===|!==|==|!=|<=|>=|&&=?|\|\|=?|\?\?=?|\?\.|\+\+|--|\*\*=?|[-+*/%]=|[\s\S]/y;

/**
 * Every mutation of a TypeScript source: numbers moved by 1 % (small whole numbers by one), operators, extremes and
 * truth values swapped. Types, comments, texts and import lines are left alone.
 */
export function mutationsOf(source: string): Mutation[] {
  // Stripping puts spaces where types were, so places in the stripped text are places in the source.
  const code = stripTypeScriptTypes(source);
  return [...mutationsBetween(code, 0, code.length)];
}

function* mutationsBetween(code: string, from: number, to: number): Generator<Mutation> {
  let place = from;
  let previous = '';
  const match = (pattern: RegExp) => {
    pattern.lastIndex = place;
    return pattern.exec(code)?.[0];
  };
  while (place < to) {
    const skipped = match(space) ?? match(comment);
    if (skipped) {
      place += skipped.length;
      continue;
    }
    if (code[place] === '`') {
      const end = yield* mutationsInTemplate(code, place);
      place = end;
      previous = '`';
      continue;
    }
    const afterValue = /[\p{L}\p{N}_$)\]}`'"]$/u.test(previous) && !/^(?:return|typeof|case)$/.test(previous);
    const token =
      match(text) ??
      (!afterValue ? match(regularExpression) : undefined) ??
      match(number) ??
      match(word) ??
      match(operator)!;
    if (token === 'import' && /^import\s*[{*\w]/.test(code.slice(place))) {
      place = code.indexOf(';', place) + 1;
      previous = ';';
      continue;
    }
    const after = replacement(token);
    if (after !== undefined && !(token === '+' && previous === '+'))
      yield { start: place, before: token, after };
    place += token.length;
    previous = token;
  }
}

/** Walks a template literal from its opening quote; mutates inside ${…} only; returns the place after it. */
function* mutationsInTemplate(code: string, start: number): Generator<Mutation, number> {
  let place = start + 1;
  while (code[place] !== '`') {
    if (code[place] === '\\') place += 2;
    else if (code.startsWith('${', place)) {
      let depth = 1;
      let end = place + 2;
      for (; depth > 0; end += 1) depth += code[end] === '{' ? 1 : code[end] === '}' ? -1 : 0;
      yield* mutationsBetween(code, place + 2, end - 1);
      place = end;
    } else place += 1;
  }
  return place + 1;
}

function replacement(token: string): string | undefined {
  if (/^\.?\d/.test(token)) {
    const value = Number(token.replaceAll('_', ''));
    return String(Number.isInteger(value) && value < 20 ? value + 1 : Number((value * 1.01).toPrecision(12)));
  }
  return Object.hasOwn(swaps, token) ? swaps[token] : undefined;
}
