import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { arguedNames, lineNumberOf, type Mutant, mutated, nameOf } from './arguments.ts';
import { reachOf, relativeImports } from './reach.ts';
import { mutationsOf } from './tokens.ts';

const mutantsOf = (source: string): Mutant[] =>
  mutationsOf(source).map((mutation) => ({ ...mutation, file: 'shared/a.ts', source }));

describe('mutations', () => {
  test('leave types, comments, texts and imports alone', () => {
    const source = [
      "import { one } from './one-1.ts';",
      '// 1 + 1',
      "const text: Array<1> = ['2 > 1', `3 < 4`];",
    ].join('\n');
    expect(mutationsOf(source)).toEqual([]);
  });

  test('change one token at its place', () => {
    expect(mutantsOf('const a = b + 2;').map(mutated)).toEqual(['const a = b - 2;', 'const a = b + 3;']);
    const printing = (code: string) => `const a = \`\${${code}}\`;`;
    expect(mutantsOf(printing('b > 1.5')).map(mutated)).toEqual([
      printing('b >= 1.5'),
      printing('b > 1.515'),
    ]);
  });
});

describe('the name of a mutant', () => {
  const source = 'if (a > 0) b();\nif (c) {\n  if (a > 0) d();\n}\n';

  test('is its own, also where a line stands twice', () => {
    const names = mutantsOf(source).map(nameOf);
    expect(new Set(names).size).toBe(names.length);
    expect(names).toEqual([
      '`shared/a.ts` `if (a >= 0) b();`',
      '`shared/a.ts` `if (a > 1) b();`',
      '`shared/a.ts` `if (a >= 0) d();`',
      '`shared/a.ts` `if (a > 1) d();`',
    ]);
    const twice = 'if (a) {\n  b += 1;\n}\nb += 1;\n';
    expect(mutantsOf(twice).map(nameOf)).toEqual([
      '`shared/a.ts` `b -= 1;` (1 of 2)',
      '`shared/a.ts` `b += 2;` (1 of 2)',
      '`shared/a.ts` `b -= 1;` (2 of 2)',
      '`shared/a.ts` `b += 2;` (2 of 2)',
    ]);
  });

  test('is its own where two lines become the same', () => {
    expect(
      mutantsOf('for (; i <= n; ) a();\nfor (; i < n; ) b();\nfor (; i < n; ) a();\n').map(nameOf),
    ).toEqual([
      '`shared/a.ts` `for (; i < n; ) a();`',
      '`shared/a.ts` `for (; i <= n; ) b();`',
      '`shared/a.ts` `for (; i <= n; ) a();`',
    ]);
    expect(mutantsOf('a(1, 1);\na(2, 0);\n').map(nameOf)).toEqual([
      '`shared/a.ts` `a(2, 1);` (1 of 2)',
      '`shared/a.ts` `a(1, 2);`',
      '`shared/a.ts` `a(3, 0);`',
      '`shared/a.ts` `a(2, 1);` (2 of 2)',
    ]);
  });

  test('does not hang on the line’s number', () => {
    const [mutant] = mutantsOf(source);
    const [shifted] = mutantsOf(`\n\n${source}`);
    expect(nameOf(shifted!)).toBe(nameOf(mutant!));
    expect([lineNumberOf(mutant!), lineNumberOf(shifted!)]).toEqual([1, 3]);
  });

  test('is argued by a list item that begins with it and says why', () => {
    const [mutant, other] = mutantsOf(source).map(nameOf);
    expect(arguedNames(`# Survivors\n\n- ${mutant} – the pieces meet.\n- ${other}\n`)).toEqual(
      new Set([mutant]),
    );
    expect(arguedNames('- `shared/a.ts` `b -= 1;` (1 of 2) – because.')).toEqual(
      new Set(['`shared/a.ts` `b -= 1;` (1 of 2)']),
    );
  });
});

describe('reach', () => {
  test('follows what is imported or re-exported, not types', () => {
    expect(
      relativeImports(
        "import { a,\n  b } from './a.ts';\nimport type { C } from './c.ts';\nexport * from '../d.ts';\nimport x from 'pkg';\nimport './e.ts';",
      ),
    ).toEqual(['./a.ts', '../d.ts', './e.ts']);
  });

  test('counts the steps from a test to a file', () => {
    const reach = reachOf(fileURLToPath(new URL('../../', import.meta.url)), ['test/colour', 'test/measure']);
    expect(reach.tests).toContain('test/colour/lab.test.ts');
    expect(reach.distance('test/colour/lab.test.ts', 'shared/colour/lab.ts')).toBe(1);
    expect(reach.distance('test/colour/lab.test.ts', 'shared/measure/contrast.ts')).toBeUndefined();
    expect(reach.distance('test/measure/light.test.ts', 'shared/measure/contrast.ts')).toBeGreaterThan(1);
  });
});
