package org.washwright.app;

import io.quarkus.test.common.QuarkusTestResourceLifecycleManager;
import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Map;

/**
 * The database of all {@code @QuarkusTest} classes: the same embedded server as in production, its cluster kept below
 * {@code target} so that only the first run pays for making it, its content emptied at each start. Being declared as
 * global, it needs no mention in a test.
 */
@WithTestResource(value = TestDatabase.class, scope = TestResourceScope.GLOBAL)
public final class TestDatabase implements QuarkusTestResourceLifecycleManager {
    private EmbeddedDatabase database;

    @Override
    public Map<String, String> start() {
        Path folder = Path.of("target", "test-database").toAbsolutePath();
        database = EmbeddedDatabase.start(DataFolder.lock(folder), 0);
        try {
            database.empty();
        } catch (SQLException e) {
            throw new IllegalStateException("the test database could not be emptied", e);
        }
        return database.connection();
    }

    @Override
    public void stop() {
        try {
            if (database != null) {
                database.close();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
