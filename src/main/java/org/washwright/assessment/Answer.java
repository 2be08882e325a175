package org.washwright.assessment;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Optional;

/**
 * The whole answer to one request, as plain data: what the hashed bytes are written from and what every page, report
 * and reader shows. It holds no time, user or display setting; those live in an unhashed envelope around it.
 *
 * <p>References inside an answer: a <em>firing</em> is named by its number {@link Firing#n()}; a <em>fact</em> by its
 * id such as {@code materials/0}; an <em>attribute</em> by fact id and name such as {@code materials/0/hardness}.
 *
 * @param format version of this form, now 1
 * @param request what was asked
 * @param requestHash SHA-256 of the canonical request, hexadecimal
 * @param headline what the answer says in one sentence
 * @param intended what becomes of the process that somebody has in mind; left out of the bytes when the task names none
 * @param facts everything that was known, with origins
 * @param firings every firing, certain and undecided, ordered by level, rule and matched facts
 * @param candidates recommended processes first, then conditional ones, each group in order of points
 * @param ruledOut processes that may not clean this task, with the reasons
 * @param cautions what can hurt people, parts or plant
 * @param questions what to find out first, the most decisive first
 * @param doubts what was given and hardly fits the rest; left out of the bytes when there is nothing
 * @param verifications how cleanliness is to be proven
 * @param ranking how firm the order is and why the first leads; left out of the bytes when nothing stands
 * @param figures what the figures of the lines are and how each is computed, in the order in which they are shown
 * @param inputs what the figures were computed from besides facts, windows and each other: assumptions and catalogue
 * @param rules every rule that fired or might fire
 * @param sources every source those rules and facts rest on
 */
@JsonInclude(JsonInclude.Include.ALWAYS)
public record Answer(
        int format,
        Request request,
        String requestHash,
        Headline headline,
        @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<IntendedVerdict> intended,
        List<Fact> facts,
        List<Firing> firings,
        List<Candidate> candidates,
        List<RuledOut> ruledOut,
        List<Sentence> cautions,
        List<Question> questions,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<Sentence> doubts,
        List<Sentence> verifications,
        @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<Ranking> ranking,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<Design.Kind> figures,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<Design.Input> inputs,
        List<Rule> rules,
        List<Source> sources) {

    /** Answers given before there were such verdicts, doubts and figures hold none. */
    public Answer {
        doubts = doubts == null ? List.of() : doubts;
        intended = intended == null ? Optional.empty() : intended;
        ranking = ranking == null ? Optional.empty() : ranking;
        figures = figures == null ? List.of() : figures;
        inputs = inputs == null ? List.of() : inputs;
    }

    /**
     * What was asked: task, edition, weights, assumptions, date and seed.
     *
     * @param task the task in canonical form, as JSON text values of attributes by group
     * @param edition name of the rulebook edition
     * @param meaningHash hash of the edition's content in canonical form
     * @param textHash hash of the edition's raw files
     * @param weights weight of each area by area id
     * @param comparisons the comparisons of areas in pairs that the weights follow from; left out of the bytes when there were
     *     none
     * @param assumptions assumptions changed for this request
     * @param asOf date for which law and prices are read, ISO 8601
     * @param seed seed for anything sampled
     * @param program build and formula-set version
     */
    public record Request(
            Object task,
            String edition,
            String meaningHash,
            String textHash,
            List<Weight> weights,
            @JsonInclude(JsonInclude.Include.NON_EMPTY) List<Comparison> comparisons,
            List<Assumption> assumptions,
            String asOf,
            long seed,
            String program) {

        /** Requests made before comparisons were kept hold none. */
        public Request {
            comparisons = comparisons == null ? List.of() : comparisons;
        }
    }

    /** How many times as much the first of two areas, written {@code AREA/AREA}, matters as the second. */
    public record Comparison(String pair, double ratio) {}

    /** An assumption of the edition changed for this request, with its new value as text with unit. */
    public record Assumption(String id, String value) {}

    /** The weight of one area, a number from 0. */
    public record Weight(String area, double weight) {}

    /**
     * What the answer says.
     *
     * @param sentence the first line in a practitioner's words, or that nothing stands
     * @param summary how many processes are recommended, conditional and ruled out
     * @param firings the firings that placed the stages named in the sentence
     */
    public record Headline(String sentence, String summary, List<Integer> firings) {}

    /**
     * A thing the rules could match.
     *
     * @param id for instance {@code materials/0}, {@code conclusions/NAME/materials/0} or {@code process/NAME}
     * @param type fact type as rules name it, for instance {@code Material}
     * @param name what a reader calls it
     * @param attributes what is known of it
     * @param firings for a conclusion, the firings that drew it; for a stage of a line, those that placed it; else empty
     */
    public record Fact(String id, String type, String name, List<Attribute> attributes, List<Integer> firings) {}

    /**
     * One attribute of a fact.
     *
     * @param ref fact id, slash, attribute name
     * @param label what a reader calls it
     * @param value value with unit, in the attribute's default unit
     * @param knowledge {@code known}, {@code range}, {@code several}, {@code unknown} or {@code not applicable}
     * @param origin where the value comes from
     */
    public record Attribute(String ref, String label, String value, String knowledge, Origin origin) {}

    /**
     * Where a value comes from.
     *
     * @param kind {@code given}, {@code computed}, {@code catalogue} or {@code question tree}
     * @param detail JSON pointer of what was given, the formula, the term, or the path through the tree
     * @param inputs attributes it was computed or read from
     * @param source source id or a short citation; empty when given by the user
     * @param warnings where a formula was used beyond what it holds for
     */
    public record Origin(String kind, String detail, List<String> inputs, String source, List<String> warnings) {
        /** Keeps copies; answers of formula set 1 hold no warnings. */
        public Origin {
            inputs = List.copyOf(inputs);
            warnings = warnings == null ? List.of() : List.copyOf(warnings);
        }
    }

    /**
     * One rule that fired on one set of facts, or that may fire once unknowns are known.
     *
     * @param n number in this answer, from 1
     * @param rule rule id
     * @param level level in the graph of conclusions, from 0
     * @param certain false when the firing is undecided
     * @param line process id when the rule matched the composed line of that process; else empty
     * @param matched ids of the matched facts in order of the rule's patterns
     * @param uses attributes the rule's conditions read
     * @param held attributes whose lack of knowledge holds an undecided firing; an open list by its group name
     * @param findings what the firing says
     */
    public record Firing(
            int n,
            String rule,
            int level,
            boolean certain,
            String line,
            List<String> matched,
            List<String> uses,
            List<String> held,
            List<Finding> findings) {}

    /**
     * One effect of one firing.
     *
     * @param verb {@code conclude}, {@code ruleOut}, {@code support}, {@code oppose}, {@code require}, {@code limit},
     *     {@code caution}, {@code ask} or {@code verify}
     * @param targets processes concerned, by id; empty when it concerns the task as a whole
     * @param detail the rest in words, for instance {@code main}, {@code reach, 2 points} or {@code pH at most 10.5}
     * @param text the reason with its values filled in
     */
    public record Finding(String verb, List<String> targets, String detail, String text) {}

    /** A sentence of the answer and the firings it rests on, by number. */
    public record Sentence(String text, List<Integer> firings) {}

    /**
     * Something to find out.
     *
     * @param attribute attribute or open list concerned
     * @param question the question as one would ask it on the shop floor
     * @param consequence what hangs on it
     * @param firings the undecided firings it holds, and the firings that ask for it
     * @param decides number of processes whose status hangs on it
     */
    public record Question(String attribute, String question, String consequence, List<Integer> firings, int decides) {}

    /**
     * A process that may clean this task.
     *
     * @param process process id
     * @param name what a reader calls it
     * @param status {@code recommended} or {@code conditional}
     * @param low points of the weighted areas, 0 to 100, when the undecided goes against it
     * @param high the same when the undecided goes its way
     * @param areas the five areas
     * @param stages the composed line in order
     * @param conditions what a conditional status hangs on
     * @param cautions cautions that concern this process alone
     * @param design the line sized, costed and planned; left out of the bytes when the edition says nothing to size by
     */
    public record Candidate(
            String process,
            String name,
            String status,
            double low,
            double high,
            List<Area> areas,
            List<Stage> stages,
            List<Sentence> conditions,
            List<Sentence> cautions,
            @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<Design> design) {

        /** Answers given before lines were sized hold no design. */
        public Candidate {
            design = design == null ? Optional.empty() : design;
        }
    }

    /** Points of one area, 0 to 100, with its criteria. */
    public record Area(String area, String name, double weight, double low, double high, List<Criterion> criteria) {}

    /** Points of one criterion, 0 to 100, from where it starts and what moved it. */
    public record Criterion(
            String criterion, String name, double weight, double start, double low, double high, List<Point> points) {}

    /**
     * One thing that moved a criterion.
     *
     * @param text the reason
     * @param points points added, negative when it counts against
     * @param counted true for the strongest for and the strongest against; the rest are shown only
     * @param certain false when undecided
     * @param firing number of the firing, 0 when the points come from a figure
     * @param figure attribute the points were read from by a breakpoint curve; else empty
     */
    public record Point(String text, double points, boolean counted, boolean certain, int firing, String figure) {}

    /**
     * One step of a line.
     *
     * @param stage stage term id, or the process id for the main stage
     * @param name what a reader calls it
     * @param main true for the main cleaning stage
     * @param certain false when an undecided rule would place it
     * @param factors the four cleaning factors in the order medium, agitation, temperature, time
     * @param windows allowed range of each parameter
     * @param firings firings that placed it, and those that closed the window of the stage it stands in for; empty for the
     *     main stage
     */
    public record Stage(
            String stage,
            String name,
            boolean main,
            boolean certain,
            List<Factor> factors,
            List<Window> windows,
            List<Integer> firings) {}

    /**
     * One of the four cleaning factors of a stage.
     *
     * @param factor {@code medium}, {@code agitation}, {@code temperature} or {@code time}
     * @param words the setting in words, for instance {@code 55 to 65 °C}
     * @param share place of the setting within its possible range, 0 to 1; -1 when there is no scale
     */
    public record Factor(String factor, String words, double share) {}

    /**
     * The allowed range of one parameter of one stage.
     *
     * @param parameter parameter id
     * @param name what a reader calls it
     * @param text range with unit in words
     * @param low lowest value in the parameter's default unit; null when open
     * @param high highest value; null when open
     * @param unit default unit, empty for a plain number
     * @param firings firings that narrowed it
     * @param undecided undecided firings that might narrow it further
     */
    public record Window(
            String parameter,
            String name,
            String text,
            Double low,
            Double high,
            String unit,
            List<Integer> firings,
            List<Integer> undecided) {}

    /** A process that is out, with one sentence per reason. */
    public record RuledOut(String process, String name, List<Sentence> reasons) {}

    /**
     * A rule as cited.
     *
     * @param id rule id, or table id and row
     * @param title its title
     * @param basis standard, handbook, regulation, physics, trial or common practice
     * @param sources what it cites; empty for common practice
     * @param since edition or date from which it holds
     * @param note remark of its author
     * @param place file and line in the edition
     */
    public record Rule(
            String id, String title, String basis, List<Cite> sources, String since, String note, String place) {}

    /** A source id and the place within that source; the place may be empty. */
    public record Cite(String source, String locator) {}

    /** A source as cited; {@code seen} is false when it is cited from memory. */
    public record Source(String id, String title, int year, String locator, boolean seen) {}
}
