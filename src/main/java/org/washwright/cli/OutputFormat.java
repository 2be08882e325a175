package org.washwright.cli;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine;

/** What a command writes its results as. */
enum OutputFormat {
    TEXT,
    JSON,
    SARIF,
    JUNIT;

    /** As given on the command line. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * The format asked for; text when none is.
     *
     * @param given the value of {@code --format}; null when it was not given
     * @param json whether {@code --json} was given, which is short for {@code --format json}
     * @throws CommandLine.ParameterException when the command does not write it, or both say different things
     */
    static OutputFormat of(String given, boolean json, Set<OutputFormat> possible, CommandLine line) {
        if (given == null) {
            return json ? JSON : TEXT;
        }
        OutputFormat found = Arrays.stream(values())
                .filter(f -> f.word().equals(given) && possible.contains(f))
                .findFirst()
                .orElseThrow(() -> new CommandLine.ParameterException(
                        line,
                        "\"" + given + "\" is nothing that this command writes. Use "
                                + possible.stream().map(OutputFormat::word).collect(Collectors.joining(", ")) + "."));
        if (json && found != JSON) {
            throw new CommandLine.ParameterException(
                    line, "--json and --format " + given + " say different things. Leave one out.");
        }
        return found;
    }

    /** Every format. */
    static Set<OutputFormat> all() {
        return EnumSet.allOf(OutputFormat.class);
    }
}
