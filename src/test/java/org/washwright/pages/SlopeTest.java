package org.washwright.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import org.junit.jupiter.api.Test;
import org.washwright.assessment.Answer;
import org.washwright.generate.Starter;

/** Places are read off the answers themselves; nothing is expected from outside. */
class SlopeTest {

    private static final Answer CLIPS = answer("steel-clips.yaml");
    private static final Answer RINGS = answer("bearing-rings.yaml");

    @Test
    void an_answer_beside_itself_has_level_lines_only_from_row_to_row() {
        Slope slope = Slope.of(CLIPS, CLIPS);
        assertEquals(slope.left(), slope.right());
        assertTrue(slope.lines().stream().allMatch(l -> l.kind().equals("level") && l.from() == l.to()));
        assertEquals(Slope.MOST, slope.lines().size());
        assertEquals(slope.left().size() * 10, slope.height());
    }

    @Test
    void every_line_begins_and_ends_in_the_middle_of_a_row_and_turns_round_with_the_answers() {
        Slope there = Slope.of(CLIPS, RINGS);
        Slope back = Slope.of(RINGS, CLIPS);
        assertTrue(there.lines().stream().allMatch(l -> l.from() % 10 == 5 && l.to() % 10 == 5));
        assertTrue(there.lines().stream().allMatch(l -> l.from() < there.height() && l.to() < there.height()));
        var turned = new HashSet<Slope.Line>();
        there.lines()
                .forEach(l -> turned.add(new Slope.Line(
                        switch (l.kind()) {
                            case "up" -> "down";
                            case "down" -> "up";
                            case "in" -> "out";
                            case "out" -> "in";
                            default -> l.kind();
                        },
                        l.to(),
                        l.from())));
        assertEquals(turned, new HashSet<>(back.lines()));
        String first = RINGS.candidates().get(0).process();
        int was = CLIPS.candidates().stream()
                .map(Answer.Candidate::process)
                .toList()
                .indexOf(first);
        assertTrue(
                was < 0
                        || there.lines().stream()
                                .anyMatch(l -> l.to() == 5 && l.from() == Math.min(was, Slope.MOST) * 10 + 5),
                "the first of the later answer comes from where it stood");
    }

    private static Answer answer(String task) {
        return Starter.swept()
                .assess(Starter.demoTasks().get(task), Starter.WISHES)
                .answer();
    }
}
