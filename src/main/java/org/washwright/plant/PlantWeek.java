package org.washwright.plant;

import java.util.List;
import java.util.Optional;

/**
 * What a plant makes of a set of tasks.
 *
 * @param plant name of the plant
 * @param process id of its process
 * @param processName what a reader calls that process
 * @param edition name of the edition that judged
 * @param meaningHash hash of that edition's content
 * @param asOf date for which law was read
 * @param headline how many tasks it can serve and how full that makes its week
 * @param tasks the tasks in the order given
 * @param week the hours of all that it can serve against the hours it has
 */
public record PlantWeek(
        String plant,
        String process,
        String processName,
        String edition,
        String meaningHash,
        String asOf,
        String headline,
        List<TaskOnPlant> tasks,
        Week week) {

    /** Keeps a copy. */
    public PlantWeek {
        tasks = List.copyOf(tasks);
    }

    /** Both ends of what something may be; equal when it is known. */
    public record Range(double low, double high) {

        /** Sum of both ends. */
        public Range plus(Range other) {
            return new Range(low + other.low, high + other.high);
        }

        /** True when it is one value. */
        @com.fasterxml.jackson.annotation.JsonIgnore
        public boolean isPoint() {
            return low == high;
        }
    }

    /** A sentence and the rules behind it, by id. */
    public record Reason(String text, List<String> rules) {

        /** Keeps a copy. */
        public Reason {
            rules = List.copyOf(rules);
        }
    }

    /**
     * One task on the plant.
     *
     * @param title title of the task
     * @param verdict {@code serves}, {@code serves if} or {@code does not serve}
     * @param blocks what blocks it; empty unless it does not serve
     * @param conditions what it hangs on
     * @param settings what the plant has to be set to where it could be set otherwise
     * @param load what it takes of the week; empty when the plant does not serve it
     */
    public record TaskOnPlant(
            String title,
            String verdict,
            List<Reason> blocks,
            List<Reason> conditions,
            List<Reason> settings,
            Optional<Load> load) {

        /** Keeps copies. */
        public TaskOnPlant {
            blocks = List.copyOf(blocks);
            conditions = List.copyOf(conditions);
            settings = List.copyOf(settings);
        }

        /** Whether the plant can serve it, surely or if something holds. */
        @com.fasterxml.jackson.annotation.JsonIgnore
        public boolean isServed() {
            return load.isPresent();
        }
    }

    /**
     * What a task takes of the week. What is not known is empty, never nothing.
     *
     * @param partsPerWeek parts a week
     * @param partsFrom where that number comes from
     * @param partsInLoad parts in a load
     * @param loads loads a week
     * @param minutesPerLoad time between two loads: how long one holds the slowest station, shared among those side by side
     * @param slowest name of that station
     * @param hours hours a week
     * @param notKnown what has to be known before the hours are
     * @param assumed what the plant does not say and the edition assumes
     */
    public record Load(
            Optional<Range> partsPerWeek,
            String partsFrom,
            Optional<Range> partsInLoad,
            Optional<Range> loads,
            Optional<Range> minutesPerLoad,
            String slowest,
            Optional<Range> hours,
            List<String> notKnown,
            List<String> assumed) {

        /** Keeps copies. */
        public Load {
            notKnown = List.copyOf(notKnown);
            assumed = List.copyOf(assumed);
        }
    }

    /**
     * The week of the plant.
     *
     * @param has hours it has
     * @param needs hours of all tasks that it can serve and whose hours are known
     * @param notKnown how many tasks it can serve whose hours are not known
     * @param over hours that are missing; empty when none are, or when it is not known
     * @param sentence the same in words
     * @param order the tasks that it can serve, in the order given, and whether each still fits
     */
    public record Week(
            Optional<Range> has, Range needs, int notKnown, Optional<Range> over, String sentence, List<Slot> order) {

        /** Keeps a copy. */
        public Week {
            order = List.copyOf(order);
        }
    }

    /**
     * A task in its turn.
     *
     * @param task its place in the set, from 1
     * @param title its title
     * @param hours its hours a week
     * @param until hours taken when it is done; empty when it or one before it is not known
     * @param fits {@code fits}, {@code may not fit}, {@code does not fit} or {@code not known}
     */
    public record Slot(int task, String title, Optional<Range> hours, Optional<Range> until, String fits) {}
}
