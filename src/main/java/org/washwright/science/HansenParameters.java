package org.washwright.science;

/**
 * Solubility parameters of Hansen (1967), Pa^0.5.
 *
 * @param dispersion dispersion part
 * @param polar polar part
 * @param hydrogen hydrogen-bonding part
 */
public record HansenParameters(double dispersion, double polar, double hydrogen) {

    /** Total parameter of Hildebrand: √(D² + P² + H²). */
    public double total() {
        return StrictMath.sqrt(dispersion * dispersion + polar * polar + hydrogen * hydrogen);
    }

    /** A blend with another liquid, of which it holds a share by volume: the mean of each part. */
    public HansenParameters blend(HansenParameters other, double share) {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("a share lies between 0 and 1, not at " + share);
        }
        return new HansenParameters(
                dispersion + share * (other.dispersion - dispersion),
                polar + share * (other.polar - polar),
                hydrogen + share * (other.hydrogen - hydrogen));
    }
}
