package org.washwright.explain.why;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Why an answer says something: what that rests on, what that rests on in turn, down to what was given and to sources.
 *
 * @param of JSON pointer of what is explained
 * @param things what it rests on, itself first; each once, nearer ones before further ones
 */
public record Explanation(String of, List<Thing> things) {

    /** Keeps a copy. */
    public Explanation {
        things = List.copyOf(things);
    }

    /** What is explained. */
    public Thing root() {
        return things.get(0);
    }

    /** Things by JSON pointer. */
    public Map<String, Thing> byPlace() {
        return things.stream().collect(Collectors.toMap(Thing::at, t -> t));
    }

    /** Ids of all things, in order: equal for two explanations that give the same reasons. */
    @JsonProperty
    public List<String> identity() {
        return List.copyOf(things.stream().map(Thing::id).collect(Collectors.toCollection(TreeSet::new)));
    }

    /** Things that are the ground it stands on. */
    public List<Thing> ground() {
        return things.stream().filter(t -> t.kind().isGround()).toList();
    }
}
