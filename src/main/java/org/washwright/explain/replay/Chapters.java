package org.washwright.explain.replay;

import java.util.ArrayList;
import java.util.List;
import org.washwright.explain.replay.Step.Kind;

/** Puts steps into chapters and parts. */
final class Chapters {

    private final ToldAnswer index;
    private final String process;

    Chapters(ToldAnswer index, String process) {
        this.index = index;
        this.process = process;
    }

    List<Chapter> of(List<Step> steps) {
        List<Chapter> chapters = new ArrayList<>();
        int from = 0;
        while (from < steps.size()) {
            String title = chapter(steps.get(from));
            int to = from;
            while (to < steps.size() && chapter(steps.get(to)).equals(title)) {
                to++;
            }
            chapters.add(new Chapter(title, from + 1, to - from, parts(steps, from, to)));
            from = to;
        }
        return chapters;
    }

    private List<Chapter.Part> parts(List<Step> steps, int start, int end) {
        List<Chapter.Part> parts = new ArrayList<>();
        int from = start;
        while (from < end) {
            String title = part(steps.get(from));
            int to = from;
            while (to < end && part(steps.get(to)).equals(title)) {
                to++;
            }
            parts.add(new Chapter.Part(title, from + 1, to - from));
            from = to;
        }
        return parts;
    }

    private String chapter(Step step) {
        if (!step.process().isEmpty()) {
            return process.isEmpty() ? "Line by line" : "The line of " + index.processName(process);
        }
        return switch (step.kind()) {
            case GIVEN -> "What was given";
            case CATALOGUE -> "What the catalogue adds";
            case COMPUTED -> "What formulas compute";
            case FIRING ->
                step.level() == 0 ? "Rules: from what is known" : "Rules, level " + step.level() + ": from conclusions";
            default -> "The answer";
        };
    }

    private String part(Step step) {
        if (!step.process().isEmpty() && process.isEmpty()) {
            return index.processName(step.process());
        }
        return step.kind() == Kind.FIRING ? index.ruleTitle(step.rule()) : step.title();
    }
}
