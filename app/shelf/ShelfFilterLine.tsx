import type { ShelfEntry, ShelfFilter, SortKey } from './shelfEntries.ts';

const sortNames: Record<SortKey, string> = {
  latest: 'the latest test',
  name: 'their names',
  price: 'price, cheapest first',
  error: 'colour error, least first',
  peak: 'peak, brightest first',
  contrast: 'contrast, highest first',
  gamut: 'P3 covered, widest first',
};

/** What to show, as a sentence with fields in it. */
export function ShelfFilterLine({
  entries,
  filter,
  onFilter,
  sort,
  onSort,
}: {
  entries: readonly ShelfEntry[];
  filter: ShelfFilter;
  onFilter: (filter: ShelfFilter) => void;
  sort: SortKey;
  onSort: (key: SortKey) => void;
}) {
  const makers = [...new Set(entries.map((entry) => entry.summary.maker))].sort();
  const panels = [...new Set(entries.map((entry) => entry.summary.panel ?? ''))].filter(Boolean).sort();
  return (
    <search className="shelf-filter">
      <span>Sets with</span>
      <input
        type="search"
        aria-label="Words in the name, the kind or an article"
        placeholder="any words"
        value={filter.words}
        onChange={(event) => onFilter({ ...filter, words: event.target.value })}
      />
      <span>from</span>
      <select
        aria-label="Maker"
        value={filter.maker}
        onChange={(event) => onFilter({ ...filter, maker: event.target.value })}
      >
        <option value="">any maker</option>
        {makers.map((maker) => (
          <option key={maker}>{maker}</option>
        ))}
      </select>
      <span>on</span>
      <select
        aria-label="Panel"
        value={filter.panel}
        onChange={(event) => onFilter({ ...filter, panel: event.target.value })}
      >
        <option value="">any panel</option>
        {panels.map((panel) => (
          <option key={panel}>{panel}</option>
        ))}
      </select>
      <span>up to</span>
      <input
        className="shelf-price"
        inputMode="decimal"
        aria-label="Price up to"
        placeholder="any price"
        value={filter.priceUnder ?? ''}
        onChange={(event) => {
          const amount = Number(event.target.value.replaceAll(/[^\d.]/g, ''));
          onFilter({ ...filter, priceUnder: event.target.value.trim() === '' || !amount ? null : amount });
        }}
      />
      <span>by</span>
      <select aria-label="Order" value={sort} onChange={(event) => onSort(event.target.value as SortKey)}>
        {Object.entries(sortNames).map(([key, name]) => (
          <option key={key} value={key}>
            {name}
          </option>
        ))}
      </select>
    </search>
  );
}
