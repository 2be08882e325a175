package org.washwright.explain.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.washwright.assessment.Answer;
import org.washwright.explain.compare.Comparison.Cause;
import org.washwright.explain.compare.Comparison.FactorChange;
import org.washwright.explain.compare.Comparison.StageChange;
import org.washwright.explain.compare.Comparison.WindowChange;

/** The lines of one process in two answers, stage by stage: the k-th stage of a kind is held against the k-th. */
final class Lines {

    private final Causes causes;
    private final Map<String, Integer> old;
    private final Map<String, Integer> now;
    private final List<Answer.Stage> before;
    private final List<Answer.Stage> after;

    Lines(Causes causes, Answer.Candidate before, Answer.Candidate after) {
        this.causes = causes;
        this.before = before.stages();
        this.after = after.stages();
        this.old = places(this.before);
        this.now = places(this.after);
    }

    /** Place in the line from 1, by kind and how many of its kind came before. */
    private static Map<String, Integer> places(List<Answer.Stage> stages) {
        Map<String, Integer> seen = new HashMap<>();
        Map<String, Integer> out = new LinkedHashMap<>();
        for (int i = 0; i < stages.size(); i++) {
            String id = stages.get(i).stage();
            out.put(id + "#" + seen.merge(id, 1, Integer::sum), i + 1);
        }
        return out;
    }

    /** Stages of both lines: place before by place after. */
    Map<Integer, Integer> common() {
        Map<Integer, Integer> out = new LinkedHashMap<>();
        now.forEach((key, place) -> Optional.ofNullable(old.get(key)).ifPresent(p -> out.put(place, p)));
        return out;
    }

    List<StageChange> stages() {
        List<StageChange> out = new ArrayList<>();
        Set<String> moved = moved();
        now.forEach((key, place) -> {
            Answer.Stage stage = after.get(place - 1);
            Integer earlier = old.get(key);
            if (earlier == null) {
                out.add(change(stage, "gained", 0, place, causes.of(Causes.AFTER, stage.firings())));
                return;
            }
            Answer.Stage was = before.get(earlier - 1);
            if (moved.contains(key)) {
                out.add(change(stage, "moved", earlier, place, causes.between(was.firings(), stage.firings())));
            }
            if (was.certain() != stage.certain()) {
                out.add(change(stage, "decided", earlier, place, causes.between(was.firings(), stage.firings())));
            }
            factors(was, stage, earlier, place).ifPresent(out::add);
        });
        old.forEach((key, place) -> {
            if (!now.containsKey(key)) {
                Answer.Stage stage = before.get(place - 1);
                out.add(change(stage, "lost", place, 0, causes.of(Causes.BEFORE, stage.firings())));
            }
        });
        return List.copyOf(out);
    }

    private StageChange change(Answer.Stage stage, String kind, int was, int is, List<Cause> found) {
        return new StageChange(stage.stage(), stage.name(), kind, was, is, List.of(), causes.orAsked(found));
    }

    private Optional<StageChange> factors(Answer.Stage was, Answer.Stage is, int placeBefore, int placeAfter) {
        Map<String, String> words = new LinkedHashMap<>();
        was.factors().forEach(f -> words.put(f.factor(), f.words()));
        List<FactorChange> changes = new ArrayList<>();
        is.factors().forEach(f -> {
            String earlier = words.getOrDefault(f.factor(), "");
            if (!earlier.equals(f.words())) {
                changes.add(new FactorChange(f.factor(), earlier, f.words()));
            }
        });
        if (changes.isEmpty()) {
            return Optional.empty();
        }
        List<Cause> found = new ArrayList<>();
        windows(was, is).forEach(w -> found.addAll(w.causes()));
        List<Cause> once = Causes.union(found, List.of());
        return Optional.of(
                new StageChange(is.stage(), is.name(), "set", placeBefore, placeAfter, changes, causes.orAsked(once)));
    }

    /** Stages of both lines that are no part of the longest sequence which both share. */
    private Set<String> moved() {
        List<String> a = old.keySet().stream().filter(now::containsKey).toList();
        List<String> b = now.keySet().stream().filter(old::containsKey).toList();
        int[][] length = new int[a.size() + 1][b.size() + 1];
        for (int i = a.size() - 1; i >= 0; i--) {
            for (int j = b.size() - 1; j >= 0; j--) {
                length[i][j] = a.get(i).equals(b.get(j))
                        ? length[i + 1][j + 1] + 1
                        : Math.max(length[i + 1][j], length[i][j + 1]);
            }
        }
        Set<String> moved = new HashSet<>(a);
        int i = 0;
        int j = 0;
        while (i < a.size() && j < b.size()) {
            if (a.get(i).equals(b.get(j))) {
                moved.remove(a.get(i));
                i++;
                j++;
            } else if (length[i + 1][j] >= length[i][j + 1]) {
                i++;
            } else {
                j++;
            }
        }
        return moved;
    }

    List<WindowChange> windows() {
        List<WindowChange> out = new ArrayList<>();
        common().forEach((is, was) -> out.addAll(windows(before.get(was - 1), after.get(is - 1))));
        return List.copyOf(out);
    }

    private List<WindowChange> windows(Answer.Stage was, Answer.Stage is) {
        Map<String, Answer.Window> earlier = new LinkedHashMap<>();
        was.windows().forEach(w -> earlier.put(w.parameter(), w));
        Map<String, Answer.Window> later = new LinkedHashMap<>();
        is.windows().forEach(w -> later.put(w.parameter(), w));
        Set<String> parameters = new LinkedHashSet<>(later.keySet());
        parameters.addAll(earlier.keySet());
        List<WindowChange> out = new ArrayList<>();
        for (String parameter : parameters) {
            Optional<Answer.Window> a = Optional.ofNullable(earlier.get(parameter));
            Optional<Answer.Window> b = Optional.ofNullable(later.get(parameter));
            if (differ(a, b)) {
                out.add(window(is, a, b));
            }
        }
        return out;
    }

    private static boolean differ(Optional<Answer.Window> a, Optional<Answer.Window> b) {
        if (a.isEmpty() || b.isEmpty()) {
            return true;
        }
        return !a.get().text().equals(b.get().text())
                || !Objects.equals(a.get().low(), b.get().low())
                || !Objects.equals(a.get().high(), b.get().high());
    }

    private WindowChange window(Answer.Stage stage, Optional<Answer.Window> a, Optional<Answer.Window> b) {
        Answer.Window named = b.or(() -> a).orElseThrow();
        List<Cause> found = causes.between(
                a.map(Answer.Window::firings).orElse(List.of()),
                b.map(Answer.Window::firings).orElse(List.of()));
        return new WindowChange(
                stage.stage(),
                stage.name(),
                named.parameter(),
                named.name(),
                a.map(Answer.Window::text).orElse(""),
                b.map(Answer.Window::text).orElse(""),
                a.map(Answer.Window::low).orElse(null),
                a.map(Answer.Window::high).orElse(null),
                b.map(Answer.Window::low).orElse(null),
                b.map(Answer.Window::high).orElse(null),
                named.unit(),
                causes.orAsked(found));
    }
}
