package org.washwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.document.Message;
import org.washwright.document.Node;
import org.washwright.document.Place;
import org.washwright.exchange.EditionReader;
import org.washwright.library.EditionInput;
import org.washwright.rule.Edition;
import org.washwright.taskfile.TaskExport;
import org.washwright.taskfile.TaskFile;
import org.washwright.taskfile.TaskFormat;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the template of a task, or a task that is there already, as a file of any kind. */
@Command(
        name = "template",
        mixinStandardHelpOptions = true,
        description = "Writes a file to describe a task in: everything that can be said by the words of an edition.")
final class Template implements Callable<Integer> {

    @Parameters(paramLabel = "FILE", description = "new file that ends in .yaml, .json, .csv or .xlsx")
    private Path file;

    @Option(names = "--of", paramLabel = "TASK", description = "write this task there instead of an empty template")
    private String of;

    @Option(
            names = "--rulebook",
            paramLabel = "EDITION",
            description = "folder or zip bundle of the edition (default: as with assess)")
    private Path rulebook;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter err = spec.commandLine().getErr();
        Diagnostics diagnostics = new Diagnostics();
        Optional<TaskFormat> format = TaskFormat.byName(file.toString());
        if (format.isEmpty()) {
            diagnostics.add(Message.TASK_FORMAT, Place.ofFile(file.toString()), file.toString());
            DiagnosticText.write(diagnostics.all(), err);
            return ExitCode.USAGE;
        }
        EditionReader.Result read = rulebook == null ? EditionInput.readStarter() : EditionInput.read(rulebook);
        Optional<byte[]> bytes = read.edition().flatMap(edition -> bytes(edition, format.get(), diagnostics));
        read.diagnostics().all().stream().filter(d -> read.edition().isEmpty()).forEach(diagnostics::add);
        if (bytes.isEmpty()) {
            DiagnosticText.write(diagnostics.all(), err);
            return ExitCode.UNREADABLE_INPUT;
        }
        return write(bytes.get(), diagnostics, err);
    }

    private Optional<byte[]> bytes(Edition edition, TaskFormat format, Diagnostics diagnostics) {
        TaskExport export = new TaskExport(edition);
        if (of == null) {
            return Optional.of(export.template(format));
        }
        return TaskInput.read(of, edition, diagnostics)
                .map(TaskFile.Read::document)
                .flatMap(document -> DocumentReader.read(of, document, diagnostics))
                .map((Node node) -> export.task(node, format));
    }

    private int write(byte[] bytes, Diagnostics diagnostics, PrintWriter err) {
        try {
            Files.write(file, bytes, StandardOpenOption.CREATE_NEW);
            return ExitCode.OK;
        } catch (FileAlreadyExistsException e) {
            diagnostics.add(Message.FILE_THERE, Place.ofFile(file.toString()), file.toString());
        } catch (IOException e) {
            diagnostics.add(Message.OUTPUT_UNWRITABLE, Place.ofFile(file.toString()), file.toString(), e.toString());
        }
        DiagnosticText.write(diagnostics.all(), err);
        return ExitCode.CANNOT_WRITE;
    }
}
