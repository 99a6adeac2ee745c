import type { FactCheck } from '../../contract/check.ts';
import type { FactStatement } from '../../contract/unit.ts';
import { convertUnit } from './convertUnit.ts';
import { compare, onTheLimit } from './decide.ts';
import { factsOf } from './facts.ts';
import { type FactReading, readStatements } from './factValue.ts';
import { fold, foldedWords } from './fold.ts';
import { type Outcome, unproven } from './outcome.ts';
import type { Sight } from './sight.ts';
import { isInside } from './stated.ts';
import { nameOfFact, nameOfUnit, plain } from './terms.ts';

/** A typed fact: numbers equal within what the words allow, names equal but for case and synonyms, sets by inclusion. */
export function judgeFact(check: FactCheck, sight: Sight): Outcome {
  const quantity = `fact.${check.key}`;
  const stated = { op: check.op, x: check.x, ...(check.unit ? { unit: check.unit } : {}) };
  const reading = withDerivedPorts(check, readStatements(sight, check), sight);
  if (!reading.ok) return unproven(reading.reason, quantity, stated);
  const { unit, statements, evidence, notes } = reading;
  const verdicts = statements.map((statement) => agrees(check, statement));
  const inches = check.conditions.variantInches;
  const ownInches = unit.unit.size?.diagonal_in;
  const isVariant = inches !== undefined && inches !== ownInches;
  const common = {
    probability: null,
    stated,
    found: foundOf(statements),
    conditions: {
      unit: unit.id,
      ...(isVariant ? { size: inches } : {}),
      ...(check.by ? { by: check.by } : {}),
    },
    quantity,
    evidence,
  };
  const who = `${isVariant ? `${inches}-inch size of the ` : ''}${nameOfUnit(unit)}`;
  const says = `The ${nameOfFact(check.key)} of the ${who} is ${statements.map(statementWords).join(' or ')}`;
  if (verdicts.includes(null))
    return unproven(
      `${says}, and ${check.unit ?? 'the stated unit'} measures something else`,
      quantity,
      stated,
      common,
    );
  if (new Set(verdicts).size > 1)
    return unproven(`${says}: the statements on file disagree`, quantity, stated, common);
  const meets = verdicts[0]!;
  const holds = meets !== (check.negated ?? false);
  return {
    ...common,
    verdict: holds ? 'holds' : 'breaks',
    sentence: `${says}, and the text says ${check.negated ? 'not ' : ''}${claimWords(check)}`,
    notes,
    ...(holds || check.negated ? {} : { suggestion: statementWords(statements[0]!) }),
  };
}

/** Whether a statement agrees with the check; null where their units measure different things. */
function agrees(check: FactCheck, statement: FactStatement): boolean | null {
  const found = statement.value;
  const wanted = check.x;
  if (typeof found === 'number' && (typeof wanted === 'number' || isNumeral(wanted))) {
    const factor = convertUnit(statement.unit, check.unit ?? check.stated?.unit);
    if (factor === null) return null;
    return numberAgrees(found * factor, check, Number(wanted));
  }
  if (typeof wanted === 'boolean' || typeof found === 'boolean') return truthOf(found) === truthOf(wanted);
  const foundSet = (Array.isArray(found) ? found : [found]).map((item) => synonym(String(item)));
  const wantedSet = (Array.isArray(wanted) ? wanted : [wanted]).map((item) => synonym(String(item)));
  const has = (item: string) => foundSet.includes(item) || isPartOf(item, check.key, found);
  if (check.op === 'excludes') return !wantedSet.some(has);
  // "HDR10 only" names the whole list.
  if (check.op === '=' && Array.isArray(wanted) && foundSet.some((item) => !wantedSet.includes(item)))
    return false;
  if (check.op === '=' || check.op === 'includes') return wantedSet.every(has);
  // Versions such as "2.1" can be compared: "at least HDMI 2.0".
  const [one, other] = [Number(found), Number(wanted)];
  return Number.isFinite(one) && Number.isFinite(other) ? compare(one, check.op, other) : false;
}

function numberAgrees(found: number, check: FactCheck, wanted: number): boolean {
  if (check.op === '<') return found < wanted - onTheLimit;
  if (check.op === '>') return found > wanted + onTheLimit;
  if (check.op === '<=' || check.op === '>=') return compare(found, check.op, wanted);
  const equal =
    check.stated && !check.stated.exact
      ? isInside(found, check.stated)
      : Math.abs(found - wanted) <= onTheLimit;
  return check.op === 'excludes' ? !equal : equal;
}

function isNumeral(value: FactCheck['x']): value is string {
  return typeof value === 'string' && value.trim() !== '' && Number.isFinite(Number(value));
}

function truthOf(value: FactStatement['value'] | FactCheck['x']): boolean {
  if (typeof value === 'boolean') return value;
  if (typeof value === 'number') return value > 0;
  if (typeof value === 'string') return !['no', 'none', 'false', '0', ''].includes(fold(value));
  return value.length > 0;
}

/** Words of a panel's or backlight's name: "IPS" is said of an "LCD IPS" panel. */
function isPartOf(wanted: string, key: string, found: FactStatement['value']): boolean {
  if (key !== 'panel' && key !== 'backlight' && key !== 'resolution') return false;
  const texts = Array.isArray(found) ? found.map(String) : [String(found)];
  if (texts.flatMap(foldedWords).includes(wanted)) return true;
  const names = texts.map(synonym);
  // "Full-array mini-LED" has both in its name; every backlight behind the whole panel is direct.
  if (key === 'backlight' && wanted.length > 6 && names.some((name) => name.includes(wanted))) return true;
  return wanted === 'directled' && names.some((name) => /^fullarrayled|miniled/.test(name));
}

const synonyms: readonly (readonly string[])[] = [
  ['3840x2160', '4k', 'uhd', 'ultrahd', '2160p', '4kuhd', '3840×2160'],
  ['7680x4320', '8k', '4320p', '8kuhd', '7680×4320'],
  ['1920x1080', 'fullhd', 'fhd', '1080p', '1920×1080'],
  ['hlg', 'hybridloggamma'],
  ['hdr10', 'hdr10pq'],
  ['fullarrayled', 'fald', 'fullarraylocaldimming', 'fullarray'],
  ['directled', 'directlit', 'direct'],
  ['edgeled', 'edgelit', 'edge'],
  ['oled', 'organicled'],
];

const canonicalName = new Map(
  synonyms.flatMap((names) => names.map((name) => [fold(name), names[0]!] as const)),
);

/** The name that stands for all spellings of the same thing. */
function synonym(text: string): string {
  const folded = fold(text);
  return canonicalName.get(folded) ?? folded;
}

function statementWords({ value, unit, by }: FactStatement): string {
  const text = Array.isArray(value)
    ? value.join(', ')
    : typeof value === 'number'
      ? plain(value, unit)
      : String(value);
  return by && by !== 'measured' ? `${text} (${by})` : text;
}

function claimWords({ x, op, unit }: FactCheck): string {
  const text = typeof x === 'number' ? plain(x, unit ?? '') : Array.isArray(x) ? x.join(', ') : String(x);
  const words: Record<string, string> = {
    '<': 'under ',
    '>': 'over ',
    '<=': 'at most ',
    '>=': 'at least ',
    excludes: 'none of ',
  };
  return `${words[op] ?? ''}${text}`;
}

function foundOf(statements: readonly FactStatement[]): Outcome['found'] {
  const [first] = statements;
  return {
    value: first!.value,
    ...(first!.unit ? { unit: first!.unit } : {}),
    ...(first!.by ? { by: first!.by } : {}),
  };
}

/**
 * HDMI ports are counted in all and by version. "HDMI 2.1" is said of a set with one such port, whatever version its
 * other ports have; where every port has the one version on file, their number follows from the count.
 */
function withDerivedPorts(check: FactCheck, reading: FactReading, sight: Sight): FactReading {
  if (check.by !== undefined) return reading;
  const unit = reading.ok ? reading.unit : sight.unit(check.conditions.unit ?? sight.own);
  if (!unit) return reading;
  const inches = check.conditions.variantInches;
  const prefix = unit.id === sight.own ? '' : `unit/${unit.id}/`;
  const version = /^hdmi\.count\.(.+)$/.exec(check.key)?.[1];
  if (version !== undefined && !reading.ok) {
    const versions = factsOf(unit.unit, 'hdmi.version', inches);
    const counts = sight.facts(unit, 'hdmi.count', inches);
    if (versions.length === 0 || mixedVersions(unit.unit, inches)) return reading;
    // No port is newer than the one version on file.
    if (versions.every(({ value }) => Number(value) < Number(version)))
      return {
        ok: true,
        unit,
        statements: [{ value: 0 }],
        evidence: [`${prefix}fact/hdmi.version`],
        notes: [`its HDMI version on file is ${String(versions[0]!.value)}`],
      };
    if (!versions.some(({ value }) => String(value) === version) || counts.length === 0) return reading;
    sight.facts(unit, 'hdmi.version', inches);
    return {
      ok: true,
      unit,
      statements: counts,
      evidence: [`${prefix}fact/hdmi.count`, `${prefix}fact/hdmi.version`],
      notes: [],
    };
  }
  if (check.key === 'hdmi.version' && (typeof check.x === 'string' || typeof check.x === 'number')) {
    const wanted = String(check.x);
    const ports = sight.facts(unit, `hdmi.count.${wanted}`, inches);
    const some = ports.some(({ value }) => typeof value === 'number' && value > 0);
    if (some && check.op !== 'excludes')
      return {
        ok: true,
        unit,
        statements: [{ value: wanted }],
        evidence: [`${prefix}fact/hdmi.count.${wanted}`],
        notes: [`${String(ports[0]!.value)} of its ports have it`],
      };
  }
  return reading;
}

function mixedVersions(unit: Parameters<typeof factsOf>[0], inches: number | undefined): boolean {
  const isVariant = inches !== undefined && inches !== unit.size?.diagonal_in;
  const facts = isVariant
    ? unit.variants?.find(({ size }) => size.diagonal_in === inches)?.facts
    : unit.facts;
  return Object.keys(facts ?? {}).some((key) => key.startsWith('hdmi.count.'));
}
