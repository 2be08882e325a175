package org.washwright.generate;

import java.util.Locale;
import java.util.TimeZone;
import java.util.function.Supplier;

/** Runs something under another default locale and time zone. */
public final class Defaults {

    private Defaults() {}

    /** What comes of it there; the defaults of the run are put back. */
    public static <T> T under(String locale, String zone, Supplier<T> what) {
        Locale oldLocale = Locale.getDefault();
        TimeZone oldZone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(locale));
            TimeZone.setDefault(TimeZone.getTimeZone(zone));
            return what.get();
        } finally {
            Locale.setDefault(oldLocale);
            TimeZone.setDefault(oldZone);
        }
    }
}
