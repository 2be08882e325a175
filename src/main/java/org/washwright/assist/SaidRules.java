package org.washwright.assist;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.washwright.document.Diagnostics;
import org.washwright.document.Place;
import org.washwright.rule.Edition;
import org.washwright.rule.Rule;
import org.washwright.rule.RuleSentence;
import org.washwright.rule.check.RuleChecker;
import org.washwright.rule.check.Terms;
import org.washwright.rule.syntax.RuleTextReader;
import org.washwright.rule.syntax.SyntaxRule;

/** Says every rule of a file that can be understood, also where another rule of the file can't. */
final class SaidRules {

    private final Edition words;
    private final RuleTextReader reader;

    SaidRules(Edition words, RuleTextReader reader) {
        this.words = words;
        this.reader = reader;
    }

    List<SaidRule> of(String file, String text) {
        List<Rule> rules = new ArrayList<>(words.rules().stream()
                .filter(r -> r.place().file().equals(file))
                .toList());
        if (file.endsWith(".drl")) {
            rules.addAll(oneByOne(file, text, rules));
        }
        rules.sort(Comparator.comparingInt(r -> r.place().line()));
        List<Integer> starts =
                new ArrayList<>(rules.stream().map(r -> r.place().line()).toList());
        if (file.endsWith(".drl")) {
            pieces(text).forEach(piece -> starts.add(piece.line()));
        }
        List<SaidRule> said = new ArrayList<>();
        for (int i = 0; i < rules.size(); i++) {
            int from = rules.get(i).place().line();
            // Also one that can't be read ends the rule before it.
            int to = starts.stream()
                    .filter(line -> line > from)
                    .min(Comparator.naturalOrder())
                    .orElse(Integer.MAX_VALUE);
            said.add(say(rules.get(i), to));
        }
        return said;
    }

    private SaidRule say(Rule rule, int to) {
        return new SaidRule(
                rule.id(),
                rule.title(),
                rule.place().line(),
                to,
                rule.basis().word(),
                rule.sources().stream().map(this::cited).toList(),
                rule.note(),
                RuleSentence.of(words, rule));
    }

    private String cited(Rule.Cite cite) {
        String title = Optional.ofNullable(words.sources().get(cite.source()))
                .map(s -> s.title() + (s.year() > 0 ? " (" + s.year() + ")" : ""))
                .orElse(cite.source());
        return cite.locator().isEmpty() ? title : title + ", " + cite.locator();
    }

    /** Reads rule by rule what the parser gave up on as a whole. */
    private List<Rule> oneByOne(String file, String text, List<Rule> known) {
        Set<String> ids = new HashSet<>();
        known.forEach(r -> ids.add(r.id()));
        Set<Integer> lines = new HashSet<>();
        known.forEach(r -> lines.add(r.place().line()));
        List<Rule> out = new ArrayList<>();
        for (Piece piece : pieces(text)) {
            if (!lines.contains(piece.line())) {
                read(file, piece).filter(r -> ids.add(r.id())).ifPresent(out::add);
            }
        }
        return out;
    }

    /** The text of one rule and the line it starts on. */
    private record Piece(String text, int line) {}

    private static List<Piece> pieces(String text) {
        List<Integer> starts = new ArrayList<>(RuleTokens.of(text).stream()
                .filter(t -> t.isWord("rule") && t.firstOnLine())
                .map(Token::start)
                .toList());
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < starts.size(); i++) {
            int end = i + 1 < starts.size() ? starts.get(i + 1) : text.length();
            int line = 1
                    + (int) text.substring(0, starts.get(i))
                            .chars()
                            .filter(c -> c == '\n')
                            .count();
            pieces.add(new Piece(text.substring(starts.get(i), end), line));
        }
        return pieces;
    }

    private Optional<Rule> read(String file, Piece piece) {
        // What is wrong here is told with the file as a whole.
        Diagnostics own = new Diagnostics();
        List<SyntaxRule> written = reader.read(file, piece.text(), own);
        if (written.size() != 1) {
            return Optional.empty();
        }
        Terms terms = new Terms(words.catalogue(), words.types(), words.grading(), words.sources());
        return new RuleChecker(terms, own).alone(written.get(0)).rule().map(r -> at(r, file, piece.line()));
    }

    private static Rule at(Rule r, String file, int line) {
        return new Rule(
                r.id(),
                r.title(),
                r.basis(),
                r.sources(),
                r.since(),
                r.note(),
                new Place(file, line, 1, ""),
                r.patterns(),
                r.effects());
    }
}
