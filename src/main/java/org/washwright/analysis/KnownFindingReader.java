package org.washwright.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.washwright.document.Diagnostics;
import org.washwright.document.MapReader;
import org.washwright.document.Message;
import org.washwright.document.Node;
import org.washwright.document.Similar;
import org.washwright.rule.Edition;
import org.washwright.rule.Rule;

/** Reads {@value #FILE}: findings that the authors of an edition live with, each with a reason. */
public final class KnownFindingReader {

    /** Name of the file in an edition. */
    public static final String FILE = "known-findings.yaml";

    private KnownFindingReader() {}

    /** Reads the file. */
    public static List<KnownFinding> read(Node node, Edition edition, Diagnostics diagnostics) {
        List<KnownFinding> out = new ArrayList<>();
        MapReader file = MapReader.of(node, FILE, diagnostics);
        for (Node item : file.list("known")) {
            MapReader map = MapReader.of(item, "a known finding", diagnostics);
            String word = map.required("finding");
            List<String> words =
                    Arrays.stream(Finding.Kind.values()).map(Finding.Kind::word).toList();
            Optional<Finding.Kind> kind = Arrays.stream(Finding.Kind.values())
                    .filter(k -> k.word().equals(word))
                    .findFirst();
            if (kind.isEmpty() && !word.isEmpty()) {
                diagnostics.add(
                        Message.UNKNOWN_REFERENCE, item.place(), word, "kind of finding", Similar.advice(word, words));
            }
            List<String> rules = map.texts("rules");
            rules(map, rules, edition, diagnostics);
            String why = map.required("why");
            map.noMore();
            kind.ifPresent(k -> out.add(new KnownFinding(k, rules, why, item.place())));
        }
        file.noMore();
        return out;
    }

    private static void rules(MapReader map, List<String> rules, Edition edition, Diagnostics diagnostics) {
        List<String> ids = edition.rules().stream().map(Rule::id).toList();
        if (rules.isEmpty()) {
            diagnostics.add(Message.MISSING_FIELD, map.place(), "", "a known finding", "rules");
        }
        rules.stream()
                .filter(id -> !ids.contains(id))
                .forEach(id -> diagnostics.add(
                        Message.UNKNOWN_REFERENCE,
                        map.get("rules").orElseThrow().place(),
                        id,
                        "rule of this edition",
                        Similar.advice(id, ids)));
    }
}
