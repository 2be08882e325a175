package org.washwright.rulebook;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import org.washwright.rulebook.GateItem.Mark;

/** All that is looked at before a release, as a list. */
@ApplicationScoped
class Gate {
    private final Editions editions;
    private final Instance<GateSource> sources;

    Gate(Editions editions, Instance<GateSource> sources) {
        this.editions = editions;
        this.sources = sources;
    }

    /** What is looked at, what stands in the way first. */
    List<GateItem> of(UUID workspace, UUID id) {
        EditionView edition = editions.view(workspace, id);
        Reading reading = editions.reading(workspace, id);
        List<GateItem> items = new ArrayList<>();
        sources.stream().forEach(source -> items.addAll(source.items(workspace, edition, reading)));
        items.add(approval(edition));
        items.sort(Comparator.comparing(GateItem::mark, Comparator.reverseOrder()));
        return items;
    }

    private static GateItem approval(EditionView edition) {
        return edition.approved()
                .map(by -> new GateItem(
                        "approval", "A second pair of eyes", Mark.MET, "Approved by " + by.by() + ".", "/review"))
                .orElseGet(() -> new GateItem(
                        "approval",
                        "A second pair of eyes",
                        Mark.AT_RELEASE,
                        "Nobody but its authors has approved these files yet; whoever releases it does.",
                        "/review"));
    }

    /** What has to be answered for by whoever releases. */
    static List<GateItem> toAnswerFor(List<GateItem> items) {
        return items.stream().filter(item -> item.mark() == Mark.OPEN).toList();
    }
}
