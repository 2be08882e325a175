package org.washwright.assessment;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.washwright.engine.ReferenceInterpreter;
import org.washwright.generate.Defaults;
import org.washwright.generate.Json;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.rule.Edition;

/** The same request gives the same bytes, whenever, wherever and in whatever form it is made. */
class DeterminismTest {

    @Test
    void theSameTaskGivesTheSameBytesAgain() {
        Assessor fresh = Assessor.of(SmallEdition.read(Starter.files()), ReferenceInterpreter.factory());
        Starter.demoTasks().forEach((name, task) -> {
            byte[] first = Starter.interpreted().assess(task, Starter.WISHES).bytes();
            assertArrayEquals(
                    first, Starter.interpreted().assess(task, Starter.WISHES).bytes(), name);
            assertArrayEquals(first, fresh.assess(task, Starter.WISHES).bytes(), name);
        });
    }

    @ParameterizedTest
    @CsvSource({"tr-TR, UTC", "ar-EG-u-nu-arab, Pacific/Kiritimati", "th-TH-u-ca-buddhist-nu-thai, America/St_Johns"})
    void neitherLocaleNorTimeZoneChangesAByte(String locale, String zone) {
        Map<String, byte[]> there = Defaults.under(locale, zone, () -> {
            Edition edition = SmallEdition.read(Starter.files());
            Assessor assessor = Assessor.of(edition, ReferenceInterpreter.factory());
            Map<String, byte[]> out = new TreeMap<>();
            Starter.demoTexts()
                    .forEach((name, text) -> out.put(
                            name,
                            assessor.assess(Starter.task(edition, text), Starter.WISHES)
                                    .bytes()));
            return out;
        });
        Starter.demoTexts()
                .forEach((name, text) -> assertArrayEquals(Starter.answer(text).bytes(), there.get(name), name));
    }

    @Test
    void yamlAndJsonGiveTheSameBytes() {
        Starter.demoTexts()
                .forEach((name, text) -> assertArrayEquals(
                        Starter.answer(text).bytes(),
                        Starter.answer(Json.of(text)).bytes(),
                        name));
    }

    /** The amounts are equal by definition of the units. */
    @ParameterizedTest
    @CsvSource({
        "mass: 0.31 kg, mass: 310 g",
        "mass: 0.31 kg, mass: 310000 mg",
        "wettedArea: 120 cm2, wettedArea: 0.012 m2",
        "rate: 1200 1/h, rate: 20 1/min",
        "diameter: 40 mm, diameter: 4 cm",
        "amount: 3 g/m2, amount: 300 mg/1000 cm2",
        "residue: 20 mg/m2, residue: 0.02 g/m2",
        "residue: 20 mg/m2, residue: 2 mg/1000 cm2",
        "hardness: 62 HRC, hardness: 62.0 HRC",
        "jurisdictions: [EU], jurisdictions: [eu]",
        "jurisdictions: [EU], jurisdictions: [European Union]",
        "substrate: bearing-steel, substrate: 100Cr6",
        "porous: no, porous: false",
        "kind: honing-oil, kind: [honing-oil]",
        "particleCode: A(B-E16/F-G12/H-I4/J-K00), particleCode: 'CCC=A( B-E16 / F-G12 / H-I4 / J-K00 )'",
        "'title: Bearing rings', 'title: Other rings'",
    })
    void anotherUnitOrWordForTheSameGivesTheSameBytes(String from, String to) {
        String text = Starter.demoTexts().get("bearing-rings.yaml");
        FrozenAnswer one = Starter.answer(text);
        FrozenAnswer other = Starter.answer(text.replace(from, to));
        assertNotEquals(text, text.replace(from, to));
        assertEquals(one.answer().requestHash(), other.answer().requestHash());
        assertArrayEquals(one.bytes(), other.bytes());
    }

    /** 140 °F = 60 °C = 333.15 K by definition of the scales. */
    @Test
    void aTemperatureInFahrenheitIsTheSameRequest() {
        Edition edition = SmallEdition.with("");
        Assessor assessor = Assessor.of(edition, ReferenceInterpreter.factory());
        String celsius = hash(assessor, "60 °C");
        assertEquals(celsius, hash(assessor, "140 °F"));
        assertEquals(celsius, hash(assessor, "333.15 K"));
        assertNotEquals(celsius, hash(assessor, "140.0001 °F"));
    }

    @Test
    void whatIsAskedForBesidesTheTaskIsPartOfTheRequest() {
        var task = Starter.demoTasks().get("bearing-rings.yaml");
        String plain = hash(task, Starter.WISHES);
        assertEquals(plain, hash(task, new Wishes(Map.of(), Map.of(), "2026-11-25", 0)));
        assertNotEquals(plain, hash(task, Wishes.on("2026-11-26")));
        assertNotEquals(plain, hash(task, new Wishes(Map.of(), Map.of(), "2026-11-25", 1)));
        assertNotEquals(plain, hash(task, new Wishes(Map.of("cost", 60.0), Map.of(), "2026-11-25", 0)));
        assertNotEquals(plain, hash(task, new Wishes(Map.of(), Map.of("hours-per-shift", "7 h"), "2026-11-25", 0)));
        assertEquals(
                hash(task, new Wishes(Map.of(), Map.of("hours-per-shift", "7 h"), "2026-11-25", 0)),
                hash(task, new Wishes(Map.of(), Map.of("hours-per-shift", "420 min"), "2026-11-25", 0)));
        // A weight that only repeats the edition's is no other request.
        assertEquals(plain, hash(task, new Wishes(Map.of("cost", 10.0), Map.of(), "2026-11-25", 0)));
    }

    private static String hash(org.washwright.task.CleaningTask task, Wishes wishes) {
        return Starter.interpreted().assess(task, wishes).answer().requestHash();
    }

    private static String hash(Assessor assessor, String heat) {
        return assessor.assess(
                        Starter.task(assessor.edition(), "title: t\nattributes: {att-heat: " + heat + "}\n"),
                        Starter.WISHES)
                .answer()
                .requestHash();
    }
}
