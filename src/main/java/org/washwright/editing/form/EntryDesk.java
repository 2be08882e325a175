package org.washwright.editing.form;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.washwright.access.Caller;
import org.washwright.document.Diagnostic;
import org.washwright.document.Severity;
import org.washwright.document.edit.Change;
import org.washwright.document.edit.Data;
import org.washwright.document.edit.RefusedEdit;
import org.washwright.document.edit.YamlEdits;
import org.washwright.editing.EditorDesk;
import org.washwright.editing.OpenFile;
import org.washwright.problem.Invalid;
import org.washwright.problem.NotFound;
import org.washwright.problem.ProblemError;
import org.washwright.problem.ProblemErrors;
import org.washwright.rulebook.Saved;
import org.washwright.rulebook.TermUses;

/** Opens, checks and saves files of entries. */
@ApplicationScoped
class EntryDesk {
    private static final String FILES =
            "(edition|grading|assumptions|known-findings|grid)\\.yaml|catalogue/[A-Za-z0-9._-]{1,80}\\.yaml";

    private final EditorDesk desk;

    EntryDesk(EditorDesk desk) {
        this.desk = desk;
    }

    /** An open file with what it says and the forms it has. */
    record Opened(OpenFile file, Data data, FileShape shape) {}

    OpenFile open(Caller caller, UUID edition, String path) {
        return desk.open(caller, edition, path, FILES);
    }

    /** The forms of a file; empty when it has none. */
    Optional<Opened> forms(Caller caller, OpenFile file) {
        Data data = YamlEdits.read(file.path(), file.text());
        return new FileShapes(
                        desk.words(caller.workspaceId(), file.edition().id()).edition())
                .of(file.path(), data)
                .map(shape -> new Opened(file, data, shape));
    }

    Opened require(Caller caller, OpenFile file) {
        return forms(caller, file).orElseThrow(() -> NotFound.of("form of the file", file.path()));
    }

    /**
     * Saves changes of one entry. What is wrong with that entry afterwards is refused; what is wrong elsewhere in the file is not
     * this form's business.
     *
     * @param pointer the entry after the change; empty for the file itself
     */
    Saved save(Caller caller, Opened opened, String tag, List<Change> changes, Optional<String> pointer) {
        OpenFile file = opened.file();
        String text;
        try {
            text = YamlEdits.apply(file.path(), file.text(), changes);
        } catch (RefusedEdit refused) {
            throw new Invalid(refused.found().stream()
                    .map(d -> error(d, pointer.orElse(""), opened.shape().fields()))
                    .toList());
        }
        pointer.ifPresent(at -> check(caller, opened, text, at));
        return desk.save(caller, file, tag, text);
    }

    private void check(Caller caller, Opened opened, String text, String at) {
        OpenFile file = opened.file();
        List<FieldSpec> fields =
                at.isEmpty() ? opened.shape().head() : opened.shape().fields();
        List<ProblemError> wrong =
                desk.wordsWith(caller.workspaceId(), file.edition().id(), file.path(), text).found().stream()
                        .filter(d -> d.severity() == Severity.ERROR)
                        .filter(d -> d.place().file().equals(file.path()))
                        .filter(d -> d.place().pointer().equals(at)
                                || d.place().pointer().startsWith(at + "/") && !at.isEmpty())
                        .map(d -> error(d, at, fields))
                        .toList();
        if (!wrong.isEmpty()) {
            throw new Invalid(wrong);
        }
    }

    /** An error beside the field that it is about: the one its place lies in, or else the one that holds the value. */
    private static ProblemError error(Diagnostic d, String at, List<FieldSpec> fields) {
        String rest = d.place().pointer().startsWith(at) ? d.place().pointer().substring(at.length()) : "";
        String field = fields.stream()
                .filter(f -> rest.equals(f.path()) || rest.startsWith(f.path() + "/"))
                .map(FieldSpec::id)
                .findFirst()
                .orElseGet(() -> named(d, fields));
        return ProblemError.at(
                field,
                d.value(),
                ProblemErrors.sentence(d.text()),
                ProblemErrors.sentence(d.advice()),
                d.message().code());
    }

    private static String named(Diagnostic d, List<FieldSpec> fields) {
        return fields.stream()
                .filter(f -> d.text().contains("\"" + f.path().substring(1) + "\""))
                .map(FieldSpec::id)
                .findFirst()
                .orElse(fields.isEmpty() ? "" : fields.get(0).id());
    }

    /** The rules that speak of a term; none for other entries and while the edition has errors. */
    List<TermUses.Use> uses(Caller caller, Opened opened, String id) {
        Optional<Data> kind = opened.data().at("/kind");
        return kind.isEmpty()
                ? List.of()
                : desk.whole(caller.workspaceId(), opened.file().edition().id())
                        .map(edition -> TermUses.of(edition).of(kind.get().text(), id))
                        .orElse(List.of());
    }
}
