package org.washwright.explain.why;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.washwright.assessment.Answer;

/** Holds the reasons of an answer against its firings: each is reached, none is made up, all end on ground. */
final class WhyCheck {

    private final Answer answer;
    private final Why why;
    private final Map<String, Thing> all = new TreeMap<>();
    private final List<String> faults = new ArrayList<>();

    private WhyCheck(Answer answer) {
        this.answer = answer;
        this.why = new Why(answer);
    }

    static List<String> faults(Answer answer) {
        WhyCheck check = new WhyCheck(answer);
        check.run();
        return check.faults;
    }

    private void run() {
        why.of("").things().forEach(t -> all.put(t.at(), t));
        for (int i = 0; i < answer.firings().size(); i++) {
            Answer.Firing firing = answer.firings().get(i);
            String at = "/firings/" + i;
            if (!all.containsKey(at) && !isAnsweredAlready(firing)) {
                faults.add("nothing that the answer says leads to " + firing.rule() + " " + firing.matched() + " "
                        + firing.findings());
            }
            for (int k = 0; k < firing.findings().size(); k++) {
                finding(at + "/findings/" + k, firing);
            }
        }
        all.values().forEach(this::grounded);
        Set<String> done = new HashSet<>();
        all.keySet().forEach(at -> circle(at, new LinkedHashSet<>(), done));
    }

    /** Reasons never lead back to what they are reasons of. */
    private void circle(String at, LinkedHashSet<String> path, Set<String> done) {
        if (!path.add(at)) {
            faults.add("a circle of reasons: " + path + " and back to " + at);
            return;
        }
        if (done.add(at)) {
            all.get(at).on().forEach(next -> circle(next, path, done));
        }
        path.remove(at);
    }

    /** A rule that only asks for what is known by now says nothing that is shown. */
    private static boolean isAnsweredAlready(Answer.Firing firing) {
        return firing.findings().stream()
                .allMatch(f -> f.verb().equals("ask") || f.verb().equals("conclude"));
    }

    private void finding(String at, Answer.Firing firing) {
        Explanation explanation = why.of(at);
        explanation.things().forEach(this::grounded);
        Set<String> ids = new HashSet<>(explanation.identity());
        for (String ref : firing.uses()) {
            if (!ids.contains(ref) && !ids.contains("list/" + ref)) {
                faults.add(at + " leaves out that " + firing.rule() + " read " + ref);
            }
        }
        if (explanation.ground().isEmpty()) {
            faults.add(at + " stands on no ground");
        }
    }

    private void grounded(Thing thing) {
        if (thing.on().isEmpty() && !thing.kind().isGround()) {
            faults.add(thing.at() + " rests on nothing: " + thing.kind() + " " + thing.id() + " " + thing.text());
        }
        if (thing.text().isBlank()) {
            faults.add(thing.at() + " says nothing");
        }
    }
}
