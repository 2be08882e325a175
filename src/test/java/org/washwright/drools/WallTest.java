package org.washwright.drools;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.tools.FileObject;
import javax.tools.ForwardingJavaFileManager;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileManager;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Classes behind the wall reach what matching needs and nothing else. The attacks are facts of Java, no source. */
class WallTest {

    /** What the attacks would touch. */
    private static final String CANARY = "washwright.wall-canary";

    @ParameterizedTest
    @ValueSource(
            strings = {
                "System.setProperty(\"washwright.wall-canary\", \"dead\");",
                "Runtime.getRuntime().exec(\"true\");",
                "new ProcessBuilder(\"true\").start();",
                "new java.io.File(\"x\").delete();",
                "java.nio.file.Files.list(java.nio.file.Path.of(\"/\"));",
                "new java.net.Socket(\"localhost\", 1);",
                "new Thread(() -> { }).start();",
                "Class.forName(\"java.lang.System\");",
                "\"\".getClass().getMethods();",
                "Object.class.getClassLoader();",
                "java.lang.invoke.MethodHandles.lookup();",
                "java.util.function.Supplier<String> s = () -> \"x\"; s.get();",
                "java.util.ServiceLoader.load(Runnable.class);",
                "new java.util.Scanner(\"x\");",
                "org.kie.api.KieServices.get();",
                "org.drools.modelcompiler.KieBaseBuilder.class.getName();",
                "org.washwright.document.Hashes.sha256(\"x\");",
                "org.washwright.drools.Units.ofUser();",
                "new org.drools.util.StringUtils();",
                "Thread.currentThread().interrupt();",
            })
    void whatIsNotNeededCannotBeLinked(String attack) throws Exception {
        Wall wall = new Wall(compiled("public Object call() throws Exception { " + attack + " return 1; }"));
        Class<?> attacker = wall.loadClass("attack.Attacker");
        // The caller calls through an interface that the wall lets through, as Drools does.
        assertThrows(LinkageError.class, () -> call(attacker), attack);
        assertNull(System.getProperty(CANARY));
    }

    @Test
    void theSameAttackWorksWithoutTheWall() throws Exception {
        Map<String, byte[]> classes = compiled(
                "public Object call() { System.setProperty(\"washwright.wall-canary\", \"dead\"); return 1; }");
        ClassLoader open = new ClassLoader(getClass().getClassLoader()) {
            @Override
            protected Class<?> findClass(String name) throws ClassNotFoundException {
                byte[] bytes = classes.get(name);
                if (bytes == null) {
                    throw new ClassNotFoundException(name);
                }
                return defineClass(name, bytes, 0, bytes.length);
            }
        };
        call(open.loadClass("attack.Attacker"));
        assertEquals("dead", System.clearProperty(CANARY));
    }

    @Test
    void matchingIsWithinReach() throws Exception {
        Wall wall =
                new Wall(compiled("public Object call() { return Double.valueOf(1).intValue() + \"x\".length(); }"));
        assertEquals(2, call(wall.loadClass("attack.Attacker")));
        assertSame(MatchFact.class, wall.loadClass(MatchFact.class.getName()));
    }

    @Test
    void aUnitMayNotBringClassesOfTheProgram() {
        for (String name : List.of("org.washwright.drools.MatchFact", "org.drools.model.Model", "java.lang.String")) {
            assertThrows(IllegalArgumentException.class, () -> new Wall(Map.of(name, new byte[0])), name);
        }
    }

    @Test
    void thereAreNoResourcesBehindTheWall() throws IOException {
        Wall wall = new Wall(Map.of());
        String own = "org/washwright/version.properties";
        try (InputStream inside = wall.getResourceAsStream(own)) {
            assertNull(inside);
        }
        assertNull(wall.getResource(own));
        assertEquals(false, wall.getResources(own).hasMoreElements());
    }

    private static Object call(Class<?> attacker) throws Exception {
        Object made = attacker.getConstructor().newInstance();
        var method = attacker.getMethod("call");
        try {
            return method.invoke(made);
        } catch (java.lang.reflect.InvocationTargetException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw e;
        }
    }

    /** The class with this method, compiled by the platform's compiler with nothing in its way. */
    private static Map<String, byte[]> compiled(String method) {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        Map<String, ByteArrayOutputStream> made = new TreeMap<>();
        JavaFileManager files = new ForwardingJavaFileManager<>(compiler.getStandardFileManager(null, null, null)) {
            @Override
            public JavaFileObject getJavaFileForOutput(
                    Location place, String name, JavaFileObject.Kind kind, FileObject sibling) {
                return new SimpleJavaFileObject(URI.create("mem:///" + name.replace('.', '/')), kind) {
                    @Override
                    public ByteArrayOutputStream openOutputStream() {
                        return made.computeIfAbsent(name, k -> new ByteArrayOutputStream());
                    }
                };
            }
        };
        JavaFileObject source =
                new SimpleJavaFileObject(URI.create("mem:///attack/Attacker.java"), JavaFileObject.Kind.SOURCE) {
                    @Override
                    public CharSequence getCharContent(boolean ignore) {
                        return "package attack; public class Attacker { " + method + " }";
                    }
                };
        String classPath = System.getProperty("java.class.path");
        boolean fine = compiler.getTask(
                        null,
                        files,
                        null,
                        List.of("-proc:none", "-XDstringConcat=inline", "-cp", classPath),
                        null,
                        List.of(source))
                .call();
        if (!fine) {
            throw new IllegalStateException("the attack does not compile: " + method);
        }
        Map<String, byte[]> bytes = new TreeMap<>();
        made.forEach((name, out) -> bytes.put(name, out.toByteArray()));
        return bytes;
    }
}
