// What the server finds wrong, as one types: marks in the gutter by shape, and a list that leads to the lines.
import { keymap, EditorView } from "@codemirror/view"
import { setDiagnostics, lintGutter, nextDiagnostic, previousDiagnostic } from "@codemirror/lint"

const WAIT = 350
const SHOWN = 50

export function problems(ask, form) {
  let view = null
  let timer = 0
  let running = null
  const verdict = document.getElementById("verdict")
  const list = document.getElementById("problems")

  function position(what) {
    const line = Math.min(Math.max(what.line || 1, 1), view.state.doc.lines)
    const at = view.state.doc.line(line)
    return Math.min(at.from + Math.max((what.column || 1) - 1, 0), at.to)
  }

  function end(from) {
    const line = view.state.doc.lineAt(from)
    const word = line.text.slice(from - line.from).match(/^("[^"]*"|[\w$.-]+|\S)/)
    return Math.min(line.to, from + (word ? word[0].length : 0))
  }

  function go(line, column) {
    const from = position({ line, column })
    view.dispatch({ selection: { anchor: from }, effects: EditorView.scrollIntoView(from, { y: "center" }) })
    view.focus()
  }

  function count(n, word) {
    return n === 0 ? "" : n + " " + word + (n === 1 ? "" : "s")
  }

  function say(found) {
    const errors = found.here.filter((m) => m.error).length
    const parts = [count(errors, "error"), count(found.here.length - errors, "warning")].filter(Boolean)
    const others = found.elsewhere.filter((m) => m.error).length
    const here = parts.length === 0
      ? "Nothing is wrong in this file."
      : parts.join(" and ") + " in this file, the first in line " + (found.here[0].what.line || 1) + "."
    const there = others === 0 ? "" : " " + count(others, "error") + " in other files."
    const words = here + there
    if (verdict.textContent !== words) verdict.textContent = words
    verdict.closest(".verdict").classList.toggle("broken", errors > 0)
  }

  function item(mark) {
    const row = document.createElement("li")
    row.className = mark.error ? "problem error" : "problem warning"
    const where = document.createElement("a")
    where.href = "#line-" + (mark.what.line || 1)
    where.textContent = (mark.error ? "Error" : "Warning") + ", line " + (mark.what.line || 1)
    where.addEventListener("click", (event) => {
      event.preventDefault()
      go(mark.what.line || 1, mark.what.column || 1)
    })
    const text = document.createElement("span")
    text.textContent = " " + mark.what.message + " "
    const advice = document.createElement("span")
    advice.className = "advice"
    advice.textContent = mark.what.advice
    row.append(where, text, advice)
    return row
  }

  function elsewhere(mark) {
    const row = document.createElement("li")
    row.className = mark.error ? "problem error" : "problem warning"
    const where = document.createElement("a")
    where.href = "/rulebooks/" + ask.edition + "/text?file=" + encodeURIComponent(mark.what.file) + "#line-" + (mark.what.line || 1)
    where.textContent = mark.what.file + (mark.what.line ? ", line " + mark.what.line : "")
    const text = document.createElement("span")
    text.textContent = " " + mark.what.message
    row.append(where, text)
    return row
  }

  function show(found) {
    say(found)
    view.dispatch(
      setDiagnostics(
        view.state,
        found.here.map((m) => {
          const from = position(m.what)
          return { from, to: end(from), severity: m.error ? "error" : "warning", message: m.what.message + " " + m.what.advice }
        }),
      ),
    )
    const rows = [...found.here.slice(0, SHOWN).map(item), ...found.elsewhere.slice(0, SHOWN).map(elsewhere)]
    list.replaceChildren(...rows)
    document.getElementById("problems-part").hidden = rows.length === 0
    form.dispatchEvent(new CustomEvent("looked"))
  }

  async function look() {
    if (running) running.abort()
    running = new AbortController()
    const asked = running
    try {
      const found = await ask.diagnostics(view.state.doc.toString(), asked.signal)
      if (asked === running && found) show(found)
    } catch (failure) {
      if (failure.name !== "AbortError") verdict.textContent = "The text could not be checked just now."
    }
  }

  return {
    extension: [
      lintGutter(),
      keymap.of([
        { key: "F8", run: nextDiagnostic, preventDefault: true },
        { key: "Shift-F8", run: previousDiagnostic, preventDefault: true },
      ]),
    ],
    start(made) {
      view = made
      look()
    },
    changed() {
      if (running) running.abort()
      clearTimeout(timer)
      timer = setTimeout(look, WAIT)
    },
    go,
  }
}
