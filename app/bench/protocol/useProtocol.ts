import { useEffect, useState } from 'react';
import type { UnitEvidence } from '../../../shared/contract/evidence.ts';
import type { ProtocolReply } from '../../../shared/contract/protocol.ts';
import { door } from '../../door/door.ts';
import { tellFaults } from '../saveUnit.ts';

/** The protocol of one unit, read again whenever the unit changed; null until it is there. */
export function useProtocol(unit: UnitEvidence): ProtocolReply | null {
  const [protocol, setProtocol] = useState<ProtocolReply | null>(null);
  useEffect(() => {
    let gone = false;
    void door.ask('protocol.read', { unit: unit.id }).then((reply) => {
      if (gone) return;
      if (reply.ok) setProtocol(reply.value);
      else tellFaults(reply.faults);
    });
    return () => {
      gone = true;
    };
  }, [unit]);
  return protocol;
}
