import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatCsv } from '../../main/dossier/formatCsv.ts';
import { formatJson, nodeOf, parseJson, plainValue } from '../../main/dossier/jsonNode.ts';
import { splitDelimited } from '../../main/intake/delimitedText.ts';
import { withGuard, withoutGuard } from '../../main/intake/formulaGuard.ts';

const json = fc.jsonValue({ maxDepth: 4 }).map((value) => JSON.stringify(value));

function parsed(text: string) {
  const result = parseJson(text, 'x.json');
  if (!result.ok) throw new Error(result.faults[0]!.sentence);
  return result.value;
}

test('a JSON text has the value that JSON.parse gives, whatever its spaces', () => {
  fc.assert(
    fc.property(json, fc.constantFrom(undefined, 1, '\t'), (text, space) => {
      const spaced = JSON.stringify(JSON.parse(text), null, space);
      expect(plainValue(parsed(spaced))).toEqual(JSON.parse(text));
    }),
  );
});

test('the written form of JSON has two spaces, parses to the same, and is stable', () => {
  fc.assert(
    fc.property(json, (text) => {
      const written = formatJson(parsed(text));
      expect(written).toBe(`${JSON.stringify(JSON.parse(text), null, 2)}\n`);
      expect(formatJson(parsed(written))).toBe(written);
    }),
  );
});

test('texts that JSON.parse refuses are refused, with a place', () => {
  fc.assert(
    fc.property(
      json,
      fc.nat(),
      fc.constantFrom('', ',', '"', '}', '\u0001', '01', 'x'),
      (text, seed, junk) => {
        const at = seed % (text.length + 1);
        const broken = text.slice(0, at) + junk + text.slice(at + 1);
        let valid = true;
        try {
          JSON.parse(broken);
        } catch {
          valid = false;
        }
        const result = parseJson(broken, 'x.json');
        if (!valid)
          expect(result).toMatchObject({ ok: false, faults: [{ place: { file: 'x.json', line: 1 } }] });
        else if (!result.ok) expect(result.faults[0]!.sentence).toMatch(/occurs twice|too large/);
      },
    ),
    { numRuns: 500 },
  );
});

test('keys that objects treat specially are data like any other', () => {
  const text = '{\n  "__proto__": {\n    "constructor": 1.50\n  },\n  "toString": []\n}\n';
  expect(formatJson(parsed(text))).toBe(text);
  expect(Object.keys(plainValue(parsed(text)) as object)).toEqual(['__proto__', 'toString']);
});

test('an edit keeps the number texts and key order of everything it does not touch', () => {
  const before = parsed('{"b": 1.50, "a": {"deep": [1.0, 2.00]}, "gone": 1}');
  const value = { a: { deep: [1, 3] }, b: 1.5, fresh: true };
  expect(formatJson(nodeOf(value, before))).toBe(
    '{\n  "b": 1.50,\n  "a": {\n    "deep": [\n      1.0,\n      3\n    ]\n  },\n  "fresh": true\n}\n',
  );
});

test('cells of every kind survive CSV out and in', () => {
  const cell = fc.string({
    unit: fc.constantFrom('a', '1', '.', '"', ',', '\n', '\r', ' ', '=', '-', '@', "'", ';', '#', 'é', '\t'),
  });
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.constantFrom('series', 'note', 'x', 'a b', 'quoted "name"'), { minLength: 2 }),
      fc.array(fc.array(cell, { minLength: 5, maxLength: 5 }), { minLength: 1, maxLength: 4 }),
      (columns, wide) => {
        const rows = wide.map((cells) => cells.slice(0, columns.length).map(withoutGuard));
        const text = formatCsv({ columns, rows });
        const split = splitDelimited(text, 'x.csv', ',');
        if (!split.ok) throw new Error(split.faults[0]!.sentence);
        expect(split.value.header).toEqual(columns);
        const back = split.value.records.map(({ cells }) => cells.map(withoutGuard));
        expect(back).toEqual(rows);
        expect(formatCsv({ columns, rows: back })).toBe(text);
      },
    ),
    { numRuns: 2000 },
  );
});

test('the guard before formulas comes off again, and leaves numbers alone', () => {
  for (const cell of ['=A1', '+SUM(1;2)', '-2+3', '@ref', '\t=1', '-0.002', '+5', '', "it's", '- none'])
    expect(withoutGuard(withGuard(cell))).toBe(cell);
  expect(withGuard('-0.002')).toBe('-0.002');
  expect(withGuard('=A1')).toBe("'=A1");
});
