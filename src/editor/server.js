// Asks the server about the text that is being written.
const PLAIN = { "Content-Type": "text/plain; charset=utf-8", "X-Washwright": "1", Accept: "application/json" }

export function server(edition, file) {
  const base = "/api/editions/" + edition + "/"
  const about = "file=" + encodeURIComponent(file)
  const path = file.split("/").map(encodeURIComponent).join("/")

  async function json(what, text, signal) {
    const answer = await fetch(base + what + (what.includes("?") ? "&" : "?") + about, {
      method: "POST",
      headers: PLAIN,
      body: text,
      signal,
    })
    if (answer.status === 204) return null
    if (!answer.ok) throw new Error("answered " + answer.status)
    return answer.json()
  }

  return {
    edition,
    file,
    diagnostics: (text, signal) => json("diagnostics-of", text, signal),
    sentences: (text, signal) => json("sentences", text, signal),
    completions: (text, line, column, signal) =>
      json("completions?line=" + line + "&column=" + column, text, signal),
    help: (text, line, column, signal) => json("hover?line=" + line + "&column=" + column, text, signal),
    async standings(signal) {
      const answer = await fetch(base + "standings", { headers: { Accept: "application/json" }, signal })
      if (!answer.ok) throw new Error("answered " + answer.status)
      return answer.json()
    },
    save: (text, tag) =>
      fetch(base + "files/" + path, {
        method: "PUT",
        headers: { ...PLAIN, ...(tag ? { "If-Match": '"' + tag + '"' } : { "If-None-Match": "*" }) },
        body: text,
        keepalive: text.length < 60000,
      }),
    async differences(texts) {
      const answer = await fetch("/rulebooks/" + edition + "/text/differences?" + about, {
        method: "POST",
        headers: { "Content-Type": "application/json", "X-Washwright": "1", Accept: "text/html" },
        body: JSON.stringify(texts),
      })
      if (!answer.ok) throw new Error("answered " + answer.status)
      return answer.text()
    },
  }
}
