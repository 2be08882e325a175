package org.washwright.science;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A cleanliness level for particles, for residue, or both, as MIL-STD-1246C and IEST-STD-CC1246D write them: {@code 200}, {@code
 * B}, {@code 200B}, {@code 100A/10} (form as in NASA PRC-5001).
 *
 * <p>Particle levels run from 1 to 1000; anything else is refused.
 *
 * @param particleLevel level L of {@link ProductCleanlinessLevel}; empty when particles are not limited
 * @param residue empty when residue is not limited
 */
public record ProductCleanlinessCode(OptionalDouble particleLevel, Optional<ResidueLevel> residue) {

    private static final Pattern CODE = Pattern.compile("([0-9]{1,4})?([A-Z][A-Z0-9/]*)?");
    private static final int HIGHEST = 1000;

    /**
     * Reads a code; blanks and the word "level" before it are left out.
     *
     * @throws RefusedInput when it is none, with advice
     */
    public static ProductCleanlinessCode parse(String text) {
        String code = text.strip().replaceFirst("^(?i:level)\\s+", "").replaceAll("\\s", "");
        Matcher matcher = CODE.matcher(code);
        if (code.isEmpty() || !matcher.matches()) {
            throw new RefusedInput(
                    "\"" + text
                            + "\" has neither a particle level nor a residue level from A/100 to J; write 200, B, 200B or 100A/10");
        }
        return new ProductCleanlinessCode(
                matcher.group(1) == null ? OptionalDouble.empty() : OptionalDouble.of(level(matcher.group(1))),
                Optional.ofNullable(matcher.group(2)).map(ResidueLevel::parse));
    }

    private static double level(String digits) {
        return Need.between(Integer.parseInt(digits), 1, HIGHEST, "particle level", "");
    }

    /** As written: {@code 100A/10}. */
    public String text() {
        return (particleLevel.isPresent() ? Need.text(particleLevel.getAsDouble()) : "")
                + residue.map(ResidueLevel::text).orElse("");
    }
}
