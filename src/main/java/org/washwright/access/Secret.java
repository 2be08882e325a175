package org.washwright.access;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/**
 * A random key of 256 bits, told once and kept as a hash.
 *
 * <p>A plain SHA-256 is enough here, unlike for passwords: nobody can guess a value of 256 random bits.
 */
record Secret(String text) {
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final int LONGEST = 200;

    static Secret random(String prefix) {
        byte[] bytes = new byte[32];
        RANDOM.nextBytes(bytes);
        return new Secret(prefix + Base64.getUrlEncoder().withoutPadding().encodeToString(bytes));
    }

    /** Whether a text could be a secret at all; anything longer is not worth hashing. */
    boolean plausible() {
        return !text.isEmpty() && text.length() <= LONGEST;
    }

    String hash() {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java runtime has SHA-256", e);
        }
    }

    /** Never the secret itself: records are printed in logs. */
    @Override
    public String toString() {
        return "Secret[…]";
    }
}
