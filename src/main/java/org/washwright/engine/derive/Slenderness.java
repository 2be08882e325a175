package org.washwright.engine.derive;

/** Slenderness of a hole, gap or thread: depth over diameter or width. */
final class Slenderness implements Derivation {

    @Override
    public String attribute() {
        return "slenderness";
    }

    @Override
    public String formula() {
        return "depth ÷ diameter";
    }

    @Override
    public String source() {
        return "definition";
    }

    @Override
    public Computed compute(Inputs inputs) {
        return Computed.of(
                Derivation.quotient(inputs.own("depth"), inputs.own("diameter")),
                inputs.ref("depth"),
                inputs.ref("diameter"));
    }
}
