// The editor of one file of a draft. Everything it needs stands on the form that works without it.
import { EditorState } from "@codemirror/state"
import { EditorView } from "@codemirror/view"
import { server } from "./server.js"
import { extensions } from "./setup.js"
import { languageOf } from "./language.js"
import { helping } from "./helping.js"
import { problems } from "./problems.js"
import { saving } from "./saving.js"
import { saying } from "./saying.js"
import { look } from "./look.js"

function start(form) {
  const area = form.querySelector("textarea")
  const host = document.getElementById("editor")
  const editable = form.dataset.editable === "true"
  const ask = server(form.dataset.edition, form.dataset.file)
  const text = area.value
  const crlf = text.includes("\r\n")

  // A shadow root, because styles adopted there need no loosening of the policy that forbids inline ones.
  const root = host.attachShadow({ mode: "open" })
  const mount = document.createElement("div")
  root.append(mount)

  const parts = { saving: null, problems: null, saying: null }
  const changed = (update) => {
    if (update.docChanged) {
      parts.saving && parts.saving.changed()
      parts.problems.changed()
      parts.saying.changed()
    }
    if (update.docChanged || update.selectionSet) parts.saying.moved()
  }
  parts.problems = problems(ask, form)
  parts.saying = saying(ask)
  const view = new EditorView({
    root,
    parent: mount,
    state: EditorState.create({
      doc: text,
      extensions: [
        extensions(editable, crlf),
        languageOf(form.dataset.file),
        helping(ask, editable),
        parts.problems.extension,
        look,
        EditorView.updateListener.of(changed),
        EditorView.contentAttributes.of({
          // A description outside of the shadow root can not be named here, so the way out is told with the name.
          "aria-label": "Text of " + form.dataset.file + (editable ? ". Escape, then Tab leaves the editor" : ""),
        }),
      ],
    }),
  })
  parts.problems.start(view)
  parts.saying.start(view)
  if (editable) {
    parts.saving = saving(ask, view, form)
    parts.saving.start()
  }
  form.classList.add("with-editor")
  host.hidden = false
  document.getElementById("editor-keys").hidden = false
  const line = parseInt((location.hash.match(/^#line-([0-9]{1,7})$/) || [])[1], 10)
  if (line) parts.problems.go(line, 1)
}

const form = document.querySelector("form[data-editor]")
if (form) start(form)
