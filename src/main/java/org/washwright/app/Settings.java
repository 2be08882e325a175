package org.washwright.app;

import io.quarkus.runtime.configuration.ConfigUtils;
import java.nio.file.Path;
import org.eclipse.microprofile.config.Config;

/** The few settings that must be known before Quarkus starts, read from every source Quarkus itself would read. */
record Settings(boolean externalDatabase, Path dataFolder, int databasePort) {
    static final String JDBC_URL = "quarkus.datasource.jdbc.url";
    static final String USERNAME = "quarkus.datasource.username";
    static final String PASSWORD = "quarkus.datasource.password";

    static Settings read() {
        return from(ConfigUtils.configBuilder().build());
    }

    static Settings from(Config config) {
        boolean external = config.getOptionalValue(JDBC_URL, String.class)
                .filter(url -> !url.isBlank())
                .isPresent();
        Path folder = Path.of(
                config.getOptionalValue("washwright.data-dir", String.class).orElse("data"));
        int port = config.getOptionalValue("washwright.database-port", Integer.class)
                .orElse(0);
        return new Settings(external, folder.toAbsolutePath().normalize(), port);
    }
}
