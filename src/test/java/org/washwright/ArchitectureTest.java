package org.washwright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import jakarta.persistence.Entity;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The shape of the program: who may know whom.
 *
 * <p>A package that does not exist yet simply has nothing to obey. A new package has to be entered here first.
 */
@AnalyzeClasses(packages = "org.washwright", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    private static final String[] PURE = packages(
            "document",
            "quantity",
            "science",
            "task",
            "catalogue",
            "rule",
            "engine",
            "line",
            "assessment",
            "plant",
            "cases",
            "analysis",
            "explain",
            "assist");
    private static final Set<String> CORE = Set.of(
            "document",
            "quantity",
            "science",
            "task",
            "catalogue",
            "rule",
            "engine",
            "line",
            "assessment",
            "plant",
            "cases",
            "analysis",
            "explain",
            "coverage",
            "grid",
            "drools",
            "exchange",
            "taskfile",
            "assist");

    /** What writes an answer down for people outside; only the edges know it. */
    private static final String REPORT = "report";

    /** What answers tasks by the core alone, for programs and for many tasks at once. */
    private static final Set<String> HEADLESS = Set.of("library", "batch");

    private static final Set<String> FEATURES = Set.of(
            "problem", "http", "access", "ledger", "pages", "rulebook", "casework", "reasons", "training", "editing");

    // ---- The pure core, from the bottom up.

    @ArchTest
    static final ArchRule document_knows_nobody = package_("document").mayKnow();

    @ArchTest
    static final ArchRule quantity_knows_document = package_("quantity").mayKnow("document");

    @ArchTest
    static final ArchRule science_knows_quantity = package_("science").mayKnow("quantity", "document");

    @ArchTest
    static final ArchRule catalogue_knows_task_because_its_properties_are_values =
            package_("catalogue").mayKnow("task", "quantity", "document");

    @ArchTest
    static final ArchRule task_knows_science_and_sees_the_edition_through_a_vocabulary =
            package_("task").mayKnow("science", "quantity", "document");

    @ArchTest
    static final ArchRule rule_knows_task_and_catalogue =
            package_("rule").mayKnow("task", "catalogue", "quantity", "document");

    @ArchTest
    static final ArchRule engine_knows_rule_and_science =
            package_("engine").mayKnow("rule", "science", "task", "catalogue", "quantity", "document");

    @ArchTest
    static final ArchRule line_knows_engine_and_science =
            package_("line").mayKnow("engine", "rule", "science", "task", "catalogue", "quantity", "document");

    @ArchTest
    static final ArchRule assessment_knows_engine_and_line = package_("assessment")
            .mayKnow("line", "engine", "rule", "science", "task", "catalogue", "quantity", "document");

    @ArchTest
    static final ArchRule plant_is_held_against_outcomes = package_("plant")
            .mayKnow("assessment", "line", "engine", "rule", "task", "catalogue", "quantity", "document");

    @ArchTest
    static final ArchRule cases_are_held_against_outcomes = package_("cases")
            .mayKnow("assessment", "line", "engine", "rule", "task", "catalogue", "quantity", "document");

    @ArchTest
    static final ArchRule analysis_tries_tasks_and_proposes_cases = package_("analysis")
            .mayKnow("cases", "assessment", "line", "engine", "rule", "task", "catalogue", "quantity", "document");

    @ArchTest
    static final ArchRule explain_reads_answers_and_tries_other_tasks = package_("explain")
            .mayKnow(
                    "analysis",
                    "assessment",
                    "line",
                    "engine",
                    "rule",
                    "science",
                    "task",
                    "catalogue",
                    "quantity",
                    "document");

    @ArchTest
    static final ArchRule coverage_counts_over_outcomes = package_("coverage")
            .mayKnow("analysis", "cases", "assessment", "line", "engine", "rule", "task", "catalogue");

    @ArchTest
    static final ArchRule grid_counts_processes_over_kinds_of_work =
            package_("grid").mayKnow("assessment", "line", "rule", "task", "catalogue", "document");

    @ArchTest
    static final ArchRule assist_knows_what_rules_are_made_of_and_reads_them_through_a_port =
            package_("assist").mayKnow("rule", "task", "catalogue", "quantity", "document");

    // ---- Around the core.

    @ArchTest
    static final ArchRule drools_knows_rule_and_engine =
            package_("drools").mayKnow("rule", "engine", "science", "task", "catalogue", "quantity", "document");

    @ArchTest
    static final ArchRule exchange_knows_rule_assessment_and_what_is_below = package_("exchange")
            .mayKnow(
                    "grid",
                    "analysis",
                    "cases",
                    "taskfile",
                    "rule",
                    "assessment",
                    "line",
                    "engine",
                    "drools",
                    "science",
                    "task",
                    "catalogue",
                    "quantity",
                    "document");

    @ArchTest
    static final ArchRule taskfile_knows_the_task_and_the_words_of_an_edition =
            package_("taskfile").mayKnow("rule", "task", "catalogue", "quantity", "document");

    @ArchTest
    static final ArchRule report_shows_an_answer_and_only_the_edges_know_it =
            package_(REPORT).mayKnow("assessment", "document", "quantity");

    @ArchTest
    static final ArchRule a_report_needs_no_server_no_database_and_no_template = noClasses()
            .that()
            .resideInAPackage("org.washwright.report..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "jakarta..", "io.quarkus..", "io.vertx..", "org.hibernate..", "java.net..", "java.sql..");

    // ---- The features.

    @ArchTest
    static final ArchRule problem_knows_only_document = package_("problem").mayKnow("document");

    @ArchTest
    static final ArchRule http_knows_problem = package_("http").mayKnow("problem", "document");

    @ArchTest
    static final ArchRule access_knows_problem = package_("access").mayKnow("problem", "document");

    @ArchTest
    static final ArchRule ledger_knows_access = package_("ledger").mayKnow("access", "problem", "document");

    @ArchTest
    static final ArchRule pages_know_the_answer = package_("pages").mayKnow("explain", "assessment", "document");

    @ArchTest
    static final ArchRule rulebook_knows_the_core_and_who_is_asking =
            package_("rulebook").mayKnow(with(CORE, "problem", "http", "access", "ledger", "pages"));

    @ArchTest
    static final ArchRule casework_knows_rulebook = package_("casework")
            .mayKnow(with(CORE, "problem", "http", "access", "ledger", "pages", "rulebook", REPORT));

    @ArchTest
    static final ArchRule reasons_explain_what_casework_keeps = package_("reasons")
            .mayKnow(with(CORE, "problem", "http", "access", "ledger", "pages", "rulebook", "casework"));

    @ArchTest
    static final ArchRule training_knows_casework_and_reasons = package_("training")
            .mayKnow(with(CORE, "problem", "http", "access", "ledger", "pages", "rulebook", "casework", "reasons"));

    @ArchTest
    static final ArchRule editing_writes_drafts_and_keeps_answers_as_cases = package_("editing")
            .mayKnow(with(CORE, "problem", "http", "access", "ledger", "pages", "rulebook", "casework"));

    @ArchTest
    static final ArchRule library_knows_the_core_and_no_feature =
            package_("library").mayKnow(with(CORE));

    @ArchTest
    static final ArchRule batch_answers_by_the_library =
            package_("batch").mayKnow("library", "taskfile", "assessment", "rule", "task", "quantity", "document");

    @ArchTest
    static final ArchRule cli_knows_the_core_and_no_feature =
            package_("cli").mayKnow(with(CORE, "library", "batch", REPORT));

    @ArchTest
    static final ArchRule app_knows_everybody = package_("app")
            .mayKnow(with(
                    CORE,
                    Stream.concat(FEATURES.stream(), Stream.of("cli", "library", "batch", REPORT))
                            .toArray(String[]::new)));

    @ArchTest
    static final ArchRule app_is_imported_by_nobody = noClasses()
            .that()
            .resideOutsideOfPackage("org.washwright.app..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.washwright.app..")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule every_package_has_its_place_in_the_design = classes()
            .should(new ArchCondition<>("reside in a package that this test names") {
                @Override
                public void check(JavaClass type, ConditionEvents events) {
                    String feature = featureOf(type);
                    boolean known = CORE.contains(feature)
                            || FEATURES.contains(feature)
                            || HEADLESS.contains(feature)
                            || Set.of("", "app", "cli", REPORT).contains(feature);
                    events.add(new SimpleConditionEvent(
                            type,
                            known,
                            type.getName() + " lies in the package '" + feature + "', which has no place"));
                }
            });

    @ArchTest
    static final ArchRule no_cycles =
            slices().matching("org.washwright.(*)..").should().beFreeOfCycles();

    // ---- What must stay outside.

    @ArchTest
    static final ArchRule the_pure_core_knows_no_framework = noClasses()
            .that()
            .resideInAnyPackage(PURE)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "jakarta..",
                    "javax.inject..",
                    "io.quarkus..",
                    "io.smallrye..",
                    "io.vertx..",
                    "org.eclipse.microprofile..",
                    "org.hibernate..",
                    "org.kie..",
                    "org.drools..",
                    "org.jboss..",
                    "org.slf4j..",
                    "java.util.logging..",
                    "org.apache.logging..",
                    "org.apache.commons.logging..")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule document_stands_on_java_and_readers_of_yaml_and_json_alone = classes()
            .that()
            .resideInAPackage("org.washwright.document..")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "java..",
                    "org.yaml.snakeyaml..",
                    "com.fasterxml.jackson..",
                    "org.erdtman.jcs..",
                    "org.washwright.document..")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule quantity_and_science_stand_on_java_alone = classes()
            .that()
            .resideInAnyPackage(packages("quantity", "science"))
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    Stream.concat(Stream.of("java.."), Arrays.stream(packages("document", "quantity", "science")))
                            .toArray(String[]::new))
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule only_drools_knows_the_rule_engine = noClasses()
            .that()
            .resideOutsideOfPackage("org.washwright.drools..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.drools..", "org.kie..", "com.github.javaparser..");

    @ArchTest
    static final ArchRule the_command_line_needs_no_database_and_no_server = noClasses()
            .that()
            .resideInAnyPackage(packages("cli", "library", "batch"))
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "jakarta.persistence..",
                    "jakarta.ws.rs..",
                    "java.sql..",
                    "javax.sql..",
                    "org.hibernate..",
                    "io.quarkus..",
                    "io.vertx..")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule no_entity_leaves_its_feature = classes()
            .that()
            .areAnnotatedWith(Entity.class)
            .should(new ArchCondition<>("be known only inside their own feature") {
                @Override
                public void check(JavaClass entity, ConditionEvents events) {
                    for (Dependency use : entity.getDirectDependenciesToSelf()) {
                        boolean inside = featureOf(use.getOriginClass()).equals(featureOf(entity));
                        events.add(new SimpleConditionEvent(entity, inside, use.getDescription()));
                    }
                }
            })
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule the_core_prints_nothing_and_reads_no_clock = noClasses()
            .that()
            .resideInAnyPackage(PURE)
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .callMethod(java.time.Instant.class, "now")
            .orShould()
            .callMethod(java.time.LocalDate.class, "now")
            .orShould()
            .callMethod(java.util.UUID.class, "randomUUID")
            .allowEmptyShould(true);

    // ---- How the rules above are put into words.

    private static Knowing package_(String name) {
        return new Knowing(name);
    }

    private record Knowing(String name) {
        /** The package may depend on these packages of ours and on no other of them. */
        ArchRule mayKnow(String... others) {
            Set<String> allowed = new TreeSet<>(Arrays.asList(others));
            return classes()
                    .that()
                    .resideInAPackage("org.washwright." + name + "..")
                    .should(new ArchCondition<>("know none of our packages but " + allowed) {
                        @Override
                        public void check(JavaClass type, ConditionEvents events) {
                            for (Dependency use : type.getDirectDependenciesFromSelf()) {
                                String target = featureOf(use.getTargetClass());
                                boolean fine = !isOurs(use.getTargetClass())
                                        || target.isEmpty()
                                        || target.equals(name)
                                        || allowed.contains(target);
                                events.add(new SimpleConditionEvent(type, fine, use.getDescription()));
                            }
                        }
                    })
                    .allowEmptyShould(true);
        }
    }

    private static boolean isOurs(JavaClass type) {
        return type.getPackageName().startsWith("org.washwright");
    }

    /** The package below ours that a class belongs to, such as {@code access}. */
    private static String featureOf(JavaClass type) {
        String[] steps = type.getPackageName().split("\\.", -1);
        return steps.length > 2 ? steps[2] : "";
    }

    private static String[] packages(String... names) {
        return Arrays.stream(names).map(name -> "org.washwright." + name + "..").toArray(String[]::new);
    }

    private static String[] with(Set<String> some, String... more) {
        return Stream.concat(some.stream(), Arrays.stream(more))
                .collect(Collectors.toCollection(TreeSet::new))
                .toArray(String[]::new);
    }
}
