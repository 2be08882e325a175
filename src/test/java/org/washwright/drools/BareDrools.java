package org.washwright.drools;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BiConsumer;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieBase;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.api.builder.ReleaseId;
import org.kie.api.definition.type.FactType;
import org.kie.api.event.rule.BeforeMatchFiredEvent;
import org.kie.api.event.rule.DefaultAgendaEventListener;
import org.kie.api.runtime.KieSession;
import org.washwright.engine.Fact;
import org.washwright.rule.Edition;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Field;
import org.washwright.task.FieldType;
import org.washwright.task.Value;

/** Rules of experts as Drools itself understands them, over types declared in the rule text. */
final class BareDrools {

    private static final String PACKAGE = "bare";
    private static final AtomicLong BUILDS = new AtomicLong();

    private final KieBase base;

    private BareDrools(KieBase base) {
        this.base = base;
    }

    /** What came of one run: each match by rule and matched facts, and all conclusions; both sorted. */
    record Found(List<String> matches, List<String> conclusions) {}

    /** Compiles rule texts of editions whose fact types are alike. */
    static BareDrools compile(Edition types, List<String> plain) {
        KieServices services = KieServices.get();
        ReleaseId id = services.newReleaseId("org.washwright.bare", "editions", "1." + BUILDS.incrementAndGet());
        KieFileSystem files = services.newKieFileSystem().generateAndWritePomXML(id);
        String head = "package " + PACKAGE + ";\nglobal java.util.function.BiConsumer recorder;\n";
        files.write("src/main/resources/bare/types.drl", head + declarations(types));
        for (int i = 0; i < plain.size(); i++) {
            files.write("src/main/resources/bare/rules" + i + ".drl", head + plain.get(i));
        }
        KieBuilder builder = services.newKieBuilder(files, BareDrools.class.getClassLoader());
        builder.buildAll(ExecutableModelProject.class);
        try {
            if (builder.getResults().hasMessages(Message.Level.ERROR)) {
                throw new AssertionError(builder.getResults().getMessages(Message.Level.ERROR) + "\n" + plain);
            }
            return new BareDrools(services.newKieContainer(id, BareDrools.class.getClassLoader())
                    .getKieBase());
        } finally {
            services.getRepository().removeKieModule(id);
        }
    }

    private static String declarations(Edition edition) {
        StringBuilder out = new StringBuilder();
        edition.types().byName().forEach((name, type) -> {
            if (!name.equals(FactTypes.STAGE)) {
                out.append("declare ").append(BareText.type(name)).append('\n');
                if (name.startsWith(FactTypes.ATTRIBUTE)) {
                    out.append("  id : String\n");
                }
                type.fields()
                        .values()
                        .forEach(f -> out.append("  ")
                                .append(BareText.flat(f.name()))
                                .append(" : ")
                                .append(java(f))
                                .append('\n'));
                out.append("end\n");
            }
        });
        return out.toString();
    }

    private static String java(Field field) {
        if (field.name().equals("node")) {
            return "java.util.Set";
        }
        return field.type() instanceof FieldType.NumberType
                ? "Double"
                : field.type() instanceof FieldType.FactType ? "Object" : "String";
    }

    /** Runs the rules whose ids start with a prefix. */
    Found run(List<Fact> facts, String prefix) {
        KieSession session = base.newKieSession();
        try {
            Recorder recorder = new Recorder(session, base.getFactType(PACKAGE, FactTypes.CONCLUSION));
            session.setGlobal("recorder", recorder);
            session.addEventListener(recorder.listener());
            Map<String, Object> made = new HashMap<>();
            facts.forEach(f -> {
                made.put(f.id(), bean(f, made));
                recorder.insert(made.get(f.id()), f.id());
            });
            session.fireAllRules(m -> m.getRule().getName().startsWith(prefix));
            return new Found(recorder.matches.stream().sorted().toList(), List.copyOf(recorder.conclusions));
        } finally {
            session.dispose();
        }
    }

    /** What a fact refers to, such as the process of a meeting, has been made before it. */
    private Object bean(Fact fact, Map<String, Object> made) {
        FactType type = base.getFactType(PACKAGE, BareText.type(fact.type().name()));
        Map<String, Object> values = new HashMap<>();
        if (fact.type().name().startsWith(FactTypes.ATTRIBUTE)) {
            values.put("id", fact.id().substring(fact.id().indexOf('/') + 1));
        }
        fact.type().fields().values().forEach(f -> values.put(BareText.flat(f.name()), plain(fact.value(f), made)));
        return make(type, values);
    }

    private static Object make(FactType type, Map<String, Object> values) {
        try {
            Object bean = type.newInstance();
            type.setFromMap(bean, values);
            return bean;
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(e);
        }
    }

    private static Object plain(Value value, Map<String, Object> made) {
        if (value instanceof Value.Reference r) {
            return Objects.requireNonNull(made.get(r.factId()), r.factId());
        }
        if (value instanceof Value.NotApplicable) {
            return null;
        }
        if (value instanceof Value.Number n) {
            return n.span().low();
        }
        return value instanceof Value.AllOf a
                ? a.terms()
                : ((Value.OneOf) value).terms().first();
    }

    /** Takes matches and conclusions; called by rules. */
    private static final class Recorder implements BiConsumer<String, Object> {
        private final KieSession session;
        private final FactType conclusion;
        private final Map<Object, String> ids = new IdentityHashMap<>();
        private final Set<String> conclusions = new TreeSet<>();
        private final List<String> matches = new ArrayList<>();

        Recorder(KieSession session, FactType conclusion) {
            this.session = session;
            this.conclusion = conclusion;
        }

        private void insert(Object bean, String id) {
            ids.put(bean, id);
            session.insert(bean);
        }

        /** Draws a conclusion; twice drawn, it is one. */
        @Override
        public void accept(String name, Object subject) {
            String id = "conclusions/" + name + (subject == null ? "" : "/" + ids.get(subject));
            if (conclusions.add(id)) {
                Map<String, Object> values = new HashMap<>();
                values.put("id", name);
                values.put("subject", subject);
                insert(make(conclusion, values), id);
            }
        }

        private DefaultAgendaEventListener listener() {
            return new DefaultAgendaEventListener() {
                @Override
                public void beforeMatchFired(BeforeMatchFiredEvent event) {
                    StringBuilder key =
                            new StringBuilder(event.getMatch().getRule().getName());
                    // The variables $p0, $p1, ... are the patterns that match a fact, in the order written.
                    event.getMatch().getDeclarationIds().stream()
                            .filter(d -> d.startsWith("$p"))
                            .sorted()
                            .forEach(d -> key.append(' ')
                                    .append(ids.get(event.getMatch().getDeclarationValue(d))));
                    matches.add(key.toString());
                }
            };
        }
    }
}
