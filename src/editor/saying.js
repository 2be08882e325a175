// Beside the text: the rule under the caret as one would say it, its sources, and how it stands.
const WAIT = 700
const AGAIN = 2000

function element(tag, name, text) {
  const made = document.createElement(tag)
  if (name) made.className = name
  if (text) made.textContent = text
  return made
}

export function saying(ask) {
  const box = document.getElementById("said-rules")
  if (!box) return { start() {}, changed() {}, moved() {} }
  let view = null
  let timer = 0
  let running = null
  let rules = []
  let standings = null
  let shown = ""

  function stands(id) {
    const rows = []
    const one = standings && standings.rules[id]
    if (!standings || !one) return rows
    if (standings.readable && standings.counting) rows.push("The cases are being run.")
    else if (standings.readable && standings.cases > 0)
      rows.push(
        one.fired === 0
          ? "No case makes it fire."
          : "Fires on " + one.fired + " of " + standings.cases + " cases" + (one.heldBack ? "." : "; no change of one holds it back."),
      )
    if (one.marks > 0) rows.push(one.marks + (one.marks === 1 ? " open mark" : " open marks") + " of readers against it.")
    one.findings.forEach((f) => rows.push(f))
    return rows
  }

  function card(rule, here) {
    const part = element("article", here ? "said-rule here" : "said-rule")
    const head = element("h3", "", rule.title)
    const id = element("p", "said-id", rule.id + ", line " + rule.from)
    part.append(head, id)
    const when = element("p")
    when.append(element("span", "said-word", "when"), " " + (rule.sentence.when.join("; and ") || "always"))
    part.append(when)
    rule.sentence.then.forEach((t, i) => {
      const then = element("p")
      then.append(element("span", "said-word", i === 0 ? "then" : "and"), " ", element("b", "", t.what), ", because: " + t.because)
      part.append(then)
    })
    part.append(element("p", "said-about", "Basis: " + rule.basis + (rule.sources.length ? "; " + rule.sources.join("; ") : "") + (rule.note ? ". " + rule.note : "")))
    const rows = stands(rule.id)
    if (rows.length) {
      const list = element("ul", "said-stands")
      rows.forEach((r) => list.append(element("li", "", r)))
      part.append(list)
    }
    return part
  }

  function show() {
    const line = view.state.doc.lineAt(view.state.selection.main.head).number
    const here = rules.find((r) => r.from <= line && line < r.to)
    const key = JSON.stringify([rules, standings, here ? here.from : 0])
    if (key === shown) return
    shown = key
    const narrow = matchMedia("(max-width: 60rem)").matches
    const some = narrow ? rules : here ? [here] : []
    box.replaceChildren(...some.map((r) => card(r, r === here)))
    if (some.length === 0)
      box.append(element("p", "note", rules.length === 0 ? "No rule of this text can be read yet." : "Put the caret into a rule to read what it says."))
  }

  async function look() {
    if (running) running.abort()
    running = new AbortController()
    const asked = running
    try {
      const found = await ask.sentences(view.state.doc.toString(), asked.signal)
      if (asked === running && found) {
        rules = found
        show()
      }
    } catch (failure) {
      if (failure.name !== "AbortError") shown = ""
    }
  }

  async function count() {
    try {
      standings = await ask.standings()
      show()
      if (standings.counting) setTimeout(count, AGAIN)
    } catch (failure) {
      standings = null // The sentences stand without it.
    }
  }

  return {
    start(made) {
      view = made
      look()
      count()
      matchMedia("(max-width: 60rem)").addEventListener("change", () => {
        shown = ""
        show()
      })
    },
    changed() {
      clearTimeout(timer)
      timer = setTimeout(look, WAIT)
    },
    moved() {
      if (rules.length) show()
    },
  }
}
