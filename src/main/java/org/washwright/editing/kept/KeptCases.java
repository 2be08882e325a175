package org.washwright.editing.kept;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.washwright.access.Person;
import org.washwright.cases.CaseOfAnswer;
import org.washwright.cases.CaseReader;
import org.washwright.casework.KeptAnswer;
import org.washwright.http.Slice;
import org.washwright.rulebook.DraftFiles;
import org.washwright.rulebook.Drafts;
import org.washwright.rulebook.EditionView;
import org.washwright.rulebook.Editions;
import org.washwright.rulebook.KeptFile;

/** Keeps an answer as a reference case in a file of its own. */
@ApplicationScoped
class KeptCases {
    private static final String END = ".yaml";
    private static final String SEARCHED = "100";

    private final Editions editions;
    private final Drafts drafts;
    private final DraftFiles files;

    KeptCases(Editions editions, Drafts drafts, DraftFiles files) {
        this.editions = editions;
        this.drafts = drafts;
        this.files = files;
    }

    /** Where a case was put. */
    record Put(UUID draft, String file) {}

    /**
     * Keeps an answer in a draft: the one that is named, else the one of the same rulebook that was changed last, else a new
     * one begun from the edition that answered.
     */
    Put keep(UUID workspace, Person by, KeptAnswer kept, Optional<UUID> named) {
        UUID draft = named.orElseGet(() -> latest(workspace, kept.edition().name())
                .orElseGet(() ->
                        drafts.begin(workspace, by, kept.view().editionId()).id()));
        String title = kept.task().title();
        String text = CaseOfAnswer.yaml(kept.answer(), kept.asked(), kept.edition(), title);
        Set<String> taken =
                files.list(workspace, draft).stream().map(KeptFile::path).collect(Collectors.toSet());
        String id = free(CaseOfAnswer.id(title), taken, workspace, draft);
        String file = CaseReader.FOLDER + id + END;
        String own = text.replaceFirst("\n  - id: [a-z0-9-]+\n", "\n  - id: " + id + "\n");
        files.save(workspace, by, draft, file, "", own.getBytes(StandardCharsets.UTF_8));
        return new Put(draft, file);
    }

    /** An id that neither a file nor a case has yet. */
    private String free(String wanted, Set<String> taken, UUID workspace, UUID draft) {
        Set<String> cases = editions.reading(workspace, draft).checks().cases().stream()
                .map(c -> c.id())
                .collect(Collectors.toSet());
        String id = wanted;
        for (int n = 2; taken.contains(CaseReader.FOLDER + id + END) || cases.contains(id); n++) {
            id = wanted + "-" + n;
        }
        return id;
    }

    private Optional<UUID> latest(UUID workspace, String rulebook) {
        return drafts(workspace).stream()
                .filter(draft -> draft.rulebook().equals(rulebook))
                .map(EditionView::id)
                .findFirst();
    }

    /** Drafts of a workspace, changed last first. */
    List<EditionView> drafts(UUID workspace) {
        return editions.list(workspace, Slice.of("0", SEARCHED)).items().stream()
                .filter(edition -> !edition.isKept())
                .toList();
    }
}
