package org.washwright.engine.derive;

/** Date for which the law is read: that of the question. */
final class AsOf implements Derivation {

    @Override
    public String attribute() {
        return "asOf";
    }

    @Override
    public String formula() {
        return "date that the question is asked for";
    }

    @Override
    public String source() {
        return "definition";
    }

    @Override
    public Computed compute(Inputs inputs) {
        return Computed.of(inputs.asOf());
    }
}
