package org.washwright.editing.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Finds lines that two texts share, in order: a longest common subsequence by the greedy method of E. W. Myers, "An O(ND)
 * difference algorithm and its variations", Algorithmica 1 (1986) 251-266 (from memory).
 */
final class Lines {

    /** Most differing lines that are looked into; of texts that differ in more only start and end are shared. */
    private static final int MOST = 2000;

    private Lines() {}

    /** A text as lines without their ends. */
    static List<String> of(String text) {
        return List.of(text.replace("\r\n", "\n").split("\n", -1));
    }

    /** For each line of {@code a} the line of {@code b} that it is, or -1. The numbers rise. */
    static int[] shared(List<String> a, List<String> b) {
        int[] shared = new int[a.size()];
        Arrays.fill(shared, -1);
        int start = 0;
        while (start < a.size() && start < b.size() && a.get(start).equals(b.get(start))) {
            shared[start] = start;
            start++;
        }
        int end = 0;
        while (end < a.size() - start
                && end < b.size() - start
                && a.get(a.size() - 1 - end).equals(b.get(b.size() - 1 - end))) {
            shared[a.size() - 1 - end] = b.size() - 1 - end;
            end++;
        }
        middle(a.subList(start, a.size() - end), b.subList(start, b.size() - end), shared, start);
        return shared;
    }

    private static void middle(List<String> a, List<String> b, int[] shared, int offset) {
        int most = Math.min(MOST, a.size() + b.size());
        List<int[]> reached = new ArrayList<>();
        int[] far = new int[2 * most + 3];
        int zero = most + 1;
        for (int d = 0; d <= most; d++) {
            for (int k = -d; k <= d; k += 2) {
                boolean down = k == -d || (k != d && far[zero + k - 1] < far[zero + k + 1]);
                int x = down ? far[zero + k + 1] : far[zero + k - 1] + 1;
                while (x < a.size()
                        && x - k < b.size()
                        && x - k >= 0
                        && a.get(x).equals(b.get(x - k))) {
                    x++;
                }
                far[zero + k] = x;
                if (x >= a.size() && x - k >= b.size()) {
                    reached.add(Arrays.copyOfRange(far, zero - d - 1, zero + d + 2));
                    back(a.size(), b.size(), reached, shared, offset);
                    return;
                }
            }
            reached.add(Arrays.copyOfRange(far, zero - d - 1, zero + d + 2));
        }
    }

    /** Walks the way back; element {@code d} of {@code reached} holds the diagonals -d-1 to d+1. */
    private static void back(int toX, int toY, List<int[]> reached, int[] shared, int offset) {
        int x = toX;
        int y = toY;
        for (int d = reached.size() - 1; d > 0; d--) {
            int[] far = reached.get(d - 1);
            int k = x - y;
            // Of the step before, diagonal k stands at k + d; one that was never reached is no way.
            boolean down = k == -d || (k != d && far[k - 1 + d] < far[k + 1 + d]);
            int beforeX = down ? far[k + 1 + d] : far[k - 1 + d];
            int beforeY = beforeX - (down ? k + 1 : k - 1);
            while (x > beforeX && y > beforeY && x > (down ? beforeX : beforeX + 1)) {
                x--;
                y--;
                shared[offset + x] = offset + y;
            }
            x = beforeX;
            y = beforeY;
        }
        while (x > 0 && y > 0) {
            x--;
            y--;
            shared[offset + x] = offset + y;
        }
    }
}
