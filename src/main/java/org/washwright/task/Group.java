package org.washwright.task;

import static org.washwright.task.Attribute.computed;
import static org.washwright.task.Attribute.given;
import static org.washwright.task.FieldType.flag;
import static org.washwright.task.FieldType.number;
import static org.washwright.task.FieldType.term;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.washwright.quantity.Dimension;

/**
 * The groups of attributes that make up a cleaning task: what can be said of it by page, REST, file and rule. The words a
 * term attribute can take stand in the edition's catalogue.
 */
public enum Group {
    PART(
            "part",
            "Part",
            "part",
            1,
            given("rate", "parts an hour", "How many parts an hour?", number(Dimension.RATE)),
            given("mass", "mass of one part", "What does one part weigh?", number(Dimension.MASS)),
            given("wettedArea", "wetted area", "What surface gets wet, inside and out?", number(Dimension.AREA)),
            given("shape", "shape", "What shape is the part?", term("shape")),
            computed(
                    "areaPerHour",
                    "area an hour",
                    "How many parts an hour, and what surface has one?",
                    number(Dimension.AREA_RATE))),
    MATERIALS(
            "materials",
            "Material",
            "material",
            12,
            given("substrate", "substrate", "What is it made of?", term("substrate")),
            given("hardness", "hardness", "How hard is it (HRC)?", number(Dimension.ROCKWELL_C)),
            given("vickersHardness", "Vickers hardness", "How hard is it (HV)?", number(Dimension.VICKERS)),
            given("tensileStrength", "tensile strength", "What is its tensile strength?", number(Dimension.PRESSURE)),
            given("plating", "plating or layer", "Which plating or conversion layer does it carry?", term("plating")),
            given("porous", "open pores", "Does it have open pores?", flag()),
            computed("strength", "strength", "How hard or how strong is the material?", number(Dimension.PRESSURE)),
            computed(
                    "rockwell",
                    "hardness (computed)",
                    "How hard or how strong is the material?",
                    number(Dimension.ROCKWELL_C))),
    FEATURES(
            "features",
            "Feature",
            "feature",
            30,
            given("kind", "kind of feature", "What kind of hole, gap or thread is it?", term("feature")),
            given("diameter", "diameter or width", "How wide is it?", number(Dimension.LENGTH)),
            given("depth", "depth", "How deep is it?", number(Dimension.LENGTH)),
            computed("slenderness", "depth over width", "How wide and how deep is it?", number(Dimension.RATIO))),
    SOILS(
            "soils",
            "Soil",
            "soil",
            20,
            given("kind", "soil", "What has to come off?", term("soil")),
            given("amount", "amount", "How much is on the surface?", number(Dimension.AREAL_MASS)),
            given("state", "state", "In what state is it?", term("soil-state")),
            computed(
                    "load",
                    "soil an hour",
                    "How much soil comes in an hour (amount, area, parts an hour)?",
                    number(Dimension.MASS_RATE)),
            computed(
                    "loadPerShift",
                    "soil a shift",
                    "How much soil comes in a shift (amount, area, parts an hour)?",
                    number(Dimension.MASS))),
    LOT(
            "lot",
            "Lot",
            "lot",
            1,
            given("charging", "charging", "How do the parts come to the plant?", term("charging")),
            given("place", "place of the plant", "Where does the plant stand?", term("place"))),
    FOLLOWING(
            "following",
            "Following",
            "following operation",
            1,
            given("operation", "following operation", "What happens next?", term("operation"))),
    DEMAND(
            "demand",
            "Demand",
            "cleanliness demand",
            1,
            given("residue", "residual film", "How much film may remain?", number(Dimension.AREAL_MASS)),
            given("waterBreakFree", "water-break-free", "Must the surface be water-break-free?", flag()),
            given(
                    "particleCode",
                    "component cleanliness code",
                    "Which component cleanliness code is agreed?",
                    new FieldType.CodeType()),
            computed(
                    "largestParticle",
                    "largest particle",
                    "Which particle size is no longer allowed?",
                    number(Dimension.LENGTH))),
    SITE(
            "site",
            "Site",
            "site",
            1,
            given("jurisdiction", "jurisdiction", "Which law applies at the site?", term("jurisdiction")),
            given("waterDischarge", "waste water may be discharged", "May waste water be discharged?", flag())),
    PERMITTED_SOLVENTS(
            "permittedSolvents",
            "PermittedSolvent",
            "permitted solvent class",
            20,
            given(
                    "solventClass",
                    "solvent class",
                    "Which classes of solvent may the site use?",
                    term("solvent-class")));

    private final String key;
    private final String factType;
    private final String label;
    private final int cap;
    private final List<Attribute> attributes;

    Group(String key, String factType, String label, int cap, Attribute... attributes) {
        this.key = key;
        this.factType = factType;
        this.label = label;
        this.cap = cap;
        this.attributes = List.of(attributes);
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
