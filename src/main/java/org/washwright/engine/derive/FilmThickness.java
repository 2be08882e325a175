package org.washwright.engine.derive;

import org.washwright.science.ResidueLevel;

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
        return new Numbers()
                .with(inputs.own("amount"), inputs.ref("amount"))
                .with(inputs.property("kind", "density"), inputs.ref("kind.density"))
                .compute(x -> ResidueLevel.meanFilmThickness(x[0], x[1]));
    }
}
