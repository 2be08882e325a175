package org.washwright.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.washwright.assessment.Assessor;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.drools.DrlReader;
import org.washwright.engine.ReferenceInterpreter;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.rule.Edition;

/** A wrong edition is refused with what is wrong, where, and what to do; and no text of an expert is ever run. */
class BadEditionTest {

    private static final String HEAD = "rule \"r\"\n@id(\"R\") @basis(\"common practice\")\n";

    /** A file put into a sound edition, the message that has to come, and the line. */
    record Wrong(String file, String text, Message message, int line) {}

    private static Wrong rule(String when, String then, Message message, int line) {
        return new Wrong("rules/r.drl", HEAD + "when\n" + when + "\nthen\n" + then + "\nend\n", message, line);
    }

    private static Wrong when(String when, Message message) {
        return rule(when, "caution(\"hazard-a\", \"So.\");", message, 4);
    }

    private static Wrong then(String then, Message message) {
        return rule("$p : Process()", then, message, 6);
    }

    static Stream<Wrong> wrongs() {
        return Stream.of(
                // conditions
                when("Soil(kind == \"mud\")", Message.UNKNOWN_TERM),
                when("Soil(kind == \"A\")", Message.UNKNOWN_TERM),
                when("Soil(colour == \"red\")", Message.UNKNOWN_FIELD),
                when("Soils(kind == \"soil-a\")", Message.UNKNOWN_TYPE),
                when("Soil(amount > \"3 mm\")", Message.WRONG_DIMENSION),
                when("Soil(amount > 3)", Message.MISSING_UNIT),
                when("Soil(amount > \"3 stones/m2\")", Message.UNKNOWN_UNIT),
                when("Soil(kind > \"soil-a\")", Message.TYPE_MISMATCH),
                when("Material(hardness == true)", Message.TYPE_MISMATCH),
                when("Material(hardness > \"450 HV\")", Message.WRONG_DIMENSION),
                when("Demand(particleCode == \"A(B-K3)\")", Message.TYPE_MISMATCH),
                when("$f : Feature() Soil(amount > $f.depth)", Message.TYPE_MISMATCH),
                when("Soil(amount > $f.depth)", Message.UNKNOWN_VARIABLE),
                when("$s : Soil() $s : Feature()", Message.DUPLICATE_VARIABLE),
                when("Soil($k : kind == \"soil-a\" || state == \"soil-state-a\")", Message.BINDING_UNDER_OR),
                when("not Soil($k : kind)", Message.REFUSED),
                when("Attribute(value == true)", Message.BAD_CONSTRAINT),
                when("Attribute(id == \"nothing\", value == true)", Message.UNKNOWN_REFERENCE),
                when("Conclusion(id == \"nothing\")", Message.UNKNOWN_TERM),
                // what is no part of the language
                when("eval(true)", Message.REFUSED),
                when("Soil(eval(true))", Message.BAD_CONSTRAINT),
                when("Soil() from $x.list", Message.REFUSED),
                when("$n : Number() from accumulate(Soil(), count(1))", Message.REFUSED),
                when("accumulate(Soil(); $n : count(1))", Message.REFUSED),
                when("$l : List() from collect(Soil())", Message.REFUSED),
                when("forall(Soil(kind == \"soil-a\"))", Message.REFUSED),
                when("(Soil() or Feature())", Message.REFUSED),
                when("not (Soil() and Feature())", Message.REFUSED),
                when("not (not Soil())", Message.REFUSED),
                when("Soil(kind matches \".*\")", Message.BAD_CONSTRAINT),
                when("Soil(kind.toString() == \"x\")", Message.BAD_CONSTRAINT),
                when("Soil(this == \"x\")", Message.UNKNOWN_FIELD),
                when("Soil(kind[0] == \"x\")", Message.BAD_CONSTRAINT),
                when("Soil(amount > \"1 g/m2\" ? true : false)", Message.DRL_SYNTAX),
                when("Soil(kind == null)", Message.BAD_CONSTRAINT),
                when("Soil(amount + 1 > 3)", Message.BAD_CONSTRAINT),
                when("Soil(kind == System.exit(1))", Message.BAD_CONSTRAINT),
                when("java.lang.Runtime(availableProcessors > 1)", Message.UNKNOWN_TYPE),
                when("MatchFact(sure == true)", Message.UNKNOWN_TYPE),
                when("Soil(kind == \"soil-a\") over window:time(1s)", Message.REFUSED),
                // consequences
                then("System.exit(1);", Message.REFUSED),
                then("new java.io.File(\"x\");", Message.REFUSED),
                then("int i = 1;", Message.REFUSED),
                then("if (true) { caution(\"hazard-a\", \"So.\"); }", Message.REFUSED),
                then("caution(\"hazard-a\", \"So\" + \".\");", Message.REFUSED),
                then("caution(\"hazard-a\", String.valueOf(1));", Message.REFUSED),
                then("caution(\"hazard-a\", () -> 1);", Message.REFUSED),
                then("insert(\"x\");", Message.UNKNOWN_VERB),
                then("modify(\"x\");", Message.UNKNOWN_VERB),
                then("caution(\"danger\", \"So.\");", Message.UNKNOWN_REFERENCE),
                then("caution(\"hazard-a\", \" \");", Message.NO_REASON),
                then("caution(\"hazard-a\", \"See {$x.kind}.\");", Message.BAD_PLACEHOLDER),
                then("caution(\"hazard-a\", \"See {$p.colour}.\");", Message.BAD_PLACEHOLDER),
                then("caution(\"hazard-a\");", Message.BAD_ARGUMENTS),
                then("support($p, \"works\", 4, \"So.\");", Message.OUT_OF_RANGE),
                then("support($p, \"beauty\", 1, \"So.\");", Message.UNKNOWN_REFERENCE),
                then("support(\"fire\", \"works\", 1, \"So.\");", Message.UNKNOWN_REFERENCE),
                then("support($q, \"works\", 1, \"So.\");", Message.UNKNOWN_VARIABLE),
                then("ruleOut($p, \"here\", \"So.\");", Message.UNKNOWN_REFERENCE),
                then("require($p, \"stage\", after(\"main\"), \"So.\");", Message.UNKNOWN_REFERENCE),
                then("require($p, \"first\", beside(\"main\"), \"So.\");", Message.REFUSED),
                then("limit($p, \"main\", \"temperature\", max(\"60 mm\"), \"So.\");", Message.WRONG_DIMENSION),
                then("limit($p, \"main\", \"temperature\", max(\"60\"), \"So.\");", Message.MISSING_UNIT),
                then("limit($p, \"main\", \"weight\", max(\"60 °C\"), \"So.\");", Message.UNKNOWN_REFERENCE),
                then("limit($p, \"main\", \"temperature\", max($p.technique.reach), \"So.\");", Message.TYPE_MISMATCH),
                then("conclude(\"nothing\", \"So.\");", Message.UNKNOWN_REFERENCE),
                then("ask(\"Soil.colour\", \"So.\");", Message.UNKNOWN_REFERENCE),
                then("verify(\"nose\", \"So.\");", Message.UNKNOWN_REFERENCE),
                rule("", "caution(\"hazard-a\", \"So.\");", Message.NO_CONDITION, 1),
                rule("Soil()", "", Message.NO_CONSEQUENCE, 1),
                // rules as a whole
                new Wrong(
                        "rules/r.drl",
                        "rule \"r\" @basis(\"trial\") @source(\"BOOK\") when Soil() then caution(\"hazard-a\", \"So.\"); end",
                        Message.MISSING_ANNOTATION,
                        1),
                new Wrong(
                        "rules/r.drl",
                        "rule \"r\" @id(\"R\") when Soil() then caution(\"hazard-a\", \"So.\"); end",
                        Message.MISSING_ANNOTATION,
                        1),
                new Wrong(
                        "rules/r.drl",
                        "\nrule \"r\" @id(\"R\") @basis(\"handbook\") when Soil() then caution(\"hazard-a\", \"So.\"); end",
                        Message.NO_SOURCE,
                        2),
                new Wrong(
                        "rules/r.drl",
                        "\nrule \"r\" @id(\"R\") @basis(\"handbook\") @source(\"SCROLL, p. 1\") when Soil() then caution(\"hazard-a\", \"So.\"); end",
                        Message.UNKNOWN_SOURCE,
                        2),
                new Wrong(
                        "rules/r.drl",
                        "\nrule \"r\" @id(\"R\") @basis(\"rumour\") when Soil() then caution(\"hazard-a\", \"So.\"); end",
                        Message.BAD_BASIS,
                        2),
                new Wrong(
                        "rules/r.drl",
                        "rule \"r\" @id(\"R R\") @basis(\"common practice\") when Soil() then caution(\"hazard-a\", \"So.\"); end",
                        Message.BAD_ID,
                        1),
                new Wrong(
                        "rules/r.drl",
                        "rule \"r\" @id(\"R\") @mood(\"good\") @basis(\"common practice\") when Soil() then caution(\"hazard-a\", \"So.\"); end",
                        Message.UNKNOWN_ANNOTATION,
                        1),
                new Wrong(
                        "rules/r.drl",
                        "\nrule \"r\" @id(\"R\") @basis(\"common practice\") salience 10 when Soil() then caution(\"hazard-a\", \"So.\"); end",
                        Message.REFUSED,
                        2),
                new Wrong(
                        "rules/r.drl",
                        "rule \"r\" @id(\"R\") @basis(\"common practice\") no-loop true when Soil() then caution(\"hazard-a\", \"So.\"); end",
                        Message.REFUSED,
                        1),
                new Wrong(
                        "rules/r.drl",
                        "rule \"r\" @id(\"R\") @basis(\"common practice\") dialect \"mvel\" when Soil() then caution(\"hazard-a\", \"So.\"); end",
                        Message.REFUSED,
                        1),
                new Wrong(
                        "rules/r.drl",
                        "rule \"a\" @id(\"A\") @basis(\"common practice\") when Soil() then caution(\"hazard-a\", \"So.\"); end\nrule \"r\" extends \"a\" @id(\"R\") @basis(\"common practice\") when Soil() then caution(\"hazard-a\", \"So.\"); end",
                        Message.REFUSED,
                        2),
                new Wrong("rules/r.drl", "import java.util.List;\n", Message.REFUSED, 1),
                new Wrong("rules/r.drl", "global java.util.List l;\n", Message.REFUSED, 1),
                new Wrong("rules/r.drl", "function int f() { return 1; }\n", Message.REFUSED, 1),
                new Wrong("rules/r.drl", "declare Thing\n  a : int\nend\n", Message.REFUSED, 1),
                new Wrong("rules/r.drl", "query \"q\"\n  Soil()\nend\n", Message.REFUSED, 1),
                new Wrong("rules/r.drl", "package a;\nrule \"r\\u0022\" when then end\n", Message.UNICODE_ESCAPE, 2),
                new Wrong("rules/r.drl", "rule \"r\" when Soil( then end\n", Message.DRL_SYNTAX, 1),
                new Wrong("rules/r.drl", "rule \"r\" when Soil(" + "(".repeat(100_000), Message.TOO_DEEP, 1),
                rule("Soil()\n".repeat(7), "caution(\"hazard-a\", \"So.\");", Message.TOO_MANY_PATTERNS, 1),
                rule(
                        "Feature() Feature() Soil() Material()",
                        "caution(\"hazard-a\", \"So.\");",
                        Message.JOIN_TOO_LARGE,
                        1),
                rule("Process() Stage()", "conclude(\"conclusion-a\", \"So.\");", Message.LINE_CONCLUDES, 1),
                new Wrong(
                        "rules/r.drl",
                        HEAD.replace("R", "A")
                                + "when Conclusion(id == \"conclusion-b\") then conclude(\"conclusion-a\", \"So.\"); end\n"
                                + HEAD.replace("R", "B")
                                + "when Conclusion(id == \"conclusion-a\") then conclude(\"conclusion-b\", \"So.\"); end\n",
                        Message.RULE_CYCLE,
                        1),
                new Wrong(
                        "rules/r.drl",
                        HEAD + "when not Conclusion() then conclude(\"conclusion-a\", \"So.\"); end\n",
                        Message.RULE_CYCLE,
                        1),
                new Wrong(
                        "rules/r.drl",
                        HEAD + "when Soil() then caution(\"hazard-a\", \"So.\"); end\n" + HEAD
                                + "when Soil() then caution(\"hazard-a\", \"So.\"); end\n",
                        Message.DUPLICATE_ID,
                        4),
                // tables
                new Wrong(
                        "tables/t.csv",
                        table("supports", "id,Soil.kind,target,criterion,points,reason", "T,soil-a,any,works,1,So."),
                        Message.UNKNOWN_VERB,
                        3),
                new Wrong(
                        "tables/t.csv",
                        table("support", "id,Soil.colour,target,criterion,points,reason", "T,red,any,works,1,So."),
                        Message.UNKNOWN_FIELD,
                        5),
                new Wrong(
                        "tables/t.csv",
                        table("support", "id,Soil.kind,goal,reason", "T,soil-a,any,So."),
                        Message.UNKNOWN_FIELD,
                        5),
                new Wrong(
                        "tables/t.csv",
                        table("support", "id,Soil.kind,target,criterion,points", "T,soil-a,any,works,1"),
                        Message.MISSING_FIELD,
                        5),
                new Wrong(
                        "tables/t.csv",
                        table("support", "id,Soil.kind,target,criterion,points,reason", "T,=1+1,any,works,1,So."),
                        Message.UNKNOWN_TERM,
                        6),
                new Wrong(
                        "tables/t.csv",
                        table(
                                "support",
                                "id,Soil.kind,target,criterion,points,reason",
                                "T,\"soil-a\"\") || eval(true\",any,works,1,So."),
                        Message.TABLE_SHAPE,
                        6),
                new Wrong(
                        "tables/t.csv",
                        table(
                                "support",
                                "id,Soil.kind,target,criterion,points,reason",
                                "T,soil-a,any,works,@SUM(A1),So."),
                        Message.BAD_ARGUMENTS,
                        6),
                new Wrong(
                        "tables/t.csv",
                        table(
                                "support",
                                "id,Soil.kind,target,criterion,points,reason",
                                "T,soil-a,any,works,1,So.,more"),
                        Message.TABLE_SHAPE,
                        6),
                new Wrong(
                        "tables/t.csv",
                        table("support", "id,Soil.amount,target,criterion,points,reason", "T,>= 3 mm,any,works,1,So."),
                        Message.WRONG_DIMENSION,
                        6),
                // the catalogue
                new Wrong("catalogue/x.yaml", "kind: mud\nterms: []\n", Message.UNKNOWN_KIND, 1),
                new Wrong("catalogue/x.yaml", "terms: []\n", Message.MISSING_FIELD, 1),
                new Wrong(
                        "catalogue/x.yaml",
                        "kind: soil\nterms:\n  - {id: soil-a, name: again}\n",
                        Message.DUPLICATE_ID,
                        3),
                new Wrong("catalogue/x.yaml", "kind: soil\nterms:\n  - {id: Soil A, name: x}\n", Message.BAD_ID, 3),
                new Wrong(
                        "catalogue/x.yaml",
                        "kind: soil\nterms:\n  - {id: x, name: x, properties: {colour: red}}\n",
                        Message.UNKNOWN_FIELD,
                        3),
                new Wrong(
                        "catalogue/x.yaml",
                        "kind: soil\nterms:\n  - {id: x, name: x, properties: {melts: 3 mm}}\n",
                        Message.WRONG_DIMENSION,
                        3),
                new Wrong(
                        "catalogue/x.yaml",
                        "kind: soil\nterms:\n  - {id: x, name: x, properties: {melts: {value: 3 °C, source: SCROLL}}}\n",
                        Message.UNKNOWN_SOURCE,
                        3),
                new Wrong(
                        "catalogue/x.yaml",
                        "kind: process\nterms:\n  - {id: x, name: x, parent: any}\n",
                        Message.MISSING_FIELD,
                        3),
                new Wrong(
                        "catalogue/x.yaml",
                        "kind: process\nterms:\n  - {id: x, name: x, parent: y, group: yes}\n  - {id: y, name: y, parent: x, group: yes}\n",
                        Message.PARENT_CYCLE,
                        3),
                new Wrong(
                        "catalogue/x.yaml",
                        "kind: process\nterms:\n  - {id: x, name: x, group: yes}\n",
                        Message.NO_ROOT,
                        3),
                new Wrong(
                        "catalogue/x.yaml",
                        "kinds:\n  x:\n    name: x\n    properties:\n      p: {label: p, flag: yes, kind: soil}\n",
                        Message.PROPERTY_SHAPE,
                        5),
                new Wrong(
                        "catalogue/x.yaml",
                        "kinds:\n  x:\n    name: x\n    properties:\n      p: {label: p, quantity: weight}\n",
                        Message.UNKNOWN_DIMENSION,
                        5),
                new Wrong(
                        "catalogue/x.yaml",
                        "kind: stage\nterms:\n  - {id: x, name: x, position: 1, cleaning: no, windows: {weight: 1 g}}\n",
                        Message.UNKNOWN_REFERENCE,
                        3),
                new Wrong("catalogue/x.yaml", "kind: soil\nterms: &a []\n", Message.ALIAS, 2),
                // trees
                new Wrong("trees/t.yaml", tree("next: a"), Message.TREE_CYCLE, 1),
                new Wrong("trees/t.yaml", tree("next: z"), Message.UNKNOWN_REFERENCE, 1),
                new Wrong("trees/t.yaml", tree("propose: mud"), Message.UNKNOWN_TERM, 10),
                new Wrong(
                        "trees/t.yaml",
                        tree("propose: soil-a").replace("Soil.kind", "Soil.load"),
                        Message.UNKNOWN_REFERENCE,
                        1),
                new Wrong("trees/t.yaml", tree("propose: soil-a, next: a"), Message.MISSING_FIELD, 10),
                // the rest
                new Wrong("edition.yaml", "name: x\n", Message.MISSING_FIELD, 1),
                new Wrong("edition.yaml", "name: [x\n", Message.BROKEN_YAML, 1),
                new Wrong("grading.yaml", "steps: {1: 1}\nareas: []\n", Message.GRADING_SHAPE, 1),
                new Wrong(
                        "assumptions.yaml",
                        "assumptions:\n  - {id: x, label: x, value: x, source: x}\n",
                        Message.BAD_QUANTITY,
                        2));
    }

    private static String table(String verb, String header, String row) {
        return "title,T\nbasis,common practice\nthen," + verb + "\n\n" + header + "\n" + row + "\n";
    }

    private static String tree(String last) {
        return """
        id: t
        title: T
        proposes: Soil.kind
        basis: common practice
        start: a
        questions:
          a:
            ask: Is it?
            answers:
              - {id: x, say: Yes, LAST}
        """.replace("LAST", last);
    }

    @ParameterizedTest
    @MethodSource("wrongs")
    void isRefusedWithPlaceAndAdvice(Wrong wrong) {
        Map<String, String> texts = SmallEdition.texts();
        texts.put(wrong.file(), wrong.text());
        EditionReader.Result result = new EditionReader(new DrlReader()).read(SmallEdition.files(texts));
        List<Diagnostic> found = result.diagnostics().all();
        assertTrue(result.edition().isEmpty(), "it was taken");
        Optional<Diagnostic> expected = found.stream()
                .filter(d -> d.message() == wrong.message())
                .filter(d -> d.place().file().equals(wrong.file()))
                .findFirst();
        assertTrue(expected.isPresent(), () -> wrong.message() + " is not among " + found);
        assertEquals(wrong.line(), expected.get().place().line(), expected.get().toString());
        for (Diagnostic d : found) {
            assertFalse(d.text().isBlank() || d.advice().isBlank(), d.toString());
            assertFalse(d.toString().matches(".*\\{[0-9]}.*"), d.toString());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"edition.yaml", "grading.yaml"})
    void aMissingFileIsNamed(String file) {
        Map<String, String> texts = SmallEdition.texts();
        texts.remove(file);
        List<Diagnostic> found = new EditionReader(new DrlReader())
                .read(SmallEdition.files(texts))
                .diagnostics()
                .all();
        assertTrue(
                found.stream()
                        .anyMatch(d ->
                                d.message() == Message.MISSING_FILE && d.text().contains(file)),
                found::toString);
    }

    @Test
    void allErrorsOfAllFilesComeAtOnce() {
        Map<String, String> texts = SmallEdition.texts();
        texts.put(
                "rules/a.drl",
                HEAD
                        + "when\nSoil(kind == \"mud\")\nFeature(width > \"3 mm\")\nthen\nshout(\"x\");\ncaution(\"x\", \"So.\");\nend\n");
        texts.put(
                "rules/b.drl",
                HEAD.replace("R", "S") + "when Soil(amount > \"3 g\") then verify(\"nose\", \"So.\"); end\n");
        texts.put("tables/t.csv", table("verify", "id,Soil.kind,method,reason", "T,mud,nose,So."));
        texts.put("catalogue/x.yaml", "kind: soil\nterms:\n  - {id: x}\n");
        List<String> found = new EditionReader(new DrlReader())
                .read(SmallEdition.files(texts)).diagnostics().all().stream()
                        .map(d -> d.place().file() + " " + d.message().code())
                        .toList();
        assertEquals(
                List.of(
                        "catalogue/x.yaml missing-field",
                        "rules/a.drl unknown-term",
                        "rules/a.drl unknown-field",
                        "rules/a.drl unknown-verb",
                        "rules/a.drl unknown-reference",
                        "rules/b.drl wrong-dimension",
                        "rules/b.drl unknown-reference",
                        "tables/t.csv unknown-term",
                        "tables/t.csv unknown-reference"),
                found);
    }

    @Test
    void warningsDoNotRefuse() {
        Map<String, String> texts = SmallEdition.texts();
        texts.put(
                "rules/r.drl",
                HEAD + "when Conclusion(id == \"conclusion-a\") then caution(\"hazard-a\", \"So.\"); end\n");
        texts.put(
                "trees/t.yaml",
                tree("propose: soil-a")
                        + "  b:\n    ask: Is it?\n    answers:\n      - {id: x, say: Yes, propose: soil-b}\n");
        EditionReader.Result result = new EditionReader(new DrlReader()).read(SmallEdition.files(texts));
        assertTrue(result.edition().isPresent(), result.diagnostics().all()::toString);
        assertEquals(
                List.of(Message.CONCLUSION_NEVER, Message.TREE_UNREACHED),
                result.diagnostics().all().stream().map(Diagnostic::message).toList());
    }

    @Test
    void cellsThatLookLikeFormulasOrCodeStayWords() {
        String reason = "=HYPERLINK(\"\"http://x\"\") \"\"; System.exit(1); @x +y -z";
        Map<String, String> texts = SmallEdition.texts();
        texts.put(
                "tables/t.csv",
                table("verify", "id,Soil.kind,method,reason", "T,soil-a,test-method-a,\"" + reason + "\""));
        Edition edition = SmallEdition.read(SmallEdition.files(texts));
        String said = Assessor.of(edition, ReferenceInterpreter.factory())
                .assess(Starter.task(edition, "title: t\nsoils: [soil-a]\n"), Starter.WISHES)
                .answer()
                .verifications()
                .get(0)
                .text();
        assertTrue(said.contains("=HYPERLINK(\"http://x\") \"; System.exit(1); @x +y -z"), said);
    }

    // ---- bundles

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../edition.yaml",
                "/etc/edition.yaml",
                "rules/../../x.drl",
                "C:\\edition.yaml",
                "rules\\a.drl",
                "catalogue/..\\x.yaml"
            })
    void aPathThatLeadsOutOfABundleIsRefused(String name) {
        Diagnostics diagnostics = new Diagnostics();
        EditionFiles files = EditionFiles.ofZip(zip(Map.of(name, "x".getBytes(StandardCharsets.UTF_8))), diagnostics);
        assertTrue(files.files().isEmpty());
        assertEquals(Message.PATH_ESCAPE, diagnostics.all().get(0).message());
        assertFalse(diagnostics.all().get(0).advice().isBlank());
    }

    @Test
    void aBundleThatUnpacksToTooMuchIsRefusedWithoutUnpackingIt() {
        byte[] zip = zip(Map.of("rules/a.drl", new byte[200_000_000]));
        assertTrue(zip.length < 400_000, "a small bundle");
        Diagnostics diagnostics = new Diagnostics();
        EditionFiles files = EditionFiles.ofZip(zip, diagnostics);
        assertTrue(files.files().isEmpty());
        assertEquals(Message.TOO_LARGE, diagnostics.all().get(0).message());
        Map<String, byte[]> many = new TreeMap<>();
        for (int i = 0; i < 20; i++) {
            many.put("rules/r" + i + ".drl", new byte[1_000_000]);
        }
        Diagnostics together = new Diagnostics();
        long bytes = EditionFiles.ofZip(zip(many), together).files().values().stream()
                .mapToLong(b -> b.length)
                .sum();
        assertTrue(bytes <= EditionFiles.MAX_TOTAL);
        assertEquals(Message.TOO_LARGE, together.all().get(0).message());
    }

    @Test
    void aBundleOfTooManyFilesIsRefused() {
        Map<String, byte[]> many = new TreeMap<>();
        for (int i = 0; i < 3000; i++) {
            many.put("rules/r" + i + ".drl", new byte[0]);
        }
        Diagnostics diagnostics = new Diagnostics();
        EditionFiles files = EditionFiles.ofZip(zip(many), diagnostics);
        assertTrue(files.files().size() <= EditionFiles.MAX_FILES);
        assertTrue(diagnostics.all().stream().anyMatch(d -> d.message() == Message.TOO_LARGE));
    }

    @Test
    void whatIsNoBundleIsRefused() {
        byte[] whole = Starter.files().toZip();
        for (byte[] broken : List.of(
                new byte[0], "hello".getBytes(StandardCharsets.UTF_8), Arrays.copyOf(whole, whole.length / 3))) {
            Diagnostics diagnostics = new Diagnostics();
            EditionFiles.ofZip(broken, diagnostics);
            assertTrue(
                    diagnostics.all().stream().anyMatch(d -> d.message() == Message.BROKEN_ZIP),
                    diagnostics.all()::toString);
        }
        for (int cut = 0; cut < whole.length; cut += 97) {
            Diagnostics diagnostics = new Diagnostics();
            EditionFiles.ofZip(Arrays.copyOf(whole, cut), diagnostics);
            assertTrue(diagnostics.hasErrors(), "cut at " + cut);
        }
        Diagnostics strange = new Diagnostics();
        EditionFiles.ofZip(zip(Map.of("rules/a.exe", new byte[1])), strange);
        assertEquals(Message.FILE_NAME, strange.all().get(0).message());
    }

    private static byte[] zip(Map<String, byte[]> files) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                zip.putNextEntry(new ZipEntry(file.getKey()));
                zip.write(file.getValue());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}
