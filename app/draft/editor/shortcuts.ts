import { InputRule, inputRules, textblockTypeInputRule, wrappingInputRule } from 'prosemirror-inputrules';
import type { MarkType } from 'prosemirror-model';
import type { Plugin } from 'prosemirror-state';
import { articleSchema } from '../document/schema.ts';

const { nodes, marks } = articleSchema;

/** `**strong**`, `*em*`, `` `code` ``: the closing sign turns the words into the mark. */
function markRule(pattern: RegExp, type: MarkType): InputRule {
  return new InputRule(pattern, (state, match, start, end) => {
    const words = match[2]!;
    const lead = match[1]!.length;
    const from = start + lead;
    const transaction = state.tr;
    transaction.insertText(words, from, end);
    transaction.addMark(from, from + words.length, type.create());
    transaction.removeStoredMark(type);
    return transaction;
  });
}

/** Markdown's own signs, typed: headings, lists, quotes, rules, code, emphasis. A true minus before a digit. */
export function markdownShortcuts(): Plugin {
  return inputRules({
    rules: [
      textblockTypeInputRule(/^(#{1,6})\s$/, nodes.heading!, (match) => ({ level: match[1]!.length })),
      wrappingInputRule(/^\s*([-*])\s$/, nodes.bullet_list!, (match) => ({ bullet: match[1]! })),
      wrappingInputRule(
        /^(\d+)\.\s$/,
        nodes.ordered_list!,
        (match) => ({ order: Number(match[1]) }),
        (match, node) => node.childCount + (node.attrs.order as number) === Number(match[1]),
      ),
      wrappingInputRule(/^\s*>\s$/, nodes.blockquote!),
      textblockTypeInputRule(/^```$/, nodes.code_block!),
      new InputRule(/^(---|\*\*\*)$/, (state, _match, start) => {
        const $start = state.doc.resolve(start);
        const from = $start.before();
        return state.tr.replaceWith(from, $start.after(), [
          nodes.horizontal_rule!.create(),
          nodes.paragraph!.create(),
        ]);
      }),
      markRule(/(^|[\s(“"])\*\*([^\s*][^*]*)\*\*$/, marks.strong!),
      markRule(/(^|[\s(“"])\*([^\s*][^*]*)\*$/, marks.em!),
      markRule(/(^|[\s(“"])`([^`]+)`$/, marks.code!),
      new InputRule(/(^|[\s(])-(\d)$/, (state, match, start, end) =>
        state.tr.insertText(`${match[1]}\u2212${match[2]}`, start, end),
      ),
    ],
  });
}
