package org.washwright.reasons;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.washwright.explain.replay.Chapter;
import org.washwright.explain.replay.Replay;
import org.washwright.explain.replay.Step;
import org.washwright.pages.Words;

/**
 * One step of a walk as its page shows it.
 *
 * @param address where the walk stands, without its query
 * @param replay the walk
 * @param n position of the step, from 1
 * @param step the step
 * @param chapter the chapter it is in
 * @param reads what it read, each with the step that brought it
 * @param adds what it adds
 * @param before how many facts and values were known before
 * @param after how many are known after
 * @param verdict what the walk comes to, in one sentence
 * @param pictures the walk as a picture: for a wide page first, then for a narrow one
 */
record ReplaySight(
        String address,
        Replay replay,
        int n,
        Step step,
        Chapter chapter,
        List<Row> reads,
        List<Row> adds,
        int before,
        int after,
        String verdict,
        List<ReplayPicture> pictures) {

    /** Rows shown at once; the rest is folded away. */
    static final int FIRST_ROWS = 10;

    private static final int MOST_LABELLED = 150;
    private static final int WIDE = 1180;
    private static final int NARROW = 340;

    /**
     * Something read or added.
     *
     * @param verb what it is, in words
     * @param name what a reader calls it
     * @param value its value
     * @param at position of the step that brought it; 0 where none did
     * @param remark what is to be known besides; may be empty
     */
    record Row(String verb, String name, String value, int at, String remark) {}

    static ReplaySight of(String address, Replay replay, int n) {
        Step step = replay.steps().get(n - 1);
        Map<String, Integer> brought = brought(replay);
        Set<String> known = replay.known(n - 1);
        List<Row> reads = step.reads().stream()
                .map(r -> new Row(
                        "",
                        r.name(),
                        r.value(),
                        brought.getOrDefault(r.ref(), 0),
                        r.known() ? "" : "this is what holds it"))
                .toList();
        List<Row> adds = step.adds().stream()
                .filter(a -> !isPartOfConclusion(step, a))
                .map(a -> new Row(
                        verb(a), a.name(), a.value(), 0, known.contains(a.ref()) ? "one more reason for it" : ""))
                .toList();
        Chapter chapter =
                replay.chapters().stream().filter(c -> c.holds(n)).findFirst().orElseThrow();
        Map<Integer, List<Integer>> sources = sources(replay, brought);
        List<ReplayPicture> pictures = List.of(
                replay.size() <= MOST_LABELLED
                        ? ReplayPicture.columns(replay, n, sources, WIDE)
                        : ReplayPicture.strip(replay, n, sources, WIDE),
                ReplayPicture.strip(replay, n, sources, NARROW));
        return new ReplaySight(
                address,
                replay,
                n,
                step,
                chapter,
                reads,
                adds,
                known.size(),
                replay.known(n).size(),
                verdict(replay),
                pictures);
    }

    /** Where another step of this walk stands. */
    public String link(int step) {
        String process = replay.process().isEmpty() ? "" : "process=" + encoded(replay.process()) + "&";
        return address + "?" + process + "step=" + step;
    }

    public boolean isFirst() {
        return n == 1;
    }

    public boolean isLast() {
        return n == replay.size();
    }

    /** Position of the next conclusion; 0 when none follows. */
    public int nextConclusion() {
        return replay.nextConclusion(n).orElse(0);
    }

    /** How far the walk has come, 0 to 100. */
    public int percent() {
        return 100 * n / replay.size();
    }

    /** What is told to those who hear the page. */
    public String said() {
        return "Step " + n + " of " + replay.size() + ": " + step.title() + (step.certain() ? "" : ", undecided");
    }

    private static String verdict(Replay replay) {
        if (replay.process().isEmpty()) {
            return "From what was given to the answer in " + replay.size() + " steps.";
        }
        String status = replay.steps().stream()
                .filter(s -> s.kind() == Step.Kind.STATUS)
                .map(Step::title)
                .findFirst()
                .orElse(replay.name());
        return status + ", told in " + replay.size() + " steps.";
    }

    /** The step that brings each fact, value or earlier step. */
    private static Map<String, Integer> brought(Replay replay) {
        Map<String, Integer> brought = new HashMap<>();
        for (int i = 1; i <= replay.size(); i++) {
            Step step = replay.steps().get(i - 1);
            brought.putIfAbsent(step.id(), i);
            for (String ref : step.learned()) {
                brought.putIfAbsent(ref, i);
            }
        }
        return brought;
    }

    /** The earlier steps that each step builds on. */
    private static Map<Integer, List<Integer>> sources(Replay replay, Map<String, Integer> brought) {
        Map<Integer, List<Integer>> sources = new HashMap<>();
        for (int i = 1; i <= replay.size(); i++) {
            List<Integer> own = new ArrayList<>();
            for (Step.Read read : replay.steps().get(i - 1).reads()) {
                int from = brought.getOrDefault(read.ref(), 0);
                if (from > 0 && from < i && !own.contains(from)) {
                    own.add(from);
                }
            }
            sources.put(i, own);
        }
        return sources;
    }

    /** Values of a conclusion or a stage say only what its name says already. */
    private static boolean isPartOfConclusion(Step step, Step.Added a) {
        return a.kind().equals("value") && (step.kind() == Step.Kind.FIRING || step.kind() == Step.Kind.LINE);
    }

    private static String verb(Step.Added a) {
        return switch (a.kind()) {
            case "fact", "value", "figure", "points", "status", "place", "window", "stage" -> "";
            case "conclusion" -> "so";
            default -> Words.verbInWords(a.kind());
        };
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
