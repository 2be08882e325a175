package org.washwright.judging;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.washwright.impact.meaning.Subject;
import org.washwright.impact.meaning.What;
import org.washwright.impact.replay.By;
import org.washwright.impact.replay.Impact;
import org.washwright.impact.replay.Origin;
import org.washwright.impact.replay.Weight;

/**
 * What a change does to answers, as a page shows it.
 *
 * @param it the impact
 * @param kinds how many answers differ how much, the weightiest first
 * @param marks a mark for each task tried, row by row
 * @param height height of the picture, in the units of the marks
 * @param sample the answers to be judged
 * @param rest changed answers outside the sample
 * @param parts what each part of the change does
 */
public record ImpactView(
        Impact it,
        List<Kind> kinds,
        List<Dot> marks,
        int height,
        List<Sampled> sample,
        List<Told> rest,
        List<Part> parts) {

    private static final int COLUMNS = 40;
    private static final int STEP = 16;

    /** How many answers are of one kind; {@code shape} is the class of its mark. */
    public record Kind(String shape, String words, long count) {}

    /** A mark of the picture. */
    public record Dot(String shape, int x, int y) {}

    /** A changed answer, with where its task can be read and links to the rules behind it. */
    public record Told(Impact.AnswerChange c, String href, List<Link> by) {}

    /** A part of the change with where it can be read; no address when it is no rule. */
    public record Link(By by, String href) {}

    /** A changed answer of the sample with what was judged of it. */
    public record Sampled(int place, Told told, Optional<Judgement> judgement) {

        /** Version that a new judgement must name. */
        public int version() {
            return judgement.map(Judgement::version).orElse(0);
        }
    }

    /** What one part of the change does. */
    public record Part(Impact.Part p, Link link, String does) {}

    static ImpactView of(KeptRun run, Map<String, Judgement> judged) {
        Impact it = run.impact();
        List<Kind> kinds = kinds(it);
        List<Dot> dots = new ArrayList<>();
        for (Kind kind : kinds) {
            for (int i = 0; i < kind.count(); i++) {
                int n = dots.size();
                dots.add(new Dot(kind.shape(), n % COLUMNS * STEP, n / COLUMNS * STEP));
            }
        }
        List<Sampled> sample = new ArrayList<>();
        List<Told> rest = new ArrayList<>();
        for (Impact.AnswerChange c : it.changed()) {
            Told told = told(c, run);
            int place = it.sample().indexOf(c.key());
            if (place >= 0) {
                sample.add(new Sampled(place, told, Optional.ofNullable(judged.get(c.key()))));
            } else {
                rest.add(told);
            }
        }
        List<Part> parts = it.parts().stream()
                .map(p -> new Part(p, link(p.by(), p.what() == What.REMOVED, run), does(p)))
                .toList();
        return new ImpactView(it, kinds, dots, (dots.size() + COLUMNS - 1) / COLUMNS * STEP, sample, rest, parts);
    }

    private static List<Kind> kinds(Impact it) {
        List<Kind> out = new ArrayList<>();
        for (Weight weight : Weight.values()) {
            long n = it.changed().stream().filter(c -> c.weight() == weight).count();
            add(out, weight.name().toLowerCase(java.util.Locale.ROOT), weight.words(), n);
        }
        add(out, "refused", "refused by one edition or both", it.refused().size());
        add(out, "same", "the same answer", it.same());
        return out;
    }

    private static void add(List<Kind> kinds, String shape, String words, long n) {
        if (n > 0) {
            kinds.add(new Kind(shape, words, n));
        }
    }

    private static Told told(Impact.AnswerChange c, KeptRun run) {
        String href =
                c.origin() == Origin.KEPT ? "/tasks/" + c.key() : "/rulebooks/" + run.edition() + "/cases#" + c.key();
        return new Told(c, href, c.by().stream().map(by -> link(by, false, run)).toList());
    }

    private static Link link(By by, boolean removed, KeptRun run) {
        return new Link(
                by,
                by.subject() == Subject.RULE
                        ? "/rulebooks/" + (removed ? run.before() : run.edition()) + "/rules#" + by.id()
                        : "");
    }

    private static String does(Impact.Part p) {
        if (p.changes() > 0) {
            return p.changes() + (p.changes() == 1 ? " answer changes" : " answers change");
        }
        return p.reached() > 0 ? "fires on " + p.reached() + ", changes no answer" : "touches no task tried";
    }

    /** How many of the sample are judged. */
    public long judged() {
        return sample.stream().filter(s -> s.judgement().isPresent()).count();
    }

    /** How many of the sample were judged as not meant. */
    public long against() {
        return sample.stream()
                .filter(s -> s.judgement().filter(j -> !j.isMeant()).isPresent())
                .count();
    }
}
