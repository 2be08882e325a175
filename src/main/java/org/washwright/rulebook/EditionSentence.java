package org.washwright.rulebook;

import java.util.Optional;

/** What there is to say of an edition first. */
final class EditionSentence {

    private EditionSentence() {}

    static String of(EditionView edition, Optional<EditionView> current) {
        String holds = edition.rules() + " rules over " + edition.terms() + " terms";
        if (edition.errors() > 0) {
            return edition.errors() + (edition.errors() == 1 ? " error keeps" : " errors keep")
                    + " these files from being read as an edition.";
        }
        if (edition.withdrawn().isPresent()) {
            return "Withdrawn: it answers no new tasks, and still stands behind the answers it gave.";
        }
        if (edition.isReleased()) {
            boolean now =
                    current.map(EditionView::id).filter(edition.id()::equals).isPresent();
            return now
                    ? "This edition answers new tasks: " + holds + "."
                    : "An earlier edition: " + holds + ". It still stands behind the answers it gave.";
        }
        return edition.asked()
                .map(asked -> "A draft that waits for a reviewer, asked for by " + asked.by() + ": " + holds + ".")
                .orElse("A draft that answers no task yet: " + holds + ".");
    }
}
