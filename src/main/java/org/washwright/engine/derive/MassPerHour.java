package org.washwright.engine.derive;

/** Mass of parts to be cleaned in an hour: parts an hour times mass of one part. */
final class MassPerHour implements Derivation {

    @Override
    public String attribute() {
        return "massPerHour";
    }

    @Override
    public String formula() {
        return "parts an hour × mass of one part";
    }

    @Override
    public String source() {
        return "definition";
    }

    @Override
    public Computed compute(Inputs inputs) {
        return Computed.of(
                Derivation.product(inputs.own("rate"), inputs.own("mass")), inputs.ref("rate"), inputs.ref("mass"));
    }
}
