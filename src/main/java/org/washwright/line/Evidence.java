package org.washwright.line;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.washwright.engine.Finding;
import org.washwright.engine.Firing;
import org.washwright.rule.Effect;

/** A finding with the firing that made it. */
public record Evidence<E extends Effect>(Firing firing, Finding finding, E effect) {

    /** True when the firing is. */
    public boolean certain() {
        return firing.certain();
    }

    /** Number of the firing. */
    public int n() {
        return firing.n();
    }

    /** All findings of a kind that concern a process, in order of their firings. */
    public static <E extends Effect> List<Evidence<E>> about(String process, List<Firing> firings, Class<E> kind) {
        return where(firings, kind, f -> f.targets().contains(process));
    }

    /** All findings of a kind that concern the task as a whole. */
    public static <E extends Effect> List<Evidence<E>> general(List<Firing> firings, Class<E> kind) {
        return where(firings, kind, f -> f.targets().isEmpty());
    }

    private static <E extends Effect> List<Evidence<E>> where(
            List<Firing> firings, Class<E> kind, Predicate<Finding> wanted) {
        List<Evidence<E>> out = new ArrayList<>();
        for (Firing firing : firings) {
            for (Finding finding : firing.findings()) {
                if (kind.isInstance(finding.effect()) && wanted.test(finding)) {
                    out.add(new Evidence<>(firing, finding, kind.cast(finding.effect())));
                }
            }
        }
        return out;
    }
}
