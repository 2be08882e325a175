package org.washwright.engine.derive;

import org.washwright.task.Group;

/** Soil that comes in an hour: amount per area times area an hour. */
final class SoilLoad implements Derivation {

    @Override
    public String attribute() {
        return "load";
    }

    @Override
    public String formula() {
        return "amount per area × area an hour";
    }

    @Override
    public String source() {
        return "definition";
    }

    @Override
    public Computed compute(Inputs inputs) {
        return Computed.of(
                Derivation.product(inputs.own("amount"), inputs.of(Group.PART, "areaPerHour")),
                inputs.ref("amount"),
                "part/areaPerHour");
    }
}
