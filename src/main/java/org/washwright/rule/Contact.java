package org.washwright.rule;

import static org.washwright.task.Attribute.computed;
import static org.washwright.task.FieldType.number;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.washwright.quantity.Dimension;
import org.washwright.task.Attribute;
import org.washwright.task.FieldType;
import org.washwright.task.Group;

/**
 * What a process meets in the task: a soil, a material, a component left in place, a feature. Each meeting is a fact of its
 * own that holds what physics says of the two together; a rule joins it to both, as in
 * {@code OnSoil(process == $p, soil == $s, relativeDistance < 1)}.
 */
public enum Contact {
    ON_SOIL(
            "OnSoil",
            "soil",
            "on",
            Group.SOILS,
            computed(
                    "relativeDistance",
                    "solubility distance over radius",
                    "Published data leave it open: does the medium dissolve the soil in a trial?",
                    number(Dimension.RATIO)),
            computed(
                    "meltingMargin",
                    "bath temperature above the melting point",
                    "Where does this soil melt?",
                    number(Dimension.TEMPERATURE_DIFFERENCE))),
    ON_MATERIAL(
            "OnMaterial",
            "material",
            "on",
            Group.MATERIALS,
            computed(
                    "relativeDistance",
                    "solubility distance over radius",
                    "Published data leave it open: does a soak test swell or crack it?",
                    number(Dimension.RATIO)),
            computed(
                    "temperatureMargin",
                    "bath temperature below what it stands",
                    "Which temperature does it stand?",
                    number(Dimension.TEMPERATURE_DIFFERENCE)),
            computed(
                    "contactAngle",
                    "contact angle of the medium",
                    "How does the medium wet it?",
                    number(Dimension.ANGLE))),
    ON_COMPONENT(
            "OnComponent",
            "component",
            "on",
            Group.COMPONENTS,
            computed(
                    "relativeDistance",
                    "solubility distance over radius",
                    "Published data leave it open: does a soak test swell or crack it?",
                    number(Dimension.RATIO)),
            computed(
                    "temperatureMargin",
                    "bath temperature below what it stands",
                    "Up to which temperature may the component go?",
                    number(Dimension.TEMPERATURE_DIFFERENCE))),
    IN_FEATURE(
            "InFeature",
            "feature",
            "in",
            Group.FEATURES,
            computed(
                    "capillaryPressure",
                    "pressure that draws the medium in",
                    "How wide is it?",
                    number(Dimension.LOW_PRESSURE)),
            computed(
                    "filledShare",
                    "share of it that fills with liquid",
                    "How deep is it, and where does its mouth point?",
                    number(Dimension.SHARE)),
            computed("fillTime", "time to draw itself full", "How wide and how deep is it?", number(Dimension.TIME)),
            computed(
                    "cyclesToExchange",
                    "pressure cycles until a hundredth is left",
                    "How many pressure cycles does a trial need?",
                    number(Dimension.RATIO)),
            computed("bubbleFit", "cavitation bubble over its width", "How wide is it?", number(Dimension.RATIO)));

    private final String factType;
    private final String field;
    private final String preposition;
    private final Group group;
    private final List<Attribute> attributes;

    Contact(String factType, String field, String preposition, Group group, Attribute... attributes) {
        this.factType = factType;
        this.field = field;
        this.preposition = preposition;
        this.group = group;
        this.attributes = List.of(attributes);
    }

    /** Name of the fact type in rules, for instance {@code OnSoil}. */
    public String factType() {
        return factType;
    }

    /** Name of the field that holds what the process meets, for instance {@code soil}. */
    public String field() {
        return field;
    }

    /** Word between process and what it meets. */
    public String preposition() {
        return preposition;
    }

    /** Group of what the process meets. */
    public Group group() {
        return group;
    }

    /** What is computed of the meeting. */
    public List<Attribute> attributes() {
        return attributes;
    }

    /** The contact with this fact type. */
    public static Optional<Contact> byFactType(String type) {
        return Arrays.stream(values()).filter(c -> c.factType.equals(type)).findFirst();
    }

    /** The fact type, with room for every process and every entry. */
    FactType type(int processes) {
        List<Field> fields = new ArrayList<>();
        fields.add(new Field("process", "process", new FieldType.FactType(), 0));
        fields.add(new Field(field, group.label(), new FieldType.FactType(), 0));
        attributes.forEach(a -> fields.add(new Field(a.name(), a.label(), a.type(), 0)));
        return FactType.of(factType, processes * group.cap(), fields);
    }
}
