package org.washwright.rulebook;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.washwright.exchange.EditionFiles;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemError;

/**
 * What a rulebook begun from an edition of another one is called.
 *
 * @param name short name, unique in the workspace
 * @param title what a reader calls it
 * @param withRules whether it begins with the rules, tables and cases too, or with the words alone
 */
record OwnRulebook(String name, String title, boolean withRules) {
    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9-]{0,59}");
    private static final int TITLE_LENGTH = 200;
    private static final Pattern WITH_RULES = Pattern.compile("(rules|tables|cases)/.*|known-findings\\.yaml");

    OwnRulebook {
        List<ProblemError> errors = new ArrayList<>();
        if (!NAME.matcher(name).matches()) {
            errors.add(ProblemError.at(
                    "/name",
                    name,
                    "A rulebook can't have this short name.",
                    "Use small letters, digits and hyphens, beginning with a letter, at most 60.",
                    "bad-id"));
        }
        if (title.isBlank() || title.length() > TITLE_LENGTH || title.chars().anyMatch(Character::isISOControl)) {
            errors.add(ProblemError.at(
                    "/title",
                    title.substring(0, Math.min(40, title.length())),
                    "A rulebook needs a title of at most " + TITLE_LENGTH + " characters on one line.",
                    "Write what a reader calls it.",
                    "missing-field"));
        }
        if (!errors.isEmpty()) {
            throw new Invalid(errors);
        }
    }

    /** The files of the edition under the new name. */
    EditionFiles files(EditionFiles before) {
        Map<String, byte[]> files = new TreeMap<>(before.files());
        if (!withRules) {
            files.keySet().removeIf(path -> WITH_RULES.matcher(path).matches());
        }
        files.computeIfPresent(
                "edition.yaml",
                (path, bytes) ->
                        renamed(new String(bytes, StandardCharsets.UTF_8)).getBytes(StandardCharsets.UTF_8));
        return new EditionFiles(files);
    }

    private String renamed(String header) {
        String quoted = '"' + title.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
        return line(line(header, "name", name), "title", quoted);
    }

    private static String line(String header, String key, String value) {
        return Pattern.compile("(?m)^" + key + ":.*$")
                .matcher(header)
                .replaceFirst(Matcher.quoteReplacement(key + ": " + value));
    }
}
