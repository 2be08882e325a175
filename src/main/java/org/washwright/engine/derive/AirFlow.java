package org.washwright.engine.derive;

/** Fresh air that a hall gets: its volume times its air changes. */
final class AirFlow implements Derivation {

    @Override
    public String attribute() {
        return "airFlow";
    }

    @Override
    public String formula() {
        return "volume of the hall × air changes";
    }

    @Override
    public String source() {
        return "definition";
    }

    @Override
    public Computed compute(Inputs inputs) {
        return Computed.of(
                Derivation.product(inputs.own("hallVolume"), inputs.own("airChange")),
                inputs.ref("hallVolume"),
                inputs.ref("airChange"));
    }
}
