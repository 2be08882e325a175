package org.washwright.engine.derive;

import java.util.List;
import org.washwright.task.Group;

/** All formulas by group, in the order in which they are computed. */
public final class Derivations {

    private Derivations() {}

    /** The formulas of a group. */
    public static List<Derivation> of(Group group) {
        return switch (group) {
            case PART -> List.of(new AreaPerHour(), new MassPerHour());
            case MATERIALS -> List.of(new MaterialStrength(), new MaterialRockwell());
            case FEATURES -> List.of(new Slenderness());
            case SOILS -> List.of(new FilmThickness(), new SoilLoad(), new SoilLoadPerShift());
            case DEMAND -> List.of(new LargestParticle());
            case SITE -> List.of(new AirFlow(), new AsOf());
            default -> List.of();
        };
    }
}
