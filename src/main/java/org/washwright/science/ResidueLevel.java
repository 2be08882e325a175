package org.washwright.science;

import java.util.Arrays;
import java.util.Optional;

/**
 * Levels of non-volatile residue of MIL-STD-1246C, table II (IEST-STD-CC1246D likewise) [from memory]: mg on 0.1 m² (1 ft²) of
 * surface, of which ten times is mg/m².
 *
 * <p>A residue above level J, 250 mg/m², has no level; text that is no level is refused. The edition IEST-STD-CC1246E (2013) names its
 * levels otherwise [from memory]: not read here.
 */
public enum ResidueLevel {
    /** 0.01 mg on 0.1 m². */
    A_100("A/100", 0.01),
    /** 0.02 mg on 0.1 m². */
    A_50("A/50", 0.02),
    /** 0.05 mg on 0.1 m². */
    A_20("A/20", 0.05),
    /** 0.1 mg on 0.1 m². */
    A_10("A/10", 0.1),
    /** 0.2 mg on 0.1 m². */
    A_5("A/5", 0.2),
    /** 0.5 mg on 0.1 m². */
    A_2("A/2", 0.5),
    /** 1 mg on 0.1 m². */
    A("A", 1),
    /** 2 mg on 0.1 m². */
    B("B", 2),
    /** 3 mg on 0.1 m². */
    C("C", 3),
    /** 4 mg on 0.1 m². */
    D("D", 4),
    /** 5 mg on 0.1 m². */
    E("E", 5),
    /** 7 mg on 0.1 m². */
    F("F", 7),
    /** 10 mg on 0.1 m². */
    G("G", 10),
    /** 15 mg on 0.1 m². */
    H("H", 15),
    /** 25 mg on 0.1 m². */
    J("J", 25);

    private static final double THICKEST = 1e-3;
    private final String text;
    private final double milligrams;

    ResidueLevel(String text, double milligrams) {
        this.text = text;
        this.milligrams = milligrams;
    }

    /** As written in a code: {@code A/10}. */
    public String text() {
        return text;
    }

    /** Largest residue of the level in kg/m². */
    public double massPerArea() {
        return milligrams / 1e5;
    }

    /**
     * Reads a level.
     *
     * @throws RefusedInput when it is none, naming those there are
     */
    public static ResidueLevel parse(String level) {
        String asked = level.strip();
        return Arrays.stream(values())
                .filter(l -> l.text.equals(asked))
                .findFirst()
                .orElseThrow(() -> new RefusedInput("\"" + asked
                        + "\" is no level of residue; give A, B, C, D, E, F, G, H or J, or a part of A: A/2, A/5, A/10, A/20,"
                        + " A/50, A/100"));
    }

    /**
     * The cleanest level that a residue in kg/m² still meets; empty above level J.
     *
     * @throws RefusedInput for a negative residue
     */
    public static Optional<ResidueLevel> of(double massPerArea) {
        Need.notNegative(massPerArea, "residue per area", "kg/m²");
        return Arrays.stream(values())
                .filter(l -> massPerArea <= l.massPerArea())
                .findFirst();
    }

    /**
     * Mean thickness in m of a film of a mass in kg/m² and a density in kg/m³: their ratio. Real films lie in drops and edges; above 1 mm it is
     * given with a warning, since that is no film.
     *
     * @throws RefusedInput for a negative mass or a density that is not above zero
     */
    public static Estimate meanFilmThickness(double massPerArea, double density) {
        Need.notNegative(massPerArea, "residue per area", "kg/m²");
        Need.positive(density, "density of the residue", "kg/m³");
        double thickness = massPerArea / density;
        return Estimate.of(thickness)
                .warnIf(
                        thickness > THICKEST,
                        () -> "A residue " + Need.text(thickness * 1e3)
                                + " mm thick is no film but a layer: scrape or drain first");
    }
}
