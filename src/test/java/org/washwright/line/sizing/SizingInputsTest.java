package org.washwright.line.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.washwright.assessment.Design;
import org.washwright.document.Diagnostic;
import org.washwright.exchange.EditionReader;
import org.washwright.generate.Starter;
import org.washwright.rulebook.Bundle;

class SizingInputsTest {

    @Test
    void every_assumption_that_a_line_reads_is_known_documented_and_in_the_starter() throws IOException {
        Set<String> read = new TreeSet<>();
        for (String task : SizedLinesTest.demoTasks()) {
            Designed.demo(task).answer().inputs().stream()
                    .map(Design.Input::ref)
                    .filter(r -> r.startsWith("assumption/"))
                    .forEach(r -> read.add(r.substring("assumption/".length())));
        }
        assertTrue(read.size() > 40, read.toString());
        String document = Files.readString(Path.of("docs/edition-format.md"));
        for (String id : read) {
            assertTrue(SizingInputs.ofAssumption(id).isPresent(), id);
            assertTrue(document.contains("`" + id + "`"), id);
        }
        for (String id : SizingInputs.assumptions()) {
            assertTrue(Starter.edition().assumptions().containsKey(id), id + " is missing from the starter");
        }
    }

    @Test
    void a_property_or_an_assumption_that_measures_something_else_is_refused() {
        Bundle starter = Bundle.starter();
        Bundle wrong = starter.with(
                        "catalogue/kinds.yaml",
                        starter.text("catalogue/kinds.yaml")
                                .replace(
                                        "price: {label: price of one station, quantity: money, unit: €}",
                                        "price: {label: price of one station, quantity: power, unit: kW}"))
                .with("assumptions.yaml", starter.text("assumptions.yaml").replace("value: 42 €/h", "value: 42 kWh"));
        List<String> found = new EditionReader(new org.washwright.drools.DrlReader())
                .read(wrong.files()).diagnostics().all().stream()
                        .filter(d -> d.message().code().equals("wrong-dimension"))
                        .map(Diagnostic::value)
                        .distinct()
                        .toList();
        assertTrue(found.contains("price"), found.toString());
        assertTrue(found.contains("42 kWh"), found.toString());
    }

    @Test
    void every_kind_of_figure_has_its_own_id_and_a_source() {
        List<String> ids = LineSizer.KINDS.stream().map(FigureKind::id).toList();
        assertEquals(ids.size(), new TreeSet<>(ids).size());
        LineSizer.KINDS.forEach(
                k -> assertTrue(!k.source().isEmpty() && !k.formula().isEmpty(), k.id()));
    }
}
