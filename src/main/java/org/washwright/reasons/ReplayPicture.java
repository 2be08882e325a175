package org.washwright.reasons;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.washwright.explain.replay.Replay;
import org.washwright.explain.replay.Step;

/**
 * A walk as a picture that grows: one mark a step, in layers from what was given to what is said. A mark keeps its place from
 * the first step to the last; it appears when its step is done. Lengths are in pixels of a page at its full width.
 *
 * @param width width
 * @param height height
 * @param labelled true when marks carry their titles
 * @param layers layers with their titles
 * @param marks marks of the steps done so far
 * @param edges what the steps done so far build on, the present one's last
 */
record ReplayPicture(int width, int height, boolean labelled, List<Layer> layers, List<Mark> marks, List<Edge> edges) {

    private static final List<String> TITLES =
            List.of("given", "catalogue", "computed", "concluded", "rules speak", "line and status");
    private static final int CONCLUDED = 3;

    private static final int ROW = 24;
    private static final int MARK_HEIGHT = 19;
    private static final int HEAD = 30;
    private static final int GAP = 34;

    /** Width of a usual character of a title. */
    private static final double CHARACTER = 6.0;

    private static final int DOT = 9;
    private static final int PITCH = 12;
    private static final int STRIP_GAP = 14;

    /** A layer with the place of its title. */
    record Layer(String title, int x, int y) {}

    /**
     * A step that was done.
     *
     * @param state {@code now}, {@code read} by the present step, or {@code known}
     * @param shape {@code plain}, {@code concluded} or {@code open} for one that could not be decided
     */
    record Mark(int n, int x, int y, int width, int height, String label, String title, String state, String shape) {

        /** Middle of the mark. */
        public int middle() {
            return y + height / 2;
        }
    }

    /** A line from what was read to what reads it; {@code state} is {@code now} or {@code known}. */
    record Edge(String path, String state) {}

    /** Layers side by side, every mark with its title. */
    static ReplayPicture columns(Replay replay, int now, Map<Integer, List<Integer>> sources, int width) {
        List<Integer> used = replay.steps().stream()
                .map(ReplayPicture::layer)
                .distinct()
                .sorted()
                .toList();
        // What leads back within the last layer needs room beside it too.
        int column = (width - GAP * used.size()) / used.size();
        int[] filled = new int[TITLES.size()];
        Map<Integer, Mark> marks = new HashMap<>();
        for (int n = 1; n <= replay.size(); n++) {
            int layer = layer(replay.steps().get(n - 1));
            int x = used.indexOf(layer) * (column + GAP);
            int y = HEAD + filled[layer]++ * ROW;
            marks.put(n, mark(replay, n, now, sources, new int[] {x, y, column, MARK_HEIGHT}));
        }
        List<Layer> layers = new ArrayList<>();
        int most = 1;
        for (int i : used) {
            layers.add(new Layer(TITLES.get(i), used.indexOf(i) * (column + GAP), 16));
            most = Math.max(most, filled[i]);
        }
        return of(width, HEAD + most * ROW, true, layers, marks, now, sources);
    }

    /** Layers one below the other, every mark a dot. */
    static ReplayPicture strip(Replay replay, int now, Map<Integer, List<Integer>> sources, int width) {
        int perRow = width / PITCH;
        Map<Integer, List<Integer>> byLayer = new HashMap<>();
        for (int n = 1; n <= replay.size(); n++) {
            byLayer.computeIfAbsent(layer(replay.steps().get(n - 1)), k -> new ArrayList<>())
                    .add(n);
        }
        List<Layer> layers = new ArrayList<>();
        Map<Integer, Mark> marks = new HashMap<>();
        int y = 0;
        for (int i = 0; i < TITLES.size(); i++) {
            List<Integer> own = byLayer.getOrDefault(i, List.of());
            if (own.isEmpty()) {
                continue;
            }
            layers.add(new Layer(TITLES.get(i), 0, y + 13));
            int top = y + 20;
            for (int k = 0; k < own.size(); k++) {
                int[] box = {k % perRow * PITCH + 1, top + k / perRow * PITCH, DOT, DOT};
                marks.put(own.get(k), mark(replay, own.get(k), now, sources, box));
            }
            y = top + ((own.size() - 1) / perRow + 1) * PITCH + STRIP_GAP;
        }
        return of(width, y, false, layers, marks, now, sources);
    }

    private static ReplayPicture of(
            int width,
            int height,
            boolean labelled,
            List<Layer> layers,
            Map<Integer, Mark> all,
            int now,
            Map<Integer, List<Integer>> sources) {
        List<Mark> marks = new ArrayList<>();
        List<Edge> edges = new ArrayList<>();
        for (int n = 1; n <= now; n++) {
            Mark to = all.get(n);
            marks.add(to);
            if (n == now || labelled) {
                String state = n == now ? "now" : "known";
                sources.get(n).forEach(from -> edges.add(new Edge(path(all.get(from), to, labelled), state)));
            }
        }
        return new ReplayPicture(width, height, labelled, layers, marks, edges);
    }

    private static Mark mark(Replay replay, int n, int now, Map<Integer, List<Integer>> sources, int[] box) {
        Step step = replay.steps().get(n - 1);
        String state = n == now ? "now" : sources.get(now).contains(n) ? "read" : "known";
        String shape = !step.certain() ? "open" : layer(step) == CONCLUDED ? "concluded" : "plain";
        return new Mark(n, box[0], box[1], box[2], box[3], label(step, box[2]), step.title(), state, shape);
    }

    /** As much of the title as a mark holds. */
    private static String label(Step step, int width) {
        String title = step.title()
                .replaceFirst("^What (was said|the catalogue says) of (the )?", "")
                .replaceFirst(" is (computed|looked up)$", "");
        int most = Math.max(1, (int) ((width - 14) / CHARACTER));
        return title.length() <= most ? title : title.substring(0, most - 1).strip() + "…";
    }

    private static String path(Mark from, Mark to, boolean sideways) {
        if (!sideways) {
            int x1 = from.x + from.width / 2;
            int x2 = to.x + to.width / 2;
            int middle = (from.middle() + to.middle()) / 2;
            return "M" + x1 + " " + from.middle() + "C" + x1 + " " + middle + " " + x2 + " " + middle + " " + x2 + " "
                    + to.middle();
        }
        int x1 = from.x + from.width;
        boolean forwards = from.x < to.x;
        // Within a layer, and back to one, a line leaves and enters on the same side.
        int x2 = forwards ? to.x : to.x + to.width;
        int bend = forwards ? (x2 - x1) / 2 : GAP / 2;
        int back = forwards ? -bend : bend;
        return "M" + x1 + " " + from.middle() + "C" + (x1 + bend) + " " + from.middle() + " " + (x2 + back) + " "
                + to.middle() + " " + x2 + " " + to.middle();
    }

    private static int layer(Step step) {
        return switch (step.kind()) {
            case GIVEN -> 0;
            case CATALOGUE -> 1;
            case COMPUTED -> 2;
            case FIRING -> step.isConclusion() ? CONCLUDED : 4;
            default -> 5;
        };
    }
}
