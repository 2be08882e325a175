package org.washwright.bench;

import java.lang.management.ManagementFactory;

/** Processor time of the whole process, compilers and collectors of the JVM included. */
final class Cpu {

    private Cpu() {}

    /** Nanoseconds so far. */
    static long nanos() {
        return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                .getProcessCpuTime();
    }

    /** Seconds that something takes. */
    static double seconds(Runnable work) {
        long before = nanos();
        work.run();
        return (nanos() - before) / 1e9;
    }
}
