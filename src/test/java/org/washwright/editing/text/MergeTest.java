package org.washwright.editing.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Two texts that grew out of one are laid side by side and put together; the oracles are a plain table and the edits made. */
class MergeTest {

    @Test
    void changes_in_different_places_are_both_kept() {
        Merge merge = Merge.of("a\nb\nc\nd\ne", "a\nB\nc\nd\ne", "a\nb\nc\nd\nE\nf");
        assertEquals(new Merge("a\nB\nc\nd\nE\nf", 0), merge);
    }

    @Test
    void of_a_place_that_both_changed_both_texts_stand_theirs_first() {
        assertEquals(new Merge("a\ntheirs\nmine\nc", 1), Merge.of("a\nb\nc", "a\ntheirs\nc", "a\nmine\nc"));
    }

    @Test
    void what_both_changed_alike_stands_once() {
        assertEquals(new Merge("a\nx\nc", 0), Merge.of("a\nb\nc", "a\nx\nc", "a\nx\nc"));
    }

    @Test
    void what_one_took_out_stays_out_where_the_other_changed_nothing() {
        assertEquals(new Merge("a\nc\nd", 0), Merge.of("a\nb\nc", "a\nc", "a\nb\nc\nd"));
    }

    /** The longest common subsequence by the textbook's table, which has nothing of the greedy way. */
    private static int longest(List<String> a, List<String> b) {
        int[][] best = new int[a.size() + 1][b.size() + 1];
        for (int i = a.size() - 1; i >= 0; i--) {
            for (int j = b.size() - 1; j >= 0; j--) {
                best[i][j] =
                        a.get(i).equals(b.get(j)) ? best[i + 1][j + 1] + 1 : Math.max(best[i + 1][j], best[i][j + 1]);
            }
        }
        return best[0][0];
    }

    @Test
    void as_many_lines_are_found_to_be_shared_as_can_be() {
        Random random = new Random(3);
        for (int i = 0; i < 3000; i++) {
            List<String> a = some(random);
            List<String> b = some(random);
            int[] shared = Lines.shared(a, b);
            int last = -1;
            int count = 0;
            for (int k = 0; k < shared.length; k++) {
                if (shared[k] >= 0) {
                    assertTrue(shared[k] > last, a + " " + b);
                    assertEquals(a.get(k), b.get(shared[k]));
                    last = shared[k];
                    count++;
                }
            }
            assertEquals(longest(a, b), count, a + " " + b);
        }
    }

    private static List<String> some(Random random) {
        return Stream.generate(() -> String.valueOf("abcd".charAt(random.nextInt(4))))
                .limit(random.nextInt(14))
                .toList();
    }

    @Test
    void with_one_author_alone_the_merge_is_that_author_s_text() {
        Random random = new Random(4);
        for (int i = 0; i < 2000; i++) {
            String base = String.join("\n", some(random));
            String other = String.join("\n", some(random));
            assertEquals(new Merge(other, 0), Merge.of(base, other, base));
            assertEquals(new Merge(other, 0), Merge.of(base, base, other));
        }
    }

    @Test
    void no_line_of_either_author_is_lost() {
        Random random = new Random(9);
        for (int i = 0; i < 2000; i++) {
            List<String> base = new ArrayList<>();
            for (int k = 0; k < 8; k++) {
                base.add("line " + k);
            }
            List<String> theirs = new ArrayList<>(base);
            theirs.set(random.nextInt(8), "theirs");
            List<String> mine = new ArrayList<>(base);
            mine.set(random.nextInt(8), "mine");
            String merged = Merge.of(String.join("\n", base), String.join("\n", theirs), String.join("\n", mine))
                    .text();
            assertTrue(merged.contains("theirs") && merged.contains("mine"), merged);
        }
    }

    @Test
    void rows_side_by_side_hold_every_line_that_differs() {
        Differences differences = Differences.of("", "a\nb\nc\nd\ne\nf\ng", "a\nb\nc\nx\ne\nf\ng\nh");
        assertEquals(2, differences.differing());
        assertTrue(
                differences.rows().contains(new Differences.Row(4, "d", "x", true, 0)),
                differences.rows().toString());
        assertTrue(
                differences.rows().contains(new Differences.Row(0, "", "h", true, 0)),
                differences.rows().toString());
        assertEquals(1, differences.rows().get(0).skipped(), "the first line is the same and not near");
    }

    @Test
    void texts_that_differ_throughout_are_laid_side_by_side_all_the_same() {
        String theirs = "a\n".repeat(9000);
        String mine = "b\n".repeat(9000);
        assertTrue(Differences.of("", theirs, mine).cut());
    }
}
