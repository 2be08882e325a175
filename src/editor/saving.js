// Saves by itself. What the server has not taken yet is kept in the browser, offered again after a reload, and never lost.
import { keymap } from "@codemirror/view"
import { StateEffect } from "@codemirror/state"

const WAIT = 700
const FIRST = 1000
const LONGEST = 30000

export function saving(ask, view, form) {
  const word = document.getElementById("saved-word")
  const conflict = document.getElementById("conflict")
  const leftover = document.getElementById("leftover")
  const key = "washwright text " + ask.edition + " " + ask.file
  let tag = form.dataset.tag
  let stored = view.state.sliceDoc()
  let timer = 0
  let pause = FIRST
  let busy = false
  let held = false

  const text = () => view.state.sliceDoc()

  function say(state, words) {
    word.dataset.state = state
    if (word.textContent !== words) word.textContent = words
  }

  // The browser's own store may be full or forbidden; then the open editor is all there is, and the page says so.
  function keep() {
    try {
      if (text() === stored) localStorage.removeItem(key)
      else localStorage.setItem(key, JSON.stringify({ text: text(), tag, base: stored }))
      return true
    } catch (failure) {
      return false
    }
  }

  function kept() {
    try {
      return JSON.parse(localStorage.getItem(key))
    } catch (failure) {
      return null // Nothing readable was kept.
    }
  }

  function setText(words) {
    view.dispatch({ changes: { from: 0, to: view.state.doc.length, insert: words.replace(/\r\n/g, "\n") } })
  }

  function later(wait) {
    clearTimeout(timer)
    timer = setTimeout(save, wait)
  }

  function failed(reason) {
    const safe = keep()
    say("failed", "not saved: " + reason + (safe ? "" : " Do not close this page."))
    later(pause)
    pause = Math.min(pause * 2, LONGEST)
  }

  async function reasonOf(answer) {
    try {
      const problem = await answer.json()
      const first = problem.errors && problem.errors[0]
      return first ? first.message + " " + first.advice : problem.detail || problem.title
    } catch (failure) {
      return "the server answered " + answer.status + "."
    }
  }

  async function save() {
    clearTimeout(timer)
    if (held || busy) return
    const mine = text()
    if (mine === stored) {
      keep()
      say("saved", "saved")
      return
    }
    busy = true
    say("saving", "saving")
    let answer
    try {
      answer = await ask.save(mine, tag)
    } catch (failure) {
      busy = false
      failed(navigator.onLine ? "the server can not be reached; it is tried again." : "no connection; it is tried again.")
      return
    }
    busy = false
    if (answer.ok) {
      const saved = await answer.json()
      tag = saved.tag
      stored = mine
      pause = FIRST
      form.elements.tag.value = tag
      keep()
      if (text() === stored) say("saved", "saved")
      else later(WAIT)
    } else if (answer.status === 412) {
      keep()
      await meet(await answer.json(), mine)
    } else if (answer.status >= 500 || answer.status === 429) {
      failed("the server is busy; it is tried again.")
    } else {
      keep()
      const signedOut = answer.status === 401 ? "you are signed out. Sign in in another tab; your text stays here." : ""
      say("failed", "not saved: " + (signedOut || (await reasonOf(answer))))
      if (signedOut) later(LONGEST)
    }
  }

  // Somebody else changed the file: both texts are shown, and its author decides.
  async function meet(problem, mine) {
    held = true
    say("failed", "not saved: somebody else changed the file")
    const theirs = problem.now ? problem.now.text : ""
    try {
      conflict.innerHTML = await ask.differences({ base: stored, theirs, mine })
    } catch (failure) {
      conflict.textContent = "Somebody else changed the file. Both texts can not be shown just now; yours stays here."
      held = false
      failed("somebody else changed the file.")
      return
    }
    conflict.hidden = false
    const merged = conflict.querySelector("textarea[data-merged]")
    const take = (words, sure) => {
      tag = problem.now ? problem.now.tag : ""
      stored = problem.now ? theirs : ""
      held = false
      conflict.hidden = true
      conflict.replaceChildren()
      if (words !== text()) setText(words)
      keep()
      view.focus()
      if (sure) save()
      else later(WAIT)
    }
    conflict.querySelector("[data-take=theirs]").addEventListener("click", () => take(theirs, true))
    conflict.querySelector("[data-take=mine]").addEventListener("click", () => take(text(), true))
    conflict.querySelector("[data-take=merged]").addEventListener("click", () => take(merged.value, false))
    conflict.querySelector("h2").focus()
  }

  function offer() {
    const left = kept()
    if (!left || typeof left.text !== "string" || left.text === stored) return
    leftover.hidden = false
    leftover.querySelector("[data-leftover=take]").addEventListener("click", () => {
      tag = left.tag
      if (left.tag !== form.dataset.tag) stored = left.base
      leftover.hidden = true
      setText(left.text)
      view.focus()
      later(0)
    })
    leftover.querySelector("[data-leftover=drop]").addEventListener("click", () => {
      leftover.hidden = true
      keep()
      view.focus()
    })
  }

  return {
    start() {
      offer()
      say("saved", "saved")
      form.addEventListener("submit", (event) => {
        event.preventDefault()
        save()
      })
      view.dispatch({
        effects: StateEffect.appendConfig.of(keymap.of([{ key: "Mod-s", preventDefault: true, run: () => (save(), true) }])),
      })
      view.contentDOM.addEventListener("blur", save)
      document.addEventListener("visibilitychange", () => {
        if (document.visibilityState === "hidden") save()
      })
      window.addEventListener("pagehide", save)
      window.addEventListener("online", () => {
        pause = FIRST
        save()
      })
    },
    changed() {
      if (leftover.hidden) keep()
      if (held) return
      if (text() !== stored && !busy) say("waiting", "not saved yet")
      later(WAIT)
    },
  }
}
