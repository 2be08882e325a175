package org.washwright.science;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.washwright.science.ComponentCleanlinessCode.BadCode;
import org.washwright.science.ComponentCleanlinessCode.Limit;

/** ISO 16232:2018 as printed in a laboratory report to it and in two trade explanations; classes L to N from the report. */
class ComponentCleanlinessCodeTest {

    @ParameterizedTest
    @CsvSource({
        "B, 5", "C, 15", "D, 25", "E, 50", "F, 100", "G, 150", "H, 200", "I, 400", "J, 600", "K, 1000", "L, 1500",
        "M, 2000", "N, 3000"
    })
    void sizeClassesStartWhereTheStandardSays(char letter, double micrometres) {
        assertEquals(micrometres * 1e-6, ComponentCleanlinessCode.lowerBound(letter), 1e-15);
    }

    @Test
    void lettersWithAHyphenShareOneLimitAndLettersTogetherTakeItEach() throws BadCode {
        assertEquals(
                List.of(new Limit('B', 'E', 17), new Limit('F', 'F', 12), new Limit('G', 'G', 12)),
                ComponentCleanlinessCode.parse("A(B-E17/FG12)").limits());
    }

    /** Level 00 allows none, level 0 at most one, so only 00 forbids a size; among plain counts 0 does. */
    @ParameterizedTest
    @CsvSource({
        "A(B-E17/F-G14/H-I4/J-K00), 600",
        "A(B-E17/F-G14/H-I4/J-K2/L-N00), 1500",
        "V(B-E17/K00), 1000",
        "A(J-K00/H00), 200",
        "A(B-E17/J-K0), -1",
        "A(B-E17/J-K2), -1",
        "N(C-E32000/F-G1000/H-I16/J-K0), 600",
        "N(C-E32000/K00), 1000",
    })
    void theSmallestForbiddenSizeIsReadFromLevelNoneOnly(String code, double micrometres) throws BadCode {
        var size = ComponentCleanlinessCode.parse(code).smallestForbiddenSize();
        if (micrometres < 0) {
            assertTrue(size.isEmpty());
        } else {
            assertEquals(micrometres * 1e-6, size.getAsDouble(), 1e-15);
        }
    }

    @Test
    void blanksAndTheNameOfTheCodeAreLeftOut() throws BadCode {
        assertEquals(
                "A(B-E17/J-K00)",
                ComponentCleanlinessCode.parse("CCC = A ( B-E17 / J-K00 )").text());
    }

    /** Levels run from 00 to 24 (two trade explanations); counts of basis N have no such end. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "A",
                "A()",
                "B(B-E17)",
                "a(b-e17)",
                "A(B-E)",
                "A(B-E25)",
                "A(E-B17)",
                "A(B-B17)",
                "A(A-E17)",
                "A(B-O17)",
                "A(B-E17/)",
                "A(B-E17)(F3)",
                "A(B-E17",
                "A(17)",
                "A(B-E-F17)",
                "A(B–E17)"
            })
    void whatIsNoCodeIsRefusedWithAReason(String text) {
        BadCode bad = assertThrows(BadCode.class, () -> ComponentCleanlinessCode.parse(text));
        assertTrue(bad.getMessage().length() > 10, bad.getMessage());
    }
}
