package org.washwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.exchange.EditionFiles;
import org.washwright.library.EditionInput;
import org.washwright.rule.Edition;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Copies an edition between folder and bundle, byte for byte, and says its hashes. */
@Command(
        name = "export",
        mixinStandardHelpOptions = true,
        description = "Copies an edition byte for byte into a folder or, when the name ends in .zip, a bundle.")
final class ExportCommand implements Callable<Integer> {

    @Parameters(index = "0", paramLabel = "EDITION", description = "folder or zip bundle of the edition")
    private Path edition;

    @Parameters(
            index = "1",
            paramLabel = "TO",
            description = "a bundle when it ends in .zip, else a folder; must not exist, or be an empty folder")
    private Path to;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        EditionInput.Opened opened = EditionInput.open(Optional.of(edition));
        Diagnostics diagnostics = new Diagnostics();
        // What can't be taken along would be missing in the copy, so that it would be none.
        opened.result().diagnostics().all().stream()
                .filter(d -> hinders(d, opened.files()))
                .forEach(diagnostics::add);
        if (diagnostics.hasErrors()) {
            DiagnosticText.write(diagnostics.all(), err);
            return ExitCode.UNREADABLE_INPUT;
        }
        try {
            if (!isFree()) {
                diagnostics.add(Message.FILE_THERE, Place.ofFile(to.toString()), to.toString());
                DiagnosticText.write(diagnostics.all(), err);
                return ExitCode.CANNOT_WRITE;
            }
            write(opened.files());
        } catch (IOException e) {
            diagnostics.add(
                    Message.OUTPUT_UNWRITABLE,
                    Place.ofFile(to.toString()),
                    to.toString(),
                    String.valueOf(e.getMessage()));
            DiagnosticText.write(diagnostics.all(), err);
            return ExitCode.CANNOT_WRITE;
        }
        Optional<Edition> read = opened.result().edition();
        out.println(opened.files().files().size() + " files written to " + to);
        out.println("meaning " + read.map(Edition::meaningHash).orElse("none: the edition has errors, see \"check\""));
        out.println("text    " + opened.files().textHash());
        out.flush();
        return read.isPresent() ? ExitCode.OK : ExitCode.FINDINGS;
    }

    /** Whether something keeps the files themselves from being taken along; errors within a file do not. */
    private static boolean hinders(Diagnostic d, EditionFiles files) {
        return switch (d.message()) {
            case UNREADABLE, FILE_NAME, PATH_ESCAPE, BROKEN_ZIP -> true;
            case TOO_LARGE, DUPLICATE_ID -> !files.files().containsKey(d.place().file());
            default -> files.files().isEmpty();
        };
    }

    private boolean isFree() throws IOException {
        if (!Files.exists(to)) {
            return true;
        }
        if (isBundle() || !Files.isDirectory(to)) {
            return false;
        }
        try (Stream<Path> inside = Files.list(to)) {
            return inside.findAny().isEmpty();
        }
    }

    private boolean isBundle() {
        return to.toString().toLowerCase(Locale.ROOT).endsWith(".zip");
    }

    private void write(EditionFiles files) throws IOException {
        Path parent = to.toAbsolutePath().getParent();
        if (isBundle()) {
            // Whoever looks meanwhile sees the whole bundle or none.
            Path part = Files.createTempFile(parent, ".export-", ".part");
            try {
                Files.write(part, files.toZip());
                Files.move(part, to, StandardCopyOption.ATOMIC_MOVE);
            } finally {
                Files.deleteIfExists(part);
            }
            return;
        }
        for (Map.Entry<String, byte[]> file : files.files().entrySet()) {
            Path target = to.resolve(file.getKey());
            Files.createDirectories(target.getParent());
            Files.write(target, file.getValue());
        }
    }
}
