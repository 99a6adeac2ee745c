import { setBlockType, toggleMark, wrapIn } from 'prosemirror-commands';
import { wrapInList } from 'prosemirror-schema-list';
import { type Command as EditorCommand, TextSelection } from 'prosemirror-state';
import { addColumnAfter, addRowAfter, deleteColumn, deleteRow, isInTable } from 'prosemirror-tables';
import type { Command } from '../commands/command.ts';
import { useArticle } from '../stores/article.ts';
import { currentSession } from './currentSession.ts';
import { articleSchema } from './document/schema.ts';

const { nodes, marks } = articleSchema;

const writing = () => currentSession() !== null && !useArticle.getState().following;
const inTable = () => writing() && isInTable(currentSession()!.view.state);

function run(command: EditorCommand): () => void {
  return () => {
    const view = currentSession()?.view;
    if (!view) return;
    command(view.state, view.dispatch);
    view.focus();
  };
}

/** A table of two columns with a header row, after the block that holds the cursor. */
const insertTable: EditorCommand = (state, dispatch) => {
  const { $from } = state.selection;
  if ($from.depth !== 1) return false;
  const cell = (type: 'table_header' | 'table_cell') => nodes[type]!.create(null, nodes.paragraph!.create());
  const row = (type: 'table_header' | 'table_cell') =>
    nodes.table_row!.create(null, [cell(type), cell(type)]);
  const after = $from.after(1);
  const transaction = state.tr.insert(
    after,
    nodes.table!.create(null, [row('table_header'), row('table_cell')]),
  );
  dispatch?.(
    transaction.setSelection(TextSelection.near(transaction.doc.resolve(after + 1))).scrollIntoView(),
  );
  return true;
};

const blocks: readonly [
  id: string,
  name: string,
  keywords: string,
  key: string | undefined,
  EditorCommand,
][] = [
  ['heading', 'Heading', 'section title', 'Mod+Alt+2', setBlockType(nodes.heading!, { level: 2 })],
  [
    'subheading',
    'Heading under a heading',
    'section',
    'Mod+Alt+3',
    setBlockType(nodes.heading!, { level: 3 }),
  ],
  ['paragraph', 'Plain paragraph', 'text body', 'Mod+Alt+0', setBlockType(nodes.paragraph!)],
  ['list', 'List', 'bullets', undefined, wrapInList(nodes.bullet_list!)],
  ['numbered-list', 'Numbered list', 'ordered', undefined, wrapInList(nodes.ordered_list!)],
  ['quote', 'Quote', 'blockquote', undefined, wrapIn(nodes.blockquote!)],
  ['table', 'Insert a table', 'rows columns', undefined, insertTable],
  ['strong', 'Strong', 'bold', undefined, toggleMark(marks.strong!)],
  ['emphasis', 'Emphasis', 'italic', undefined, toggleMark(marks.em!)],
];

const tableParts: readonly [id: string, name: string, EditorCommand][] = [
  ['row-below', 'Row below', addRowAfter],
  ['column-right', 'Column to the right', addColumnAfter],
  ['remove-row', 'Remove this row', deleteRow],
  ['remove-column', 'Remove this column', deleteColumn],
];

/** The forms of blocks and words, for the palette; most have a Markdown sign or a key besides. */
export const blockCommands: readonly Command[] = [
  ...blocks.map(
    ([id, name, keywords, key, command]): Command => ({
      id: `draft.block.${id}`,
      name,
      keywords: `format ${keywords}`,
      ...(key ? { key } : {}),
      group: 'Draft',
      when: writing,
      perform: run(command),
    }),
  ),
  ...tableParts.map(
    ([id, name, command]): Command => ({
      id: `draft.table.${id}`,
      name,
      keywords: 'table',
      group: 'Draft',
      when: inTable,
      perform: run(command),
    }),
  ),
];
