package org.washwright.science;

/** Work of adhesion of a liquid on a solid, J/m², by Young (1805) and Dupré (1869): W = σ (1 + cos θ). */
public final class YoungDupre {

    private YoungDupre() {}

    /** Work of adhesion: surface tension N/m, contact angle rad from 0 to π. */
    public static double workOfAdhesion(double tension, double angle) {
        if (!(angle >= 0 && angle <= Math.PI)) {
            throw new IllegalArgumentException(
                    "a contact angle lies between 0 and 180°, not at " + StrictMath.toDegrees(angle) + "°");
        }
        return Require.notNegative(tension, "surface tension") * (1 + StrictMath.cos(angle));
    }
}
