package org.washwright.science;

import java.util.Optional;

/**
 * Size classes of particles by their greatest Feret diameter: ISO 16232:2018, as printed in a laboratory report to it; VDA
 * 19.1:2015. B to K as there, L to N from the same report; the editions of 2007 and 2009 end with K, 1000 µm and larger.
 *
 * <p>A class holds its lower bound and not its upper. Particles below 5 µm belong to none.
 */
public enum SizeClass {
    B(5),
    C(15),
    D(25),
    E(50),
    F(100),
    G(150),
    H(200),
    I(400),
    J(600),
    K(1000),
    L(1500),
    M(2000),
    N(3000);

    private final int micrometres;

    SizeClass(int micrometres) {
        this.micrometres = micrometres;
    }

    /** The class of this letter; empty when none has it. */
    public static Optional<SizeClass> of(char letter) {
        return letter < 'B' || letter > 'N' ? Optional.empty() : Optional.of(values()[letter - 'B']);
    }

    /**
     * The class of a particle of a size in m; empty below 5 µm.
     *
     * @throws RefusedInput for a size that is not above zero
     */
    public static Optional<SizeClass> ofSize(double size) {
        Need.positive(size, "size of a particle", "m");
        for (int i = values().length - 1; i >= 0; i--) {
            if (size >= values()[i].lowerBound()) {
                return Optional.of(values()[i]);
            }
        }
        return Optional.empty();
    }

    /** Letter in the code. */
    public char letter() {
        return name().charAt(0);
    }

    /** Smallest size of the class in m. */
    public double lowerBound() {
        return micrometres / 1e6;
    }

    /** Size in m from which the next class begins; infinite for the last. */
    public double upperBound() {
        return this == N ? Double.POSITIVE_INFINITY : values()[ordinal() + 1].lowerBound();
    }
}
