package org.washwright.explain.exercise;

/** An empty prediction to fill in, as YAML. */
public final class PredictionTemplate {

    private PredictionTemplate() {}

    /** Every process asked, with the reasons to choose from as comments. */
    public static String of(Exercise exercise) {
        StringBuilder out = new StringBuilder();
        out.append("# ").append(line(exercise.title())).append('\n');
        out.append("# Which of these processes comes first? Its id, or none.\n");
        out.append("first:\n");
        out.append("predictions:\n");
        for (Exercise.Asked asked : exercise.processes()) {
            out.append("  # ").append(line(asked.name())).append('\n');
            out.append("  - process: ").append(asked.process()).append('\n');
            out.append("    # recommended, conditional or ruled out\n");
            out.append("    status:\n");
            out.append("    # Keep those that are reasons, and take the # away.\n");
            out.append("    reasons:\n");
            asked.choices()
                    .forEach(c -> out.append("      # - ")
                            .append(c.rule())
                            .append("  # ")
                            .append(line(c.title()))
                            .append('\n'));
            out.append("    words:\n");
        }
        return out.toString();
    }

    private static String line(String text) {
        return text.replaceAll("\\R", " ");
    }
}
