package org.washwright.engine.derive;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.washwright.science.Estimate;
import org.washwright.science.ProductCleanlinessLevel;
import org.washwright.task.Value;

/** Particles of 5 µm and more that an agreed product cleanliness level allows on 0.1 m². */
final class FineParticlesAllowed implements Derivation {

    /** Size from which on is counted, m. */
    private static final double SIZE = 5e-6;

    /** Area that is counted on, m². */
    private static final double AREA = 0.1;

    @Override
    public String attribute() {
        return "fineParticlesAllowed";
    }

    @Override
    public String formula() {
        return "log10 N = 0.926 × ((log10 level)² − (log10 5)²)";
    }

    @Override
    public String source() {
        return "IEST-STD-CC1246D, through Borson (2005)";
    }

    @Override
    public Computed compute(Inputs inputs) {
        String ref = inputs.ref("productLevel");
        String code = inputs.code("productLevel");
        OptionalDouble level = Codes.particleLevel(code);
        if (level.isEmpty()) {
            boolean open = code.isEmpty() && !(inputs.given("productLevel") instanceof Value.NotApplicable);
            return Computed.of(open ? Value.UNKNOWN : Value.NOT_APPLICABLE, ref);
        }
        Estimate count = ProductCleanlinessLevel.count(
                level.getAsDouble(), SIZE, ProductCleanlinessLevel.AreaBasis.TENTH_SQUARE_METRE);
        return new Computed(
                Value.number(count.value() * AREA), List.of(ref), List.of(), Optional.empty(), count.warnings());
    }
}
