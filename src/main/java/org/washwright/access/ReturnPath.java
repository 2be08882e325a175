package org.washwright.access;

import java.net.URI;
import java.net.URISyntaxException;

/** Where to go after signing in: only ever a path of this service, so that a link cannot lead a person elsewhere. */
final class ReturnPath {
    private static final String START = "/";
    private static final int LONGEST = 2000;

    private ReturnPath() {}

    static String safe(String wanted) {
        return isLocal(wanted) ? wanted : START;
    }

    private static boolean isLocal(String wanted) {
        if (wanted == null || wanted.length() > LONGEST || !wanted.startsWith("/") || wanted.startsWith("//")) {
            return false;
        }
        if (wanted.chars().anyMatch(c -> c <= ' ' || c == '\\' || c >= 0x7f)) {
            return false;
        }
        try {
            URI uri = new URI(wanted);
            return uri.getScheme() == null
                    && uri.getRawAuthority() == null
                    && !uri.getPath().startsWith("//")
                    && !uri.getPath().startsWith("/sign-");
        } catch (URISyntaxException e) {
            return false;
        }
    }
}
