package org.washwright.drools;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;

/**
 * Where a user's compiled rules are kept between runs: the folder named by the setting {@code washwright.cache-dir} or the
 * environment's {@code WASHWRIGHT_CACHE}, else {@code washwright} in the user's cache folder.
 */
final class UserCache {

    private static final String RULES = "rules";

    private UserCache() {}

    /** The folder; empty when nothing says where the user's files are. */
    static Optional<Path> folder(Properties settings, Map<String, String> environment) {
        return named(settings.getProperty("washwright.cache-dir"))
                .or(() -> named(environment.get("WASHWRIGHT_CACHE")))
                .or(() -> named(environment.get("XDG_CACHE_HOME"))
                        .filter(Path::isAbsolute)
                        .map(p -> p.resolve("washwright")))
                .or(() -> named(settings.getProperty("user.home"))
                        .filter(Path::isAbsolute)
                        .map(p -> p.resolve(".cache").resolve("washwright")))
                .map(p -> p.resolve(RULES));
    }

    private static Optional<Path> named(String text) {
        return Optional.ofNullable(text).filter(t -> !t.isBlank()).map(Path::of);
    }
}
