import { useMemo } from 'react';
import { formatNumber } from '../../shared/article/formatNumber.ts';
import { probability } from '../../shared/certainty/index.ts';
import type { Evidence, RunEvidence, UnitEvidence } from '../../shared/contract/evidence.ts';
import { catalogueEntry } from '../../shared/measure/index.ts';
import {
  type Headline,
  type HeadlineValue,
  headlineLabel,
  headlinesFor,
  headlineText,
  headlineValue,
} from '../bench/headlines.ts';
import { runTitle } from '../bench/runText.ts';
import { numberText, thin } from '../plots/numberText.ts';
import { hashOf, useRoute } from '../shell/route.ts';
import { InStatusLine } from '../shell/Slots.tsx';
import { useEvidence } from '../stores/evidence.ts';
import { unitName } from '../stores/library.ts';
import { drawsOf, measurementsOf } from '../stores/measurements.ts';
import { besideIds } from './besideIds.ts';
import { headlineRuns } from './headlineRuns.ts';
import './beside.css';

interface Cell {
  unit: UnitEvidence;
  run: RunEvidence;
  value: HeadlineValue;
}

/** Sets side by side: each key quantity with its ±, who is ahead, and whether the lead is larger than the doubt. */
export function Beside() {
  const evidence = useEvidence((store) => store.evidence);
  const house = useEvidence((store) => store.house);
  const ids = besideIds(useRoute());
  return evidence && house ? <SideBySide evidence={evidence} ids={ids} level={house.level} /> : null;
}

function SideBySide({ evidence, ids, level }: { evidence: Evidence; ids: readonly string[]; level: number }) {
  const units = ids.flatMap((id) => evidence.units.get(id) ?? []);
  const groups = useMemo(
    () =>
      (['SDR', 'HDR'] as const).map((signal) => {
        const runs = units.map((unit) => headlineRuns(unit, signal, evidence.articles));
        const rows = headlinesFor(signal).flatMap((headline) => {
          const cells = units.map((unit, index): Cell | null => {
            for (const run of runs[index] ?? []) {
              const value = headlineValue(measurementsOf(unit, run), headline);
              if (value) return { unit, run, value };
            }
            return null;
          });
          return cells.filter((cell) => cell !== null).length >= 2
            ? [{ headline, cells, lead: leadOf(headline, cells, level) }]
            : [];
        });
        return { signal, runs: runs.map((list) => list[0] ?? null), rows };
      }),
    [units, evidence, level],
  );
  return (
    <div className="shelf-page beside-page">
      <InStatusLine>
        <span>{units.map((unit) => unitName(unit.unit)).join(' beside ')}</span>
      </InStatusLine>
      <p className="beside-back">
        <a className="act" href={hashOf('shelf')}>
          Back to the Shelf
        </a>
      </p>
      <h1>Side by side</h1>
      {groups
        .filter((group) => group.rows.length > 0)
        .map((group) => (
          <table key={group.signal} className="beside">
            <caption>{group.signal === 'SDR' ? 'Standard dynamic range' : 'High dynamic range'}</caption>
            <thead>
              <tr>
                <td className="beside-what" />
                {units.map((unit, index) => (
                  <th key={unit.id} scope="col">
                    <a
                      href={hashOf('bench', [unit.id, ...(group.runs[index] ? [group.runs[index].id] : [])])}
                    >
                      {unitName(unit.unit)}
                    </a>
                    <span className="quiet">
                      {group.runs[index] ? runTitle(group.runs[index]) : 'no run'}
                      {unit.unit.price
                        ? `; ${formatNumber(unit.unit.price.amount, { decimals: 0, unit: unit.unit.price.currency })}`
                        : ''}
                    </span>
                  </th>
                ))}
                <th scope="col" className="beside-lead">
                  Ahead
                </th>
              </tr>
            </thead>
            <tbody>
              {group.rows.map(({ headline, cells, lead }) => (
                <tr key={headline.id + headline.stat}>
                  <th scope="row">{headlineLabel(headline)}</th>
                  {cells.map((cell, index) => (
                    <td
                      key={units[index]!.id}
                      className={lead?.certain && cell === lead.cell ? 'beside-first' : ''}
                    >
                      {cell ? (
                        headlineText(headline, cell.value)
                      ) : (
                        <span className="quiet">not measured</span>
                      )}
                    </td>
                  ))}
                  <td className="beside-lead">{lead?.sentence ?? ''}</td>
                </tr>
              ))}
            </tbody>
          </table>
        ))}
      <p className="quiet beside-note">
        ± is the expanded uncertainty, twice the standard one. A lead counts when it is there in{' '}
        {numberText(level * 100, 0)}
        {thin}% of the worlds that the readings allow; errors that two sets share by instrument and panel
        cancel.
      </p>
    </div>
  );
}

/** Who is ahead of all others, and how sure that is; null where neither way is better. */
function leadOf(
  headline: Headline,
  cells: readonly (Cell | null)[],
  level: number,
): { cell: Cell; certain: boolean; sentence: string } | null {
  const entry = catalogueEntry(headline.id);
  const present = cells.filter((cell) => cell !== null);
  if (!entry || entry.direction === 'neither' || present.length < 2) return null;
  const sign = entry.direction === 'higher' ? 1 : -1;
  const number = (cell: Cell) => ('over' in cell.value ? cell.value.over : cell.value.value);
  const best = present.reduce((ahead, cell) => (sign * number(cell) > sign * number(ahead) ? cell : ahead));
  const name = best.unit.unit.model;
  const drawn = present.map((cell) => ('over' in cell.value ? null : drawer(cell, headline)));
  if (drawn.some((draw) => draw === null))
    return { cell: best, certain: false, sentence: `${name}, without a known uncertainty` };
  const at = present.indexOf(best);
  const count = Math.min(...drawn.map((draw) => draw!.count));
  const chance = probability(count, (draw) =>
    drawn.every((other, index) => index === at || sign * drawn[at]!.value(draw) > sign * other!.value(draw)),
  );
  const certain = chance >= level;
  const percent = chance > 0.995 ? 'over 99' : numberText(chance * 100, 0);
  return {
    cell: best,
    certain,
    sentence: certain
      ? `${name}, by more than the uncertainty`
      : `too close to call: ${name} with ${percent}${thin}%`,
  };
}

/** The headline's value in each imagined world. */
function drawer(cell: Cell, headline: Headline): { count: number; value: (draw: number) => number } | null {
  const draws = drawsOf(cell.unit, cell.run, headline.id);
  if (!draws) return null;
  const width = draws.axes.length;
  const counting = draws.counts.flatMap((counts, index) => (counts ? [index] : []));
  return {
    count: draws.count,
    value: (draw) => {
      const at = (index: number) => draws.values[draw * width + index]!;
      if (headline.stat === 'scalar') return at(0);
      if (headline.stat === 'max') return Math.max(...counting.map(at));
      return counting.reduce((sum, index) => sum + at(index), 0) / counting.length;
    },
  };
}
