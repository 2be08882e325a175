package org.washwright.bench;

import java.util.ArrayList;
import java.util.List;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieBase;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.ReleaseId;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.FactHandle;

/** Drools as anybody would use it: typed records, literal equality first, matches noted in the consequence. */
final class BareDrools {

    private BareDrools() {}

    static Contender withNewSessions(Synthetic synthetic) {
        KieBase base = base(synthetic);
        return n -> {
            KieSession session = base.newKieSession();
            try {
                List<IfChain.Hit> hits = new ArrayList<>();
                session.setGlobal("hits", hits);
                Synthetic.Task task = synthetic.tasks.get(n);
                task.soils().forEach(session::insert);
                task.materials().forEach(session::insert);
                task.features().forEach(session::insert);
                session.fireAllRules();
                return hits.size();
            } finally {
                session.dispose();
            }
        };
    }

    static Contender withOneSession(Synthetic synthetic) {
        KieSession session = base(synthetic).newKieSession();
        return n -> {
            List<IfChain.Hit> hits = new ArrayList<>();
            session.setGlobal("hits", hits);
            Synthetic.Task task = synthetic.tasks.get(n);
            List<FactHandle> handles = new ArrayList<>();
            task.soils().forEach(f -> handles.add(session.insert(f)));
            task.materials().forEach(f -> handles.add(session.insert(f)));
            task.features().forEach(f -> handles.add(session.insert(f)));
            session.fireAllRules();
            handles.forEach(session::delete);
            session.fireAllRules();
            return hits.size();
        };
    }

    private static KieBase base(Synthetic synthetic) {
        StringBuilder drl = new StringBuilder("package bench;\nimport org.washwright.bench.Synthetic.Soil;\n"
                + "import org.washwright.bench.Synthetic.Material;\nimport org.washwright.bench.Synthetic.Feature;\n"
                + "import org.washwright.bench.IfChain.Hit;\nglobal java.util.List hits;\n");
        for (Synthetic.Spec r : synthetic.rules) {
            drl.append("rule \"" + r.id() + "\" when\n  $s : Soil(kind == \"soil-" + r.soil() + "\", amount > "
                    + r.amount() + ")\n");
            if (r.patterns() > 1) {
                drl.append("  $m : Material(substrate == \"substrate-" + r.material() + "\", hardness > "
                        + r.hardness() + ")\n");
            }
            if (r.patterns() > 2) {
                drl.append("  not Feature(kind == \"feature-" + r.feature() + "\", slenderness > " + r.depth() + ")\n");
            }
            drl.append("then\n  hits.add(new Hit(\"" + r.id() + "\", $s, " + (r.patterns() > 1 ? "$m" : "null")
                    + "));\nend\n");
        }
        KieServices services = KieServices.get();
        ReleaseId id = services.newReleaseId("bench", "bare", "1");
        KieFileSystem files = services.newKieFileSystem().generateAndWritePomXML(id);
        files.write("src/main/resources/bench/rules.drl", drl.toString());
        KieBuilder builder = services.newKieBuilder(files, BareDrools.class.getClassLoader());
        builder.buildAll(ExecutableModelProject.class);
        if (!builder.getResults().getMessages().isEmpty()) {
            throw new IllegalStateException(builder.getResults().getMessages().toString());
        }
        return services.newKieContainer(id, BareDrools.class.getClassLoader()).getKieBase();
    }
}
