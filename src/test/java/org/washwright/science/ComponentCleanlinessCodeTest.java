package org.washwright.science;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.washwright.science.ComponentCleanlinessCode.BadCode;
import org.washwright.science.ComponentCleanlinessCode.Limit;
import org.washwright.science.ComponentCleanlinessCode.Meets;

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

    /**
     * A measured code against a demanded one; the meaning of levels, hyphens and bases as in ISO 16232:2018, the verdicts worked
     * by hand from the bounds of its levels.
     */
    @ParameterizedTest
    @CsvSource({
        // measured, demanded, verdict
        "A(B-E16/F-G14), A(B-E17/F-G14), YES",
        "A(B-E17/F-G15), A(B-E17/F-G14), NO",
        "A(B-E16/F-G14), A(B-E16), YES",
        "A(B-E16), A(B-E17/F-G14), UNDECIDED",
        "A(B-E18), A(B-E17/F-G14), NO",
        // Another basis says nothing.
        "V(B-E10), A(B-E17), UNDECIDED",
        "N(B-E10), A(B-E17), UNDECIDED",
        // Four classes of up to 16 are at most 64, level 6; more than 8 each are more than 32, above level 5.
        "A(B4/C4/D4/E4), A(B-E6), YES",
        "A(B4/C4/D4/E4), A(B-E5), NO",
        "A(B4/C4/D3/E3), A(B-E5), UNDECIDED",
        // A sum that is within leaves no class beyond; one that is above may lie in the other class.
        "A(B-E6), A(B6/E6), YES",
        "A(B-E7), A(B6), UNDECIDED",
        "A(B-E7), A(BCDE6), UNDECIDED",
        // Level 0 is up to one particle and more than none; 00 is none.
        "A(J-K00), A(J-K00), YES",
        "A(J-K0), A(J-K00), NO",
        "A(J0), A(J-K00), NO",
        "A(J00), A(J-K00), UNDECIDED",
        "A(H-K00), A(J-K00), YES",
        // Plain counts are what they are.
        "N(J3/K0), N(J-K3), YES",
        "N(J3/K1), N(J-K3), NO",
        "N(J3), N(J-K3), UNDECIDED",
        "N(J4), N(J-K3), NO",
        // What was measured twice is not to be relied on.
        "A(B-E10/E10), A(B-E17), UNDECIDED",
    })
    void aMeasuredCodeMeetsADemandedOneOnlyWhereItsLevelsLeaveNoDoubt(String measured, String demanded, Meets verdict)
            throws BadCode {
        assertEquals(
                verdict,
                ComponentCleanlinessCode.meets(
                        ComponentCleanlinessCode.parse(measured), ComponentCleanlinessCode.parse(demanded)));
    }

    /** Whatever counts lie behind the levels: where the verdict is sure, counting says the same. */
    @Test
    void sureVerdictsHoldForEveryCountBehindTheLevels() throws BadCode {
        Random random = new Random(19);
        int sure = 0;
        for (int i = 0; i < 3000; i++) {
            double[] counts = new double[4];
            StringBuilder code = new StringBuilder("A(");
            for (int c = 0; c < 4; c++) {
                counts[c] = random.nextInt(4) == 0 ? 0 : StrictMath.exp(random.nextDouble() * 6);
                int level = ContaminationLevel.of(counts[c]).orElseThrow();
                code.append(c == 0 ? "" : "/").append((char) ('B' + c)).append(ContaminationLevel.text(level));
            }
            int allowed = random.nextInt(12) - 1;
            var demand = ComponentCleanlinessCode.parse("A(B-E" + ContaminationLevel.text(allowed) + ")");
            Meets verdict = ComponentCleanlinessCode.meets(ComponentCleanlinessCode.parse(code + ")"), demand);
            boolean within = counts[0] + counts[1] + counts[2] + counts[3] <= ContaminationLevel.upperBound(allowed);
            if (verdict != Meets.UNDECIDED) {
                sure++;
                assertEquals(within ? Meets.YES : Meets.NO, verdict, code + ") " + demand.text());
            }
        }
        assertTrue(sure > 1500, sure + " of 3000 were sure");
    }

    /** Hyphenated classes share one sum, so none of them may have more; letters together have the limit each. */
    @ParameterizedTest
    @CsvSource({
        "A(B-E17/FG12), B, 130000",
        "A(B-E17/FG12), G, 4000",
        "A(B-E17/E5), E, 32",
        "A(B-E17/J-K00), K, 0",
        "N(C-E32000), D, 32000",
        "A(B-E17), H, -1",
    })
    void eachClassHasTheTightestLimitOnIt(String code, SizeClass size, double count) throws BadCode {
        var largest = ComponentCleanlinessCode.parse(code).largestCount(size);
        assertEquals(count, largest.orElse(-1));
    }
}
