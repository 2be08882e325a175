package org.washwright.rulebook;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.runtime.StartupEvent;
import io.quarkus.runtime.util.ClassPathUtils;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.washwright.access.DemoAccounts;
import org.washwright.access.Person;
import org.washwright.access.Workspaces;
import org.washwright.document.Diagnostics;
import org.washwright.exchange.EditionFiles;

/** Gives every workspace without any edition the starter rulebook, released, so that tasks can be answered at once. */
@ApplicationScoped
class StarterRulebook {
    private static final Logger LOG = Logger.getLogger(StarterRulebook.class);
    private static final String FOLDER = "rules/starter";
    private static final int SHOWN = 20;

    private final EditionStore store;
    private final Drafts drafts;
    private final Releases releases;
    private final Editions editions;
    private final Workspaces workspaces;
    private final Optional<Path> folder;

    StarterRulebook(
            EditionStore store,
            Drafts drafts,
            Releases releases,
            Editions editions,
            Workspaces workspaces,
            @ConfigProperty(name = "washwright.rulebook.starter") Optional<Path> folder) {
        this.store = store;
        this.drafts = drafts;
        this.releases = releases;
        this.editions = editions;
        this.workspaces = workspaces;
        this.folder = folder;
    }

    void start(@Observes @Priority(DemoAccounts.PRIORITY + 200) StartupEvent start) {
        List<UUID> empty = QuarkusTransaction.requiringNew()
                .call(() -> workspaces.all().stream()
                        .filter(workspace -> store.count(workspace) == 0)
                        .toList());
        if (!empty.isEmpty()) {
            EditionFiles files = files();
            Reading reading = Reading.of(files);
            if (reading.errors() > 0) {
                String found = String.join(
                        System.lineSeparator(),
                        reading.diagnostics().stream()
                                .limit(SHOWN)
                                .map(Object::toString)
                                .toList());
                throw new IllegalStateException("The starter rulebook has errors, so no task could be answered. Mend it"
                        + " or name another folder by washwright.rulebook.starter." + System.lineSeparator() + found);
            }
            empty.forEach(workspace -> QuarkusTransaction.requiringNew().run(() -> give(workspace, files)));
        }
        workspaces.all().forEach(this::warm);
    }

    private void give(UUID workspace, EditionFiles files) {
        StoredEdition edition = drafts.stored(workspace, Person.PROGRAM, files);
        releases.number(edition, Person.PROGRAM, new Releases.Word("Came with the program.", ""));
        LOG.infof("Gave a workspace the rulebook '%s' as its first edition.", edition.rulebook.name);
    }

    /** The first task should not wait for the rules. */
    private void warm(UUID workspace) {
        editions.current(workspace)
                .ifPresent(edition -> editions.ready(workspace, edition.id()).whenComplete((assessor, failure) -> {
                    if (failure != null) {
                        LOG.error(
                                "The current edition could not be made ready; tasks can't be answered by it.", failure);
                    }
                }));
    }

    private EditionFiles files() {
        Diagnostics diagnostics = new Diagnostics();
        List<EditionFiles> found = new ArrayList<>();
        try {
            if (folder.isPresent()) {
                found.add(EditionFiles.ofFolder(folder.get(), diagnostics));
            } else {
                ClassPathUtils.consumeAsPaths(
                        StarterRulebook.class.getClassLoader(), FOLDER, path -> found.add(read(path, diagnostics)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(
                    "The starter rulebook could not be read from "
                            + folder.map(Path::toString).orElse(FOLDER),
                    e);
        }
        if (found.isEmpty() || diagnostics.hasErrors()) {
            throw new IllegalStateException("The starter rulebook in "
                    + folder.map(Path::toString).orElse("the program") + " is no folder of an edition: "
                    + diagnostics.all());
        }
        return found.get(0);
    }

    private static EditionFiles read(Path path, Diagnostics diagnostics) {
        try {
            return EditionFiles.ofFolder(path, diagnostics);
        } catch (IOException e) {
            throw new UncheckedIOException("The starter rulebook could not be read from " + path, e);
        }
    }
}
