package org.washwright.access;

import io.quarkus.elytron.security.common.BcryptUtil;
import java.nio.charset.StandardCharsets;

/** Rules and checks for passwords. */
final class Passwords {
    private static final int SHORTEST = 10;
    /** What bcrypt reads of a password; more would be ignored silently. */
    private static final int LONGEST_BYTES = 72;
    /** A hash nobody knows the password of, so that an unknown name takes as long to refuse as a wrong password. */
    private static final String NOBODY = BcryptUtil.bcryptHash(Secret.random("").text());

    private Passwords() {}

    static boolean matches(String password, String hash) {
        return bytes(password) <= LONGEST_BYTES && BcryptUtil.matches(password, hash);
    }

    static void spendTheSameTime(String password) {
        BcryptUtil.matches(password.length() > LONGEST_BYTES ? "" : password, NOBODY);
    }

    static String requireUsable(String password) {
        if (password.length() < SHORTEST || bytes(password) > LONGEST_BYTES) {
            throw new IllegalArgumentException("The password has " + password.length() + " characters; use at least "
                    + SHORTEST + ", and at most " + LONGEST_BYTES + " bytes.");
        }
        return password;
    }

    private static int bytes(String password) {
        return password.getBytes(StandardCharsets.UTF_8).length;
    }
}
