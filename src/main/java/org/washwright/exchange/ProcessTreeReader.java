package org.washwright.exchange;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.washwright.catalogue.Catalogue;
import org.washwright.catalogue.ProcessTerm;
import org.washwright.catalogue.Setting;
import org.washwright.catalogue.Term;
import org.washwright.document.Diagnostics;
import org.washwright.document.MapReader;
import org.washwright.document.Message;
import org.washwright.document.Similar;

/** Reads the process tree out of the terms of kind process. */
final class ProcessTreeReader {

    /** Most processes that are no groups. */
    private static final int MAX_PROCESSES = 200;

    /** Deepest process tree; every process holds all groups above it. */
    private static final int MAX_DEPTH = 30;

    /** A term with the map it was read from. */
    record Raw(Term term, MapReader map) {}

    private final Diagnostics diagnostics;
    private final Function<MapReader, Setting> setting;

    ProcessTreeReader(Diagnostics diagnostics, Function<MapReader, Setting> setting) {
        this.diagnostics = diagnostics;
        this.setting = setting;
    }

    Map<String, ProcessTerm> read(List<Raw> terms) {
        Map<String, String> parents = new HashMap<>();
        Map<String, Raw> byId = new TreeMap<>();
        for (Raw r : terms) {
            parents.put(r.term().id(), r.map().text("parent"));
            byId.put(r.term().id(), r);
        }
        Map<String, ProcessTerm> out = new TreeMap<>();
        byId.forEach((id, r) -> {
            boolean group = r.map().flag("group");
            Setting s = setting.apply(r.map());
            if (!group) {
                for (String needed : List.of("medium", "technique")) {
                    if (!r.term().properties().containsKey(needed)) {
                        diagnostics.add(
                                Message.MISSING_FIELD, r.term().place(), "", "the process \"" + id + "\"", needed);
                    }
                }
            }
            out.put(id, new ProcessTerm(r.term(), parents.get(id), group, nodes(r, parents, byId), s));
        });
        long leaves = out.values().stream().filter(p -> !p.group()).count();
        if (leaves > MAX_PROCESSES) {
            diagnostics.add(
                    Message.TOO_LARGE,
                    terms.get(0).term().place(),
                    leaves + " processes",
                    MAX_PROCESSES + " processes");
        }
        return out;
    }

    private TreeSet<String> nodes(Raw r, Map<String, String> parents, Map<String, Raw> byId) {
        TreeSet<String> nodes = new TreeSet<>();
        String at = r.term().id();
        while (nodes.add(at)) {
            if (nodes.size() > MAX_DEPTH) {
                diagnostics.add(Message.TOO_DEEP, r.term().place(), r.term().id(), MAX_DEPTH);
                return nodes;
            }
            String parent = parents.getOrDefault(at, "");
            if (parent.isEmpty()) {
                if (!at.equals(Catalogue.ROOT)) {
                    diagnostics.add(Message.NO_ROOT, r.term().place(), r.term().id());
                }
                return nodes;
            }
            if (!byId.containsKey(parent)) {
                diagnostics.add(
                        Message.UNKNOWN_TERM,
                        r.term().place(),
                        parent,
                        "process",
                        Similar.advice(parent, byId.keySet()));
                return nodes;
            }
            at = parent;
        }
        diagnostics.add(Message.PARENT_CYCLE, r.term().place(), r.term().id());
        return nodes;
    }
}
