package org.washwright.science;

import java.util.ArrayList;
import java.util.List;

/**
 * Surface energy in a dispersive and a polar part (Owens and Wendt, Journal of Applied Polymer Science 13 (1969) 1741, equation
 * 10): {@code gL (1 + cos(theta)) = 2 (sqrt(gSd gLd) + sqrt(gSp gLp))}.
 *
 * <p>g in J/m², theta in rad; S solid, L liquid, d dispersive, p polar. As a line {@code y = sqrt(gSp) x + sqrt(gSd)} with {@code
 * y = gL (1 + cos(theta)) / (2 sqrt(gLd))} and {@code x = sqrt(gLp / gLd)} (Kaelble 1970; Rabel 1971). Holds for smooth, clean solids of
 * low energy under liquids that neither dissolve nor swell them. The sets of parts printed for one liquid differ by enough to shift
 * the answer by 5 mJ/m²: name the set. A negative slope or intercept has no meaning: that part is 0, the other fitted alone, with
 * a warning; metals and oxides, above about 60 mJ/m², are given with a warning.
 */
public final class OwensWendt {

    private static final double HIGHEST = 0.06;

    /** A contact angle in rad measured with a liquid. */
    public record Measured(SurfaceEnergy liquid, double contactAngle) {
        /**
         * Checks both.
         *
         * @throws RefusedInput for a liquid without dispersive part or an angle outside 0 to pi
         */
        public Measured {
            Need.positive(liquid.dispersive(), "dispersive part of the liquid's surface tension", "N/m");
            Need.contactAngle(contactAngle);
        }

        double x() {
            return StrictMath.sqrt(liquid.polar() / liquid.dispersive());
        }

        double y() {
            return liquid.total() * (1 + StrictMath.cos(contactAngle)) / (2 * StrictMath.sqrt(liquid.dispersive()));
        }
    }

    /** Surface energy of a solid with what stands against it. */
    public record Solid(SurfaceEnergy energy, List<String> warnings) {
        /** Keeps a copy. */
        public Solid {
            warnings = List.copyOf(warnings);
        }

        /** Sum of both parts in J/m², with the warnings. */
        public Estimate total() {
            return new Estimate(energy.total(), warnings);
        }
    }

    /** Water, 72.8 mJ/m²: Ström, Fredriksson and Stenius, J. Colloid Interface Sci. 119 (1987) 352, from memory. */
    public static final SurfaceEnergy WATER = new SurfaceEnergy(0.0218, 0.0510);

    /** Diiodomethane, 50.8 mJ/m²: the same set. */
    public static final SurfaceEnergy DIIODOMETHANE = new SurfaceEnergy(0.0508, 0);

    private OwensWendt() {}

    /**
     * Surface energy of a solid from the angles of two liquids.
     *
     * @throws RefusedInput when both liquids have the same ratio of polar to dispersive part
     */
    public static Solid solid(Measured first, Measured second) {
        return solid(List.of(first, second));
    }

    /**
     * Surface energy of a solid from the angles of two or more liquids, by least squares.
     *
     * @throws RefusedInput for fewer than two liquids, or when all have the same ratio of polar to dispersive part
     */
    public static Solid solid(List<Measured> measured) {
        double n = measured.size();
        double meanX = measured.stream().mapToDouble(Measured::x).sum() / n;
        double meanY = measured.stream().mapToDouble(Measured::y).sum() / n;
        double xx = measured.stream().mapToDouble(m -> square(m.x() - meanX)).sum();
        if (measured.size() < 2 || !(xx > 1e-6)) {
            throw new RefusedInput(measured.size()
                    + " liquids with the same ratio of polar to dispersive part say nothing of two parts; measure with two"
                    + " that differ, such as water and diiodomethane");
        }
        double xy = measured.stream()
                .mapToDouble(m -> (m.x() - meanX) * (m.y() - meanY))
                .sum();
        double slope = xy / xx;
        double intercept = meanY - slope * meanX;
        List<String> warnings = new ArrayList<>();
        if (slope < 0) {
            warnings.add(
                    "The angles ask for a negative polar part, which has no meaning: it is taken as 0; measure again,"
                            + " or the surface is rough or coated unevenly");
            slope = 0;
            intercept = meanY;
        } else if (intercept < 0) {
            warnings.add(
                    "The angles ask for a negative root of the dispersive part, which has no meaning: it is taken as 0;"
                            + " measure again");
            intercept = 0;
            slope = measured.stream().mapToDouble(m -> m.x() * m.y()).sum()
                    / measured.stream().mapToDouble(m -> square(m.x())).sum();
        }
        SurfaceEnergy energy = new SurfaceEnergy(square(intercept), square(slope));
        if (energy.total() > HIGHEST) {
            warnings.add("The method is for surfaces of low energy up to about 60 mJ/m², not for "
                    + Need.text(energy.total() * 1e3) + " mJ/m²: on clean metal liquids spread and angles say little");
        }
        return new Solid(energy, warnings);
    }

    /**
     * Contact angle in rad of a liquid on a solid; 0 with a warning where it spreads.
     *
     * @throws RefusedInput for a liquid without surface tension
     */
    public static Estimate contactAngle(SurfaceEnergy solid, SurfaceEnergy liquid) {
        return YoungDupre.contactAngle(
                Need.positive(liquid.total(), "surface tension", "N/m"), adhesion(solid, liquid));
    }

    /** Energy in J/m² of the face between two phases: {@code g1 + g2 - 2 (sqrt(g1d g2d) + sqrt(g1p g2p))}; never negative. */
    public static double interfacialEnergy(SurfaceEnergy first, SurfaceEnergy second) {
        return StrictMath.max(0, first.total() + second.total() - adhesion(first, second));
    }

    /** Spreading coefficient in J/m², {@code gS - gL - gSL} (Harkins 1922): above 0 the liquid spreads on the solid. */
    public static double spreadingCoefficient(SurfaceEnergy solid, SurfaceEnergy liquid) {
        return adhesion(solid, liquid) - 2 * liquid.total();
    }

    /** Work of adhesion in J/m². */
    private static double adhesion(SurfaceEnergy first, SurfaceEnergy second) {
        return 2
                * (StrictMath.sqrt(first.dispersive() * second.dispersive())
                        + StrictMath.sqrt(first.polar() * second.polar()));
    }

    private static double square(double number) {
        return number * number;
    }
}
