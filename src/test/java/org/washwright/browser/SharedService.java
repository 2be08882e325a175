package org.washwright.browser;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;
import org.washwright.app.PackagedService;
import org.washwright.app.TestFolder;

/** One packaged service for all browser tests that run in this Java, stopped when that ends. */
final class SharedService {
    private static URI address;

    private SharedService() {}

    static synchronized URI address() {
        if (address == null) {
            Path data = TestFolder.of("browser-data");
            delete(data);
            PackagedService service = PackagedService.start(data);
            Runtime.getRuntime().addShutdownHook(new Thread(service::close));
            address = service.address();
        }
        return address;
    }

    private static void delete(Path folder) {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new IllegalStateException("the data of an earlier run in " + folder + " cannot be deleted", e);
        }
    }
}
