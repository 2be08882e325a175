package org.washwright.access;

import jakarta.ws.rs.core.NewCookie;

/** The cookie of a signed-in browser. */
final class SessionCookie {
    static final String NAME = "washwright-session";

    private SessionCookie() {}

    static NewCookie holding(Secret secret, boolean secure) {
        return cookie(secret.text(), (int) Sessions.LONGEST.toSeconds(), secure);
    }

    static NewCookie ended(boolean secure) {
        return cookie("", 0, secure);
    }

    private static NewCookie cookie(String value, int maxAge, boolean secure) {
        return new NewCookie.Builder(NAME)
                .value(value)
                .path("/")
                .maxAge(maxAge)
                .httpOnly(true)
                .secure(secure)
                .sameSite(NewCookie.SameSite.LAX)
                .build();
    }
}
