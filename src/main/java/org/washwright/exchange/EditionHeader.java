package org.washwright.exchange;

import java.util.Map;
import java.util.TreeMap;
import org.washwright.document.Diagnostics;
import org.washwright.document.MapReader;
import org.washwright.document.Message;
import org.washwright.document.Node;
import org.washwright.rule.Edition;

/** What stands in edition.yaml. */
record EditionHeader(String name, String title, String language, String licence, Map<String, Edition.Source> sources) {

    static final EditionHeader EMPTY = new EditionHeader("", "", "", "", Map.of());

    static EditionHeader read(Node node, Diagnostics diagnostics) {
        MapReader map = MapReader.of(node, "edition.yaml", diagnostics);
        Map<String, Edition.Source> sources = new TreeMap<>();
        for (Node item : map.list("sources")) {
            MapReader s = MapReader.of(item, "a source", diagnostics);
            String seen = s.required("seen");
            if (!seen.equals("yes") && !seen.equals("from memory")) {
                diagnostics.add(
                        Message.UNKNOWN_REFERENCE, item.place(), seen, "way of seeing", "Write yes or from memory");
            }
            Edition.Source source = new Edition.Source(
                    s.required("id"),
                    s.required("title"),
                    (int) s.number("year", 0),
                    s.text("locator"),
                    seen.equals("yes"));
            s.noMore();
            if (sources.putIfAbsent(source.id(), source) != null) {
                diagnostics.add(Message.DUPLICATE_ID, item.place(), source.id(), "source", "the same file");
            }
        }
        EditionHeader header = new EditionHeader(
                map.id("name"), map.required("title"), map.required("language"), map.required("licence"), sources);
        map.noMore();
        return header;
    }
}
