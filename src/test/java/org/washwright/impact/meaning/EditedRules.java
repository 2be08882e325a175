package org.washwright.impact.meaning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.washwright.generate.SmallEdition;

/** Rules made of known parts, so that a test knows what it changed without asking what it tests. */
final class EditedRules {

    static final List<String> CONDITIONS = List.of(
            "hardness >= \"20 HRC\"",
            "hardness < \"50 HRC\"",
            "substrate == \"substrate-a\"",
            "substrate.rusts == true",
            "substrate.family in (\"family-a\", \"family-c\")",
            "substrate != \"substrate-c\"",
            "(porous == true || substrate == \"substrate-b\")");

    static final List<String> EFFECTS = List.of(
            "caution(\"hazard-a\", ",
            "caution(\"hazard-b\", ",
            "ruleOut(\"water\", \"main\", ",
            "support(\"oil\", \"works\", 1, ",
            "support(\"oil\", \"works\", 3, ",
            "oppose(\"water-a\", \"fine\", 2, ",
            "require(\"oil\", \"last\", after(\"main\"), ",
            "limit(\"water-b\", \"main\", \"temperature\", max(\"70 °C\"), ",
            "limit(\"water-b\", \"main\", \"temperature\", max(\"60 °C\"), ");

    /** One rule over a material, and perhaps over the part. */
    record Made(
            String id,
            String file,
            String title,
            String note,
            String reason,
            boolean heavy,
            List<String> conditions,
            List<String> effects) {

        Made(Random random, int number) {
            this(
                    "R-" + number,
                    "rules/" + (random.nextBoolean() ? "a" : "b") + ".drl",
                    "title " + number,
                    "",
                    "Because of " + number + ".",
                    random.nextInt(3) == 0,
                    some(random, CONDITIONS, 2),
                    some(random, EFFECTS, 1 + random.nextInt(2)));
        }

        String drl() {
            StringBuilder out =
                    new StringBuilder("rule \"" + title + "\"\n  @id(\"" + id + "\") @basis(\"common practice\")"
                            + (note.isEmpty() ? "" : " @note(\"" + note + "\")") + "\nwhen\n");
            if (heavy) {
                out.append("  Part(mass >= \"1 kg\")\n");
            }
            out.append("  $m : Material(").append(String.join(", ", conditions)).append(")\nthen\n");
            effects.forEach(
                    e -> out.append("  ").append(e).append('"').append(reason).append("\");\n"));
            return out.append("end\n\n").toString();
        }

        Made with(String newId, String newFile, String newTitle, String newNote, String newReason) {
            return new Made(newId, newFile, newTitle, newNote, newReason, heavy, conditions, effects);
        }

        boolean doesTheSameAs(Made other) {
            return heavy == other.heavy
                    && conditions.containsAll(other.conditions)
                    && other.conditions.containsAll(conditions)
                    && effects.equals(other.effects);
        }

        Made with(boolean nowHeavy, List<String> nowConditions, List<String> nowEffects) {
            return new Made(id, file, title, note, reason, nowHeavy, nowConditions, nowEffects);
        }
    }

    private EditedRules() {}

    static <T> List<T> some(Random random, List<T> all, int n) {
        List<T> rest = new ArrayList<>(all);
        List<T> out = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            out.add(rest.remove(random.nextInt(rest.size())));
        }
        return out;
    }

    /** The state that these rules make, with what else the texts hold. */
    static State state(List<Made> rules, Map<String, String> texts) {
        Map<String, String> all = new TreeMap<>(texts);
        rules.forEach(r -> all.merge(r.file(), r.drl(), String::concat));
        return States.read(all);
    }

    static State state(List<Made> rules) {
        return state(rules, SmallEdition.texts());
    }
}
