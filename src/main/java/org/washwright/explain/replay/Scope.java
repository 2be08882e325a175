package org.washwright.explain.replay;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Design;

/** What a walk shows: everything, or what concerns one process and all that this rests on. */
final class Scope {

    private final boolean everything;
    private final String process;
    private final Set<String> refs = new LinkedHashSet<>();
    private final Set<Integer> firings = new LinkedHashSet<>();

    private Scope(boolean everything, String process) {
        this.everything = everything;
        this.process = process;
    }

    static Scope all() {
        return new Scope(true, "");
    }

    static Scope of(ToldAnswer index, String process) {
        Scope scope = new Scope(false, process);
        new Closure(index, scope).run();
        return scope;
    }

    /** True for the story of one process. */
    boolean isStory() {
        return !everything;
    }

    boolean ref(String ref) {
        return everything || refs.contains(ref);
    }

    boolean firing(int n) {
        return everything || firings.contains(n);
    }

    boolean process(String id) {
        return everything || process.equals(id);
    }

    /** Follows every reference down to what was given. */
    private static final class Closure {
        private final ToldAnswer index;
        private final Scope scope;
        private final Deque<String> open = new ArrayDeque<>();

        Closure(ToldAnswer index, Scope scope) {
            this.index = index;
            this.scope = scope;
        }

        void run() {
            index.answer().firings().stream().filter(this::speaks).forEach(f -> firing(f.n()));
            index.candidate(scope.process).ifPresent(this::candidate);
            index.answer().ruledOut().stream()
                    .filter(r -> r.process().equals(scope.process))
                    .flatMap(r -> r.reasons().stream())
                    .forEach(s -> s.firings().forEach(this::firing));
            index.answer().facts().stream()
                    .map(Answer.Fact::id)
                    .filter(id -> id.startsWith(ToldAnswer.LINES + scope.process + "/"))
                    .forEach(this::ref);
            while (!open.isEmpty()) {
                follow(open.poll());
            }
        }

        private boolean speaks(Answer.Firing firing) {
            return firing.line().equals(scope.process)
                    || firing.findings().stream().anyMatch(x -> x.targets().contains(scope.process));
        }

        private void candidate(Answer.Candidate c) {
            List<Integer> cited = new ArrayList<>();
            for (Answer.Stage s : c.stages()) {
                cited.addAll(s.firings());
                s.windows().forEach(w -> {
                    cited.addAll(w.firings());
                    cited.addAll(w.undecided());
                });
            }
            c.conditions().forEach(s -> cited.addAll(s.firings()));
            c.cautions().forEach(s -> cited.addAll(s.firings()));
            c.areas().stream()
                    .flatMap(a -> a.criteria().stream())
                    .flatMap(x -> x.points().stream())
                    .forEach(p -> {
                        if (p.firing() > 0) {
                            cited.add(p.firing());
                        }
                        ref(p.figure());
                    });
            cited.forEach(this::firing);
            c.design().stream()
                    .flatMap(d -> d.figures().stream())
                    .map(Design.Figure::inputs)
                    .forEach(inputs -> inputs.forEach(this::ref));
        }

        private void firing(int n) {
            if (scope.firings.add(n)) {
                Answer.Firing f = index.firing(n);
                f.matched().forEach(this::ref);
                f.uses().forEach(this::ref);
                f.held().forEach(this::ref);
            }
        }

        private void ref(String ref) {
            if (!ref.isEmpty() && scope.refs.add(ref)) {
                open.add(ref);
            }
        }

        private void follow(String ref) {
            index.attribute(ref).ifPresent(a -> {
                ref(index.owner(ref).id());
                a.origin().inputs().forEach(this::ref);
            });
            index.fact(ref).filter(f -> f.firings().size() > 0 || whole(f)).ifPresent(f -> {
                f.firings().forEach(this::firing);
                f.attributes().forEach(a -> ref(a.ref()));
            });
            // A list that a rule looked through as a whole: everything that stands in it.
            index.answer().facts().stream()
                    .map(Answer.Fact::id)
                    .filter(id -> id.startsWith(ref + "/") && !id.contains("process/"))
                    .filter(id -> index.fact(ref).isEmpty())
                    .forEach(this::ref);
        }

        private static boolean whole(Answer.Fact fact) {
            return ToldAnswer.isConclusion(fact) || ToldAnswer.isOfLine(fact);
        }
    }
}
