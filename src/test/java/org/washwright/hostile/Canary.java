package org.washwright.hostile;

import java.util.concurrent.atomic.AtomicInteger;

/** Sings when a hostile text runs: every text that is meant to run code calls it, makes one, or loads its egg. */
public final class Canary {

    private static final AtomicInteger SUNG = new AtomicInteger();

    /** Making one is enough. */
    public Canary() {
        sing();
    }

    /** Sings, and answers a number, so that it fits where a number is expected. */
    public static int sing() {
        return SUNG.incrementAndGet();
    }

    /** Sings, and answers a truth, so that it fits where a condition is expected. */
    public static boolean sings() {
        sing();
        return true;
    }

    /** How often it sang since the tests began. */
    public static int songs() {
        return SUNG.get();
    }

    /** Sings when it is hatched: a class that is only loaded says nothing, one that is set up does. */
    public static final class Egg {
        static {
            sing();
        }
    }
}
