package org.washwright.assist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Severity;
import org.washwright.drools.DrlReader;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.rule.Edition;
import org.washwright.rule.check.RuleChecker;
import org.washwright.rule.check.Terms;
import org.washwright.task.FieldType;

/** What is proposed while a rule is written: what the docs name, what authors wrote, and nothing that is wrong. */
class ProposalsTest {

    private static final Edition SMALL = small();
    private static final Assistant BY_SMALL = new Assistant(SMALL, new DrlReader());
    private static final Assistant BY_STARTER = new Assistant(Starter.edition(), new DrlReader());
    private static final String HEAD = "rule \"r\" @id(\"R-1\") @basis(\"common practice\")\n";

    /** The small edition with conclusions and test methods, of which it has some by name only. */
    private static Edition small() {
        return SmallEdition.read(SmallEdition.files(SmallEdition.withFewRules()));
    }

    /** A text with the caret at the bar, and what has to be proposed there. */
    record Place(String text, List<String> proposed, List<String> not) {
        @Override
        public String toString() {
            return text.replace('\n', ' ');
        }
    }

    private static Place at(String text, String... proposed) {
        return new Place(text, List.of(proposed), List.of());
    }

    private static Place when(String text, String... proposed) {
        return at(HEAD + "when\n  " + text, proposed);
    }

    private static Place then(String text, String... proposed) {
        return at(HEAD + "when\n  $p : Process(node == \"water\")\n  $m : Material()\nthen\n  " + text, proposed);
    }

    /** Source of what is expected: docs/rule-language.md, and the terms of the small edition. */
    static Stream<Place> places() {
        return Stream.of(
                at("|", "rule"),
                at("rule \"r\"\n|", "@id", "@basis", "@source", "@title", "@since", "@note", "when"),
                at(
                        "rule \"r\" @basis(\"|\")",
                        "standard",
                        "handbook",
                        "regulation",
                        "physics",
                        "trial",
                        "common practice"),
                at("rule \"r\" @source(\"BOOK, p. 3; |\")", "BOOK"),
                when("|", "Soil", "$s : Soil", "Process", "not", "exists", "Attribute", "OnSoil", "Stage"),
                when("not |", "Soil"),
                when("$x : |", "Soil"),
                when("Soil()\n  |", "then", "Feature"),
                when("Soil(|", "kind", "kind.polarity", "amount"),
                when("Soil(kind.po|", "kind.polarity"),
                when("Soil(kind == \"soil-a\", |", "state"),
                when("Soil(kind |", "==", "!=", "in", "not in"),
                when("Soil(amount |", "<", "<=", ">", ">=", "==", "!="),
                when("Soil(kind == |", "soil-a", "soil-b"),
                when("Soil(kind == \"|\")", "soil-a", "soil-b"),
                when("Soil(kind == soil-|", "soil-a", "soil-b"),
                when("Soil(kind == \"so|)\nthen", "soil-a"),
                when("Soil(kind in (\"soil-a\", |", "soil-b"),
                when("Soil(kind.oily == |", "true", "false"),
                when("Process(heat < |", "60 °C"),
                when("Process(heat < \"65|\")", "65 °C", "65 K", "65 °F"),
                when("$a : Process() Process(heat < |", "$a.heat"),
                when("$p : Process() $s : Soil() OnSoil(process == |", "$p"),
                when("$p : Process() $s : Soil() OnSoil(process == $p, soil == |", "$s"),
                when("$m : Material() Conclusion(subject == |", "$m"),
                when("Attribute(|", "id"),
                when("Attribute(id == \"|\")", "att-heat", "att-flag"),
                when("Attribute(id == \"att-heat\", |", "value"),
                when("Attribute(id == \"att-heat\", value > |", "60 °C"),
                when("Attribute(id == \"att-soil\", value == |", "soil-a"),
                when("Soil(kind == \"soil-a\"|", ",", ")", "&&", "||"),
                then("|", "ruleOut", "support", "oppose", "require", "limit", "caution", "conclude", "ask", "verify"),
                then("ruleOut(|", "$p", "any", "water", "water-a"),
                then("ruleOut($p, |", "main", "alone", "first", "last", "anywhere"),
                then("support($p, |", "works", "safe"),
                then("support($p, \"works\", |", "1", "2", "3"),
                then("require($p, |", "first", "last"),
                then("require($p, \"first\", |", "after", "before", "between"),
                then("require($p, \"first\", after(|", "main", "second"),
                then("limit($p, |", "main", "first"),
                then("limit($p, \"main\", |", "temperature"),
                then("limit($p, \"main\", \"temperature\", |", "max", "min"),
                then("limit($p, \"main\", \"temperature\", max(|", "60 °C", "$p.heat"),
                then("caution(|", "hazard-a"),
                then("conclude(|", "conclusion-a"),
                then("conclude(\"conclusion-a\", |", "$m", "$p"),
                then("ask(|", "Material.hardness", "Soil", "Attribute.att-heat"),
                then("verify(|", "test-method-a"),
                then("oppose($p, \"works\", 2, \"It hurts {|", "$m", "$m.hardness", "$target"),
                then("oppose($p, \"works\", 2, \"It hurts {$m.h|}.\");", "$m.hardness"),
                then("caution(\"hazard-a\", \"So.\");\n  |", "end", "ask"),
                new Place(HEAD + "when\n  Soil() // |", List.of(), List.of("Soil", "then")),
                new Place(HEAD + "when\n  Demand(|", List.of(), List.of("particleCode")),
                new Place(
                        HEAD + "when\n  $p : Process() $t : Stage()\nthen\n  |",
                        List.of("require"),
                        List.of("conclude")));
    }

    @ParameterizedTest
    @MethodSource("places")
    void what_may_stand_at_a_place_is_proposed_there(Place place) {
        int caret = place.text().indexOf('|');
        String text = place.text().replaceFirst("\\|", "");
        Set<String> labels = labels(BY_SMALL, text, caret);
        assertTrue(labels.containsAll(place.proposed()), () -> place.proposed() + " not all in " + labels);
        place.not().forEach(n -> assertFalse(labels.contains(n), () -> n + " is in " + labels));
    }

    private static Set<String> labels(Assistant assistant, String text, int caret) {
        Set<String> labels = new TreeSet<>();
        assistant.proposals("rules/r.drl", text, caret).list().forEach(p -> labels.add(p.label()));
        return labels;
    }

    @Test
    void every_documented_attribute_of_a_task_is_proposed_but_codes() throws IOException {
        String text = Files.readString(Path.of("docs/task-attributes.md"));
        Matcher lines = Pattern.compile("`([A-Z][A-Za-z]+)` in rules|\\| `([a-zA-Z]+)` \\|[^|]*\\| ([^|]*)\\|")
                .matcher(text);
        String type = "";
        int seen = 0;
        while (lines.find()) {
            if (lines.group(1) != null) {
                type = lines.group(1);
            } else if (!type.isEmpty()) {
                String start = HEAD + "when\n  " + type + "(";
                boolean proposed = labels(BY_SMALL, start, start.length()).contains(lines.group(2));
                assertEquals(!lines.group(3).contains("code"), proposed, type + "." + lines.group(2));
                seen++;
            }
        }
        assertTrue(seen > 80, seen + " attributes were read in the docs");
    }

    @Test
    void every_documented_verb_and_fact_type_is_proposed() throws IOException {
        String text = Files.readString(Path.of("docs/rule-language.md"));
        Matcher verbs = Pattern.compile("\\| `([a-zA-Z]+)\\(").matcher(text);
        String then = HEAD + "when\n  Part()\nthen\n  ";
        Set<String> proposed = labels(BY_SMALL, then, then.length());
        int seen = 0;
        while (verbs.find()) {
            assertTrue(proposed.contains(verbs.group(1)), verbs.group(1));
            seen++;
        }
        assertTrue(seen >= 8, seen + " verbs were read");
        Matcher types = Pattern.compile("\\n\\| `([A-Z][A-Za-z]+)` \\| (.*)\\|").matcher(text);
        String when = HEAD + "when\n  $s : Soil() $m : Material() $c : Component() $f : Feature() $p : Process()\n  ";
        seen = 0;
        while (types.find()) {
            String type = types.group(1);
            assertTrue(labels(BY_SMALL, when, when.length()).contains(type), type);
            String about = when + type + "(";
            Set<String> fields = labels(BY_SMALL, about, about.length());
            Matcher names = Pattern.compile("`([a-zA-Z]+)`").matcher(types.group(2));
            while (names.find()) {
                boolean value = type.equals("Attribute") && names.group(1).equals("value");
                assertTrue(value || fields.contains(names.group(1)), type + "." + names.group(1));
                seen++;
            }
        }
        assertTrue(seen > 30, seen + " fields were read");
    }

    @Test
    void what_authors_wrote_is_proposed_where_they_wrote_it() {
        int checked = 0;
        List<String> missing = new ArrayList<>();
        for (Map.Entry<String, byte[]> file : Starter.files().files().entrySet()) {
            if (file.getKey().endsWith(".drl")) {
                String text = new String(file.getValue(), StandardCharsets.UTF_8);
                // Rule by rule, as the whole file would be cut anew for every word.
                for (String rule : text.split("(?m)^(?=rule )")) {
                    checked += words(rule, missing);
                }
            }
        }
        assertEquals(List.of(), missing);
        assertTrue(checked > 3000, checked + " words were looked at");
    }

    private static int words(String rule, List<String> missing) {
        int checked = 0;
        List<Token> tokens = RuleTokens.of(rule);
        for (Token token : tokens) {
            Situation situation = new SituationFinder(Starter.edition().types())
                    .after(tokens.stream().filter(t -> t.end() <= token.start()).toList());
            if (!isWord(token, situation)) {
                continue;
            }
            checked++;
            Set<String> labels = labels(BY_STARTER, rule, token.start() + 1);
            if (!labels.contains(token.text())) {
                missing.add(token.text() + " at " + situation + " of "
                        + rule.lines().findFirst().orElse(""));
            }
        }
        return checked;
    }

    /** Whether a token is a word that an author chose among those of the language or the catalogue. */
    private static boolean isWord(Token token, Situation situation) {
        boolean text = token.kind() == Token.Kind.TEXT;
        if (situation instanceof Situation.LiteralPlace at) {
            boolean term = at.field()
                    .filter(f -> f.type() instanceof FieldType.TermType)
                    .isPresent();
            return token.isVariable() || (text && term);
        }
        if (situation instanceof Situation.ArgumentPlace at) {
            boolean free = at.verb().arguments().get(at.index()) == Argument.REASON
                    || token.text().contains(" ")
                    || token.text().matches("[0-9.]+")
                    || at.nested().matches("max|min");
            return !free && (text || token.isVariable());
        }
        boolean word = token.kind() == Token.Kind.WORD;
        return situation instanceof Situation.FieldPlace && word && !token.isVariable()
                || situation instanceof Situation.ConsequenceStart && word
                || situation instanceof Situation.PatternStart && word && !token.isVariable() && !token.isWord("then");
    }

    /** The bounds of a rule as a whole, which no single word of it breaks. */
    private static final Set<Message> OF_THE_WHOLE = Set.of(Message.JOIN_TOO_LARGE, Message.RULE_CYCLE);

    @Test
    void a_rule_written_by_nothing_but_proposals_has_no_error() {
        Map<String, Integer> verbs = new TreeMap<>();
        for (int seed = 0; seed < 400; seed++) {
            String rule = new RuleWalk(BY_SMALL, new Random(seed)).write();
            assertEquals(List.of(), errors(SMALL, rule), "seed " + seed + "\n" + rule);
            Matcher verb = Pattern.compile("(?m)^ *([a-zA-Z]+)\\(.*\\);").matcher(rule);
            while (verb.find()) {
                verbs.merge(verb.group(1), 1, Integer::sum);
            }
        }
        assertEquals(9, verbs.size(), "every verb was written: " + verbs);
    }

    @Test
    void so_it_is_with_the_words_of_the_starter_rulebook() {
        for (int seed = 0; seed < 150; seed++) {
            String rule = new RuleWalk(BY_STARTER, new Random(seed)).write();
            assertEquals(List.of(), errors(Starter.edition(), rule), "seed " + seed + "\n" + rule);
        }
    }

    private static List<String> errors(Edition edition, String rule) {
        Diagnostics diagnostics = new Diagnostics();
        Terms terms = new Terms(edition.catalogue(), edition.types(), edition.grading(), edition.sources());
        new RuleChecker(terms, diagnostics).check(new DrlReader().read("rules/r.drl", rule, diagnostics));
        return diagnostics.all().stream()
                .filter(d -> d.severity() == Severity.ERROR && !OF_THE_WHOLE.contains(d.message()))
                .map(Diagnostic::toString)
                .toList();
    }

    @Test
    void a_caret_anywhere_in_any_text_does_no_harm() {
        Random random = new Random(5);
        String rules = HEAD + "when\n  Soil(kind == \"soil-a\", amount > \"2 g/m2\") not Feature()\nthen\n"
                + "  caution(\"hazard-a\", \"So {$x}.\");\nend\n";
        for (int i = 0; i < 3000; i++) {
            int from = random.nextInt(rules.length());
            String text = rules.substring(0, from)
                    + "\"(){}$.,@;:=\n\\ü x".charAt(random.nextInt(17))
                    + rules.substring(Math.min(rules.length(), from + random.nextInt(9)));
            int caret = random.nextInt(text.length() + 1);
            Proposals proposals = BY_SMALL.proposals("rules/r.drl", text, caret);
            assertTrue(
                    0 <= proposals.from() && proposals.from() <= proposals.to() && proposals.to() <= text.length(),
                    text);
            BY_SMALL.help("rules/r.drl", text, caret)
                    .ifPresent(h -> assertTrue(h.from() <= caret && caret <= h.to(), text));
            assertTrue(BY_SMALL.said("rules/r.drl", text).size() <= 2);
        }
    }
}
