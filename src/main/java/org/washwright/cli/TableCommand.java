package org.washwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.exchange.TableDraft;
import org.washwright.exchange.TableText;
import org.washwright.exchange.TableWorkbook;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Carries a decision table from its file to a workbook and back. */
@Command(
        name = "table",
        mixinStandardHelpOptions = true,
        description = "Writes a decision table (.csv) as a workbook (.xlsx), or the other way round; no cell is lost.")
final class TableCommand implements Callable<Integer> {

    @Parameters(paramLabel = "FILE", description = "table that ends in .csv or .xlsx")
    private Path file;

    @Option(names = "--to", required = true, paramLabel = "NEW", description = "new file of the other kind")
    private Path to;

    @Option(
            names = "--onto",
            paramLabel = "TABLE",
            description = "table (.csv) whose rows keep their bytes where the workbook says the same")
    private Path onto;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    private final Diagnostics diagnostics = new Diagnostics();

    @Override
    public Integer call() {
        PrintWriter err = spec.commandLine().getErr();
        boolean workbook = ends(file, ".xlsx");
        if (!(workbook ? ends(to, ".csv") : ends(file, ".csv") && ends(to, ".xlsx")) || onto != null && !workbook) {
            throw new CommandLine.ParameterException(
                    spec.commandLine(), "Name a .csv and a .xlsx; --onto goes with a workbook that becomes a table.");
        }
        Optional<byte[]> made = workbook ? table() : text(file).map(TableWorkbook::write);
        int code = made.isEmpty() ? ExitCode.UNREADABLE_INPUT : write(made.get());
        DiagnosticText.write(diagnostics.all(), err);
        return code;
    }

    private static boolean ends(Path path, String with) {
        return path.toString().toLowerCase(Locale.ROOT).endsWith(with);
    }

    private Optional<byte[]> table() {
        Optional<String> base = onto == null ? Optional.of("") : text(onto);
        return base.flatMap(before -> bytes(file)
                .flatMap(book -> TableWorkbook.read(file.toString(), book, diagnostics))
                .map(text -> before.isEmpty()
                        ? text
                        : TableDraft.of(TableText.of(text))
                                .onto(TableText.of(before))
                                .in(TableText.of(before))
                                .text())
                .map(text -> text.getBytes(StandardCharsets.UTF_8)));
    }

    private Optional<String> text(Path path) {
        return bytes(path).flatMap(b -> DocumentReader.decode(path.toString(), b, diagnostics));
    }

    private Optional<byte[]> bytes(Path path) {
        try {
            return Optional.of(Files.readAllBytes(path));
        } catch (IOException e) {
            diagnostics.add(Message.UNREADABLE, Place.ofFile(path.toString()), path.toString());
            return Optional.empty();
        }
    }

    private int write(byte[] bytes) {
        try {
            Files.write(to, bytes, StandardOpenOption.CREATE_NEW);
            return ExitCode.OK;
        } catch (FileAlreadyExistsException e) {
            diagnostics.add(Message.FILE_THERE, Place.ofFile(to.toString()), to.toString());
        } catch (IOException e) {
            diagnostics.add(Message.OUTPUT_UNWRITABLE, Place.ofFile(to.toString()), to.toString(), e.toString());
        }
        return ExitCode.CANNOT_WRITE;
    }
}
