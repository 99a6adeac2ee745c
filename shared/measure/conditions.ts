import { gamut } from '../colour/gamuts.ts';
import { invert3, type Matrix3, type Primaries, rgbToXyzMatrix } from '../colour/rgb.ts';
import { isWhiteName, whiteXy } from '../colour/whites.ts';
import type { Xy } from '../colour/xyz.ts';
import type { Dimming, Run } from '../contract/run.ts';
import { defaultInstrument, defaultSource } from '../contract/runDefaults.ts';

/** The tone curve a run is held against. */
export type TargetEotf =
  | { kind: 'BT.1886' }
  | { kind: 'PQ' }
  | { kind: 'HLG' }
  | { kind: 'sRGB' }
  | { kind: 'power'; gamma: number };

/** What the instrument states, defaults filled in; every uncertainty is a standard one here. */
export interface InstrumentLimits {
  /** Relative, 0.01 = 1 % */
  uLuminance: number;
  ux: number;
  uy: number;
  /** cd/m² */
  floor: number;
  /** cd/m² from which chromaticity is used */
  xyFrom: number;
}

/** The chromaticities that a target names, with the matrices that follow from them. */
export interface TargetColours {
  white: Xy;
  /** X and Z of the target white where Y = 1 */
  whiteX: number;
  whiteZ: number;
  primaries: Primaries;
  /** Linear R, G, B to X, Y, Z with target white = (1, 1, 1), and back */
  toXyz: Matrix3;
  toRgb: Matrix3;
}

/** A run's conditions with every default resolved; `notes` says which defaults were used. */
export interface ResolvedConditions {
  hdr: boolean;
  eotf: TargetEotf;
  /** Undefined when the target names a white that is not known. */
  colours: TargetColours | undefined;
  whiteName: string;
  saturationLaw: 'xy' | 'uv' | 'signal';
  /** cd/m², up to which a PQ signal is meant to be followed */
  targetPeak: number | undefined;
  dimming: Dimming;
  mode: string;
  instrument: InstrumentLimits;
  notes: readonly string[];
}

/** Fills in the house defaults of `shared/contract/run.ts` and makes matrices of the target's names. */
export function resolveConditions(run: Run): ResolvedConditions {
  const eotf = targetEotf(run.target.eotf);
  return {
    hdr: run.signal !== 'SDR' || eotf.kind === 'PQ' || eotf.kind === 'HLG',
    eotf,
    colours: targetColours(run),
    whiteName: run.target.white,
    saturationLaw: run.target.saturation_law ?? 'xy',
    targetPeak: run.target.peak,
    dimming: run.dimming ?? 'as-set',
    mode: run.mode,
    instrument: instrumentLimits(run),
    notes: defaultNotes(run),
  };
}

function targetEotf(name: string): TargetEotf {
  switch (name) {
    case 'BT.1886':
    case 'PQ':
    case 'HLG':
    case 'sRGB':
      return { kind: name };
    default:
      return { kind: 'power', gamma: Number(name.replace(/^gamma\s+/, '')) };
  }
}

/** A named white, or its chromaticity written as two numbers ("0.3127, 0.3290"). */
function targetWhite(name: string): Xy | undefined {
  const trimmed = name.trim();
  if (isWhiteName(trimmed)) return whiteXy(trimmed);
  const numbers = trimmed.split(/[\s,;]+/).map(Number);
  if (numbers.length !== 2 || !numbers.every((value) => value > 0 && value < 1)) return undefined;
  return [numbers[0]!, numbers[1]!];
}

function targetColours(run: Run): TargetColours | undefined {
  const white = targetWhite(run.target.white);
  if (!white) return undefined;
  const { primaries } = gamut(run.target.gamut);
  const toXyz = rgbToXyzMatrix(primaries, white);
  return {
    white,
    whiteX: white[0] / white[1],
    whiteZ: (1 - white[0] - white[1]) / white[1],
    primaries,
    toXyz,
    toRgb: invert3(toXyz),
  };
}

function instrumentLimits(run: Run): InstrumentLimits {
  const stated = { ...defaultInstrument, ...definedFields(run.instrument) };
  const k = stated.coverage_k;
  return {
    uLuminance: stated.u_luminance_percent / 100 / k,
    ux: stated.u_x / k,
    uy: stated.u_y / k,
    floor: stated.floor_cdm2,
    xyFrom: stated.xy_from_cdm2,
  };
}

type Limits = { -readonly [key in keyof typeof defaultInstrument]: number };
const limitFields = Object.keys(defaultInstrument) as (keyof Limits)[];

function definedFields(instrument: Run['instrument']): Partial<Limits> {
  const stated: Partial<Limits> = {};
  for (const field of limitFields) if (instrument?.[field] !== undefined) stated[field] = instrument[field];
  return stated;
}

function defaultNotes(run: Run): string[] {
  const missing = limitFields.filter((field) => run.instrument?.[field] === undefined);
  const notes: string[] = [];
  if (missing.length === limitFields.length)
    notes.push('no instrument is stated: its uncertainty is the house default');
  else if (missing.length > 0)
    notes.push(`the instrument states no ${missing.join(', ')}: house default used`);
  const source = (['bits', 'range'] as const).filter((field) => run.source?.[field] === undefined);
  if (source.length > 0)
    notes.push(
      `the source states no ${source.join(' and ')}: taken as ${source.map((field) => (field === 'bits' ? `${defaultSource.bits} bit` : `${defaultSource.range} range`)).join(', ')}`,
    );
  return notes;
}
