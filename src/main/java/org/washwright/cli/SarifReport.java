package org.washwright.cli;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.assessment.Program;
import org.washwright.document.Place;

/**
 * What was found as a log in the Static Analysis Results Interchange Format (OASIS SARIF 2.1.0): one run, each kind of thing
 * as a rule (section 3.49), each thing found as a result (3.27) with its place (3.29, 3.30).
 */
final class SarifReport {

    private static final String VERSION = "2.1.0";
    private static final String SCHEMA =
            "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

    private SarifReport() {}

    /** The log as plain data. */
    static Map<String, Object> of(List<Noted> found) {
        Map<String, String> checks = new TreeMap<>();
        found.forEach(n -> checks.putIfAbsent(n.check(), n.checkText()));
        List<String> ids = List.copyOf(checks.keySet());
        List<Object> rules = new ArrayList<>();
        checks.forEach((id, text) -> rules.add(Map.of("id", id, "shortDescription", Map.of("text", text))));
        List<Object> results = new ArrayList<>();
        found.forEach(n -> results.add(result(n, ids.indexOf(n.check()))));
        Map<String, Object> driver = Map.of("name", "Washwright", "version", Program.version(), "rules", rules);
        return Map.of(
                "$schema",
                SCHEMA,
                "version",
                VERSION,
                "runs",
                List.of(Map.of("tool", Map.of("driver", driver), "results", results)));
    }

    private static Map<String, Object> result(Noted n, int rule) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("ruleId", n.check());
        out.put("ruleIndex", rule);
        out.put("level", n.level());
        out.put("message", Map.of("text", n.text()));
        if (!n.place().file().isEmpty()) {
            out.put("locations", List.of(Map.of("physicalLocation", physical(n.place()))));
        }
        return out;
    }

    private static Map<String, Object> physical(Place place) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("artifactLocation", Map.of("uri", uri(place.file())));
        if (place.line() > 0) {
            out.put(
                    "region",
                    place.column() > 0
                            ? Map.of("startLine", place.line(), "startColumn", place.column())
                            : Map.of("startLine", place.line()));
        }
        return out;
    }

    /** A file name as a URI reference (RFC 3986): with what has another meaning there escaped. */
    private static String uri(String file) {
        try {
            String path = file.replace('\\', '/');
            // A colon in the first step would be read as a scheme.
            boolean colon = path.indexOf(':') >= 0 && !path.startsWith("/");
            return new URI(null, null, colon ? "./" + path : path, null).toASCIIString();
        } catch (URISyntaxException e) {
            throw new IllegalArgumentException("a file name that is no path: " + file, e);
        }
    }
}
