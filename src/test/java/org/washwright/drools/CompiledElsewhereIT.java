package org.washwright.drools;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.washwright.assessment.Assessor;
import org.washwright.generate.Defaults;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;

/** Compiling generates code; a locale with another idea of the letter i or of digits must not leak into it. */
@Tag("slow")
class CompiledElsewhereIT {

    @Test
    void rulesCompiledUnderATurkishLocaleGiveTheSameBytes() {
        Assessor there = Defaults.under(
                "tr-TR",
                "Pacific/Kiritimati",
                () -> Assessor.of(SmallEdition.read(Starter.files()), DroolsInference.factory()));
        Starter.demoTasks()
                .forEach((name, task) -> assertArrayEquals(
                        Starter.interpreted().assess(task, Starter.WISHES).bytes(),
                        Defaults.under(
                                "ar-EG-u-nu-arab",
                                "Pacific/Kiritimati",
                                () -> there.assess(task, Starter.WISHES).bytes()),
                        name));
    }
}
