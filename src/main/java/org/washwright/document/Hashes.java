package org.washwright.document;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Canonical JSON (RFC 8785) and SHA-256. */
public final class Hashes {

    private static final ObjectMapper MAPPER = new ObjectMapper().registerModule(new Jdk8Module());

    private Hashes() {}

    /** The canonical JSON of plain data: records, maps, lists, texts, numbers. The same data gives the same bytes. */
    public static byte[] canonical(Object data) {
        try {
            return CanonicalJson.bytes(MAPPER.valueToTree(data));
        } catch (IOException e) {
            throw new IllegalArgumentException("data that has no canonical form", e);
        }
    }

    /**
     * Data out of JSON, as {@link #canonical} writes it.
     *
     * @throws IOException when the bytes hold no such data
     */
    public static <T> T read(byte[] json, Class<T> type) throws IOException {
        return MAPPER.readValue(json, type);
    }

    /** SHA-256, hexadecimal. */
    public static String sha256(byte[] bytes) {
        return HexFormat.of().formatHex(digest().digest(bytes));
    }

    /** SHA-256 of the UTF-8 bytes of a text, hexadecimal. */
    public static String sha256(String text) {
        return sha256(text.getBytes(StandardCharsets.UTF_8));
    }

    /** A fresh SHA-256 digest. */
    public static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
