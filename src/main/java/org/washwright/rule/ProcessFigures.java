package org.washwright.rule;

import static org.washwright.task.Attribute.computed;
import static org.washwright.task.FieldType.number;

import java.util.List;
import org.washwright.quantity.Dimension;
import org.washwright.task.Attribute;

/** What is computed of a process itself: of its medium, its technique, the hall it would stand in and the fineness asked for. */
public final class ProcessFigures {

    private static final String HALL = "How large is the hall and how often is its air changed?";
    private static final String NOTHING = "What does the catalogue say of its medium?";

    /** The figures, in the order in which they are computed. */
    public static final List<Attribute> ALL = List.of(
            computed("vapourPressure", "vapour pressure when hottest", NOTHING, number(Dimension.LOW_PRESSURE)),
            computed("saturation", "saturated vapour in air at 20 °C", NOTHING, number(Dimension.TINY_SHARE)),
            computed(
                    "saturatedAir",
                    "vapour in saturated air at 20 °C",
                    NOTHING,
                    number(Dimension.MASS_CONCENTRATION_IN_AIR)),
            computed("exposureShare", "exposure limit as a share of air", NOTHING, number(Dimension.TINY_SHARE)),
            computed("vapourHazard", "saturated vapour over exposure limit", NOTHING, number(Dimension.RATIO)),
            computed(
                    "flashMargin",
                    "flash point above the hottest bath",
                    NOTHING,
                    number(Dimension.TEMPERATURE_DIFFERENCE)),
            computed(
                    "tolerableLoss",
                    "solvent that the hall's air carries off below the exposure limit",
                    HALL,
                    number(Dimension.MASS_RATE)),
            computed(
                    "tolerableLossFire",
                    "solvent that the hall's air carries off below a quarter of the explosion limit",
                    HALL,
                    number(Dimension.MASS_RATE)),
            computed("hallGas", "carbon dioxide in the hall's air", HALL, number(Dimension.TINY_SHARE)),
            computed(
                    "boundaryLayer",
                    "thinnest sound boundary layer",
                    "What does the catalogue say of its frequency?",
                    number(Dimension.FINE_LENGTH)),
            computed(
                    "layerOverParticle",
                    "sound boundary layer over smallest particle counted",
                    "From which particle size on is counted?",
                    number(Dimension.RATIO)));

    private ProcessFigures() {}
}
