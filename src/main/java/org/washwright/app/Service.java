package org.washwright.app;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.QuarkusApplication;
import io.quarkus.vertx.http.HttpServer;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.washwright.access.DemoAccounts;

/** The running service: tells its address once everything is up, then waits to be stopped. */
public final class Service implements QuarkusApplication {
    private final HttpServer server;
    private final DemoAccounts demo;
    private final String host;

    Service(HttpServer server, DemoAccounts demo, @ConfigProperty(name = "quarkus.http.host") String host) {
        this.server = server;
        this.demo = demo;
        this.host = host;
    }

    @Override
    public int run(String... args) {
        System.out.println(welcome());
        Quarkus.waitForExit();
        return 0;
    }

    private String welcome() {
        StringBuilder text = new StringBuilder(System.lineSeparator());
        text.append("Washwright is ready at http://").append(host).append(':').append(server.getPort());
        text.append(System.lineSeparator());
        if (demo.usable()) {
            text.append("Sign in as ")
                    .append(String.join(", ", DemoAccounts.NAMES))
                    .append(System.lineSeparator())
                    .append("with the password: ")
                    .append(DemoAccounts.PASSWORD)
                    .append(System.lineSeparator())
                    .append("(demo accounts; they work only while the service listens on this machine alone)")
                    .append(System.lineSeparator());
        }
        return text.toString();
    }
}
