package org.washwright.drools;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.InvalidKeyException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.Optional;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Compiled units kept in a folder that only its user can read or write. They are code, so each carries a seal (HMAC-SHA256)
 * made with a key that lies beside them; whatever is not sealed by this key for exactly this content is not there.
 *
 * <p>Nothing here ever fails an assessment: without a usable folder every unit is compiled anew, which costs time only.
 */
final class UnitStore {

    /** Most units kept; the longest unused go first. */
    static final int MOST = 2_000;

    private static final String ALGORITHM = "HmacSHA256";
    private static final int KEY_BYTES = 32;
    private static final int SEAL_BYTES = 32;
    private static final int MAX_FILE = 64_000_000;
    private static final String KEY_FILE = "key";
    private static final String END = ".unit";

    private final PrivateFolder folder;
    private final byte[] key;
    private final int most;

    private UnitStore(PrivateFolder folder, byte[] key, int most) {
        this.folder = folder;
        this.key = key;
        this.most = most;
    }

    /** The store in a folder, which is made when it is missing; empty when others could write there or nobody can. */
    static Optional<UnitStore> in(Path path) {
        return in(path, MOST);
    }

    static Optional<UnitStore> in(Path path, int most) {
        try {
            Optional<PrivateFolder> folder = PrivateFolder.at(path);
            if (folder.isEmpty()) {
                return Optional.empty();
            }
            if (!folder.get().has(KEY_FILE)) {
                byte[] fresh = new byte[KEY_BYTES];
                new SecureRandom().nextBytes(fresh);
                folder.get().writeOnce(KEY_FILE, fresh);
            }
            return folder.get()
                    .read(KEY_FILE, KEY_BYTES)
                    .filter(key -> key.length == KEY_BYTES)
                    .map(key -> new UnitStore(folder.get(), key, most));
        } catch (IOException | UnsupportedOperationException e) {
            // A folder that can't be made, written or kept private is no store; the caller compiles.
            return Optional.empty();
        }
    }

    /** The unit kept under this name, when it is there and sealed. */
    Optional<CompiledUnit> load(String name) {
        try {
            Optional<byte[]> all = folder.read(name + END, MAX_FILE).filter(b -> b.length > SEAL_BYTES);
            if (all.isEmpty()) {
                return Optional.empty();
            }
            byte[] body = Arrays.copyOfRange(all.get(), SEAL_BYTES, all.get().length);
            boolean sealed = MessageDigest.isEqual(seal(name, body), Arrays.copyOf(all.get(), SEAL_BYTES));
            return sealed ? Optional.of(CompiledUnit.of(body)) : Optional.empty();
        } catch (IOException e) {
            // What can't be read whole is made anew.
            return Optional.empty();
        }
    }

    /** Keeps a unit, if it can. */
    void save(String name, CompiledUnit unit) {
        byte[] body = unit.bytes();
        byte[] all = Arrays.copyOf(seal(name, body), SEAL_BYTES + body.length);
        System.arraycopy(body, 0, all, SEAL_BYTES, body.length);
        try {
            folder.write(name + END, all);
            folder.trim(most, KEY_FILE);
        } catch (IOException e) {
            // A full or vanished disk costs the next run a compilation, never this one its answer.
            return;
        }
    }

    private byte[] seal(String name, byte[] body) {
        try {
            Mac mac = Mac.getInstance(ALGORITHM);
            mac.init(new SecretKeySpec(key, ALGORITHM));
            // The name says what was compiled and by what, so a sealed file put under another name is not accepted.
            mac.update(name.getBytes(StandardCharsets.UTF_8));
            mac.update((byte) 0);
            return mac.doFinal(body);
        } catch (NoSuchAlgorithmException | InvalidKeyException e) {
            throw new IllegalStateException("every Java platform has " + ALGORITHM, e);
        }
    }
}
