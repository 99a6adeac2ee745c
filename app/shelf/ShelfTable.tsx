import { formatNumber } from '../../shared/article/formatNumber.ts';
import type { House } from '../../shared/contract/house.ts';
import type { MeasuredSeries } from '../../shared/contract/measurement.ts';
import { dayText } from '../bench/dateText.ts';
import { headlineText } from '../bench/headlines.ts';
import { numberText } from '../plots/numberText.ts';
import { hashOf } from '../shell/route.ts';
import { unitName } from '../stores/library.ts';
import { ArticleLine } from './ArticleLine.tsx';
import { OpenSentences } from './OpenSentences.tsx';
import {
  columnValue,
  type ShelfColumn,
  type ShelfEntry,
  type SortKey,
  type Spoken,
  shelfHeadlines,
} from './shelfEntries.ts';
import { TinyLevels, TinyWindows } from './TinyLevels.tsx';

const columns: readonly { key: ShelfColumn; head: string; of: string }[] = [
  { key: 'error', head: 'Colour error', of: 'average, SDR' },
  { key: 'peak', head: 'Peak', of: 'HDR' },
  { key: 'contrast', head: 'Contrast', of: 'native' },
  { key: 'gamut', head: 'P3', of: 'in u′v′' },
];

/** One board of the Shelf: a line a set. */
export function ShelfTable({
  id,
  caption,
  entries,
  limits,
  chosen,
  onToggle,
  sort,
  onSort,
}: {
  id: string;
  caption: string;
  entries: readonly ShelfEntry[];
  limits: House['limits'];
  chosen: readonly string[];
  onToggle: (id: string) => void;
  sort: SortKey;
  onSort: (key: SortKey) => void;
}) {
  const head = (key: SortKey, name: string, of?: string) => (
    <th
      scope="col"
      className={key === 'name' ? '' : 'figure'}
      aria-sort={
        sort === key
          ? key === 'name' || key === 'price' || key === 'error'
            ? 'ascending'
            : 'descending'
          : undefined
      }
    >
      <button type="button" onClick={() => onSort(key)}>
        {name}
      </button>
      {of && <span className="quiet"> {of}</span>}
    </th>
  );
  return (
    <table className="shelf" id={id}>
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col" className="shelf-pick">
            <span className="unseen">Side by side</span>
          </th>
          {head('name', 'Set')}
          {head('price', 'Price')}
          {columns.map((column) => (
            <Head key={column.key}>{head(column.key, column.head, column.of)}</Head>
          ))}
        </tr>
      </thead>
      {entries.map((entry) => (
        <Line key={entry.summary.id} entry={entry} limits={limits} chosen={chosen} onToggle={onToggle} />
      ))}
    </table>
  );
}

const Head = ({ children }: { children: React.ReactNode }) => children;

function Line({
  entry,
  limits,
  chosen,
  onToggle,
}: {
  entry: ShelfEntry;
  limits: House['limits'];
  chosen: readonly string[];
  onToggle: (id: string) => void;
}) {
  const { summary } = entry;
  const kind = [
    summary.diagonalInches === null ? null : `${numberText(summary.diagonalInches, 0)}\u00a0in`,
    summary.panel,
    summary.backlight,
  ].filter(Boolean);
  const due = summary.provenance === 'loan' && !summary.returned && summary.dueBack;
  return (
    <tbody>
      <tr className="shelf-line">
        <td className="shelf-pick">
          <input
            type="checkbox"
            aria-label={`Place ${unitName(summary)} side by side`}
            checked={chosen.includes(summary.id)}
            onChange={() => onToggle(summary.id)}
          />
        </td>
        <th scope="row">
          <a className="shelf-name" href={hashOf('bench', [summary.id])}>
            {unitName(summary)}
          </a>
          <span className="quiet">
            {kind.join(', ')}; {summary.runs} {summary.runs === 1 ? 'run' : 'runs'}
            {due ? (
              <>
                ; <b className="shelf-due">due back {dayText(due)}</b>
              </>
            ) : null}
          </span>
        </th>
        <td className="figure">
          {summary.price
            ? formatNumber(summary.price.amount, {
                decimals: summary.price.amount % 1 ? 2 : 0,
                unit: summary.price.currency,
              })
            : ''}
        </td>
        {columns.map((column) => {
          const value = columnValue(entry, column.key);
          return (
            <td key={column.key} className="figure" data-head={column.head}>
              <Tiny entry={entry} column={column.key} limits={limits} />
              {value ? (
                headlineText(shelfHeadlines[column.key].headline, value)
              ) : entry.unit ? (
                <span className="quiet">no run</span>
              ) : null}
            </td>
          );
        })}
      </tr>
      {entry.articles.map((article) => (
        <tr key={article.id} className="shelf-article">
          <td />
          <td colSpan={6}>
            <ArticleLine article={article} />
            {due && article.state !== 'released' && <OpenSentences article={article.id} />}
          </td>
        </tr>
      ))}
    </tbody>
  );
}

function Tiny({
  entry,
  column,
  limits,
}: {
  entry: ShelfEntry;
  column: ShelfColumn;
  limits: House['limits'];
}) {
  if (column === 'error') {
    const series = measuredSeries(entry.sdr, 'grey.de2000');
    return series ? (
      <TinyLevels
        series={series}
        limit={limits.visibleDe2000}
        label={`Colour error by stimulus, visible from ${numberText(limits.visibleDe2000, 0)}`}
      />
    ) : null;
  }
  if (column === 'peak') {
    const series = measuredSeries(entry.hdr, 'peak');
    return series && series.values.length > 1 ? <TinyWindows series={series} label="Peak by window" /> : null;
  }
  return null;
}

function measuredSeries(runs: readonly Spoken[], quantity: string): MeasuredSeries | null {
  for (const { measured } of runs) {
    const measurement = measured.get(quantity);
    if (measurement?.state === 'measured') return measurement;
  }
  return null;
}
