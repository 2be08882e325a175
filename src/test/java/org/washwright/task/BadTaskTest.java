package org.washwright.task;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.washwright.assessment.RefusedTask;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.generate.Starter;

/** A wrong task is refused with what is wrong, where it stands and what to do, and with all of it at once. */
class BadTaskTest {

    private static final String TREE = "title: t\nsoils:\n  - kind: {tree: what-is-this-soil, answers: ";

    /** A wrong text, the message that has to come, and the line and pointer where. */
    record Wrong(String text, Message message, int line, String pointer) {}

    static Stream<Wrong> wrongs() {
        return Stream.of(
                new Wrong("title: t\nparts: {rate: 3 1/h}\n", Message.UNKNOWN_FIELD, 2, "/parts"),
                new Wrong("title: t\npart: {weight: 3 g}\n", Message.UNKNOWN_FIELD, 2, "/part/weight"),
                new Wrong("title: t\npart: {areaPerHour: 3 m2/h}\n", Message.UNKNOWN_FIELD, 2, "/part/areaPerHour"),
                new Wrong("title: t\nattributes: {seal: yes}\n", Message.UNKNOWN_FIELD, 2, "/attributes/seal"),
                new Wrong("title: t\npart:\n  mass: 12 mm\n", Message.WRONG_DIMENSION, 3, "/part/mass"),
                new Wrong(
                        "title: t\nmaterials:\n  - {hardness: 450 HV}\n",
                        Message.WRONG_DIMENSION,
                        3,
                        "/materials/0/hardness"),
                new Wrong("title: t\npart: {mass: 12}\n", Message.MISSING_UNIT, 2, "/part/mass"),
                new Wrong("title: t\npart: {mass: '1,5 kg'}\n", Message.DECIMAL_COMMA, 2, "/part/mass"),
                new Wrong("title: t\npart: {mass: 12 stones}\n", Message.UNKNOWN_UNIT, 2, "/part/mass"),
                new Wrong("title: t\npart: {mass: NaN g}\n", Message.BAD_QUANTITY, 2, "/part/mass"),
                new Wrong("title: t\npart: {mass: Infinity g}\n", Message.BAD_QUANTITY, 2, "/part/mass"),
                new Wrong("title: t\npart: {mass: 0x10 g}\n", Message.UNKNOWN_UNIT, 2, "/part/mass"),
                new Wrong("title: t\npart: {mass: about 3 g}\n", Message.BAD_QUANTITY, 2, "/part/mass"),
                new Wrong("title: t\npart: {mass: -3 g}\n", Message.OUT_OF_RANGE, 2, "/part/mass"),
                new Wrong("title: t\npart: {mass: 1e300 kg}\n", Message.OUT_OF_RANGE, 2, "/part/mass"),
                new Wrong("title: t\npart: {mass: 9..3 g}\n", Message.RANGE_REVERSED, 2, "/part/mass"),
                new Wrong("title: t\ntitle: u\n", Message.DUPLICATE_KEY, 2, "/title"),
                new Wrong("title: t\npart: {mass: 1 g, mass: 2 g}\n", Message.DUPLICATE_KEY, 2, "/part/mass"),
                new Wrong(
                        "{\"title\": \"t\",\n \"part\": {\"mass\": \"1 g\", \"mass\": \"2 g\"}}",
                        Message.DUPLICATE_KEY,
                        2,
                        "/part/mass"),
                new Wrong("title: t\npart: {mass: 1 g\nsite: x\n", Message.BROKEN_YAML, 3, ""),
                new Wrong("title: t\n\tpart: x\n", Message.BROKEN_YAML, 2, ""),
                new Wrong("{\"title\": \"t\",\n \"part\": }", Message.BROKEN_JSON, 2, ""),
                new Wrong("", Message.EMPTY_DOCUMENT, 0, ""),
                new Wrong("title: t\n---\ntitle: u\n", Message.SEVERAL_DOCUMENTS, 2, ""),
                new Wrong("title: &a t\nnotes: *a\n", Message.ALIAS, 1, "/title"),
                new Wrong("title: !!java.net.URL [http://localhost]\n", Message.TAG, 1, "/title"),
                new Wrong("title: t\n? [a, b]\n: c\n", Message.KEY_NOT_TEXT, 2, ""),
                new Wrong("title: t\npart: [1]\n", Message.EXPECTED_MAP, 2, "/part"),
                new Wrong("- a\n", Message.EXPECTED_MAP, 1, ""),
                new Wrong("title: t\nsoils: {list: x}\n", Message.EXPECTED_LIST, 2, "/soils/list"),
                new Wrong("title: [t]\n", Message.EXPECTED_TEXT, 1, "/title"),
                new Wrong("part: {mass: 1 g}\n", Message.NO_TITLE, 1, ""),
                new Wrong("title: " + "t".repeat(201) + "\n", Message.TEXT_TOO_LONG, 1, "/title"),
                new Wrong("title: t\nsoils:\n  - {kind: cutting-oill}\n", Message.UNKNOWN_TERM, 3, "/soils/0/kind"),
                new Wrong("title: t\nsoils: [cutting-oil, mud]\n", Message.UNKNOWN_TERM, 2, "/soils/1"),
                new Wrong("title: t\nmaterials: [{porous: maybe}]\n", Message.NOT_A_FLAG, 2, "/materials/0/porous"),
                new Wrong("title: t\nsoils: {open: maybe, list: []}\n", Message.NOT_A_FLAG, 2, "/soils/open"),
                new Wrong("title: t\ndemand: {particleCode: A(X-Y3)}\n", Message.BAD_CODE, 2, "/demand/particleCode"),
                new Wrong("title: t\ndemand: {particleCode: A(B-K25)}\n", Message.BAD_CODE, 2, "/demand/particleCode"),
                new Wrong(
                        "title: t\nsoils: [" + "rust, ".repeat(9_999) + "rust]\n", Message.LIST_TOO_LONG, 2, "/soils"),
                new Wrong(
                        "title: t\nmaterials: [" + "brass, ".repeat(12) + "brass]\n",
                        Message.LIST_TOO_LONG,
                        2,
                        "/materials"),
                new Wrong(TREE + "[film, swims]}\n", Message.TREE_PATH, 3, "/soils/0/kind/answers"),
                new Wrong(TREE + "[film]}\n", Message.TREE_UNFINISHED, 3, "/soils/0/kind/answers"),
                new Wrong(
                        "title: t\nsoils: [{kind: {tree: what-is-it}}]\n",
                        Message.UNKNOWN_TREE,
                        2,
                        "/soils/0/kind/tree"),
                new Wrong(
                        "title: t\nsoils: [{state: {tree: what-is-this-soil}}]\n",
                        Message.TREE_ATTRIBUTE,
                        2,
                        "/soils/0/state/tree"),
                new Wrong(
                        "title: t\nsoils: [{kind: {value: rust, why: so}}]\n",
                        Message.UNKNOWN_FIELD,
                        2,
                        "/soils/0/kind/why"));
    }

    @ParameterizedTest
    @MethodSource("wrongs")
    void isRefusedWithPlaceAndAdvice(Wrong wrong) {
        List<Diagnostic> found = errors(wrong.text().getBytes(StandardCharsets.UTF_8));
        Optional<Diagnostic> expected =
                found.stream().filter(d -> d.message() == wrong.message()).findFirst();
        assertTrue(expected.isPresent(), () -> wrong.message() + " is not among " + found);
        assertEquals(wrong.line(), expected.get().place().line(), expected.get().toString());
        assertEquals(
                wrong.pointer(),
                expected.get().place().pointer(),
                expected.get().toString());
        for (Diagnostic d : found) {
            assertEquals("task.yaml", d.place().file());
            assertFalse(d.text().isBlank() || d.advice().isBlank(), d.toString());
            assertFalse(d.toString().matches(".*\\{[0-9]}.*"), d.toString());
        }
    }

    @Test
    void adviceNamesTheNearestWord() {
        assertEquals(
                "did you mean \"cutting-oil\"?",
                errors("title: t\nsoils: [cutting-oill]\n".getBytes(StandardCharsets.UTF_8))
                        .get(0)
                        .advice());
        assertEquals(
                "did you mean \"wettedArea\"?",
                errors("title: t\npart: {wetedArea: 1 cm2}\n".getBytes(StandardCharsets.UTF_8))
                        .get(0)
                        .advice());
    }

    @Test
    void allErrorsOfOneTaskComeAtOnceInOrderOfTheirLines() {
        String text = """
                title: t
                parts: {rate: 3 1/h}
                part: {mass: 12 mm, shape: rings}
                materials:
                  - {substrate: steele, hardness: 40..30 HRC}
                soils: [rust, rust, mud]
                demand: {waterBreakFree: perhaps, particleCode: B}
                jurisdictions: [Mars]
                """;
        assertEquals(
                List.of(
                        Message.UNKNOWN_FIELD,
                        Message.WRONG_DIMENSION,
                        Message.UNKNOWN_TERM,
                        Message.UNKNOWN_TERM,
                        Message.RANGE_REVERSED,
                        Message.UNKNOWN_TERM,
                        Message.NOT_A_FLAG,
                        Message.BAD_CODE,
                        Message.UNKNOWN_TERM),
                errors(text.getBytes(StandardCharsets.UTF_8)).stream()
                        .map(Diagnostic::message)
                        .toList());
    }

    @Test
    void hugeAndHostileTasksAreRefusedSoon() {
        assertEquals(Message.TOO_LARGE, errors(new byte[20_000_000]).get(0).message());
        assertEquals(
                Message.NOT_UTF8,
                errors(new byte[] {'t', ':', ' ', (byte) 0xC3, '('}).get(0).message());
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 20; i++) {
            bomb.append("a" + i + ": &a" + i + " [" + ("*a" + (i - 1) + ", ").repeat(8) + "*a" + (i - 1) + "]\n");
        }
        assertTrue(errors(bomb.toString().getBytes(StandardCharsets.UTF_8)).stream()
                .anyMatch(d -> d.message() == Message.ALIAS));
        for (String deep : List.of(
                "[".repeat(100_000),
                "title: " + "{a: ".repeat(50_000),
                "{\"a\":".repeat(100_000),
                "- ".repeat(100_000))) {
            List<Diagnostic> found = errors(deep.getBytes(StandardCharsets.UTF_8));
            assertTrue(
                    List.of(Message.TOO_DEEP, Message.BROKEN_JSON, Message.BROKEN_YAML)
                            .contains(found.get(0).message()),
                    found.toString());
        }
        assertEquals(
                Message.TOO_DEEP,
                errors(("title: " + "[".repeat(60) + "]".repeat(60)).getBytes(StandardCharsets.UTF_8))
                        .get(0)
                        .message());
    }

    @Test
    void controlCharactersNeverReachAMessage() {
        List<Diagnostic> found =
                errors("title: t\nsoils: [\"mud\\e[31m\\nforged line\"]\n".getBytes(StandardCharsets.UTF_8));
        assertEquals(Message.HIDDEN_CHARACTER, found.get(0).message());
        assertTrue(found.get(0).toString().chars().noneMatch(Character::isISOControl));
    }

    /** 62 HRC is some 2200 MPa, 800 MPa some 22 HRC (ISO 18265, table A.1, from memory): far beyond any scatter. */
    @Test
    void hardnessAndStrengthThatContradictEachOtherAreRefused() {
        RefusedTask refused = assertThrows(
                RefusedTask.class,
                () -> Starter.answer(
                        "title: t\nmaterials:\n  - {substrate: carbon-steel, hardness: 58 HRC, tensileStrength: 800 MPa}\n"));
        Diagnostic d = refused.diagnostics().get(0);
        assertEquals(Message.CONTRADICTION, d.message());
        assertEquals("/materials/0", d.place().pointer());
        assertFalse(d.advice().isBlank());
    }

    /** 310 HV is about 31 HRC (ASTM E140, table 1, from memory). */
    @Test
    void hardnessOnTwoScalesThatAgreeIsTaken() {
        Starter.answer(
                "title: t\nmaterials:\n  - {substrate: carbon-steel, hardness: 31 HRC, vickersHardness: 310 HV}\n");
    }

    private static List<Diagnostic> errors(byte[] bytes) {
        Diagnostics diagnostics = new Diagnostics();
        Optional<CleaningTask> task = TaskReader.read("task.yaml", bytes, Starter.edition(), diagnostics);
        assertTrue(task.isEmpty(), "it was taken");
        return diagnostics.all();
    }
}
