package org.washwright.science;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A product cleanliness code such as {@code 200B}, {@code 100A/10} or {@code B}: level of particles, level of non-volatile residue, or
 * both. Residue levels in mg on 0.1 m²: MIL-STD-1246C, table II (from memory).
 *
 * @param text the code without blanks
 * @param particleLevel level of particles; empty when the code names none
 * @param residue non-volatile residue allowed, kg/m²; empty when the code names none
 */
public record ProductCleanlinessCode(String text, OptionalDouble particleLevel, OptionalDouble residue) {

    private static final Pattern CODE = Pattern.compile("([0-9]{1,4})?(?:([A-HJ])|A/(2|5|10|20|50|100))?");
    private static final Map<Character, Integer> MILLIGRAMS =
            Map.of('A', 1, 'B', 2, 'C', 3, 'D', 4, 'E', 5, 'F', 7, 'G', 10, 'H', 15, 'J', 25);

    /** Milligrams on 0.1 m² in kg/m². */
    private static final double UNIT = 1e-5;

    /** Says what is wrong with a code. */
    public static final class BadCode extends Exception {
        private static final long serialVersionUID = 1L;

        BadCode(String reason) {
            super(reason);
        }
    }

    /**
     * Reads a code.
     *
     * @throws BadCode when it is none, with the reason
     */
    public static ProductCleanlinessCode parse(String code) throws BadCode {
        String text = code.replaceAll("\\s", "");
        Matcher m = CODE.matcher(text);
        if (text.isEmpty() || !m.matches()) {
            throw new BadCode("it needs a particle level, a residue level from A/100 to J, or both");
        }
        OptionalDouble level =
                m.group(1) == null ? OptionalDouble.empty() : OptionalDouble.of(Integer.parseInt(m.group(1)));
        if (level.isPresent() && level.getAsDouble() < 1) {
            throw new BadCode("particle levels start at 1");
        }
        OptionalDouble residue = OptionalDouble.empty();
        if (m.group(2) != null) {
            residue = OptionalDouble.of(MILLIGRAMS.get(m.group(2).charAt(0)) * UNIT);
        } else if (m.group(3) != null) {
            residue = OptionalDouble.of(UNIT / Integer.parseInt(m.group(3)));
        }
        return new ProductCleanlinessCode(text, level, residue);
    }

    /** Size, m, of which one particle and no larger one is allowed on 0.1 m². */
    public OptionalDouble largestParticle() {
        return particleLevel.isPresent()
                ? OptionalDouble.of(particleLevel.getAsDouble() * 1e-6)
                : OptionalDouble.empty();
    }
}
