package org.washwright.impact.meaning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.washwright.document.Place;

/** What one part of an edition says, thing by thing, so that two can be held against each other. */
final class Facets {

    /** One thing said: as readers see it, and exactly. */
    private record Facet(String what, String shown, String exact, boolean answers) {}

    private final String name;
    private final Place place;
    private final Map<String, Facet> said = new LinkedHashMap<>();

    Facets(String name, Place place) {
        this.name = name;
        this.place = place;
    }

    String name() {
        return name;
    }

    Place place() {
        return place;
    }

    /** Words for readers. */
    Facets words(String what, String text) {
        return add(what, text, text, false);
    }

    /** Something that answers can turn on. */
    Facets matters(String what, String text) {
        return add(what, text, text, true);
    }

    /** Something whose exact value is not what readers see. */
    Facets add(String what, String shown, String exact, boolean answers) {
        if (!exact.isEmpty()) {
            said.put(what, new Facet(what, shown, exact, answers));
        }
        return this;
    }

    /** Something of an id that readers call otherwise. */
    Facets named(String id, String what, String shown, String exact) {
        said.put(id, new Facet(what, shown, exact, true));
        return this;
    }

    /** One of several things of the same name, told apart by what they say exactly. */
    Facets oneOf(String what, String shown, String exact) {
        said.put(what + " " + exact, new Facet(what, shown, exact, true));
        return this;
    }

    /** Everything that is said here and not there, or otherwise. */
    static List<Detail> between(Facets before, Facets after) {
        Set<String> all = new LinkedHashSet<>(before.said.keySet());
        all.addAll(after.said.keySet());
        List<Detail> out = new ArrayList<>();
        for (String what : all) {
            Facet a = before.said.get(what);
            Facet b = after.said.get(what);
            if (a == null) {
                out.add(new Detail(b.what(), "", b.shown(), b.answers()));
            } else if (b == null) {
                out.add(new Detail(a.what(), a.shown(), "", a.answers()));
            } else if (!a.exact().equals(b.exact())) {
                boolean alike = a.shown().equals(b.shown());
                out.add(new Detail(
                        what,
                        alike ? a.exact() : a.shown(),
                        alike ? b.exact() : b.shown(),
                        a.answers() || b.answers()));
            }
        }
        return out;
    }

    /** What differs between all parts of one kind, by id. */
    static List<Difference> compare(Subject subject, Map<String, Facets> before, Map<String, Facets> after) {
        Set<String> ids = new java.util.TreeSet<>(before.keySet());
        ids.addAll(after.keySet());
        List<Difference> out = new ArrayList<>();
        for (String id : ids) {
            Facets a = before.get(id);
            Facets b = after.get(id);
            if (a == null) {
                out.add(alone(subject, id, b, What.ADDED));
            } else if (b == null) {
                out.add(alone(subject, id, a, What.REMOVED));
            } else {
                List<Detail> details = between(a, b);
                boolean moved = !a.place.file().equals(b.place.file());
                if (!details.isEmpty() || moved) {
                    out.add(both(subject, id, a, b, details));
                }
            }
        }
        return out;
    }

    private static Difference both(Subject subject, String id, Facets a, Facets b, List<Detail> details) {
        boolean answers = subject.shapesAnswers() && details.stream().anyMatch(Detail::answers);
        boolean content = answers || details.stream().anyMatch(Detail::answers);
        What what = details.isEmpty() ? What.MOVED : content ? What.CHANGED : What.REWORDED;
        return new Difference(subject, id, b.name, what, answers, !details.isEmpty(), a.place, b.place, details);
    }

    private static Difference alone(Subject subject, String id, Facets it, What what) {
        boolean added = what == What.ADDED;
        Facets nothing = new Facets("", Difference.NOWHERE);
        return new Difference(
                subject,
                id,
                it.name,
                what,
                subject.shapesAnswers(),
                true,
                added ? Difference.NOWHERE : it.place,
                added ? it.place : Difference.NOWHERE,
                added ? between(nothing, it) : between(it, nothing));
    }
}
