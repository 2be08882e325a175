package org.washwright.drools;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicLong;
import org.drools.compiler.kie.builder.impl.InternalKieModule;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.api.builder.ReleaseId;

/** Compiles canonical text; the only place where a compiler runs. */
final class UnitCompiler {

    private static final AtomicLong BUILDS = new AtomicLong();
    private static final String CLASS = ".class";
    private static final String MODEL_LIST = "drools-model";

    private UnitCompiler() {}

    /** The classes of one text. */
    static CompiledUnit compile(String drl) {
        KieServices services = KieServices.get();
        // Each build has its own coordinates and leaves the repository at once: what stays there would never be freed.
        ReleaseId id = services.newReleaseId("org.washwright.compiled", "unit", "1." + BUILDS.incrementAndGet());
        KieFileSystem files = services.newKieFileSystem().generateAndWritePomXML(id);
        files.write("src/main/resources/washwright/rules.drl", drl);
        KieBuilder builder = services.newKieBuilder(files, UnitCompiler.class.getClassLoader());
        try {
            builder.buildAll(ExecutableModelProject.class);
            if (builder.getResults().hasMessages(Message.Level.ERROR)) {
                throw new IllegalStateException("canonical rules do not compile: "
                        + builder.getResults().getMessages(Message.Level.ERROR));
            }
            return unit((InternalKieModule) builder.getKieModule());
        } finally {
            services.getRepository().removeKieModule(id);
        }
    }

    private static CompiledUnit unit(InternalKieModule module) {
        Map<String, byte[]> classes = new TreeMap<>();
        List<String> models = List.of();
        for (String file : module.getFileNames()) {
            if (file.endsWith(MODEL_LIST)) {
                models = new String(module.getBytes(file), StandardCharsets.UTF_8)
                        .lines()
                        .skip(1)
                        .filter(line -> !line.isBlank())
                        .toList();
            } else if (file.endsWith(CLASS) && !file.startsWith("org/drools/project/")) {
                // The project's own list of rule bases is left out: bases are made from the models.
                String name = file.substring(0, file.length() - CLASS.length()).replace('/', '.');
                classes.put(name, module.getBytes(file));
            }
        }
        if (models.isEmpty()) {
            throw new IllegalStateException("the compiler names no model; its output has changed its form");
        }
        return new CompiledUnit(models, classes);
    }
}
