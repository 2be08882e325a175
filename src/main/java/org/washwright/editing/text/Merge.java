package org.washwright.editing.text;

import java.util.ArrayList;
import java.util.List;

/**
 * Two texts made from one: the lines that only one of them changed are taken as changed; where both changed the same place,
 * both stand, theirs first, for their author to sort out.
 *
 * @param text the text
 * @param clashes places that both changed
 */
record Merge(String text, int clashes) {

    static Merge of(String base, String theirs, String mine) {
        Walk walk = new Walk(Lines.of(base), Lines.of(theirs), Lines.of(mine));
        walk.run();
        return new Merge(String.join("\n", walk.out), walk.clashes);
    }

    private static final class Walk {
        private final List<String> base;
        private final List<String> theirs;
        private final List<String> mine;
        private final int[] inTheirs;
        private final int[] inMine;
        private final List<String> out = new ArrayList<>();
        private int clashes;

        Walk(List<String> base, List<String> theirs, List<String> mine) {
            this.base = base;
            this.theirs = theirs;
            this.mine = mine;
            this.inTheirs = Lines.shared(base, theirs);
            this.inMine = Lines.shared(base, mine);
        }

        void run() {
            int b = 0;
            int t = 0;
            int m = 0;
            for (int next = stable(b); next < base.size(); next = stable(b)) {
                settle(base.subList(b, next), theirs.subList(t, inTheirs[next]), mine.subList(m, inMine[next]));
                out.add(base.get(next));
                b = next + 1;
                t = inTheirs[next] + 1;
                m = inMine[next] + 1;
            }
            settle(base.subList(b, base.size()), theirs.subList(t, theirs.size()), mine.subList(m, mine.size()));
        }

        /** The next line that nobody changed. */
        private int stable(int from) {
            int at = from;
            while (at < base.size() && (inTheirs[at] < 0 || inMine[at] < 0)) {
                at++;
            }
            return at;
        }

        private void settle(List<String> was, List<String> their, List<String> my) {
            if (their.equals(was) || their.equals(my)) {
                out.addAll(my);
            } else if (my.equals(was)) {
                out.addAll(their);
            } else {
                clashes++;
                out.addAll(their);
                out.addAll(my);
            }
        }
    }
}
