// What any text editor does: history, brackets, search, keys.
import { EditorState, Prec } from "@codemirror/state"
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
import { bracketMatching, indentOnInput, indentUnit } from "@codemirror/language"
import { closeBrackets, closeBracketsKeymap } from "@codemirror/autocomplete"
import { search, searchKeymap, highlightSelectionMatches } from "@codemirror/search"

const LEAVE = 3000

export function extensions(editable, crlf) {
  return [
    lineNumbers(),
    highlightActiveLineGutter(),
    highlightSpecialChars(),
    history(),
    drawSelection(),
    indentUnit.of("  "),
    indentOnInput(),
    bracketMatching(),
    editable ? closeBrackets() : [],
    highlightActiveLine(),
    highlightSelectionMatches(),
    search({ top: true }),
    EditorView.lineWrapping,
    crlf ? EditorState.lineSeparator.of("\r\n") : [],
    EditorState.readOnly.of(!editable),
    // Escape, then Tab leaves the editor, also where Escape closed something first.
    Prec.highest(keymap.of([{ key: "Escape", run: (view) => (view.setTabFocusMode(LEAVE), false) }])),
    keymap.of([...closeBracketsKeymap, ...defaultKeymap, ...searchKeymap, ...historyKeymap, ...(editable ? [indentWithTab] : [])]),
  ]
}
