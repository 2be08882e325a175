package org.washwright.assist;

import java.util.List;
import java.util.Random;

/**
 * Writes a rule as one does who takes nothing but proposals, and types only what nobody can propose: names, reasons, where in
 * a source something stands.
 */
final class RuleWalk {

    private static final int LONGEST = 400;
    private static final int MOST_PATTERNS = 3;

    private final Assistant assistant;
    private final Random random;
    private final StringBuilder text = new StringBuilder();
    private int caret;

    RuleWalk(Assistant assistant, Random random) {
        this.assistant = assistant;
        this.random = random;
    }

    String write() {
        for (int step = 0; step < LONGEST; step++) {
            Proposals proposals = assistant.proposals("rules/r.drl", text.toString(), caret);
            if (typed(proposals)) {
                continue;
            }
            if (proposals.list().isEmpty()) {
                throw new AssertionError("nothing is proposed at the end of\n" + text.substring(0, caret));
            }
            Proposal chosen = choose(proposals.list());
            text.replace(proposals.from(), proposals.to(), chosen.insert());
            caret = proposals.from() + chosen.insert().length() - chosen.back();
            if (chosen.label().equals("end")) {
                return text.toString();
            }
            if (Character.isLetterOrDigit(text.charAt(caret - 1))
                    && !text.substring(caret).startsWith("\"")) {
                type(" ", 0, "");
            }
        }
        return close();
    }

    /** Types what nobody proposes; true when there was such a thing. */
    private boolean typed(Proposals proposals) {
        String before = text.substring(0, caret);
        String line = before.substring(before.lastIndexOf('\n') + 1);
        if (before.endsWith("rule \"")) {
            return type("made", 1, "\n");
        }
        if (before.endsWith("@id(\"")) {
            return type("R-1", 2, "\n");
        }
        if (before.endsWith("@title(\"") || before.endsWith("@note(\"") || before.endsWith("@since(\"")) {
            return type("some", 2, "\n");
        }
        boolean choosing = before.endsWith("@basis(\"") || before.endsWith("@source(\"");
        if (!choosing && line.startsWith("@") && !before.endsWith("\n")) {
            return type("", 2, "\n");
        }
        if (before.endsWith("\"") && text.substring(caret).startsWith("\"") && !choosing) {
            return type("It is so that it is.", 1, "");
        }
        return proposals.list().isEmpty() && text.substring(caret).startsWith("\"") && type("", 1, "");
    }

    private boolean type(String words, int over, String then) {
        text.insert(caret, words);
        caret += words.length() + over;
        text.insert(caret, then);
        caret += then.length();
        return true;
    }

    private Proposal choose(List<Proposal> list) {
        long patterns = text.toString()
                .lines()
                .filter(l -> l.contains("(") && l.startsWith("  "))
                .count();
        for (String wanted : List.of("@id", "@basis", "@source")) {
            if (has(list, wanted)) {
                return of(list, wanted);
            }
        }
        if (has(list, "when") && random.nextInt(3) > 0) {
            return of(list, "when");
        }
        if (has(list, "then") && (patterns >= MOST_PATTERNS || random.nextInt(3) == 0)) {
            return of(list, "then");
        }
        if (has(list, "end") && random.nextInt(3) == 0) {
            return of(list, "end");
        }
        if (has(list, ")") && random.nextInt(2) == 0) {
            return of(list, ")");
        }
        return list.get(random.nextInt(list.size()));
    }

    private static boolean has(List<Proposal> list, String label) {
        return list.stream().anyMatch(p -> p.label().equals(label));
    }

    private static Proposal of(List<Proposal> list, String label) {
        return list.stream().filter(p -> p.label().equals(label)).findFirst().orElseThrow();
    }

    /** A walk that went on for long is cut where the last consequence ended. */
    private String close() {
        int last = text.lastIndexOf(");");
        if (last < 0) {
            throw new AssertionError("no consequence in " + LONGEST + " steps:\n" + text);
        }
        return text.substring(0, last) + ");\nend\n";
    }
}
