import { baseKeymap, chainCommands, exitCode, setBlockType, toggleMark, wrapIn } from 'prosemirror-commands';
import { redo, undo } from 'prosemirror-history';
import { undoInputRule } from 'prosemirror-inputrules';
import { keymap } from 'prosemirror-keymap';
import { liftListItem, sinkListItem, splitListItem, wrapInList } from 'prosemirror-schema-list';
import type { Command, Plugin } from 'prosemirror-state';
import { goToNextCell } from 'prosemirror-tables';
import { articleSchema } from '../document/schema.ts';

const { nodes, marks } = articleSchema;

const hardBreak: Command = (state, dispatch) => {
  dispatch?.(state.tr.replaceSelectionWith(nodes.hard_break!.create()).scrollIntoView());
  return true;
};

/** Keys inside the text; keys of the window's commands are handled by the command registry. */
export function editorKeys(): Plugin[] {
  const bindings: Record<string, Command> = {
    'Mod-z': undo,
    'Shift-Mod-z': redo,
    'Mod-y': redo,
    'Mod-b': toggleMark(marks.strong!),
    'Mod-i': toggleMark(marks.em!),
    'Mod-e': toggleMark(marks.code!),
    'Shift-Ctrl-0': setBlockType(nodes.paragraph!),
    'Shift-Ctrl-7': wrapInList(nodes.ordered_list!),
    'Shift-Ctrl-8': wrapInList(nodes.bullet_list!),
    'Shift-Ctrl-9': wrapIn(nodes.blockquote!),
    Backspace: undoInputRule,
    Enter: splitListItem(nodes.list_item!),
    'Shift-Enter': chainCommands(exitCode, hardBreak),
    Tab: chainCommands(goToNextCell(1), sinkListItem(nodes.list_item!)),
    'Shift-Tab': chainCommands(goToNextCell(-1), liftListItem(nodes.list_item!)),
  };
  for (let level = 1; level <= 4; level += 1) {
    bindings[`Shift-Ctrl-${level}`] = setBlockType(nodes.heading!, { level });
  }
  return [keymap(bindings), keymap(baseKeymap)];
}
