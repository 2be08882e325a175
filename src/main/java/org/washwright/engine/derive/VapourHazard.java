package org.washwright.engine.derive;

/** How far saturated vapour passes the exposure limit. */
final class VapourHazard implements Derivation {

    @Override
    public String attribute() {
        return "vapourHazard";
    }

    @Override
    public String formula() {
        return "saturated vapour ÷ exposure limit";
    }

    @Override
    public String source() {
        return "ratio known as the vapour hazard ratio";
    }

    @Override
    public Computed compute(Inputs inputs) {
        return Computed.of(
                Derivation.quotient(inputs.own("saturation"), inputs.own("exposureShare")),
                inputs.ref("saturation"),
                inputs.ref("exposureShare"));
    }
}
