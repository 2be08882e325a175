package org.washwright.engine.derive;

/** Soil that comes in a shift: soil an hour times hours in a shift (an assumption of the edition). */
final class SoilLoadPerShift implements Derivation {

    private static final String HOURS = "hours-per-shift";

    @Override
    public String attribute() {
        return "loadPerShift";
    }

    @Override
    public String formula() {
        return "soil an hour × hours in a shift (assumption)";
    }

    @Override
    public String source() {
        return "definition";
    }

    @Override
    public Computed compute(Inputs inputs) {
        return Computed.of(Derivation.product(inputs.own("load"), inputs.assumption(HOURS)), inputs.ref("load"));
    }
}
