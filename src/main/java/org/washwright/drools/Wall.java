package org.washwright.drools;

import java.io.InputStream;
import java.net.URL;
import java.util.Collections;
import java.util.Enumeration;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Loads the classes of one compiled unit and shows them nothing but what matching needs. Should text of an expert ever get
 * past the reader, it still finds no file, no process, no reflection and no system here: such names end in an error when
 * they are linked.
 */
final class Wall extends ClassLoader {

    /** What compiled rules are made of; the test of the wall fails when one of these is not needed. */
    private static final Set<String> NAMES = Set.of(
            "org.washwright.drools.MatchFact",
            "org.washwright.drools.MatchSink",
            "org.drools.modelcompiler.dsl.pattern.D",
            "org.drools.modelcompiler.util.EvaluationUtil",
            "org.drools.util.DateUtils",
            "java.lang.Boolean",
            "java.lang.Double",
            "java.lang.Enum",
            "java.lang.Integer",
            "java.lang.Object",
            "java.lang.String",
            "java.lang.Throwable",
            "java.time.format.DateTimeFormatter",
            "java.time.format.DateTimeFormatterBuilder",
            "java.util.ArrayList",
            "java.util.Collection",
            "java.util.Collections",
            "java.util.List",
            "java.util.Arrays",
            "java.lang.Number",
            "java.lang.RuntimeException",
            "java.util.Locale");

    /** The language in which compiled rules describe themselves; every class of it is plain data or an interface. */
    private static final String MODEL = "org.drools.model.";

    static {
        registerAsParallelCapable();
    }

    /** Classes not loaded yet; what is loaded needs its bytes no more. */
    private final Map<String, byte[]> own;

    Wall(Map<String, byte[]> own) {
        super("compiled rules", Wall.class.getClassLoader());
        own.keySet().stream().filter(Wall::isAllowed).findFirst().ifPresent(name -> {
            throw new IllegalArgumentException("a unit may not bring a class of the program: " + name);
        });
        this.own = new ConcurrentHashMap<>(own);
    }

    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
        if (isAllowed(name)) {
            return super.loadClass(name, resolve);
        }
        synchronized (getClassLoadingLock(name)) {
            Class<?> known = findLoadedClass(name);
            return known == null ? findClass(name) : known;
        }
    }

    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
        byte[] bytes = own.remove(name);
        if (bytes == null) {
            throw new ClassNotFoundException(name + " is out of reach of compiled rules");
        }
        return defineClass(name, bytes, 0, bytes.length);
    }

    private static boolean isAllowed(String name) {
        return NAMES.contains(name) || name.startsWith(MODEL);
    }

    @Override
    public URL getResource(String name) {
        return null;
    }

    @Override
    public Enumeration<URL> getResources(String name) {
        return Collections.emptyEnumeration();
    }

    @Override
    public InputStream getResourceAsStream(String name) {
        return null;
    }
}
