package org.washwright.task;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The groups of attributes that make up a cleaning task: what can be said of it by page, REST, file and rule. The words a
 * term attribute can take stand in the edition's catalogue.
 */
public enum Group {
    PART("part", "Part", "part", "Part", 1, WorkpieceAttributes.PART),
    MATERIALS("materials", "Material", "material", "Materials", 12, WorkpieceAttributes.MATERIALS),
    COMPONENTS(
            "components",
            "Component",
            "component left in place",
            "Components left in place",
            12,
            WorkpieceAttributes.COMPONENTS),
    FEATURES("features", "Feature", "feature", "Features: holes, gaps, threads", 30, WorkpieceAttributes.FEATURES),
    SOILS("soils", "Soil", "soil", "Soils", 20, WorkAttributes.SOILS),
    LOT("lot", "Lot", "lot", "Lot", 1, WorkAttributes.LOT),
    PRECEDING("preceding", "Preceding", "preceding operation", "Preceding operation", 1, WorkAttributes.PRECEDING),
    FOLLOWING("following", "Following", "following operation", "Following operation", 1, WorkAttributes.FOLLOWING),
    DEMAND("demand", "Demand", "cleanliness demand", "Cleanliness demand", 1, WorkAttributes.DEMAND),
    JURISDICTIONS("jurisdictions", "Jurisdiction", "jurisdiction", "Law", 6, SiteAttributes.JURISDICTIONS),
    SITE("site", "Site", "site", "Site", 1, SiteAttributes.SITE),
    PERMITTED_SOLVENTS(
            "permittedSolvents",
            "PermittedSolvent",
            "permitted solvent class",
            "Permitted solvents",
            20,
            SiteAttributes.PERMITTED_SOLVENTS),
    PLANTS("plants", "Plant", "plant in place", "Plants in place", 12, SiteAttributes.PLANTS),
    INTENDED(
            "intended",
            "Intended",
            "intended process",
            "Intended process, if you have one",
            1,
            SiteAttributes.INTENDED);

    /** Key that says of an entry that what is not said does not apply: {@code rest: not applicable}. */
    public static final String REST = "rest";

    private final String key;
    private final String factType;
    private final String label;
    private final String heading;
    private final int cap;
    private final List<Attribute> attributes;

    Group(String key, String factType, String label, String heading, int cap, List<Attribute> attributes) {
        this.key = key;
        this.factType = factType;
        this.label = label;
        this.heading = heading;
        this.cap = cap;
        this.attributes = attributes;
    }

    /** Key in files, for instance {@code materials}. */
    public String key() {
        return key;
    }

    /** Name of the fact type in rules, for instance {@code Material}. */
    public String factType() {
        return factType;
    }

    /** What a reader calls one entry. */
    public String label() {
        return label;
    }

    /** What a section about it is called. */
    public String heading() {
        return heading;
    }

    /**
     * What silence means: true when a group left out of a task does not apply at all. Whoever names no intended process has
     * none to be judged; of everything else nothing is known.
     */
    public boolean appliesOnlyWhenGiven() {
        return this == INTENDED;
    }

    /** Most entries a task may hold. */
    public int cap() {
        return cap;
    }

    /** True when a task holds a list of these. */
    public boolean isList() {
        return cap > 1;
    }

    /** What can be said of one entry, computed attributes last. */
    public List<Attribute> attributes() {
        return attributes;
    }

    /** The attribute with this name. */
    public Optional<Attribute> attribute(String name) {
        return attributes.stream().filter(a -> a.name().equals(name)).findFirst();
    }

    /** The group with this key in files. */
    public static Optional<Group> byKey(String key) {
        return Arrays.stream(values()).filter(g -> g.key.equals(key)).findFirst();
    }

    /** The group with this fact type. */
    public static Optional<Group> byFactType(String type) {
        return Arrays.stream(values()).filter(g -> g.factType.equals(type)).findFirst();
    }
}
