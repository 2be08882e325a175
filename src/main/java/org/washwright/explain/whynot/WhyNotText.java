package org.washwright.explain.whynot;

import java.util.List;

/** Writes outlooks as plain text. */
public final class WhyNotText {

    private WhyNotText() {}

    /** One rule: what became of it, and the conditions of the facts that come nearest. */
    public static String of(Outlook o) {
        StringBuilder out = new StringBuilder();
        out.append(o.title())
                .append(" [")
                .append(o.rule())
                .append("]: ")
                .append(o.state().word())
                .append('\n');
        out.append("  ").append(o.says()).append('\n');
        if (!o.note().isEmpty()) {
            out.append("  ").append(o.note()).append('\n');
        }
        for (Outlook.Near near : o.near()) {
            if (!near.facts().isEmpty()) {
                out.append("  with ").append(String.join(", ", near.facts())).append(":\n");
            }
            near.conditions().forEach(c -> out.append("    ").append(line(c)).append('\n'));
        }
        return out.toString();
    }

    private static String line(Outlook.Condition c) {
        return switch (c.state()) {
            case FIRED -> "holds: " + c.asks() + " (" + c.found() + ")";
            case UNDECIDED -> "open: it asks that " + c.asks() + "; here: " + c.found();
            case FAILED -> "fails: it asks that " + c.asks() + "; here: " + c.found();
        };
    }

    /** One process: why it does not stand, and which rules would speak for it. */
    public static String of(ProcessOutlook p) {
        StringBuilder out = new StringBuilder();
        reasons(p, out);
        if (!p.against().isEmpty()) {
            out.append("Rules that speak against it:\n");
            p.against()
                    .forEach(o -> out.append("  ")
                            .append(o.title())
                            .append(" [")
                            .append(o.rule())
                            .append("]\n"));
        }
        if (!p.silent().isEmpty()) {
            out.append("Rules that would speak for it and did not fire:\n");
            for (Outlook o : p.silent()) {
                out.append("  ").append(o.title()).append(" [").append(o.rule()).append("]\n");
                o.failing().forEach(c -> out.append("    ").append(line(c)).append('\n'));
                o.open().forEach(c -> out.append("    ").append(line(c)).append('\n'));
            }
        }
        return out.toString();
    }

    /** Several processes, each with its reasons alone. */
    public static String of(List<ProcessOutlook> all) {
        StringBuilder out = new StringBuilder();
        all.forEach(p -> reasons(p, out));
        return out.isEmpty() ? "Every process is recommended.\n" : out.toString();
    }

    private static void reasons(ProcessOutlook p, StringBuilder out) {
        out.append(p.name()).append(" is ").append(p.status()).append(".\n");
        p.reasons()
                .forEach(r -> out.append("  ")
                        .append(r.text())
                        .append(" [")
                        .append(String.join(", ", r.rules()))
                        .append("]\n"));
    }
}
