package org.washwright.plant;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.generate.Starter;
import org.washwright.quantity.Span;
import org.washwright.task.Value;

/** What a plant may say. The form follows from docs/plants.md. */
class PlantReaderTest {

    private static List<Diagnostic> wrong(String yaml) {
        Diagnostics diagnostics = new Diagnostics();
        Optional<Plant> plant =
                PlantReader.read("plant.yaml", yaml.getBytes(StandardCharsets.UTF_8), Starter.edition(), diagnostics);
        assertEquals(plant.isEmpty(), diagnostics.hasErrors());
        return diagnostics.all();
    }

    @Test
    void a_plant_is_read_with_units_and_what_is_left_out_is_unknown() {
        Plant plant = SmallPlant.plant("""
                name: Tub
                process: tub wash
                stages: [mild prewash, rinse]
                settings: {main: {temperature: 122..140 °F, time: <= 5 min}}
                basket: {mass: 110.231131 lb, area: not applicable}
                hours: 2400 min
                """);
        assertEquals("tub", plant.process());
        assertEquals(Optional.of(List.of("beside", "main", "rinse")), plant.stages());
        // NIST SP 811: 122 °F is 50 °C, 140 °F is 60 °C.
        Span span = ((Value.Number) plant.setting("main", "temperature")).span();
        assertEquals(323.15, span.low(), 1e-9);
        assertEquals(333.15, span.high(), 1e-9);
        assertEquals(new Value.Number(new Span(0, 300)), plant.setting("main", "time"));
        assertEquals(50, ((Value.Number) plant.basket().mass()).span().low(), 1e-6);
        assertEquals(Value.NOT_APPLICABLE, plant.basket().area());
        assertEquals(Value.UNKNOWN, plant.basket().volume());
        assertEquals(Value.UNKNOWN, plant.chambers());
        assertEquals(Value.number(144_000), plant.hours());
        assertEquals(Optional.empty(), plant.solvents());
    }

    @Test
    void yaml_and_json_say_the_same() {
        Plant yaml = SmallPlant.plant("name: T\nprocess: tub\nstages: []\nhours: 40 h\n");
        Plant json = SmallPlant.plant("{\"name\": \"T\", \"process\": \"tub\", \"stages\": [], \"hours\": \"40 h\"}");
        assertEquals(yaml, json);
        assertEquals(Optional.of(List.of("main")), yaml.stages());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "process: neutral-ultrasonic                                        | name",
                "name: X                                                            | process",
                "{name: X, process: aqueous}                                        | groups of processes",
                "{name: X, process: neutral-ultrasonik}                             | did you mean \"neutral-ultrasonic\"",
                "{name: X, process: neutral-spray, stages: [rinze]}                 | did you mean \"rinse\"",
                "{name: X, process: neutral-spray, stages: [main, neutral-spray]}   | given twice",
                "{name: X, process: neutral-spray, settings: {main: {frequency: 40 kHz}}} | \"frequency\" is not known",
                "{name: X, process: neutral-spray, stages: [rinse], settings: {dry: {time: 2 min}}} | stages of this plant",
                "{name: X, process: neutral-spray, settings: {main: {temperature: 60}}} | has no unit",
                "{name: X, process: neutral-spray, settings: {main: {temperature: not applicable}}} | not a quantity",
                "{name: X, process: neutral-spray, basket: {mass: 3 m}}             | is no mass",
                "{name: X, process: neutral-spray, hours: 200 h}                    | a week of 168 h",
                "{name: X, process: neutral-spray, chambers: 0}                     | 1 to 100",
                "{name: X, process: neutral-spray, colour: blue}                    | \"colour\" is not known",
                "{name: X, process: hydrocarbon-vacuum, solvents: [chlorinated]}    | which this list leaves out",
                "{name: X, process: hydrocarbon-vacuum, solvents: [water]}          | is no solvent class",
            })
    void what_is_wrong_is_said_with_its_place(String yaml, String message) {
        // Behind a comment, so that a brace begins YAML and not JSON.
        List<Diagnostic> found = wrong("# a plant\n" + yaml);
        assertTrue(
                found.stream().anyMatch(d -> (d.text() + " " + d.advice()).contains(message)), () -> found.toString());
        assertTrue(found.stream().allMatch(d -> d.place().line() == 2), () -> found.toString());
    }

    @Test
    void all_errors_come_at_once() {
        assertEquals(
                List.of("/process", "/stages/1", "/basket/area", "/hours"),
                wrong("""
                        name: X
                        process: soap
                        stages: [rinse, rins]
                        basket: {area: big}
                        hours: 5
                        """).stream().map(d -> d.place().pointer()).toList());
    }

    static Stream<Path> demoPlants() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("demo-data/plants"))) {
            return files.sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("demoPlants")
    void the_demo_plants_are_plants_of_the_starter(Path file) throws IOException {
        assertEquals(List.of(), wrong(Files.readString(file)));
    }
}
