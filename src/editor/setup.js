// What any text editor does: history, brackets, search, keys.
import { EditorState } from "@codemirror/state"
import {
  EditorView,
  keymap,
  lineNumbers,
  highlightActiveLine,
  highlightActiveLineGutter,
  highlightSpecialChars,
  drawSelection,
} from "@codemirror/view"
import { defaultKeymap, history, historyKeymap, indentWithTab } from "@codemirror/commands"
import { bracketMatching, indentUnit } from "@codemirror/language"
import { closeBrackets, closeBracketsKeymap } from "@codemirror/autocomplete"
import { search, searchKeymap, highlightSelectionMatches } from "@codemirror/search"

export function extensions(editable, crlf) {
  return [
    lineNumbers(),
    highlightActiveLineGutter(),
    highlightSpecialChars(),
    history(),
    drawSelection(),
    indentUnit.of("  "),
    bracketMatching(),
    editable ? closeBrackets() : [],
    highlightActiveLine(),
    highlightSelectionMatches(),
    search({ top: true }),
    EditorView.lineWrapping,
    crlf ? EditorState.lineSeparator.of("\r\n") : [],
    EditorState.readOnly.of(!editable),
    // Escape, then Tab leaves the editor: indentWithTab is switched off by Escape until the next key.
    keymap.of([...closeBracketsKeymap, ...defaultKeymap, ...searchKeymap, ...historyKeymap, ...(editable ? [indentWithTab] : [])]),
  ]
}
