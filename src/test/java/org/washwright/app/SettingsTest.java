package org.washwright.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.smallrye.config.EnvConfigSource;
import io.smallrye.config.PropertiesConfigSource;
import io.smallrye.config.SmallRyeConfigBuilder;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class SettingsTest {
    @Test
    void without_a_jdbc_address_the_service_brings_its_own_database_in_the_folder_data() {
        Settings settings = Settings.from(new SmallRyeConfigBuilder().build());
        assertFalse(settings.externalDatabase());
        assertEquals(Path.of("data").toAbsolutePath(), settings.dataFolder());
        assertEquals(0, settings.databasePort());
    }

    @Test
    void a_jdbc_address_in_the_environment_is_used_instead() {
        Map<String, String> environment = Map.of("QUARKUS_DATASOURCE_JDBC_URL", "jdbc:postgresql://db/washwright");
        assertTrue(Settings.from(new SmallRyeConfigBuilder()
                        .withSources(new EnvConfigSource(environment, 300))
                        .build())
                .externalDatabase());
    }

    @Test
    void a_jdbc_address_for_the_profile_in_use_counts_too_and_an_empty_one_does_not() {
        assertTrue(Settings.from(new SmallRyeConfigBuilder()
                        .withProfile("prod")
                        .withSources(source("%prod.quarkus.datasource.jdbc.url", "jdbc:postgresql://db/washwright"))
                        .build())
                .externalDatabase());
        assertFalse(Settings.from(new SmallRyeConfigBuilder()
                        .withSources(source("quarkus.datasource.jdbc.url", ""))
                        .build())
                .externalDatabase());
    }

    private static PropertiesConfigSource source(String name, String value) {
        return new PropertiesConfigSource(Map.of(name, value), "test", 200);
    }
}
