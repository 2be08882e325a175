package org.washwright.explain.why;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Writes an explanation as an indented text: each line rests on the lines below it that stand further in. */
public final class WhyText {

    private final Map<String, Thing> things;
    private final int depth;
    private final Set<String> said = new HashSet<>();
    private final StringBuilder out = new StringBuilder();

    private WhyText(Explanation explanation, int depth) {
        this.things = explanation.byPlace();
        this.depth = depth;
    }

    /**
     * The text.
     *
     * @param depth how many steps of reasons to show below the first line
     */
    public static String of(Explanation explanation, int depth) {
        WhyText text = new WhyText(explanation, depth);
        text.write(explanation.root(), 0);
        return text.out.toString();
    }

    private void write(Thing thing, int level) {
        out.append("  ".repeat(level)).append(level == 0 ? "" : lead(thing)).append(thing.text());
        if (!thing.detail().isEmpty()) {
            out.append(" [").append(thing.detail()).append(']');
        }
        boolean again = !said.add(thing.at());
        List<String> on = thing.on();
        boolean more = !on.isEmpty() && !again && level < depth;
        if (!on.isEmpty() && again) {
            out.append(" (see above)");
        } else if (!on.isEmpty() && !more) {
            out.append(" (")
                    .append(on.size())
                    .append(on.size() == 1 ? " reason" : " reasons")
                    .append(" further down)");
        }
        out.append('\n');
        if (more) {
            on.forEach(at -> write(things.get(at), level + 1));
        }
    }

    /** How a line is led in when it is read aloud. */
    private static String lead(Thing thing) {
        return switch (thing.kind()) {
            case FINDING -> thing.detail().isEmpty() ? "because " : "perhaps because ";
            case RULE -> "by the rule: ";
            case OPEN_RULE -> "perhaps, by the rule: ";
            case SOURCE -> "see ";
            case CONCLUSION -> "as concluded: ";
            case UNKNOWN -> "not known: ";
            default -> "";
        };
    }
}
