package org.washwright.explain.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.document.Message;
import org.washwright.document.Node;
import org.washwright.document.Place;
import org.washwright.generate.Starter;
import org.washwright.task.CleaningTask;
import org.washwright.task.Group;
import org.washwright.task.TaskReader;
import org.washwright.task.Value;
import org.washwright.taskfile.TaskExport;
import org.washwright.taskfile.TaskFormat;

class TaskChangesTest {

    private static final String RINGS = "bearing-rings.yaml";

    static Stream<List<String>> changes() {
        return Stream.of(
                List.of("/following/operation=painting"),
                List.of("/part/mass=2 lb"),
                List.of("/materials/0/hardness=unknown"),
                List.of("/materials/0/hardness=not applicable"),
                List.of("/soils/1/kind=honing-oil", "/soils/1/amount=1..2 g/m2", "/soils/0=remove"),
                List.of("/soils/1=honing-oil", "/soils/open=yes"),
                List.of("/soils/open=no"),
                List.of("/soils=unknown", "/soils/0/kind=honing-oil"),
                List.of("/soils=none"),
                List.of("/soils=unknown"),
                List.of("/soils/0/kind=[honing-oil, cutting-oil]"),
                List.of("/components/open=yes"),
                List.of("/plants=unknown"),
                List.of("/lot=unknown"),
                List.of("/lot=remove"),
                List.of("/intended=unknown"),
                List.of("/attributes/food-contact=yes"),
                List.of("/jurisdictions=none", "/jurisdictions/0=EU"),
                List.of("/jurisdictions/0=remove"));
    }

    @ParameterizedTest
    @MethodSource("changes")
    void a_document_changed_reads_as_the_task_changed_whatever_form_it_is_written_in(List<String> typed) {
        int tried = 0;
        for (var text : Starter.demoTexts().entrySet()) {
            CleaningTask task = Starter.task(text.getValue());
            Diagnostics wrong = new Diagnostics();
            Optional<CleaningTask> changed = TaskChanges.apply(task, parsed(typed), Starter.edition(), wrong);
            if (changed.isEmpty()) {
                // Some tasks lack the entry that is changed; what comes out of that is tested below.
                assertTrue(
                        wrong.all().stream().allMatch(d -> d.message() == Message.CHANGE_POINTER),
                        wrong.all().toString());
                continue;
            }
            tried++;
            Node document =
                    DocumentReader.read("-", text.getValue(), new Diagnostics()).orElseThrow();
            Node edited = DocumentChanges.apply(document, parsed(typed), Starter.edition());
            for (TaskFormat format : List.of(TaskFormat.YAML, TaskFormat.JSON)) {
                byte[] written = new TaskExport(Starter.edition()).task(edited, format);
                Diagnostics errors = new Diagnostics();
                CleaningTask read = TaskReader.read("-", written, Starter.edition(), errors)
                        .orElseThrow(() -> new AssertionError(text.getKey() + errors.all()));
                assertEquals(said(changed.get()), said(read), text.getKey() + " " + typed);
            }
        }
        assertTrue(tried > 3, typed + " was tried with " + tried + " tasks only");
    }

    @Test
    void a_changed_document_keeps_the_words_and_units_of_all_that_was_not_changed() {
        Node document = DocumentReader.read("-", Starter.demoTexts().get(RINGS), new Diagnostics())
                .orElseThrow();
        Node edited = DocumentChanges.apply(
                DocumentChanges.titled(document, "Rings, variant: painted"),
                parsed(List.of("/following/operation=painting")),
                Starter.edition());
        String yaml =
                new String(new TaskExport(Starter.edition()).task(edited, TaskFormat.YAML), StandardCharsets.UTF_8);
        // As typed in demo-data/tasks/bearing-rings.yaml.
        for (String kept : List.of("120 cm2", "0.31 kg", "62 HRC", "20 mg/m2", "5000 m3", "operation: painting")) {
            assertTrue(yaml.contains(kept), kept + " in " + yaml);
        }
        assertTrue(yaml.startsWith("title:"), yaml);
        assertFalse(yaml.contains("operation: assembly"), yaml);
    }

    @Test
    void entries_keep_their_numbers_until_all_else_is_set() {
        CleaningTask task = Starter.demoTasks().get(RINGS);
        CleaningTask changed = changed(task, "/soils/0=remove", "/soils/1/kind=cutting-oil");
        assertEquals(1, changed.entries(Group.SOILS).entries().size());
        assertEquals(
                Value.term("cutting-oil"),
                changed.entries(Group.SOILS).entries().get(0).value("kind"));
        assertEquals(
                "/soils/0/kind",
                changed.entries(Group.SOILS)
                        .entries()
                        .get(0)
                        .given()
                        .get("kind")
                        .pointer(),
                "it stands first now");
    }

    @Test
    void a_task_changed_and_changed_back_is_the_task() {
        CleaningTask task = Starter.demoTasks().get(RINGS);
        CleaningTask there = changed(task, "/following/operation=painting", "/soils/0/amount=9 g/m2");
        assertEquals(task, changed(there, "/following/operation=assembly", "/soils/0/amount=3 g/m2"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "following/operation=painting; CHANGE_POINTER; Write a JSON pointer",
                "/folowing/operation=painting; CHANGE_POINTER; following",
                "/following/operatoin=painting; CHANGE_POINTER; operation",
                "/following=painting; CHANGE_POINTER; /following/operation",
                "/title=other; CHANGE_POINTER; known here",
                "/part/areaPerHour=3 m2/h; CHANGE_COMPUTED; How many parts an hour",
                "/soils/20/kind=honing-oil; OUT_OF_RANGE; ",
                "/soils/999999999/kind=honing-oil; OUT_OF_RANGE; ",
                "/soils/99999999999999999999/kind=x; CHANGE_POINTER; Count entries",
                "/soils/-1/kind=honing-oil; CHANGE_POINTER; Count entries from 0",
                "/soils/5/kind=honing-oil; CHANGE_POINTER; /soils/1 adds one",
                "/soils/5=remove; CHANGE_POINTER; There is 1 entry",
                "/soils=honing-oil; CHANGE_POINTER; none or unknown",
                "/soils/open=perhaps; NOT_A_FLAG; yes",
                "/part/mass=5; MISSING_UNIT; ",
                "/part/mass=5 parsec; UNKNOWN_UNIT; ",
                "/part/mass=3 h; WRONG_DIMENSION; ",
                "/following/operation=paintign; UNKNOWN_TERM; painting",
                "/following/operation=<script>alert(1)</script>; UNKNOWN_TERM; ",
                "/attributes/no-such=yes; CHANGE_POINTER; ",
                "/attributes=yes; CHANGE_POINTER; ",
                "/=x; CHANGE_POINTER; ",
                "/demand/particleCode=A(; BAD_CODE; ",
            })
    void what_is_wrong_with_a_change_is_said_at_its_place(String typed, String message, String advice) {
        Diagnostics found = new Diagnostics();
        assertTrue(TaskChanges.apply(Starter.demoTasks().get(RINGS), parsed(List.of(typed)), Starter.edition(), found)
                .isEmpty());
        assertEquals(1, found.all().size(), found.all().toString());
        Diagnostic d = found.all().get(0);
        assertEquals(Message.valueOf(message), d.message(), d.toString());
        assertEquals(typed.substring(0, typed.indexOf('=')), d.place().pointer());
        assertTrue(d.advice().contains(advice == null ? "" : advice), d.advice());
    }

    @Test
    void all_errors_come_at_once_and_the_same_place_is_not_set_twice() {
        Diagnostics found = new Diagnostics();
        List<String> typed = List.of(
                "/part/mass=heavy",
                "/no/such=1",
                "/following/operation=painting",
                "/following/operation=assembly",
                "/soils/1/kind=no-such-soil",
                "/soils/2/kind=cutting-oil",
                "/soils/0/amount=2 g/m2",
                "/soils/0=remove");
        TaskChanges.apply(Starter.demoTasks().get(RINGS), parsed(typed), Starter.edition(), found);
        List<Message> messages = found.all().stream().map(Diagnostic::message).toList();
        assertEquals(
                List.of(
                        Message.BAD_QUANTITY,
                        Message.CHANGE_POINTER,
                        Message.DUPLICATE_KEY,
                        Message.UNKNOWN_TERM,
                        Message.CHANGE_POINTER),
                messages,
                found.all().toString());
    }

    @Test
    void five_hundred_changes_and_none_at_all_are_refused_in_one_message() {
        Diagnostics many = new Diagnostics();
        TaskChanges.apply(
                Starter.demoTasks().get(RINGS),
                parsed(Collections.nCopies(500, "/no/such=1")),
                Starter.edition(),
                many);
        assertEquals(
                List.of(Message.CHANGES_TOO_MANY),
                many.all().stream().map(Diagnostic::message).toList());
        Diagnostics none = new Diagnostics();
        TaskChanges.apply(Starter.demoTasks().get(RINGS), List.of(), Starter.edition(), none);
        assertEquals(
                List.of(Message.CHANGE_NONE),
                none.all().stream().map(Diagnostic::message).toList());
    }

    @Test
    void what_is_no_change_is_refused() {
        for (String typed : List.of("", "=", "=x", "/following/operation")) {
            Diagnostics found = new Diagnostics();
            assertTrue(Change.parse(typed, Place.ofFile("-"), found).isEmpty());
            assertEquals(
                    List.of(Message.CHANGE_SHAPE),
                    found.all().stream().map(Diagnostic::message).toList());
        }
    }

    @Test
    void a_change_is_written_as_it_was_typed() {
        for (String typed : List.of("/part/mass=2 lb", "/soils/0/kind=[honing-oil, cutting-oil]", "/part/mass=")) {
            assertEquals(typed, parsed(List.of(typed)).get(0).text());
        }
    }

    /** What a task says: to leave a list out and to say that it is unknown is the same. */
    private static String said(CleaningTask task) {
        Map<Group, CleaningTask.Entries> lists = new EnumMap<>(Group.class);
        task.lists().forEach((group, entries) -> {
            if (!entries.equals(CleaningTask.Entries.UNKNOWN)) {
                lists.put(group, entries);
            }
        });
        return lists + "\n" + task.declared();
    }

    private static CleaningTask changed(CleaningTask task, String... typed) {
        Diagnostics found = new Diagnostics();
        return TaskChanges.apply(task, parsed(List.of(typed)), Starter.edition(), found)
                .orElseThrow(() -> new AssertionError(found.all().toString()));
    }

    private static List<Change> parsed(List<String> typed) {
        List<Change> out = new ArrayList<>();
        Diagnostics found = new Diagnostics();
        typed.forEach(t -> Change.parse(t, Place.ofFile("-"), found).ifPresent(out::add));
        assertFalse(found.hasErrors(), found.all().toString());
        return out;
    }
}
