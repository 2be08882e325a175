package org.washwright.app;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.Map;

/**
 * A PostgreSQL server of this process's own, its cluster in the data folder.
 *
 * <p>It listens on loopback only and asks for a password. The library that unpacks and starts it is made for tests and
 * switches durability off; here every setting that a crash would feel is switched on again.
 */
final class EmbeddedDatabase implements AutoCloseable {
    private static final String SUPERUSER = "postgres";
    private static final String NAME = "washwright";

    private final DataFolder folder;
    private final EmbeddedPostgres server;

    private EmbeddedDatabase(DataFolder folder, EmbeddedPostgres server) {
        this.folder = folder;
        this.server = server;
    }

    /** Starts the server on a locked folder, after stopping one that a killed service left behind. */
    static EmbeddedDatabase start(DataFolder folder, int port) {
        new StaleServer(folder.cluster()).stop();
        String password = folder.databasePassword();
        EmbeddedPostgres.Builder builder = EmbeddedPostgres.builder()
                .setDataDirectory(folder.cluster())
                .setCleanDataDirectory(false)
                .setRegisterShutdownHook(false)
                .setOverrideWorkingDirectory(programs(folder).toFile())
                .setPGStartupWait(Duration.ofSeconds(60))
                .setConnectConfig("password", password)
                .setLocaleConfig("auth", "scram-sha-256")
                .setLocaleConfig("pwfile", folder.passwordFile().toString())
                .setLocaleConfig("locale", "C.UTF-8")
                .setServerConfig("fsync", "on")
                .setServerConfig("synchronous_commit", "on")
                .setServerConfig("full_page_writes", "on")
                .setServerConfig("listen_addresses", "127.0.0.1")
                .setServerConfig("unix_socket_directories", "")
                .setServerConfig("timezone", "UTC")
                .setServerConfig("max_connections", "50");
        if (port != 0) {
            builder.setPort(port);
        }
        try {
            EmbeddedPostgres server = builder.start();
            EmbeddedDatabase database = new EmbeddedDatabase(folder, server);
            database.createIfMissing(password);
            return database;
        } catch (IOException | SQLException | RuntimeException e) {
            throw new StartFailure(
                    "The embedded database in " + folder.cluster() + " did not start (" + rootMessage(e)
                            + "). Check free"
                            + " disk space and who owns the folder, or use a PostgreSQL server of your own by setting"
                            + " QUARKUS_DATASOURCE_JDBC_URL, _USERNAME and _PASSWORD.",
                    e);
        }
    }

    /** The settings by which Quarkus finds this database. */
    Map<String, String> connection() {
        return Map.of(
                Settings.JDBC_URL,
                "jdbc:postgresql://127.0.0.1:" + server.getPort() + "/" + NAME,
                Settings.USERNAME,
                NAME,
                Settings.PASSWORD,
                folder.databasePassword());
    }

    /** Drops all that was kept; for tests, which start each run with an empty database. */
    void empty() throws SQLException {
        try (Connection connection = server.getDatabase(SUPERUSER, SUPERUSER).getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute("DROP DATABASE IF EXISTS " + NAME + " WITH (FORCE)");
        }
        createIfMissing(folder.databasePassword());
    }

    @Override
    public void close() throws IOException {
        server.close();
        folder.close();
    }

    private void createIfMissing(String password) throws SQLException {
        try (Connection connection = server.getDatabase(SUPERUSER, SUPERUSER).getConnection();
                Statement statement = connection.createStatement()) {
            if (!exists(statement, "SELECT FROM pg_roles WHERE rolname = '" + NAME + "'")) {
                statement.execute("CREATE ROLE " + NAME + " LOGIN PASSWORD '" + password + "'");
            }
            if (!exists(statement, "SELECT FROM pg_database WHERE datname = '" + NAME + "'")) {
                statement.execute("CREATE DATABASE " + NAME + " OWNER " + NAME);
            }
        }
    }

    private static boolean exists(Statement statement, String query) throws SQLException {
        try (var rows = statement.executeQuery(query)) {
            return rows.next();
        }
    }

    /**
     * Where the server's programs are unpacked: the user's cache, shared by all data folders, or else the data folder.
     * The library opens its folder to everybody, so it gets one inside a folder that only this user may enter.
     */
    private static Path programs(DataFolder folder) {
        Path home = Path.of(System.getProperty("user.home", ""));
        Path cache = home.resolve(".cache").resolve("washwright");
        if (home.isAbsolute() && Files.isWritable(home)) {
            try {
                DataFolder.createPrivate(cache);
                return cache.resolve("server");
            } catch (IOException e) {
                return folder.root().resolve("server");
            }
        }
        return folder.root().resolve("server");
    }

    private static String rootMessage(Throwable failure) {
        Throwable cause = failure;
        while (cause.getCause() != null) {
            cause = cause.getCause();
        }
        return cause.toString();
    }
}
