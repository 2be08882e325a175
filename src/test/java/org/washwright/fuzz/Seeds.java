package org.washwright.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.washwright.document.Hashes;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;

/** What the fuzzer starts from: sound files, hostile texts, and every input that once broke a promise. */
public final class Seeds {

    /** One folder a target, holding sound files and inputs that once broke a promise. */
    static final Path FOLDER = Path.of("src/test/resources/fuzz");

    private static final Path HOSTILE = Path.of("src/test/resources/hostile");

    private Seeds() {}

    /** Writes the seeds of all targets into folders below the one that is named. */
    public static void main(String[] arguments) throws IOException {
        for (String target : Targets.all().keySet()) {
            Path folder = Files.createDirectories(Path.of(arguments[0]).resolve(target));
            for (byte[] seed : of(target)) {
                Files.write(folder.resolve(Hashes.sha256(seed)), seed);
            }
        }
    }

    /** The seeds of a target. */
    static List<byte[]> of(String target) throws IOException {
        List<byte[]> seeds = new ArrayList<>();
        if (Files.isDirectory(FOLDER.resolve(target))) {
            try (Stream<Path> files = Files.list(FOLDER.resolve(target))) {
                for (Path file : files.sorted().toList()) {
                    seeds.add(Files.readAllBytes(file));
                }
            }
        }
        switch (target) {
            case "Drl", "RoundTrip" -> {
                seeds.addAll(hostile("rules/"));
                seeds.addAll(of(Starter.files().files(), "rules/"));
            }
            case "Table" -> {
                seeds.addAll(hostile("tables/"));
                seeds.addAll(of(Starter.files().files(), "tables/"));
            }
            case "Tree" -> {
                seeds.addAll(hostile("trees/"));
                seeds.addAll(of(Starter.files().files(), "trees/"));
            }
            case "Catalogue" -> seeds.addAll(catalogue());
            case "Bundle" -> {
                seeds.add(SmallEdition.files(SmallEdition.texts()).toZip());
                seeds.add(Starter.files().toZip());
            }
            case "Task" -> {
                seeds.addAll(hostile("task."));
                Starter.demoTexts().values().forEach(t -> seeds.add(t.getBytes(UTF_8)));
            }
            default -> {
                // Quantities are short enough to have all of theirs in their folder.
            }
        }
        return seeds;
    }

    private static List<byte[]> of(Map<String, byte[]> files, String folder) {
        return files.entrySet().stream()
                .filter(f -> f.getKey().startsWith(folder))
                .map(Map.Entry::getValue)
                .toList();
    }

    private static List<byte[]> catalogue() throws IOException {
        List<byte[]> seeds = new ArrayList<>(List.of(together(SmallEdition.texts())));
        for (byte[] text : hostile("catalogue/")) {
            Map<String, String> texts = SmallEdition.texts();
            texts.put("catalogue/hostile.yaml", new String(text, UTF_8));
            seeds.add(together(texts));
        }
        return seeds;
    }

    private static byte[] together(Map<String, String> texts) {
        StringBuilder out = new StringBuilder();
        texts.forEach((name, text) ->
                out.append(CatalogueFuzz.MARK).append(name).append('\n').append(text));
        return out.toString().getBytes(UTF_8);
    }

    /** Texts of the hostile corpus that stand in a file of this name. */
    private static List<byte[]> hostile(String file) throws IOException {
        List<byte[]> out = new ArrayList<>();
        try (Stream<Path> files = Files.list(HOSTILE)) {
            for (Path path : files.sorted().toList()) {
                Arrays.stream(("\n" + Files.readString(path)).split("\n##### ", -1))
                        .filter(part -> part.lines().findFirst().orElse("").contains("| " + file))
                        .map(part -> part.substring(part.indexOf('\n') + 1) + "\n")
                        .forEach(text -> out.add(text.getBytes(UTF_8)));
            }
        }
        return out;
    }
}
