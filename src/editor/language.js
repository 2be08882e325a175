// Colours for words. Meaning is for the server to say.
import { StreamLanguage, HighlightStyle, syntaxHighlighting } from "@codemirror/language"
import { tags } from "@lezer/highlight"

const WORDS = new Set(["rule", "when", "then", "end", "not", "exists", "in", "package", "true", "false"])
const VERBS = new Set([
  "ruleOut", "support", "oppose", "require", "limit", "caution", "conclude", "ask", "verify",
  "after", "before", "between", "min", "max",
])

const rules = StreamLanguage.define({
  name: "rules",
  startState: () => ({ comment: false, open: false }),
  indent: (state, after, context) => (/^(rule|when|then|end)\b/.test(after) || !state.open ? 0 : context.unit),
  token(stream, state) {
    if (state.comment) {
      state.comment = !stream.match(/^.*?\*\//)
      if (state.comment) stream.skipToEnd()
      return "comment"
    }
    if (stream.eatSpace()) return null
    if (stream.match("//")) {
      stream.skipToEnd()
      return "comment"
    }
    if (stream.match("/*")) {
      state.comment = true
      return "comment"
    }
    if (stream.match(/^"(?:[^"\\]|\\.)*"?/)) return "string"
    if (stream.match(/^@[A-Za-z]+/)) return "meta"
    if (stream.match(/^\$[A-Za-z0-9_]*/)) return "variableName"
    if (stream.match(/^[0-9]+(\.[0-9]+)?/)) return "number"
    const word = stream.match(/^[A-Za-z_][A-Za-z0-9_.]*/)
    if (word) {
      if (word[0] === "rule" || word[0] === "end") state.open = word[0] === "rule"
      if (WORDS.has(word[0])) return "keyword"
      if (VERBS.has(word[0])) return "function"
      return /^[A-Z]/.test(word[0]) ? "typeName" : "propertyName"
    }
    stream.next()
    return "operator"
  },
  languageData: {
    commentTokens: { line: "//" },
    closeBrackets: { brackets: ["(", "[", "{", '"'] },
    indentOnInput: /^\s*(rule|when|then|end)$/,
  },
  tokenTable: { function: tags.function(tags.name) },
})

const yaml = StreamLanguage.define({
  name: "yaml",
  token(stream) {
    if (stream.eatSpace()) return null
    if (stream.match(/^#.*/)) return "comment"
    if (stream.match(/^"(?:[^"\\]|\\.)*"?|^'[^']*'?/)) return "string"
    if (stream.match(/^[A-Za-z][A-Za-z0-9_.-]*(?=\s*:(\s|$))/)) return "propertyName"
    if (stream.match(/^[-[\]{},:](?=\s|$|[[\]{},])|^[[\]{},]/)) return "operator"
    if (stream.match(/^-?[0-9]+(\.[0-9]+)?(?=[\s,}\]]|$)/)) return "number"
    if (stream.match(/^[^\s,[\]{}#:]+/)) return null
    stream.next()
    return null
  },
  languageData: { commentTokens: { line: "#" }, closeBrackets: { brackets: ["[", "{", '"'] } },
})

const csv = StreamLanguage.define({
  name: "csv",
  startState: () => ({ line: 0, blank: false, header: false }),
  blankLine: (state) => {
    state.blank = true
  },
  token(stream, state) {
    if (stream.sol() && state.blank && !state.header) {
      state.header = true
      stream.skipToEnd()
      return "propertyName"
    }
    if (stream.match(/^"(?:[^"]|"")*"?/)) return "string"
    if (stream.eat(",")) return "operator"
    const first = stream.sol()
    stream.match(/^[^,"]+/) || stream.next()
    return first ? "keyword" : null
  },
})

const colours = HighlightStyle.define([
  { tag: tags.keyword, class: "t-word" },
  { tag: tags.function(tags.name), class: "t-verb" },
  { tag: tags.string, class: "t-text" },
  { tag: tags.comment, class: "t-comment" },
  { tag: tags.meta, class: "t-about" },
  { tag: tags.variableName, class: "t-name" },
  { tag: tags.typeName, class: "t-type" },
  { tag: tags.number, class: "t-number" },
  { tag: tags.operator, class: "t-sign" },
])

export function languageOf(file) {
  const language = file.endsWith(".drl") ? rules : file.endsWith(".csv") ? csv : yaml
  return [language, syntaxHighlighting(colours)]
}
