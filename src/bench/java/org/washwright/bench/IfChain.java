package org.washwright.bench;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.net.URI;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/**
 * The baseline: the rules as somebody would write them by hand in Java, one {@code if} after another over plain records. It
 * records each match, as all do.
 */
public final class IfChain {

    /** A match. */
    public record Hit(String rule, Object first, Object second) {}

    /** What the written class does. */
    public interface Rules {
        /** Adds every match. */
        void run(Synthetic.Task task, List<Hit> hits);
    }

    private IfChain() {}

    static Contender of(Synthetic synthetic) throws IOException, ReflectiveOperationException {
        Rules rules = compiled(source(synthetic));
        return n -> {
            List<Hit> hits = new java.util.ArrayList<>();
            rules.run(synthetic.tasks.get(n), hits);
            return hits.size();
        };
    }

    private static String source(Synthetic synthetic) {
        StringBuilder out = new StringBuilder("package bench; import java.util.List;\n"
                + "import org.washwright.bench.Synthetic.*; import org.washwright.bench.IfChain.*;\n"
                + "public final class Chain implements Rules {\n"
                + "  public void run(Task task, List<Hit> hits) {\n");
        for (int i = 0; i < synthetic.rules.size(); i++) {
            out.append("    rule").append(i).append("(task, hits);\n");
        }
        out.append("  }\n");
        for (int i = 0; i < synthetic.rules.size(); i++) {
            Synthetic.Spec r = synthetic.rules.get(i);
            out.append("  private static void rule" + i + "(Task task, List<Hit> hits) {\n");
            out.append("    for (Soil s : task.soils()) if (s.kind().equals(\"soil-" + r.soil() + "\") && s.amount() > "
                    + r.amount() + ") {\n");
            if (r.patterns() == 1) {
                out.append("      hits.add(new Hit(\"" + r.id() + "\", s, null));\n");
            } else {
                out.append("      for (Material m : task.materials()) if (m.substrate().equals(\"substrate-"
                        + r.material() + "\") && m.hardness() > " + r.hardness() + ") {\n");
                if (r.patterns() > 2) {
                    out.append("        boolean found = false;\n        for (Feature f : task.features()) "
                            + "if (f.kind().equals(\"feature-" + r.feature() + "\") && f.slenderness() > " + r.depth()
                            + ") { found = true; break; }\n        if (found) continue;\n");
                }
                out.append("        hits.add(new Hit(\"" + r.id() + "\", s, m));\n      }\n");
            }
            out.append("    }\n  }\n");
        }
        return out.append("}\n").toString();
    }

    private static Rules compiled(String source) throws IOException, ReflectiveOperationException {
        Path folder = Files.createTempDirectory("if-chain");
        JavaFileObject file =
                new SimpleJavaFileObject(URI.create("mem:///bench/Chain.java"), JavaFileObject.Kind.SOURCE) {
                    @Override
                    public CharSequence getCharContent(boolean ignore) {
                        return source;
                    }
                };
        boolean fine = ToolProvider.getSystemJavaCompiler()
                .getTask(
                        null,
                        null,
                        null,
                        List.of("-proc:none", "-d", folder.toString(), "-cp", System.getProperty("java.class.path")),
                        null,
                        List.of(file))
                .call();
        if (!fine) {
            throw new IllegalStateException("the chain does not compile");
        }
        URLClassLoader loader =
                new URLClassLoader(new URL[] {folder.toUri().toURL()}, IfChain.class.getClassLoader());
        try {
            return (Rules) loader.loadClass("bench.Chain").getConstructor().newInstance();
        } catch (InvocationTargetException e) {
            throw new IllegalStateException(e.getCause());
        }
    }
}
