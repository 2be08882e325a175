package org.washwright.science;

import java.util.Collection;
import java.util.EnumSet;
import java.util.Set;
import org.washwright.quantity.Dimension;

/**
 * How near a solvent is to a soil or polymer (Hansen 1967; Hansen Solubility Parameters, A User's Handbook, 2nd edition, 2007, equations 1.9
 * and 1.10): {@code Ra^2 = 4 (dD1 - dD2)^2 + (dP1 - dP2)^2 + (dH1 - dH2)^2}, {@code RED = Ra / R0}.
 *
 * <p>Ra and R0, the radius of the sphere of what dissolves the material, in Pa^0.5. RED below 1 dissolves or swells, about 1 is the
 * border, above 1 does not. One widely copied web table says it the other way round; it is wrong. Affinity only: nothing
 * of speed, of particles, of saponifying; crystalline polymers resist at room temperature despite RED below 1.
 *
 * <p>Border zones: RED 0.9 to 1.1 for soils, since radii are fitted to trials [common practice, no source]; up to 2 for polymers
 * that are not crystalline, for stress cracking is seen there [common practice, no source; acetone, RED 1.01, crazes
 * polystyrene badly]. Above RED 5 the number only says "far". A dispersion parameter outside 10 to 30
 * MPa^0.5, where all liquids and solids are, is given with a warning.
 */
public final class HansenDistance {

    /** RED from which a solvent no longer surely dissolves. */
    public static final double BORDER_FROM = 0.9;

    /** RED above which a soil is not dissolved. */
    public static final double SOIL_BORDER_TO = 1.1;

    /** RED above which an amorphous polymer, strained or not, is left alone. */
    public static final double POLYMER_BORDER_TO = 2;

    private static final double FAR = 5;
    private static final double LOWEST_DISPERSION = 10e3;
    private static final double HIGHEST_DISPERSION = 30e3;

    /** What a RED says. */
    public enum Verdict {
        /** Dissolves or swells. */
        DISSOLVES,
        /** Try it; on a polymer, expect stress cracking. */
        BORDER,
        /** Is left alone by the solvent. */
        RESISTS
    }

    private HansenDistance() {}

    /** Distance Ra in Pa^0.5. */
    public static double between(HansenParameters first, HansenParameters second) {
        double d = first.dispersion() - second.dispersion();
        double p = first.polar() - second.polar();
        double h = first.hydrogen() - second.hydrogen();
        return StrictMath.sqrt(4 * d * d + p * p + h * h);
    }

    /**
     * Relative energy difference RED.
     *
     * @param radius R0 of the material in Pa^0.5
     * @throws RefusedInput for a radius that is not above zero
     */
    public static Estimate relative(HansenParameters solvent, HansenParameters material, double radius) {
        Need.positive(radius, "radius of the solubility sphere", "Pa^0.5");
        double red = between(solvent, material) / radius;
        return plausible(plausible(Estimate.of(red), solvent), material)
                .warnIf(
                        red > FAR,
                        () -> "A RED of " + Need.text(red)
                                + " only says that solvent and material have nothing in common");
    }

    private static Estimate plausible(Estimate estimate, HansenParameters of) {
        return Need.within(
                estimate,
                of.dispersion(),
                LOWEST_DISPERSION,
                HIGHEST_DISPERSION,
                Dimension.SOLUBILITY_PARAMETER,
                "Dispersion parameters run");
    }

    /**
     * Whether a soil of this RED is dissolved.
     *
     * @throws RefusedInput for a negative RED
     */
    public static Verdict onSoil(double red) {
        return verdict(red, SOIL_BORDER_TO);
    }

    /**
     * Whether a polymer that is not crystalline is attacked.
     *
     * @throws RefusedInput for a negative RED
     */
    public static Verdict onPolymer(double red) {
        return verdict(red, POLYMER_BORDER_TO);
    }

    /**
     * What several verdicts, one for each published set of parameters, say together: theirs where they agree, else the border.
     *
     * @throws RefusedInput when there is none
     */
    public static Verdict together(Collection<Verdict> verdicts) {
        if (verdicts.isEmpty()) {
            throw new RefusedInput("no verdict was given; compute one for each set of parameters");
        }
        Set<Verdict> different = EnumSet.copyOf(verdicts);
        return different.size() == 1 ? different.iterator().next() : Verdict.BORDER;
    }

    private static Verdict verdict(double red, double borderTo) {
        Need.notNegative(red, "RED", "");
        if (red < BORDER_FROM) {
            return Verdict.DISSOLVES;
        }
        return red <= borderTo ? Verdict.BORDER : Verdict.RESISTS;
    }
}
