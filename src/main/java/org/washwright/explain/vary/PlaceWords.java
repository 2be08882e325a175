package org.washwright.explain.vary;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.washwright.analysis.TaskEdit;
import org.washwright.engine.Words;
import org.washwright.quantity.ExactText;
import org.washwright.rule.Edition;
import org.washwright.task.Attribute;
import org.washwright.task.CleaningTask;
import org.washwright.task.FieldType;
import org.washwright.task.Given;
import org.washwright.task.Group;
import org.washwright.task.Value;

/** Puts places and changes of one task into words. */
public final class PlaceWords {

    private final CleaningTask task;
    private final Words words;

    /** Words for a task by the names of an edition. */
    public PlaceWords(CleaningTask task, Edition edition) {
        this.task = task;
        this.words = new Words(edition.catalogue());
    }

    /** What a reader calls a place. */
    public String name(Place place) {
        if (place instanceof Place.Said said) {
            return name(said.edit());
        }
        if (place instanceof Place.Gone gone) {
            return gone.list().label() + ": " + entry(gone.list(), gone.index());
        }
        String label = place.group().orElseThrow().label();
        return place instanceof Place.More ? "one more " + label : "no further " + label;
    }

    private String name(TaskEdit edit) {
        String label = edit.attribute().label();
        boolean listed = edit.group().filter(Group::isList).isPresent();
        if (!listed) {
            return label;
        }
        Group group = edit.group().orElseThrow();
        boolean itself = group.attributes().get(0).equals(edit.attribute());
        return itself
                ? task.entries(group).entries().size() == 1 ? label : label + " " + (edit.index() + 1)
                : label + " of " + entry(group, edit.index());
    }

    private String entry(Group group, int index) {
        Attribute what = group.attributes().get(0);
        Value value = task.entries(group).entries().get(index).value(what.name());
        return value instanceof Value.OneOf
                ? words.value(value, what.type(), Words.GIVEN)
                : group.label() + " " + (index + 1);
    }

    /** What is said at a place now. */
    public String now(Place place) {
        if (place instanceof Place.Said said) {
            return said(said.edit());
        }
        if (place instanceof Place.Gone gone) {
            return entry(gone.list(), gone.index());
        }
        return place instanceof Place.More ? "not there" : "there may be more";
    }

    private String said(TaskEdit edit) {
        return edit.in(task)
                .filter(g -> !(g.value() instanceof Value.Unknown))
                .map(g -> given(g, edit.attribute().type()))
                .orElse("not known");
    }

    /** What a change makes of it. */
    public String then(Move move) {
        if (move.given().isPresent()) {
            return given(move.given().get(), type(move.place()));
        }
        return move.place() instanceof Place.Gone ? "taken away" : "there is none besides those listed";
    }

    private String given(Given given, FieldType type) {
        return given.code().isEmpty() ? words.value(given.value(), type, Words.GIVEN) : given.code();
    }

    private static FieldType type(Place place) {
        return place instanceof Place.Said said
                ? said.edit().attribute().type()
                : place.group().orElseThrow().attributes().get(0).type();
    }

    /** The value as one would type it; empty where an entry goes or a list is closed. */
    public String typed(Move move) {
        return move.given().map(g -> typed(g, type(move.place()))).orElse("");
    }

    private static String typed(Given given, FieldType type) {
        if (!given.code().isEmpty()) {
            return given.code();
        }
        if (given.value() instanceof Value.Number n && type instanceof FieldType.NumberType t) {
            return ExactText.of(n.span(), t.dimension());
        }
        return given.value() instanceof Value.OneOf o
                ? String.join(" or ", o.terms())
                : given.value().knowledge();
    }

    /** A change as steps {@code POINTER=VALUE}, in the form in which one tries a task otherwise. */
    public List<String> steps(Move move) {
        Place place = move.place();
        if (place instanceof Place.Gone) {
            return List.of(place.pointer() + "=remove");
        }
        if (place instanceof Place.Closed) {
            return List.of(place.pointer() + "/open=no");
        }
        List<String> out = new ArrayList<>(List.of(place.pointer() + "=" + typed(move)));
        if (place instanceof Place.More more) {
            more.list().attributes().stream()
                    .skip(1)
                    .filter(a -> !a.computed())
                    .forEach(a -> out.add("/" + more.list().key() + "/" + more.index() + "/" + a.name() + "="
                            + Value.NOT_APPLICABLE.knowledge()));
        }
        return out;
    }

    /** A change in one sentence. */
    public String sentence(Move move) {
        Place place = move.place();
        String text;
        if (place instanceof Place.Said said) {
            String now = said(said.edit());
            text = name(said.edit()) + ": " + then(move)
                    + (now.equals("not known") ? ", which is not known yet" : " instead of " + now);
        } else if (place instanceof Place.Gone gone) {
            text = "no " + entry(gone.list(), gone.index()) + " any more";
        } else {
            text = place instanceof Place.More ? name(place) + ": " + then(move) : name(place) + " than those listed";
        }
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1) + ".";
    }
}
