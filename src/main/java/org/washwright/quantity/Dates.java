package org.washwright.quantity;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;

/** Dates as numbers, so that they compare like any quantity: days since 1970-01-01, written as ISO 8601. */
final class Dates {

    private Dates() {}

    /** Days since 1970-01-01; empty when the text is no date, with the reason in {@code diagnostics}. */
    static Optional<Double> read(String text, Place place, Diagnostics diagnostics) {
        if (text.matches("[0-9]{4}-[0-9]{2}-[0-9]{2}")) {
            try {
                return Optional.of((double) LocalDate.parse(text).toEpochDay());
            } catch (DateTimeException e) {
                diagnostics.add(Message.OUT_OF_RANGE, place, text, "days of the calendar");
                return Optional.empty();
            }
        }
        diagnostics.add(Message.BAD_QUANTITY, place, text, Dimension.DATE.example());
        return Optional.empty();
    }

    /** The date in ISO 8601; a share of a day is cut off. */
    static String write(double days) {
        return LocalDate.ofEpochDay((long) Math.floor(days)).toString();
    }
}
