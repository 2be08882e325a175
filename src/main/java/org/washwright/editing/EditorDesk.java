package org.washwright.editing;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.washwright.access.Caller;
import org.washwright.access.Person;
import org.washwright.access.Roles;
import org.washwright.document.Diagnostic;
import org.washwright.document.edit.RefusedEdit;
import org.washwright.exchange.EditionFiles;
import org.washwright.exchange.EditionWords;
import org.washwright.problem.Invalid;
import org.washwright.problem.NotFound;
import org.washwright.problem.ProblemErrors;
import org.washwright.rule.Edition;
import org.washwright.rulebook.DraftFiles;
import org.washwright.rulebook.Editions;
import org.washwright.rulebook.KeptFile;
import org.washwright.rulebook.Saved;

/** What all editors need: a file as it stands, the words it may use, and a way to save it. */
@ApplicationScoped
public class EditorDesk {
    private static final int KEPT = 4;
    private static final String BOM = "\uFEFF";

    private final Editions editions;
    private final DraftFiles files;
    private final Map<String, EditionWords> words = Collections.synchronizedMap(new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, EditionWords> eldest) {
            return size() > KEPT;
        }
    });

    EditorDesk(Editions editions, DraftFiles files) {
        this.editions = editions;
        this.files = files;
    }

    /**
     * Opens a file of this kind.
     *
     * @param kind a pattern that its path has to match; any other path is not found
     */
    public OpenFile open(Caller caller, UUID edition, String path, String kind) {
        if (!path.matches(kind)) {
            throw NotFound.of("file", path);
        }
        KeptFile file = files.get(caller.workspaceId(), edition, path);
        var view = editions.view(caller.workspaceId(), edition);
        String text = file.text();
        return new OpenFile(
                view,
                path,
                file.tag(),
                text.startsWith(BOM) ? text.substring(1) : text,
                text.startsWith(BOM),
                !view.isKept() && caller.has(Roles.CONSULTANT));
    }

    /** Saves another text of an open file against the state that was read. */
    public Saved save(Caller caller, OpenFile open, String tag, String text) {
        byte[] bytes = ((open.marked() ? BOM : "") + text).getBytes(StandardCharsets.UTF_8);
        return files.save(
                caller.workspaceId(), Person.of(caller), open.edition().id(), open.path(), tag, bytes);
    }

    /** The words of an edition, read once for each state of their files. */
    public EditionWords words(UUID workspace, UUID edition) {
        EditionFiles of = EditionWords.files(editions.files(workspace, edition));
        return words.computeIfAbsent(of.textHash(), hash -> EditionWords.read(of));
    }

    /** The same with another text of one of their files, for trying it. */
    public EditionWords wordsWith(UUID workspace, UUID edition, String path, String text) {
        Map<String, byte[]> changed = new LinkedHashMap<>(
                EditionWords.files(editions.files(workspace, edition)).files());
        changed.put(path, text.getBytes(StandardCharsets.UTF_8));
        return EditionWords.read(new EditionFiles(changed));
    }

    /** What the whole edition has against this file. */
    public List<Diagnostic> found(UUID workspace, UUID edition, String path) {
        return editions.reading(workspace, edition).diagnostics().stream()
                .filter(d -> d.place().file().equals(path))
                .toList();
    }

    /** The content of the edition with its rules; empty while it has errors. */
    public Optional<Edition> whole(UUID workspace, UUID edition) {
        return editions.reading(workspace, edition).edition();
    }

    /** A refused change of a text as a problem. */
    public static Invalid invalid(RefusedEdit refused) {
        return new Invalid(ProblemErrors.of(refused.found()));
    }
}
