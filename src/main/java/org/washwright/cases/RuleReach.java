package org.washwright.cases;

import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.washwright.engine.Fact;
import org.washwright.engine.Firing;
import org.washwright.rule.Contact;
import org.washwright.rule.FactTypes;

/** What firings of a rule reach: processes, entries of the task and stages. */
public final class RuleReach {

    private static final String PROCESS = "process/";

    private RuleReach() {}

    /** Processes that firings match, say something of, or run over the line of. */
    public static SortedSet<String> about(List<Firing> firings) {
        TreeSet<String> about = new TreeSet<>();
        for (Firing firing : firings) {
            firing.findings().forEach(f -> about.addAll(f.targets()));
            facts(firing).stream()
                    .filter(f -> f.type().name().equals(FactTypes.PROCESS))
                    .forEach(f -> about.add(f.id().substring(PROCESS.length())));
            if (!firing.line().isEmpty()) {
                about.add(firing.line());
            }
        }
        return about;
    }

    /** Entries of the task, and stages of lines, that firings match. */
    public static SortedSet<String> on(List<Firing> firings) {
        TreeSet<String> on = new TreeSet<>();
        firings.forEach(firing ->
                facts(firing).stream().filter(f -> isOfTheTask(f.type().name())).forEach(f -> on.add(f.id())));
        return on;
    }

    private static List<Fact> facts(Firing firing) {
        return firing.facts().stream().flatMap(Optional::stream).toList();
    }

    /** What processes, conclusions and meetings are about stands in other patterns, or in the processes reached. */
    private static boolean isOfTheTask(String type) {
        return !type.equals(FactTypes.PROCESS)
                && !type.equals(FactTypes.CONCLUSION)
                && Contact.byFactType(type).isEmpty();
    }
}
