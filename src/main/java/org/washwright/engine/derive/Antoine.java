package org.washwright.engine.derive;

import org.washwright.science.AntoineVapourPressure;
import org.washwright.task.Value;

/** The Antoine constants that the catalogue holds of a process's medium. */
final class Antoine {

    /** How many numbers they are; what a formula reads next stands at this place. */
    static final int NUMBERS = 5;

    /** Room temperature, at which vapour spreads into the hall, K. */
    static final double ROOM = 293.15;

    /** Pressure of the air, Pa. */
    static final double AIR = 101_325;

    private Antoine() {}

    /** Reads constants and range of validity. */
    static Numbers read(Derivation.Inputs inputs) {
        Numbers numbers = new Numbers();
        for (String constant : new String[] {"antoineA", "antoineB", "antoineC", "antoineFrom", "antoineTo"}) {
            Value value = inputs.property("medium", constant);
            numbers.with(value, inputs.ref("medium." + constant));
        }
        return numbers;
    }

    /** The correlation of the numbers read. */
    static AntoineVapourPressure of(double... x) {
        return AntoineVapourPressure.log10(x[0], x[1], x[2], x[3], x[4]);
    }
}
