// Completion while typing and on Ctrl-Space; help for the word under the pointer, and at the caret by key.
import { keymap, hoverTooltip } from "@codemirror/view"
import { autocompletion, completionKeymap, startCompletion } from "@codemirror/autocomplete"

function place(state, position) {
  const line = state.doc.lineAt(position)
  return [line.number, position - line.from + 1]
}

function element(tag, name, text) {
  const made = document.createElement(tag)
  if (name) made.className = name
  if (text) made.textContent = text
  return made
}

function card(help) {
  const box = element("div", "help-card")
  const head = element("p", "help-head")
  head.append(element("b", "", help.title), " ", element("span", "help-kind", help.kind))
  box.append(head)
  help.lines.slice(0, 12).forEach((line) => box.append(element("p", "help-line", line)))
  if (help.lines.length > 12) box.append(element("p", "help-line", "and " + (help.lines.length - 12) + " more"))
  return box
}

export function helping(ask, editable) {
  async function complete(context) {
    const before = context.state.sliceDoc(Math.max(0, context.pos - 1), context.pos)
    if (!context.explicit && !/[A-Za-z0-9$@."({,;]/.test(before)) return null
    const stop = new AbortController()
    context.addEventListener("abort", () => stop.abort())
    let found
    try {
      found = await ask.completions(context.state.doc.toString(), ...place(context.state, context.pos), stop.signal)
    } catch (failure) {
      return null // Nothing is proposed while the server can't be asked; the state of saving tells why.
    }
    if (context.aborted || !found || found.list.length === 0) return null
    const signs = found.list.every((p) => p.kind === "sign")
    if (signs && !context.explicit) return null
    return {
      from: found.from,
      to: found.to > context.pos ? found.to : undefined,
      validFor: /^[A-Za-z0-9_.$@-]*$/,
      options: found.list.map((p, i) => ({
        label: p.label,
        detail: p.name || p.kind,
        info: p.explanation ? () => element("p", "help-line", p.explanation) : undefined,
        boost: Math.max(-99, -i),
        apply: (view, completion, from, to) => {
          const end = Math.max(to, found.to > context.pos ? to + found.to - context.pos : to)
          view.dispatch({
            changes: { from, to: Math.min(end, view.state.doc.length), insert: p.insert },
            selection: { anchor: from + p.insert.length - p.back },
            userEvent: "input.complete",
          })
          if (/[( ]$/.test(p.insert) || p.back > 0) startCompletion(view)
        },
      })),
    }
  }

  async function helpAt(view, position) {
    try {
      return await ask.help(view.state.doc.toString(), ...place(view.state, position))
    } catch (failure) {
      return null // As above.
    }
  }

  const said = () => document.getElementById("editor-help")
  async function atCaret(view) {
    const help = await helpAt(view, view.state.selection.main.head)
    const box = said()
    box.replaceChildren(help ? card(help) : element("p", "help-line", "Nothing is known of the word at the caret."))
    box.hidden = false
  }

  return [
    editable
      ? autocompletion({ override: [complete], activateOnTyping: true, maxRenderedOptions: 200, icons: false })
      : [],
    hoverTooltip(
      async (view, position) => {
        const help = await helpAt(view, position)
        if (!help) return null
        return { pos: Math.min(help.from, view.state.doc.length), end: Math.min(help.to, view.state.doc.length), above: true, create: () => ({ dom: card(help) }) }
      },
      { hoverTime: 350 },
    ),
    keymap.of([
      ...completionKeymap,
      { key: "F1", preventDefault: true, run: (view) => (atCaret(view), true) },
      { key: "Mod-i", preventDefault: true, run: (view) => (atCaret(view), true) },
    ]),
  ]
}
