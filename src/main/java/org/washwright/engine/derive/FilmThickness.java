package org.washwright.engine.derive;

/** Mean thickness of a film of soil: amount per area over density of the soil. */
final class FilmThickness implements Derivation {

    @Override
    public String attribute() {
        return "filmThickness";
    }

    @Override
    public String formula() {
        return "amount per area ÷ density of the soil";
    }

    @Override
    public String source() {
        return "definition";
    }

    @Override
    public Computed compute(Inputs inputs) {
        return Computed.of(
                Derivation.quotient(inputs.own("amount"), inputs.property("kind", "density")),
                inputs.ref("amount"),
                inputs.ref("kind.density"));
    }
}
