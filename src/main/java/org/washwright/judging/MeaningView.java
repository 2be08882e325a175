package org.washwright.judging;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.washwright.document.Place;
import org.washwright.impact.meaning.Difference;
import org.washwright.impact.meaning.MeaningComparison;
import org.washwright.impact.meaning.Subject;
import org.washwright.impact.meaning.What;

/**
 * Two editions compared, as a page shows them.
 *
 * @param it the comparison
 * @param tally how much of each kind differs
 * @param changing by what answers may change
 * @param wording what is words alone, and cases
 * @param moved what only stands elsewhere
 */
public record MeaningView(
        MeaningComparison it, List<Row> tally, List<Card> changing, List<Card> wording, List<Card> moved) {

    private static final double WIDTH = 100;
    private static final int HASH = 12;

    /**
     * How much of one kind differs, with its part of a bar of 100.
     *
     * @param name what the kind is called
     * @param answers how many may change answers
     * @param words how many are words alone
     * @param moved how many moved
     */
    public record Row(
            String name,
            long answers,
            long words,
            long moved,
            double answersWidth,
            double wordsWidth,
            double movedWidth) {

        /** Where the second stretch begins. */
        public double wordsAt() {
            return answersWidth;
        }

        /** Where the third stretch begins. */
        public double movedAt() {
            return answersWidth + wordsWidth;
        }
    }

    /**
     * One difference.
     *
     * @param d the difference
     * @param href where the rule can be read; empty when it is none
     * @param marks open objections of readers against the rule
     * @param where where it stands, and stood
     */
    public record Card(Difference d, String href, int marks, String where) {}

    static MeaningView of(MeaningComparison it, EditionPairs.Pair pair, Map<String, Integer> marks) {
        return new MeaningView(
                it,
                tally(it),
                cards(it.changing(), pair, marks),
                cards(it.wording(), pair, marks),
                cards(it.moved(), pair, marks));
    }

    private static List<Row> tally(MeaningComparison it) {
        long most = 1;
        for (Subject subject : Subject.values()) {
            most = Math.max(most, count(it.differences(), subject, d -> true));
        }
        List<Row> rows = new ArrayList<>();
        for (Subject subject : Subject.values()) {
            long answers = count(it.differences(), subject, Difference::answers);
            long moved = count(it.differences(), subject, d -> d.what() == What.MOVED);
            long words = count(it.differences(), subject, d -> true) - answers - moved;
            if (answers + words + moved > 0) {
                double unit = WIDTH / most;
                rows.add(new Row(
                        subject.count(2).substring(2),
                        answers,
                        words,
                        moved,
                        answers * unit,
                        words * unit,
                        moved * unit));
            }
        }
        return rows;
    }

    private static long count(List<Difference> all, Subject subject, Predicate<Difference> wanted) {
        return all.stream().filter(d -> d.subject() == subject).filter(wanted).count();
    }

    private static List<Card> cards(List<Difference> some, EditionPairs.Pair pair, Map<String, Integer> marks) {
        return some.stream()
                .map(d -> new Card(
                        d,
                        d.subject() == Subject.RULE
                                ? "/rulebooks/"
                                        + (d.what() == What.REMOVED ? pair.before() : pair.after()).id() + "/rules#"
                                        + d.id()
                                : "",
                        d.subject() == Subject.RULE ? marks.getOrDefault(d.id(), 0) : 0,
                        where(d)))
                .toList();
    }

    private static String where(Difference d) {
        if (d.place().file().isEmpty()) {
            return "";
        }
        boolean both = !d.before().file().isEmpty() && !d.after().file().isEmpty();
        return both && (d.movesFile() || d.what() == What.MOVED)
                ? "from " + at(d.before()) + " to " + at(d.after())
                : at(d.place());
    }

    private static String at(Place place) {
        return place.line() == 0 ? place.file() : place.file() + ", line " + place.line();
    }

    /** The beginning of a hash, enough to tell it from others. */
    public String brief(String hash) {
        return hash.substring(0, HASH);
    }
}
