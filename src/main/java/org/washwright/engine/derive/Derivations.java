package org.washwright.engine.derive;

import java.util.List;
import org.washwright.task.Group;

/** All formulas by group, in the order in which they are computed. */
public final class Derivations {

    private static final List<Derivation> PART = List.of(new AreaPerHour(), new MassPerHour());
    private static final List<Derivation> MATERIALS = List.of(new MaterialStrength(), new MaterialRockwell());
    private static final List<Derivation> FEATURES =
            List.of(new Slenderness(), new FeatureDiffusion(), new WaterHold(), new WaterRise());
    private static final List<Derivation> SOILS = List.of(new FilmThickness(), new SoilLoad(), new SoilLoadPerShift());
    private static final List<Derivation> DEMAND = List.of(
            new LargestParticle(),
            new FinestParticle(),
            new ParticlesMet(),
            new FineParticlesAllowed(),
            new StrictestResidue(),
            new WaterAdhesion(),
            new DemandedSurfaceEnergy());
    private static final List<Derivation> SITE = List.of(new AirFlow());
    private static final List<Derivation> PROCESS = List.of(
            new HottestVapourPressure(),
            new VapourSaturation(),
            new VapourInSaturatedAir(),
            new ExposureShare(),
            new VapourHazard(),
            new FlashMargin(),
            new TolerableLoss(),
            new TolerableLossFire(),
            new HallGas(),
            new SoundBoundaryLayer(),
            new LayerOverParticle());

    private Derivations() {}

    /** The formulas of a group. */
    public static List<Derivation> of(Group group) {
        return switch (group) {
            case PART -> PART;
            case MATERIALS -> MATERIALS;
            case FEATURES -> FEATURES;
            case SOILS -> SOILS;
            case DEMAND -> DEMAND;
            case SITE -> SITE;
            default -> List.of();
        };
    }

    /** The formulas about a process. */
    public static List<Derivation> ofProcess() {
        return PROCESS;
    }
}
