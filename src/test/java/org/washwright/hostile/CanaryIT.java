package org.washwright.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.drools.model.codegen.ExecutableModelProject;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.ReleaseId;
import org.kie.api.runtime.KieSession;

/** The corpus has teeth: where nothing checks rule text, the same texts do run, and the canary sings. */
@Tag("slow")
class CanaryIT {

    private static final List<String> BITE = List.of(
            "a salience that calls code",
            "an enabled that calls code",
            "an inline eval",
            "a do to code",
            "a call in a list",
            "a call that is true",
            "a comparison with a call",
            "an eval in a constraint",
            "a call of a class",
            "reflection",
            "a new object",
            "an anonymous class",
            "a variable",
            "joined texts",
            "a ternary",
            "an if",
            "a try",
            "a block",
            "a name that ends the rule",
            "a line end in a comment",
            "a closed comment",
            "a quote in a reason");

    private static final String KNOWN =
            "import org.washwright.hostile.Bare.Soil;\n" + "import function org.washwright.hostile.Bare.caution;\n";

    static Stream<HostileText> biting() {
        return HostileCorpus.all().stream()
                .filter(t -> BITE.contains(t.name()) && t.text().contains("Canary"));
    }

    @ParameterizedTest
    @MethodSource("biting")
    void aTextThatIsRefusedRunsWhereNothingRefusesIt(HostileText text) {
        int songs = Canary.songs();
        run(KNOWN + text.text());
        assertTrue(Canary.songs() > songs, "the canary was silent");
    }

    @Test
    void aSoundRuleLeavesTheCanarySilent() {
        int songs = Canary.songs();
        run(KNOWN + Bombs.rule("  Soil( kind == \"soil-a\" )", "  caution(\"hazard-a\", \"So.\");"));
        assertEquals(songs, Canary.songs());
    }

    private static void run(String drl) {
        KieServices services = KieServices.get();
        ReleaseId id = services.newReleaseId("org.washwright.hostile", "bare", "1." + drl.hashCode());
        KieFileSystem files = services.newKieFileSystem().generateAndWritePomXML(id);
        files.write("src/main/resources/bare/rules.drl", drl);
        KieBuilder builder = services.newKieBuilder(files, CanaryIT.class.getClassLoader());
        builder.buildAll(ExecutableModelProject.class);
        try {
            assertTrue(
                    builder.getResults().getMessages().isEmpty(),
                    builder.getResults().getMessages()::toString);
            KieSession session = services.newKieContainer(id, CanaryIT.class.getClassLoader())
                    .newKieSession();
            session.insert(new Bare.Soil());
            assertTrue(session.fireAllRules(100) < 100, "it never stopped");
            session.dispose();
        } finally {
            services.getRepository().removeKieModule(id);
        }
    }

    @Test
    void everyTextNamedHereIsInTheCorpus() {
        List<String> names = HostileCorpus.all().stream().map(HostileText::name).toList();
        assertEquals(
                List.of(),
                BITE.stream().filter(n -> !names.contains(n)).toList(),
                () -> Arrays.toString(names.toArray()));
    }
}
