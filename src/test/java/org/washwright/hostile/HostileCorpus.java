package org.washwright.hostile;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The hostile texts that read best as texts: one file a category, one case behind each line {@code ##### name | file |
 * line}. What can't stand in a readable file is in bombs made in Java.
 */
final class HostileCorpus {

    static final Path FOLDER = Path.of("src/test/resources/hostile");
    private static final String MARK = "##### ";

    private HostileCorpus() {}

    /** All texts, in order of category and place. */
    static List<HostileText> all() {
        List<HostileText> texts = new ArrayList<>();
        try (Stream<Path> files = Files.list(FOLDER)) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".txt")).sorted().toList()) {
                String category = file.getFileName().toString().replace(".txt", "");
                for (String part : ("\n" + Files.readString(file)).split("\n" + MARK, -1)) {
                    if (!part.isEmpty()) {
                        texts.add(text(category, part));
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return texts;
    }

    private static HostileText text(String category, String part) {
        int end = part.indexOf('\n');
        String[] head = part.substring(0, end).split(" \\| ");
        return new HostileText(category, head[0], head[1], Integer.parseInt(head[2]), part.substring(end + 1) + "\n");
    }
}
