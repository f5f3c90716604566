// What the page needs of CodeMirror 6, and nothing more: one module, bundled into wwwroot/vendor/editor.js.
export { Compartment, EditorState } from "@codemirror/state";
export { EditorView, drawSelection, highlightActiveLine, keymap, lineNumbers } from "@codemirror/view";
export { history, historyKeymap, indentWithTab, standardKeymap } from "@codemirror/commands";
export { bracketMatching, HighlightStyle, indentOnInput, indentUnit, StreamLanguage, syntaxHighlighting } from "@codemirror/language";
export { autocompletion, closeBrackets, closeBracketsKeymap, completionKeymap } from "@codemirror/autocomplete";
export { csharp } from "@codemirror/legacy-modes/mode/clike";
export { tags } from "@lezer/highlight";
