package org.washwright.science;

/** A number that no quantity can be, or at which a correlation has no value; the message gives value and advice. */
public final class RefusedInput extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    RefusedInput(String message) {
        super(message);
    }
}
