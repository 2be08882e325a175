package org.washwright.impact.replay;

import java.util.List;
import org.washwright.document.Place;
import org.washwright.impact.meaning.MeaningComparison;
import org.washwright.impact.meaning.What;

/**
 * What a change of a rulebook does to answers, as plain data.
 *
 * @param format version of this form, now 1
 * @param sentence what it comes to in one sentence
 * @param before the earlier edition
 * @param after the later one
 * @param asOf date for which law was read where a task names none, ISO 8601
 * @param tried how many tasks both were asked
 * @param same how many of them both answer alike
 * @param changed answers that differ, the weightiest first
 * @param refused tasks that one edition or both do not take
 * @param cases reference cases that turned, and new ones that fail
 * @param parts every part of the change by which answers may differ, with what it did
 * @param sample keys of the changed answers to be judged
 */
public record Impact(
        int format,
        String sentence,
        MeaningComparison.Side before,
        MeaningComparison.Side after,
        String asOf,
        int tried,
        int same,
        List<AnswerChange> changed,
        List<Refused> refused,
        List<CaseTurn> cases,
        List<Part> parts,
        List<String> sample) {

    /** Keeps copies. */
    public Impact {
        changed = List.copyOf(changed);
        refused = List.copyOf(refused);
        cases = List.copyOf(cases);
        parts = List.copyOf(parts);
        sample = List.copyOf(sample);
    }

    /**
     * An answer that differs.
     *
     * @param key of the task
     * @param title what people call it
     * @param origin where it comes from
     * @param weight how much differs
     * @param sentence what became of it in one sentence
     * @param leaderBefore the process that stood first; empty when none stood
     * @param leaderAfter the one that stands first now
     * @param processes what became of processes, at most {@value Replaying#MOST_PROCESSES}
     * @param moreProcesses how many more differ
     * @param said findings found no longer and found now, in words, at most {@value Replaying#MOST_SAID}
     * @param by the parts of the change that made it differ; empty when no single part can be named
     * @param beforeHash hash of the earlier answer
     * @param afterHash hash of the later one
     */
    public record AnswerChange(
            String key,
            String title,
            Origin origin,
            Weight weight,
            String sentence,
            String leaderBefore,
            String leaderAfter,
            List<Process> processes,
            int moreProcesses,
            List<String> said,
            List<By> by,
            String beforeHash,
            String afterHash) {

        /** Keeps copies. */
        public AnswerChange {
            processes = List.copyOf(processes);
            said = List.copyOf(said);
            by = List.copyOf(by);
        }
    }

    /** Where a process stood and stands, in words, and what moved it. */
    public record Process(String process, String name, String before, String after, List<String> because) {

        /** Keeps a copy. */
        public Process {
            because = List.copyOf(because);
        }
    }

    /** A task that was not taken, with what the editions say is wrong with it; nothing when one took it. */
    public record Refused(String key, String title, Origin origin, List<String> before, List<String> after) {

        /** Keeps copies. */
        public Refused {
            before = List.copyOf(before);
            after = List.copyOf(after);
        }

        /** True when only the later edition does not take it. */
        public boolean onlyNow() {
            return before.isEmpty();
        }
    }

    /**
     * A reference case that turned.
     *
     * @param before {@code holds}, {@code fails} or {@code not there}
     * @param after the same now
     * @param edited whether the case itself says something else now
     * @param unmet what is expected and not met now, and what was found instead
     * @param place where the case stands
     */
    public record CaseTurn(
            String id, String title, String before, String after, boolean edited, List<String> unmet, Place place) {

        /** Keeps a copy. */
        public CaseTurn {
            unmet = List.copyOf(unmet);
        }

        /** True when it held, or was not there, and fails. */
        public boolean failsNow() {
            return after.equals(Cases.FAILS);
        }
    }

    /**
     * A part of the change.
     *
     * @param by which
     * @param what what became of it
     * @param place where it stands
     * @param reached for a rule, in how many of the tasks tried it fired before or after
     * @param changes how many answers differ by it
     */
    public record Part(By by, What what, String place, int reached, int changes) {

        /** True when it made no answer differ. */
        public boolean touchesNothing() {
            return changes == 0;
        }
    }
}
