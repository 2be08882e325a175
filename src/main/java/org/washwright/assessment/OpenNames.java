package org.washwright.assessment;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.washwright.engine.Fact;
import org.washwright.engine.FactBase;
import org.washwright.task.Group;

/** Names what is not known, for the end of a sentence that hangs on it. */
final class OpenNames {

    private static final int MOST = 3;

    private final FactBase facts;

    OpenNames(FactBase facts) {
        this.facts = facts;
    }

    /** {@code Not known: hardness of bearing steel.} with a blank before it; empty when there is nothing to name. */
    String sentence(Collection<String> refs) {
        List<String> names = refs.stream().map(this::name).distinct().toList();
        if (names.isEmpty()) {
            return "";
        }
        int more = names.size() - MOST;
        return " Not known: " + String.join(", ", names.stream().limit(MOST).toList())
                + (more > 0 ? " and " + more + " more" : "") + ".";
    }

    private String name(String ref) {
        Optional<Group> list = Group.byKey(ref);
        if (list.isPresent()) {
            return "whether there is a further " + list.get().label();
        }
        int slash = Math.max(0, ref.lastIndexOf('/'));
        Optional<Fact> fact = facts.fact(ref.substring(0, slash));
        return fact.flatMap(f -> f.type().field(ref.substring(slash + 1)).map(a -> name(f, a.label())))
                .orElse(ref);
    }

    private static String name(Fact fact, String label) {
        boolean itself = fact.id().startsWith("attributes/") || fact.name().endsWith(" " + label);
        return itself ? fact.name() : label + " of " + fact.name();
    }
}
