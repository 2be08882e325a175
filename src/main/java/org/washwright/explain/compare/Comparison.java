package org.washwright.explain.compare;

import java.util.List;

/**
 * How one answer differs from another, as plain data. Every difference names its {@link Cause}s; the rules among them stand in
 * {@link #rules} with title and sources. Comparing the other way round swaps before and after, gained and lost.
 *
 * <p>Findings have an identity that scores and the numbers of firings are no part of: rule, matched facts, certain or not, verb
 * and targets. {@code gained + reworded + held} of the findings are those of the later answer, {@code lost + reworded + held}
 * those of the earlier one.
 *
 * @param format version of this form, now 1
 * @param sentence what it comes to in one sentence
 * @param before the answer compared with
 * @param after the answer compared
 * @param asked what was asked differently
 * @param processes processes whose standing, line or figures differ, the first of the later answer first
 * @param gained findings of the later answer alone
 * @param lost findings of the earlier answer alone
 * @param reworded findings of both that say something else
 * @param held how many findings are the same in both
 * @param cautions cautions of one answer alone
 * @param doubts doubts about what was given, of one answer alone
 * @param questions open questions of one answer alone
 * @param verifications ways to prove cleanliness of one answer alone
 * @param rules every rule that made a difference
 */
public record Comparison(
        int format,
        String sentence,
        Side before,
        Side after,
        List<AskedChange> asked,
        List<ProcessChange> processes,
        List<Said> gained,
        List<Said> lost,
        List<Reworded> reworded,
        int held,
        List<SentenceChange> cautions,
        List<SentenceChange> doubts,
        List<SentenceChange> questions,
        List<SentenceChange> verifications,
        List<RuleCite> rules) {

    /** True when the answers say the same of the same question. */
    public boolean same() {
        return asked.isEmpty()
                && processes.isEmpty()
                && gained.isEmpty()
                && lost.isEmpty()
                && reworded.isEmpty()
                && cautions.isEmpty()
                && doubts.isEmpty()
                && questions.isEmpty()
                && verifications.isEmpty();
    }

    /**
     * One of the two answers.
     *
     * @param edition name of the edition
     * @param meaningHash hash of the edition's content
     * @param requestHash hash of what was asked
     * @param answerHash hash of the answer's bytes
     * @param headline what it says in one sentence
     * @param leader name of the process that stands first; empty when none stands
     * @param recommended how many are recommended
     * @param conditional how many hang on something
     * @param ruledOut how many are ruled out
     */
    public record Side(
            String edition,
            String meaningHash,
            String requestHash,
            String answerHash,
            String headline,
            String leader,
            int recommended,
            int conditional,
            int ruledOut) {}

    /**
     * Something asked differently.
     *
     * @param kind {@code task}, {@code edition}, {@code wish} or {@code program}
     * @param place JSON pointer in the task, such as {@code /materials/0/hardness}; else what it is, such as {@code weights/cost}
     * @param name what a reader calls it
     * @param before value with unit, or that it is not known
     * @param after the same of the later answer
     */
    public record AskedChange(String kind, String place, String name, String before, String after) {}

    /**
     * What made a difference.
     *
     * @param kind {@code rule}, {@code figure}, {@code assumption}, {@code catalogue}, {@code window}, {@code process} (another
     *     one that came between), {@code task}, {@code edition}, {@code wish} or {@code program}
     * @param id id of the rule, figure, assumption or process; the place of what was asked
     * @param name what a reader calls it
     * @param side {@code before} or {@code after} when it holds in that answer alone, {@code both} otherwise
     * @param firing number of the firing in that answer (in the later one for {@code both}); 0 when it is none
     * @param detail values before and after, where there are some; of a rule that it is not decided, where it is not
     */
    public record Cause(String kind, String id, String name, String side, int firing, String detail) {}

    /**
     * One finding of one firing.
     *
     * @param rule rule id
     * @param title its title
     * @param certain false when the firing is undecided
     * @param line process whose composed line was matched; else empty
     * @param matched ids of the matched facts
     * @param verb verb of the finding; empty for a firing that says nothing
     * @param targets processes concerned
     * @param detail the rest in words, without scores
     * @param text the reason
     * @param firing its number in the answer that holds it
     */
    public record Said(
            String rule,
            String title,
            boolean certain,
            String line,
            List<String> matched,
            String verb,
            List<String> targets,
            String detail,
            String text,
            int firing) {}

    /** A finding of both answers that says something else: another bound, or other values in its reason. */
    public record Reworded(Said before, Said after) {}

    /**
     * Where a process stands.
     *
     * @param status {@code recommended}, {@code conditional}, {@code ruled out}, or {@code none} when the edition lacks it
     * @param place place among those that stand, from 1; 0 when it does not stand
     * @param low points when the undecided goes against it; null when it does not stand
     * @param high the same when it goes its way
     */
    public record Standing(String status, int place, Double low, Double high) {

        /** True when it may clean the task. */
        public boolean stands() {
            return place > 0;
        }
    }

    /**
     * What became of one process. Of a process that stands in one of the answers only, areas, stages, windows and figures are
     * not compared: there is nothing to hold them against.
     *
     * @param process process id
     * @param name what a reader calls it
     * @param before where it stood
     * @param after where it stands
     * @param causes what moved its status, points or place
     * @param areas areas whose points or weight differ
     * @param stages stages gained, lost, moved or set otherwise
     * @param windows windows that differ, of stages of both lines
     * @param figures figures that differ as shown
     * @param conditions what a conditional status hangs on, in one answer alone
     * @param reasons what rules it out, in one answer alone
     * @param cautions cautions for this process, in one answer alone
     */
    public record ProcessChange(
            String process,
            String name,
            Standing before,
            Standing after,
            List<Cause> causes,
            List<AreaChange> areas,
            List<StageChange> stages,
            List<WindowChange> windows,
            List<FigureChange> figures,
            List<SentenceChange> conditions,
            List<SentenceChange> reasons,
            List<SentenceChange> cautions) {

        /** True when it falls out. */
        public boolean falls() {
            return before.stands() && !after.stands();
        }

        /** True when it comes in. */
        public boolean comes() {
            return !before.stands() && after.stands();
        }
    }

    /** Points of one area with what moved them. */
    public record AreaChange(
            String area, String name, Span before, Span after, List<CriterionChange> criteria, List<Cause> causes) {}

    /** Weight and points, 0 to 100, low to high. */
    public record Span(double weight, double low, double high) {}

    /** Points of one criterion; {@code start} is where it starts before anything moves it. */
    public record CriterionChange(
            String criterion,
            String name,
            Span before,
            Span after,
            double startBefore,
            double startAfter,
            List<PointChange> points) {}

    /**
     * One thing that moves a criterion otherwise than before.
     *
     * @param text the reason
     * @param before points added before; null when it was not there
     * @param after points added now; null when it is not there
     * @param countedBefore whether they counted
     * @param countedAfter whether they count
     * @param cause the rule or figure
     */
    public record PointChange(
            String text, Double before, Double after, boolean countedBefore, boolean countedAfter, Cause cause) {}

    /**
     * A stage that differs.
     *
     * @param stage stage term id
     * @param name what a reader calls it
     * @param kind {@code gained}, {@code lost}, {@code moved}, {@code decided} (its certainty differs) or {@code set} (a cleaning
     *     factor differs)
     * @param placeBefore place in the line from 1; 0 when it was not there
     * @param placeAfter the same now
     * @param factors cleaning factors set otherwise
     * @param causes what made the difference
     */
    public record StageChange(
            String stage,
            String name,
            String kind,
            int placeBefore,
            int placeAfter,
            List<FactorChange> factors,
            List<Cause> causes) {}

    /** One of the four cleaning factors in words. */
    public record FactorChange(String factor, String before, String after) {}

    /**
     * A window that differs.
     *
     * @param stage stage term id
     * @param stageName what a reader calls the stage
     * @param parameter parameter id
     * @param name what a reader calls it
     * @param before range before; empty when there was none
     * @param after range now; empty when there is none
     * @param lowBefore lowest value in {@code unit} before; null when open or not there
     * @param highBefore highest value before
     * @param lowAfter lowest value now
     * @param highAfter highest value now
     * @param unit unit of the values
     * @param causes rules that narrow it in one of the answers only; all of them when they are the same
     */
    public record WindowChange(
            String stage,
            String stageName,
            String parameter,
            String name,
            String before,
            String after,
            Double lowBefore,
            Double highBefore,
            Double lowAfter,
            Double highAfter,
            String unit,
            List<Cause> causes) {}

    /**
     * A figure that differs as it is shown.
     *
     * @param figure id of its kind
     * @param label what a reader calls it
     * @param group what it belongs to
     * @param stageName stage concerned; empty for the whole line
     * @param before value with unit; empty when it was not computed
     * @param after the same now
     * @param causes what it is computed from and what differs
     */
    public record FigureChange(
            String figure,
            String label,
            String group,
            String stageName,
            String before,
            String after,
            List<Cause> causes) {}

    /** A sentence of one answer alone; {@code gained} says of which. */
    public record SentenceChange(boolean gained, String text, List<Cause> causes) {}

    /**
     * A rule that made a difference.
     *
     * @param id rule id
     * @param title its title
     * @param basis its basis
     * @param sources what it cites, as a reader finds it
     * @param place file and line in the edition
     */
    public record RuleCite(String id, String title, String basis, List<String> sources, String place) {}
}
