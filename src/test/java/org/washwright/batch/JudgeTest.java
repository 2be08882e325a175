package org.washwright.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.generate.Starter;
import org.washwright.library.Evaluation;

@Timeout(60)
class JudgeTest {

    private static final byte[] TASK = {};
    private static final FrozenAnswer ANSWER = Starter.answer("title: a");

    private final Tally tally = new Tally();
    private final AtomicBoolean alarmed = new AtomicBoolean();
    private final AtomicInteger made = new AtomicInteger();

    @Test
    void the_first_answer_of_a_run_and_each_hundredth_are_judged() throws InterruptedException {
        Judge judge = judge(100, task -> answered());
        for (int n = 41; n <= 300; n++) {
            judge.hear(n, n == 41, n, TASK, ANSWER.hash());
        }
        assertEquals(Optional.empty(), judge.verdict());
        assertEquals(4, tally.judged());
        assertEquals(1, made.get());
        assertFalse(alarmed.get());
    }

    @Test
    void a_difference_raises_the_alarm_and_names_record_and_both_hashes() throws InterruptedException {
        Judge judge = judge(1, task -> answered());
        judge.hear(1, true, 7, TASK, "another hash");
        Judge.Difference difference = judge.verdict().orElseThrow();
        assertEquals(new Judge.Difference(7, "another hash", ANSWER.hash()), difference);
        assertTrue(alarmed.get());
    }

    @Test
    void without_judging_the_other_engine_is_never_made() throws InterruptedException {
        Judge judge = judge(0, task -> answered());
        judge.hear(1, true, 1, TASK, "x");
        assertEquals(Optional.empty(), judge.verdict());
        assertEquals(0, made.get());
    }

    @Test
    void an_engine_that_fails_is_a_fault_and_no_verdict() throws InterruptedException {
        Judge judge = judge(1, task -> {
            throw new IllegalArgumentException("broken");
        });
        judge.hear(1, true, 1, TASK, ANSWER.hash());
        assertThrows(IllegalStateException.class, judge::verdict);
    }

    private static Evaluation answered() {
        return new Evaluation.Answered("a", ANSWER.answer(), ANSWER.bytes(), ANSWER.hash());
    }

    private Judge judge(long every, Function<byte[], Evaluation> engine) {
        return new Judge(
                every,
                () -> {
                    made.incrementAndGet();
                    return engine;
                },
                tally,
                () -> alarmed.set(true));
    }
}
