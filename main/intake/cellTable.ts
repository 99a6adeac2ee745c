/** Columns and cells of a file as text: what the library keeps and an export writes. */
export interface CellTable {
  columns: string[];
  rows: string[][];
}
