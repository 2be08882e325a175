package org.washwright.exchange;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.washwright.document.Hashes;

/**
 * Names the bytes of files: by name and hash, one by one and several together.
 *
 * @param keys key of each file, by its name
 * @param sizes bytes of each file, by its name
 */
record FileKeys(Map<String, String> keys, Map<String, Integer> sizes) {

    static FileKeys of(EditionFiles files) {
        Map<String, String> keys = new TreeMap<>();
        Map<String, Integer> sizes = new TreeMap<>();
        files.files().forEach((name, bytes) -> {
            keys.put(name, name + " " + Hashes.sha256(bytes));
            sizes.put(name, bytes.length);
        });
        return new FileKeys(keys, sizes);
    }

    String of(String name) {
        return keys.getOrDefault(name, name + " is missing");
    }

    long size(String name) {
        return sizes.getOrDefault(name, 0);
    }

    /** One key for all files whose names are wanted. */
    String together(Predicate<String> wanted) {
        StringBuilder all = new StringBuilder();
        keys.forEach((name, key) -> {
            if (wanted.test(name)) {
                all.append(key).append('\n');
            }
        });
        return Hashes.sha256(all.toString());
    }

    /** Bytes of all files whose names are wanted. */
    long sizeTogether(Predicate<String> wanted) {
        return sizes.entrySet().stream()
                .filter(e -> wanted.test(e.getKey()))
                .mapToLong(Map.Entry::getValue)
                .sum();
    }
}
