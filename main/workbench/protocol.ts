import { fold } from '../../shared/claims/checking/fold.ts';
import type { UnitEvidence } from '../../shared/contract/evidence.ts';
import { type Result, succeed } from '../../shared/contract/fault.ts';
import type { ProtocolReply } from '../../shared/contract/protocol.ts';
import type { Unit } from '../../shared/contract/unit.ts';
import { parseDocument } from '../dossier/parseDocument.ts';
import { type ProtocolList, type ProtocolStep, protocolSchema } from '../dossier/schemas.ts';
import { cautions } from './protocol/cautions.ts';
import { defaultProtocol } from './protocol/defaultProtocol.ts';

/** The protocol for this kind of set, with what is already there; the library's own protocol goes before the shipped one. */
export function protocolFor(evidence: UnitEvidence, own: string | null): Result<ProtocolReply> {
  let lists: readonly ProtocolList[] = defaultProtocol;
  if (own !== null) {
    const parsed = parseDocument(own, 'protocol.json', protocolSchema);
    if (!parsed.ok) return parsed;
    lists = parsed.value.value.lists;
  }
  const applying = lists.filter((list) => appliesTo(list, evidence.unit));
  return succeed({
    warmUpMinutes: Math.max(0, ...applying.map((list) => list.warm_up_min ?? 0)),
    cautions: cautionsForHandling(evidence.unit).map((id) => cautions[id]!),
    steps: applying
      .flatMap((list) => list.steps)
      .map((step) => {
        const foundIn = found(step, evidence);
        return {
          ...step,
          cautions: (step.cautions ?? []).map((id) => cautions[id] ?? id),
          foundIn,
          done: foundIn.length > 0,
        };
      }),
  });
}

function appliesTo(list: ProtocolList, unit: Unit): boolean {
  if (list.for === undefined) return true;
  const words = `${unit.panel ?? ''} ${unit.backlight ?? ''}`.toLowerCase();
  const zoned = (unit.zones ?? 0) > 1;
  return list.for.some((word) => (word === 'zones' ? zoned : words.includes(word.toLowerCase())));
}

function cautionsForHandling(unit: Unit): string[] {
  const diagonal = unit.size?.diagonal_in ?? 0;
  return [
    ...(diagonal === 0 || diagonal >= 40 ? ['two-person-lift'] : []),
    'tip-over',
    'wall-fixing',
    'mains',
    'opened-chassis',
  ];
}

function found(step: ProtocolStep, evidence: UnitEvidence): string[] {
  if (step.topic !== undefined) {
    // As a claim's check finds them: "dirty screen" is an observation on `dirty-screen`.
    const wanted = fold(step.topic);
    return evidence.observations
      .filter(({ topic }) => fold(topic) === wanted)
      .map(({ id }) => `observation/${id}`);
  }
  return evidence.runs
    .filter(
      ({ conditions, readings }) =>
        (step.signal === undefined || signalFits(conditions.signal, step.signal)) &&
        (step.stage === undefined || conditions.stage === step.stage) &&
        readings.some(
          (reading) =>
            reading.series === step.series &&
            (step.quantity === undefined || reading.quantity === step.quantity),
        ),
    )
    .map(({ id }) => `run/${id}`);
}

function signalFits(signal: string, wanted: string): boolean {
  return wanted === 'HDR' ? signal !== 'SDR' : signal === wanted;
}
