package org.washwright.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.generate.Starter;

class GridTest {

    static Optional<GridPlan> plan(String yaml, Diagnostics diagnostics) {
        return GridPlanReader.read(
                DocumentReader.read("grid.yaml", yaml, diagnostics).orElseThrow(), Starter.edition(), diagnostics);
    }

    static final String SMALL = """
            axes:
              - {attribute: Soil.kind}
              - {attribute: Material.substrate, groupBy: family}
              - {attribute: Feature.kind, orNone: yes}
            base: {title: usual, materials: [{hardness: 20 HRC, porous: no}], permittedSolvents: [hydrocarbon]}
            """;

    @Test
    void terms_are_grouped_by_the_property_named_and_a_list_may_be_empty() {
        GridPlan plan = plan(SMALL, new Diagnostics()).orElseThrow();
        List<GridPlan.Stop> families = GridPlan.stops(plan.axes().get(1), Starter.edition());
        GridPlan.Stop steel = families.stream()
                .filter(s -> s.id().equals("steel"))
                .findFirst()
                .orElseThrow();
        assertTrue(steel.terms().containsAll(List.of("carbon-steel", "bearing-steel")));
        assertEquals(
                "none",
                GridPlan.stops(plan.axes().get(2), Starter.edition()).get(0).id());
    }

    @Test
    void everything_wrong_with_a_plan_comes_at_once_with_its_place() {
        Diagnostics diagnostics = new Diagnostics();
        plan("""
                axes:
                  - {attribute: Soil.colour}
                  - {attribute: Material.substrate, groupBy: taste}
                  - {attribute: Following.operation, orNone: yes, colour: red}
                base: {title: t, soils: [mud]}
                """, diagnostics);
        String all = diagnostics.all().toString();
        for (String wanted : List.of(
                "grid.yaml:2:17 (/axes/0/attribute): \"Soil.colour\" is no attribute whose values are terms",
                "\"taste\" is no property of substrate whose values are terms",
                "only a list can be empty",
                "\"colour\" is not known in an axis",
                "\"mud\" is no soil",
                "two to four axes are shown")) {
            assertTrue(all.contains(wanted), () -> wanted + " is missing in " + all);
        }
    }
}
