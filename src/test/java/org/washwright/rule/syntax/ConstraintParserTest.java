package org.washwright.rule.syntax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;

/** What the chapter "Conditions" of the rule language says of one constraint, and nothing else, is read. */
class ConstraintParserTest {

    private static final Place PLACE = new Place("r.drl", 7, 11, "");

    @ParameterizedTest
    @CsvSource(
            delimiter = '¦',
            quoteCharacter = '\'',
            value = {
                "kind == \"soil-a\" ¦ kind EQ 'text:soil-a'",
                "a != \"x\" ¦ a NE 'text:x'",
                "a < \"1 mm\" ¦ a LT 'text:1 mm'",
                "a <= \"1 mm\" ¦ a LE 'text:1 mm'",
                "a > 1 ¦ a GT 'number:1'",
                "a >= 1.5 ¦ a GE 'number:1.5'",
                "a >= -0.25 ¦ a GE 'number:-0.25'",
                "a == 90 ¦ a EQ 'number:90'",
                "a == true ¦ a EQ 'flag:true'",
                "a == false ¦ a EQ 'flag:false'",
                "kind.polarity == \"p\" ¦ kind.polarity EQ 'text:p'",
                "a in (\"x\") ¦ a IN 'text:x'",
                "a in (\"x\",\"y\") ¦ a IN 'text:x,text:y'",
                "a not in (\"x\", \"y\", \"z\") ¦ a NOT_IN 'text:x,text:y,text:z'",
                "a > $m.b ¦ a GT '$m.b'",
                "a > $m.b.c ¦ a GT '$m.b.c'",
                "a == $low_2 ¦ a EQ '$low_2'",
                "$v : a.b ¦ ($v:a.b)",
                "$v : a == \"x\" ¦ all(($v:a), a EQ 'text:x')",
                "$v : a == \"x\" || b == \"y\" ¦ any(($v:a), any(a EQ 'text:x', b EQ 'text:y'))",
                "a == 1 && b == 2 && c == 3 ¦ all(a EQ 'number:1', b EQ 'number:2', c EQ 'number:3')",
                "a == 1 || b == 2 && c == 3 ¦ any(a EQ 'number:1', all(b EQ 'number:2', c EQ 'number:3'))",
                "(a == 1 || b == 2) && c == 3 ¦ all(any(a EQ 'number:1', b EQ 'number:2'), c EQ 'number:3')",
                "((a == 1)) ¦ a EQ 'number:1'",
                "zZ9_a == \"x\" ¦ zZ9_a EQ 'text:x'",
                "Az == 109 ¦ Az EQ 'number:109'",
                "a   ==  1 ¦ a EQ 'number:1'"
            })
    void aConstraintIsReadAsWritten(String text, String tree) {
        assertEquals(tree.replace("'", ""), shown(read(text).orElseThrow()).replace("'", ""));
    }

    @Test
    void whiteSpaceOfEveryKindSeparates() {
        assertEquals("a EQ 'number:1'", shown(read("\ta\r\n==\n1 ").orElseThrow()));
    }

    @Test
    void inQuotesABackslashKeepsAQuoteOrABackslash() {
        SyntaxConstraint.Compare c =
                (SyntaxConstraint.Compare) read("a == \"say \\\"x\\\\\\\"\"").orElseThrow();
        assertEquals(List.of(new SyntaxConstraint.Operand.Quoted("say \"x\\\"")), c.operands());
    }

    @Test
    void everyComparisonKnowsWhereItStarts() {
        SyntaxConstraint.Any any =
                (SyntaxConstraint.Any) read("a == 1 ||\n  b == 2").orElseThrow();
        assertEquals(List.of("r.drl:7:11", "r.drl:8:3"), places(any.parts()));
        SyntaxConstraint.All all =
                (SyntaxConstraint.All) read("aa == 1 && b == 2").orElseThrow();
        assertEquals(List.of("r.drl:7:11", "r.drl:7:22"), places(all.parts()));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '¦',
            quoteCharacter = '\'',
            value = {
                // text, offset from the start, part of the message
                "a ¦ 1 ¦ \"end\" is no operator",
                "a == ¦ 4 ¦ a literal is expected, not \"end\"",
                "a == == ¦ 5 ¦ a literal is expected, not \"==\"",
                "a == b ¦ 5 ¦ \"b\" is no literal",
                "a size 3 ¦ 2 ¦ \"size\" is no operator",
                "a (1) ¦ 2 ¦ calls are refused",
                "a. == 1 ¦ 3 ¦ a property is expected after the dot",
                "a.( == 1 ¦ 2 ¦ a property is expected after the dot",
                "\"a\" == 1 ¦ 0 ¦ a field is expected, not \"a\"",
                "a == 1 && ¦ 9 ¦ a field is expected, not \"end\"",
                "$v : 1 ¦ 5 ¦ a field is expected, not \"1\"",
                "a not == \"x\" ¦ 6 ¦ \"in\" is expected here",
                "a not (\"x\") ¦ 6 ¦ \"in\" is expected here",
                "a in \"x\" ¦ 5 ¦ \"(\" is expected here",
                "a in (\"x\" \"y\") ¦ 10 ¦ \")\" is expected here",
                "a in (1) ¦ 6 ¦ only texts in quotes stand in a list",
                "a in () ¦ 6 ¦ only texts in quotes stand in a list",
                "(a == 1 ¦ 7 ¦ \")\" is expected here",
                "a == 1 b == 2 ¦ 7 ¦ unexpected \"b\"",
                "$v : a == 1 ) ¦ 12 ¦ unexpected \")\"",
                "a == 1 ) ¦ 7 ¦ unexpected \")\"",
                "a == $ ¦ 5 ¦ \"$\" has no place here",
                "a == $1 ¦ 5 ¦ \"$\" has no place here",
                "a == - ¦ 5 ¦ \"-\" has no place here",
                "a == -x ¦ 5 ¦ \"-\" has no place here",
                "a == \"x ¦ 5 ¦ the quote is not closed",
                "a == \"x\\\" ¦ 5 ¦ the quote is not closed",
                "a == [1] ¦ 5 ¦ \"[\" has no place here",
                "a == {1} ¦ 5 ¦ \"{\" has no place here",
                "a == `1` ¦ 5 ¦ \"`\" has no place here",
                "a == @1 ¦ 5 ¦ \"@\" has no place here",
                "a == /1 ¦ 5 ¦ \"/\" has no place here",
                "a ; b ¦ 2 ¦ \";\" has no place here",
                "ä == 1 ¦ 0 ¦ \"ä\" has no place here",
                "a == 1 \uD83D\uDE00 ¦ 7 ¦ \"\uD83D\uDE00\" has no place here"
            })
    void anythingElseIsRefusedWhereItStands(String text, int offset, String words) {
        Diagnostic d = refusal(text);
        assertTrue(d.text().contains(words), d.text());
        assertEquals(11 + offset, d.place().column(), d.text());
        assertEquals(7, d.place().line());
    }

    @Test
    void aRefusalOnALaterLineIsShownThere() {
        assertEquals("r.drl:9:3", refusal("a == 1 ||\nb == 2 ||\n  3").place().toString());
    }

    @Test
    void aTextInQuotesEndsOnItsLine() {
        assertTrue(refusal("a == \"x\ny\"").text().contains("the quote is not closed"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\\n", "\\u0041", "\\'", "\\ "})
    void afterABackslashNothingElseIsRead(String escape) {
        Diagnostic d = refusal("a == \"" + escape + "\"");
        assertTrue(d.text().contains("only \\\" and \\\\ are read after a backslash"), d.text());
    }

    @Test
    void eightParenthesesWithinEachOtherAreReadAndNineAreNot() {
        assertEquals(
                "a EQ 'number:1'",
                shown(read("(".repeat(8) + "a == 1" + ")".repeat(8)).orElseThrow()));
        Diagnostic d = refusal("(".repeat(9) + "a == 1" + ")".repeat(9));
        assertTrue(d.text().contains("nested more than 8 deep"), d.text());
    }

    @Test
    void parenthesesBesideEachOtherAreNotNested() {
        String many = "(a == 1) && ".repeat(20) + "(a == 1)";
        assertEquals(
                21, ((SyntaxConstraint.All) read(many).orElseThrow()).parts().size());
    }

    @Test
    void fourThousandCharactersAreReadAndOneMoreIsNot() {
        String text = "a == \"" + "x".repeat(4000 - 7) + "\"";
        assertEquals(4000, text.length());
        assertTrue(read(text).isPresent());
        Diagnostic d = refusal(text + " ");
        assertTrue(d.text().contains("longer than 4000 characters"), d.text());
    }

    private static List<String> places(List<SyntaxConstraint> parts) {
        return parts.stream().map(p -> p.place().toString()).toList();
    }

    private static Optional<SyntaxConstraint> read(String text) {
        Diagnostics diagnostics = new Diagnostics();
        Optional<SyntaxConstraint> read = ConstraintParser.parse(text, PLACE, diagnostics);
        assertEquals(read.isEmpty(), diagnostics.hasErrors());
        return read;
    }

    private static Diagnostic refusal(String text) {
        Diagnostics diagnostics = new Diagnostics();
        assertTrue(ConstraintParser.parse(text, PLACE, diagnostics).isEmpty(), text);
        assertEquals(1, diagnostics.all().size());
        assertEquals(Message.BAD_CONSTRAINT, diagnostics.all().get(0).message());
        return diagnostics.all().get(0);
    }

    private static String shown(SyntaxConstraint c) {
        if (c instanceof SyntaxConstraint.All all) {
            return "all(" + joined(all.parts()) + ")";
        }
        if (c instanceof SyntaxConstraint.Any any) {
            return "any(" + joined(any.parts()) + ")";
        }
        if (c instanceof SyntaxConstraint.Bind bind) {
            return "(" + bind.variable() + ":" + bind.field() + ")";
        }
        SyntaxConstraint.Compare compare = (SyntaxConstraint.Compare) c;
        return compare.field() + " " + compare.op() + " '"
                + compare.operands().stream().map(ConstraintParserTest::shown).collect(Collectors.joining(",")) + "'";
    }

    private static String joined(List<SyntaxConstraint> parts) {
        return parts.stream().map(ConstraintParserTest::shown).collect(Collectors.joining(", "));
    }

    private static String shown(SyntaxConstraint.Operand operand) {
        if (operand instanceof SyntaxConstraint.Operand.Quoted q) {
            return "text:" + q.text();
        }
        if (operand instanceof SyntaxConstraint.Operand.Plain p) {
            return "number:" + p.number();
        }
        if (operand instanceof SyntaxConstraint.Operand.Flag f) {
            return "flag:" + f.value();
        }
        SyntaxConstraint.Operand.Variable v = (SyntaxConstraint.Operand.Variable) operand;
        return v.name() + (v.field().isEmpty() ? "" : "." + v.field());
    }
}
