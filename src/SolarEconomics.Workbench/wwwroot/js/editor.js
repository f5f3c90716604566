// editor.js: the field for code, with highlighting and completion.
import * as code from "../vendor/editor.js";

const language = code.StreamLanguage.define(code.csharp);
const { tags } = code;
const highlighting = code.syntaxHighlighting(code.HighlightStyle.define([
  { tag: [tags.keyword, tags.controlKeyword, tags.typeName, tags.definitionKeyword], fontWeight: "700" },
  { tag: [tags.string, tags.number, tags.literal, tags.atom], color: "var(--text)" },
  { tag: tags.comment, color: "var(--remark)", fontStyle: "italic" },
  { tag: tags.meta, color: "var(--word)" },
]));

/**
 * @param {{parent: Element, text: string, nonce: string, changed: (text: string) => void, workOut: () => void, save: () => void,
 *   complete: (text: string, position: number) => Promise<{from: number, items: Array<{label: string, detail: string}>}>}} parts
 */
export function createEditor({ parent, text, nonce, changed, workOut, save, complete }) {
  const offered = async (context) => {
    const word = context.matchBefore(/\w+/);
    const afterDot = context.matchBefore(/\.\w*/);
    if (!context.explicit && !word && !afterDot) return null;
    const { from, items } = await complete(context.state.doc.toString(), context.pos);
    return items.length === 0 ? null : { from, options: items.map(({ label, detail }) => ({ label, detail })), validFor: /^\w*$/ };
  };
  const act = (what) => () => { what(); return true; };
  const view = new code.EditorView({
    parent,
    state: code.EditorState.create({
      doc: text,
      extensions: [
        language, highlighting, code.history(), code.drawSelection(), code.indentOnInput(), code.bracketMatching(), code.closeBrackets(),
        code.indentUnit.of("    "), code.EditorView.lineWrapping, code.EditorView.cspNonce.of(nonce),
        code.EditorView.contentAttributes.of({ "aria-label": "Working of this step, in C#. Escape, then Tab, leaves the field." }),
        code.autocompletion({ override: [offered], activateOnTyping: true, icons: false }),
        code.keymap.of([
          { key: "Mod-Enter", run: act(workOut) }, { key: "Mod-s", run: act(save), preventDefault: true },
          ...code.closeBracketsKeymap, ...code.completionKeymap, ...code.historyKeymap, code.indentWithTab, ...code.standardKeymap,
        ]),
        code.EditorView.updateListener.of((update) => { if (update.docChanged && !quietly) changed(update.state.doc.toString()); }),
      ],
    }),
  });
  let quietly = false;
  return {
    get caret() { return view.state.selection.main.head; },
    get text() { return view.state.doc.toString(); },
    /** Puts in a text that came from the host, without telling it back. */
    replace(next) {
      quietly = true;
      view.dispatch({ changes: { from: 0, to: view.state.doc.length, insert: next } });
      quietly = false;
    },
    focus: () => view.focus(),
    destroy: () => view.destroy(),
  };
}
