package org.washwright.explain.vary;

import java.util.Arrays;
import java.util.Set;
import org.washwright.task.Group;

/**
 * How much a change asks of a plant, the least first: common practice, no source. It goes by the group of the task alone, so
 * that no edition has to say it.
 */
public enum Effort {
    FIND_OUT("Find out", "Measure or ask; nothing is done otherwise."),
    LOT("Run the lot otherwise", "Change how the parts come to the plant.", Group.LOT),
    SOURCE(
            "Change it at its source",
            "Change what is done before cleaning or what it leaves.",
            Group.SOILS,
            Group.PRECEDING),
    HANDLING("Change what follows", "Change what is done with the clean parts.", Group.FOLLOWING),
    DEMAND("Agree on another demand", "Change what has to be reached.", Group.DEMAND),
    SITE("Change the site", "Supply, permit or set up something.", Group.SITE, Group.PERMITTED_SOLVENTS, Group.PLANTS),
    LAW("Clean elsewhere", "Clean where other law holds.", Group.JURISDICTIONS),
    PART(
            "Change the part",
            "Design the part otherwise or take something out of it.",
            Group.PART,
            Group.MATERIALS,
            Group.COMPONENTS,
            Group.FEATURES);

    private final String words;
    private final String meaning;
    private final Set<Group> groups;

    Effort(String words, String meaning, Group... groups) {
        this.words = words;
        this.meaning = meaning;
        this.groups = Set.of(groups);
    }

    /** What it is called. */
    public String words() {
        return words;
    }

    /** What it asks for, in a sentence. */
    public String meaning() {
        return meaning;
    }

    /** Effort of changing something of a group; of the attributes that an edition declares, what the part is for: the demand. */
    static Effort of(java.util.Optional<Group> group) {
        return group.flatMap(g -> Arrays.stream(values())
                        .filter(e -> e.groups.contains(g))
                        .findFirst())
                .orElse(DEMAND);
    }
}
