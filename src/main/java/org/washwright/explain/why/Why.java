package org.washwright.explain.why;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.washwright.assessment.Answer;
import org.washwright.explain.AnswerIndex;

/** Says why an answer says something, from the answer alone: neither rulebook nor rule engine is asked again. */
public final class Why {

    /** How a place ends that holds what is said of a process besides what decides its status. */
    public static final String ELSE = Things.ELSE;

    private final AnswerIndex index;
    private final Things things;

    /** Explains an answer. */
    public Why(Answer answer) {
        this.index = new AnswerIndex(answer);
        this.things = new Things(index);
    }

    /**
     * Why what stands at a place of the answer is said.
     *
     * @param place JSON pointer into the answer, for instance {@code /ruledOut/3} or {@code /candidates/0/stages/2}; empty
     *     for the whole answer
     * @throws NothingThere when nothing stands there that has reasons
     */
    public Explanation of(String place) {
        Map<String, Thing> found = new LinkedHashMap<>();
        Deque<String> open = new ArrayDeque<>(List.of(place));
        while (!open.isEmpty()) {
            String at = open.poll();
            if (!found.containsKey(at)) {
                Thing thing = things.at(at);
                found.put(at, thing);
                open.addAll(thing.on());
            }
        }
        return new Explanation(place, List.copyOf(found.values()));
    }

    /** The thing at a place by itself. */
    public Thing thing(String place) {
        return things.at(place);
    }

    /**
     * Where the answer speaks of a process.
     *
     * @param process id or name of a process, whatever its case
     * @throws NothingThere when the answer does not speak of it
     */
    public String process(String process) {
        List<Answer.Candidate> candidates = index.answer().candidates();
        for (int i = 0; i < candidates.size(); i++) {
            if (process.equals(candidates.get(i).process())
                    || process.equalsIgnoreCase(candidates.get(i).name())) {
                return "/candidates/" + i;
            }
        }
        List<Answer.RuledOut> out = index.answer().ruledOut();
        for (int i = 0; i < out.size(); i++) {
            if (process.equals(out.get(i).process())
                    || process.equalsIgnoreCase(out.get(i).name())) {
                return "/ruledOut/" + i;
            }
        }
        throw new NothingThere(process);
    }

    /** Everything the answer states, each by its place: what one may ask the reasons of. */
    public List<Thing> statements() {
        return things.at("").on().stream().map(things::at).toList();
    }

    /** With a capital at the start, unless that is part of how it is written, as in pH. */
    static String capital(String text) {
        boolean written = text.length() > 1 && Character.isUpperCase(text.charAt(1));
        return text.isEmpty() || written ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
