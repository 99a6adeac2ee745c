import { useState } from 'react';
import { door } from '../door/door.ts';
import { historyLines } from './historyText.ts';
import { tellFaults } from './saveUnit.ts';

/** What happened to a run and what stood there before; read when it is opened. */
export function RunHistory({ unit, run, digest }: { unit: string; run: string; digest: string }) {
  const [lines, setLines] = useState<{ of: string; list: ReturnType<typeof historyLines> } | null>(null);
  const load = async () => {
    const reply = await door.ask('history.list', { of: `units/${unit}/runs/${run}` });
    if (reply.ok) setLines({ of: digest, list: historyLines(reply.value) });
    else tellFaults(reply.faults);
  };
  return (
    <details
      className="run-history"
      key={digest}
      onToggle={(event) => event.currentTarget.open && lines?.of !== digest && void load()}
    >
      <summary>History</summary>
      {lines?.of === digest && lines.list.length === 0 && (
        <p>Nothing was changed since it came into this library.</p>
      )}
      <ul>
        {lines?.list.map(({ key, sentence }) => (
          <li key={key}>{sentence}</li>
        ))}
      </ul>
    </details>
  );
}
