package org.washwright.impact.meaning;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.cases.Case;
import org.washwright.cases.CaseReader;
import org.washwright.document.Hashes;
import org.washwright.rule.Edition;

/**
 * One state of a rulebook with its cases.
 *
 * @param edition its content
 * @param cases its reference cases
 * @param caseFiles SHA-256 of each file of cases, by name; the meaning hash holds them as bytes
 */
public record State(Edition edition, List<Case> cases, Map<String, String> caseFiles) {

    /** Keeps copies. */
    public State {
        cases = List.copyOf(cases);
        caseFiles = Collections.unmodifiableMap(new TreeMap<>(caseFiles));
    }

    /** A state with all the files it was read from, by name. */
    public static State of(Edition edition, List<Case> cases, Map<String, byte[]> files) {
        Map<String, String> hashes = new TreeMap<>();
        files.forEach((name, bytes) -> {
            if (name.startsWith(CaseReader.FOLDER)) {
                hashes.put(name, Hashes.sha256(bytes));
            }
        });
        return new State(edition, cases, hashes);
    }
}
