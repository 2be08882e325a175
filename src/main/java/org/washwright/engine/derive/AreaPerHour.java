package org.washwright.engine.derive;

/** Area to be cleaned in an hour: parts an hour times wetted area of one part. */
final class AreaPerHour implements Derivation {

    @Override
    public String attribute() {
        return "areaPerHour";
    }

    @Override
    public String formula() {
        return "parts an hour × wetted area";
    }

    @Override
    public String source() {
        return "definition";
    }

    @Override
    public Computed compute(Inputs inputs) {
        return Computed.of(
                Derivation.product(inputs.own("rate"), inputs.own("wettedArea")),
                inputs.ref("rate"),
                inputs.ref("wettedArea"));
    }
}
