package org.washwright.editing.text;

import java.util.ArrayList;
import java.util.List;

/**
 * Two texts side by side.
 *
 * @param rows lines that differ, with a few around them that do not
 * @param differing how many rows differ
 * @param merge both in one
 */
record Differences(List<Row> rows, int differing, Merge merge) {

    private static final int AROUND = 2;
    private static final int MOST = 400;

    /**
     * A row.
     *
     * @param number line in their text, 0 when they have none
     * @param theirs their line; empty when they have none
     * @param mine my line
     * @param differs whether they differ
     * @param skipped lines left out before this row, because both have them
     */
    record Row(int number, String theirs, String mine, boolean differs, int skipped) {}

    /** Whether more rows differ than are shown. */
    public boolean cut() {
        return rows.size() == MOST;
    }

    static Differences of(String base, String theirs, String mine) {
        List<String> a = Lines.of(theirs);
        List<String> b = Lines.of(mine);
        List<Row> all = rows(a, b, Lines.shared(a, b));
        int differing = (int) all.stream().filter(Row::differs).count();
        return new Differences(near(all), differing, Merge.of(base, theirs, mine));
    }

    private static List<Row> rows(List<String> a, List<String> b, int[] shared) {
        List<Row> rows = new ArrayList<>();
        int i = 0;
        int j = 0;
        while (i < a.size() || j < b.size()) {
            boolean mineAlone = i == a.size() || (shared[i] > j);
            if (i < a.size() && shared[i] == j) {
                rows.add(new Row(i + 1, a.get(i++), b.get(j++), false, 0));
            } else if (mineAlone) {
                rows.add(new Row(0, "", b.get(j++), true, 0));
            } else if (j < b.size() && isUnshared(shared, i, j)) {
                rows.add(new Row(i + 1, a.get(i++), b.get(j++), true, 0));
            } else {
                rows.add(new Row(i + 1, a.get(i++), "", true, 0));
            }
        }
        return rows;
    }

    /** Whether line j of the second text belongs to no later line of the first. */
    private static boolean isUnshared(int[] shared, int i, int j) {
        for (int k = i; k < shared.length; k++) {
            if (shared[k] >= 0) {
                return shared[k] > j;
            }
        }
        return true;
    }

    private static List<Row> near(List<Row> all) {
        boolean[] wanted = new boolean[all.size()];
        for (int i = 0; i < all.size(); i++) {
            for (int k = Math.max(0, i - AROUND);
                    all.get(i).differs() && k < Math.min(all.size(), i + AROUND + 1);
                    k++) {
                wanted[k] = true;
            }
        }
        List<Row> out = new ArrayList<>();
        int skipped = 0;
        for (int i = 0; i < all.size() && out.size() < MOST; i++) {
            if (wanted[i]) {
                Row r = all.get(i);
                out.add(new Row(r.number(), r.theirs(), r.mine(), r.differs(), skipped));
                skipped = 0;
            } else {
                skipped++;
            }
        }
        return List.copyOf(out);
    }
}
