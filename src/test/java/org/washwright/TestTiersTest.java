package org.washwright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAnnotation;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.properties.CanBeAnnotated;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Set;
import org.junit.jupiter.api.Tag;

/** A test that the quick tier leaves out must run in the long one: else it would run nowhere. */
@AnalyzeClasses(packages = "org.washwright", importOptions = ImportOption.OnlyIncludeTests.class)
class TestTiersTest {
    private static final DescribedPredicate<CanBeAnnotated> LONG =
            DescribedPredicate.describe("tagged slow, browser or load", TestTiersTest::isLong);

    @ArchTest
    static final ArchRule long_test_classes_are_named_it = classes()
            .that(LONG.forSubtype())
            .should()
            .haveSimpleNameEndingWith("IT")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule long_test_methods_stand_in_such_classes = noMethods()
            .that(LONG.forSubtype())
            .should()
            .beDeclaredInClassesThat(DescribedPredicate.describe(
                    "are not named *IT",
                    (JavaClass type) -> !type.getSimpleName().endsWith("IT")))
            .allowEmptyShould(true);

    private static boolean isLong(CanBeAnnotated element) {
        return element.isAnnotatedWith(Tag.class)
                && element instanceof com.tngtech.archunit.core.domain.properties.HasAnnotations<?> annotated
                && annotated
                        .tryGetAnnotationOfType(Tag.class.getName())
                        .flatMap(TestTiersTest::value)
                        .filter(Set.of("slow", "browser", "load")::contains)
                        .isPresent();
    }

    private static java.util.Optional<String> value(JavaAnnotation<?> tag) {
        return tag.get("value").map(Object::toString);
    }
}
