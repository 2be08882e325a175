package org.washwright.pages;

import io.quarkus.qute.CompletedStage;
import io.quarkus.qute.Engine;
import io.quarkus.qute.EvalContext;
import io.quarkus.qute.HtmlEscaper;
import io.quarkus.qute.NamespaceResolver;
import io.quarkus.qute.ReflectionValueResolver;
import io.quarkus.qute.TemplateExtension;
import io.quarkus.qute.TemplateLocator.TemplateLocation;
import io.quarkus.qute.UserTagSectionHelper;
import io.quarkus.qute.ValueResolver;
import io.quarkus.qute.Variant;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.stream.Stream;

/** The templates of the program on a bare template engine, with no server and no database behind them. */
final class Pages {

    private static final Path TEMPLATES = Path.of("src/main/resources/templates");
    private static final List<Class<?>> EXTENSIONS = List.of(
            AnswerLookup.class,
            DesignLookup.class,
            DesignShares.class,
            Figures.class,
            Intentions.class,
            Marks.class,
            Sentences.class,
            Waterfall.class,
            Words.class);

    private Pages() {}

    static Engine engine() {
        var builder = Engine.builder()
                .addDefaults()
                .addValueResolver(new ReflectionValueResolver())
                .addResultMapper(new HtmlEscaper(List.of(Variant.TEXT_HTML)))
                .addLocator(id -> located(id).map(Pages::location))
                .addNamespaceResolver(NamespaceResolver.builder("inject")
                        .resolve(context -> context.getName().equals("caller")
                                ? Map.of(
                                        "signedIn",
                                        true,
                                        "name",
                                        "engineer",
                                        "formToken",
                                        "x",
                                        "mayWrite",
                                        true,
                                        "mayTrain",
                                        true,
                                        "mayAuthor",
                                        true)
                                : null)
                        .build());
        methods()
                .filter(method -> namespace(method).isEmpty())
                .forEach(method -> builder.addValueResolver(onValue(method)));
        for (String namespace : List.of("figures", "marks")) {
            builder.addNamespaceResolver(NamespaceResolver.builder(namespace)
                    .resolveAsync(context -> inNamespace(namespace, context))
                    .build());
        }
        for (String tag : tags()) {
            builder.addSectionHelper(new UserTagSectionHelper.Factory(tag, "tags/" + tag + ".html"));
        }
        return builder.build();
    }

    private static List<String> tags() {
        try (Stream<Path> files = Files.list(TEMPLATES.resolve("tags"))) {
            return files.map(file -> file.getFileName().toString().replace(".html", ""))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Optional<Path> located(String id) {
        return Stream.of(id, id + ".html")
                .map(TEMPLATES::resolve)
                .filter(Files::isRegularFile)
                .findFirst();
    }

    private static TemplateLocation location(Path file) {
        return new TemplateLocation() {
            @Override
            public Reader read() {
                try {
                    return new StringReader(Files.readString(file));
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            }

            @Override
            public Optional<Variant> getVariant() {
                return Optional.of(Variant.forContentType(Variant.TEXT_HTML));
            }
        };
    }

    private static Stream<Method> methods() {
        return EXTENSIONS.stream()
                .flatMap(type -> Stream.of(type.getDeclaredMethods()))
                .filter(method -> Modifier.isPublic(method.getModifiers()));
    }

    private static String namespace(Method method) {
        TemplateExtension own = method.getAnnotation(TemplateExtension.class);
        TemplateExtension extension =
                own != null ? own : method.getDeclaringClass().getAnnotation(TemplateExtension.class);
        return extension.namespace();
    }

    private static ValueResolver onValue(Method method) {
        return ValueResolver.builder()
                .priority(5)
                .appliesTo(context -> context.getBase() != null
                        && method.getName().equals(context.getName())
                        && method.getParameterTypes()[0].isInstance(context.getBase())
                        && method.getParameterCount() == context.getParams().size() + 1)
                .resolveAsync(context -> called(method, context, context.getBase()))
                .build();
    }

    private static CompletionStage<Object> inNamespace(String namespace, EvalContext context) {
        return methods()
                .filter(method ->
                        namespace(method).equals(namespace) && method.getName().equals(context.getName()))
                .findFirst()
                .map(method -> called(method, context))
                .orElseGet(() -> CompletedStage.failure(
                        new IllegalArgumentException(namespace + " has no '" + context.getName() + "'")));
    }

    private static CompletionStage<Object> called(Method method, EvalContext context, Object... first) {
        CompletableFuture<Object> result = CompletableFuture.completedFuture(null);
        Object[] values = new Object[method.getParameterCount()];
        System.arraycopy(first, 0, values, 0, first.length);
        for (int i = 0; i < context.getParams().size(); i++) {
            int at = first.length + i;
            result = result.thenCombine(context.evaluate(context.getParams().get(i)), (ignored, value) -> {
                values[at] = value;
                return null;
            });
        }
        return result.thenApply(ignored -> invoked(method, values));
    }

    private static Object invoked(Method method, Object... values) {
        try {
            return method.invoke(null, values);
        } catch (InvocationTargetException e) {
            throw new IllegalStateException(e.getCause());
        } catch (IllegalAccessException e) {
            throw new IllegalStateException(e);
        }
    }
}
