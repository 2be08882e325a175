package org.washwright.cases;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedSet;
import org.washwright.document.Place;
import org.washwright.line.ProcessLine;
import org.washwright.quantity.Span;

/** One thing that must hold of an outcome. Terms are ids; numbers are SI. */
public sealed interface Expectation {

    /** Where it stands. */
    Place place();

    /** The rules that it is about, as far as it names any. */
    default List<String> rules() {
        return List.of();
    }

    /** A process has a status. */
    record Stands(Place place, String process, ProcessLine.Status status) implements Expectation {}

    /** A process is ruled out, by this rule where one is named. */
    record RulesOut(Place place, String process, Optional<String> by) implements Expectation {
        @Override
        public List<String> rules() {
            return by.stream().toList();
        }
    }

    /** A hazard's caution is shown, for the process and by the rule named, if any. */
    record Cautions(Place place, String hazard, Optional<String> process, Optional<String> by) implements Expectation {
        @Override
        public List<String> rules() {
            return by.stream().toList();
        }
    }

    /** An attribute or an open list is asked for. */
    record Asks(Place place, String attribute) implements Expectation {}

    /** A test method is asked for. */
    record Verifies(Place place, String method) implements Expectation {}

    /**
     * A parameter of a stage has a window.
     *
     * @param stage id of a stage, or {@code main}
     * @param min the lowest value allowed
     * @param max the highest value allowed
     * @param within a span that holds the whole window
     */
    record WindowIs(
            Place place,
            String process,
            String stage,
            String parameter,
            OptionalDouble min,
            OptionalDouble max,
            Optional<Span> within)
            implements Expectation {}

    /** Stages stand in a line, in this order, others between them or not. */
    record StageOrder(Place place, String process, List<String> stages) implements Expectation {
        /** Keeps a copy. */
        public StageOrder {
            stages = List.copyOf(stages);
        }
    }

    /** How a rule took to a task. */
    enum Reaction {
        /** At least one certain firing. */
        FIRES("fires"),
        /** Neither a certain nor an undecided firing. */
        SILENT("doesNotFire"),
        /** Undecided firings and no certain one. */
        UNDECIDED("undecided");

        private final String key;

        Reaction(String key) {
            this.key = key;
        }

        /** As written in cases. */
        public String key() {
            return key;
        }
    }

    /**
     * A rule fires, does not fire or is undecided.
     *
     * @param about exactly the processes that its firings match or say something of; empty when that is left open
     * @param on exactly the entries of the task and the stages that its firings match, such as {@code materials/0} or
     *     {@code line/PROCESS/main}; empty when that is left open
     */
    record Reacts(
            Place place,
            String rule,
            Reaction reaction,
            Optional<SortedSet<String>> about,
            Optional<SortedSet<String>> on)
            implements Expectation {
        @Override
        public List<String> rules() {
            return List.of(rule);
        }
    }

    /** A certain firing of a rule says something, with this detail, of exactly these processes if any are named. */
    record Says(Place place, String rule, String verb, String detail, Optional<SortedSet<String>> about)
            implements Expectation {
        @Override
        public List<String> rules() {
            return List.of(rule);
        }
    }
}
