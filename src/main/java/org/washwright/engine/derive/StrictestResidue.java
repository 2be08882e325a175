package org.washwright.engine.derive;

/** The strictest limit on film: given as mass on an area, or by a product cleanliness level. */
final class StrictestResidue implements Derivation {

    @Override
    public String attribute() {
        return "strictestResidue";
    }

    @Override
    public String formula() {
        return "strictest of: residual film given; non-volatile residue of the level agreed";
    }

    @Override
    public String source() {
        return "IEST-STD-CC1246D; MIL-STD-1246C, table II (from memory)";
    }

    @Override
    public Computed compute(Inputs inputs) {
        String product = inputs.code("productLevel");
        return new Limits()
                .with(inputs.own("residue"), inputs.ref("residue"))
                .with(product, Codes.productResidue(product), inputs.given("productLevel"), inputs.ref("productLevel"))
                .lowest();
    }
}
