package org.washwright.editing.table;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.UUID;
import org.washwright.access.Caller;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.editing.EditorDesk;
import org.washwright.editing.OpenFile;
import org.washwright.exchange.TableDraft;
import org.washwright.exchange.TableText;
import org.washwright.exchange.TableWorkbook;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemErrors;
import org.washwright.rule.Edition;
import org.washwright.rulebook.Saved;

/** Opens, checks and saves decision tables. */
@ApplicationScoped
class TableDesk {
    private static final String TABLES = "tables/[A-Za-z0-9._-]{1,80}\\.csv";

    private final EditorDesk desk;

    TableDesk(EditorDesk desk) {
        this.desk = desk;
    }

    OpenFile open(Caller caller, UUID edition, String path) {
        return desk.open(caller, edition, path, TABLES);
    }

    Optional<Edition> words(Caller caller, UUID edition) {
        return desk.words(caller.workspaceId(), edition).edition();
    }

    TableSight sight(Caller caller, OpenFile open, TableDraft draft) {
        return TableSight.of(
                open.path(),
                TableText.of(open.text()),
                draft,
                words(caller, open.edition().id()));
    }

    /**
     * The text of a draft. A draft of the state that stands keeps the bytes of what it did not touch; one of an older state can't
     * be told against this one, and is written out whole.
     */
    static String text(OpenFile open, String tag, TableDraft draft) {
        return draft.in(TableText.of(tag.equals(open.tag()) ? open.text() : "")).text();
    }

    Saved save(Caller caller, OpenFile open, String tag, String text) {
        return desk.save(caller, open, tag, text);
    }

    /**
     * The text of an upload: a workbook, told by its name or its first bytes, or the text itself. A workbook is put onto the file, so that what
     * it did not change keeps its bytes.
     */
    static String uploaded(OpenFile open, String name, byte[] bytes) {
        Diagnostics diagnostics = new Diagnostics();
        boolean workbook = name.toLowerCase(java.util.Locale.ROOT).endsWith(".xlsx")
                || bytes.length > 1 && bytes[0] == 'P' && bytes[1] == 'K';
        Optional<String> text = workbook
                ? TableWorkbook.read(name, bytes, diagnostics)
                        .map(read -> TableDraft.of(TableText.of(read))
                                .onto(TableText.of(open.text()))
                                .in(TableText.of(open.text()))
                                .text())
                : DocumentReader.decode(name, bytes, diagnostics);
        return text.orElseThrow(() -> new Invalid(ProblemErrors.of(diagnostics.all())));
    }

    static byte[] bytes(OpenFile open) {
        return ((open.marked() ? "\uFEFF" : "") + open.text()).getBytes(StandardCharsets.UTF_8);
    }
}
