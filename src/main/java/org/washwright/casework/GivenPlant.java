package org.washwright.casework;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.plant.Plant;
import org.washwright.plant.PlantReader;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemErrors;
import org.washwright.rule.Edition;

/**
 * A plant that was read without an error.
 *
 * @param text as it was given
 * @param plant what it says
 */
record GivenPlant(String text, Plant plant) {

    /** What came of reading: the plant, or what is wrong with it. */
    record Result(Optional<GivenPlant> plant, List<Diagnostic> diagnostics) {}

    /** Reads a text that messages call by this name. */
    static Result tried(String name, byte[] bytes, Edition edition) {
        Diagnostics diagnostics = new Diagnostics();
        Optional<GivenPlant> plant = PlantReader.read(name, bytes, edition, diagnostics)
                .map(p -> new GivenPlant(new String(bytes, StandardCharsets.UTF_8), p));
        return new Result(plant, diagnostics.all());
    }

    /** Refused with every error at once. */
    static GivenPlant read(String name, byte[] bytes, Edition edition) {
        Result result = tried(name, bytes, edition);
        return result.plant().orElseThrow(() -> new Invalid(ProblemErrors.of(result.diagnostics())));
    }

    /** The same for the body of a request. */
    static GivenPlant read(byte[] bytes, Edition edition) {
        return read(ProblemErrors.BODY, bytes, edition);
    }
}
