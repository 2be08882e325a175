package org.washwright.bench;

import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.cli.QuietLog;
import org.washwright.document.Diagnostics;
import org.washwright.drools.DrlReader;
import org.washwright.exchange.EditionFiles;
import org.washwright.exchange.EditionReader;
import org.washwright.exchange.ReadFiles;
import org.washwright.generate.SmallEdition;

/**
 * Times, in a JVM of its own, what an author waits for after a change in one file: the diagnostics of the whole edition by a
 * reader that remembers the other files. The baseline is one parse of the changed file by itself, in the same run. Prints
 * microseconds of processor time: the parse; the diagnostics; the diagnostics by a reader that remembers nothing. Then the
 * numbers of rules and of files of rules.
 */
public final class DiagnosticsCost {

    private static final long WARM_UP_NANOS = 6_000_000_000L;
    private static final int ROUNDS = 7;
    private static final long ROUND_NANOS = 800_000_000L;
    private static final String CHANGED = "rules/part-07.drl";

    private DiagnosticsCost() {}

    /** Arguments: number of rules, number of files that they stand in. */
    public static void main(String[] args) {
        QuietLog.apply();
        int rules = Integer.parseInt(args[0]);
        int parts = Integer.parseInt(args[1]);
        Map<String, byte[]> files = files(rules, parts);
        String text = new String(files.get(CHANGED), StandardCharsets.UTF_8);
        ReadFiles memory = new ReadFiles();
        int[] change = {0};
        double parse = micros(() -> new DrlReader().read(CHANGED, changed(text, change), new Diagnostics()).size());
        double again = micros(() -> found(files, changed(text, change), memory));
        double whole = micros(() -> found(files, changed(text, change), new ReadFiles()));
        System.out.println(parse + " " + again + " " + whole + " " + rules + " " + parts);
        System.exit(0);
    }

    private static Map<String, byte[]> files(int rules, int parts) {
        Map<String, String> texts = new Synthetic(rules, 1).editionTexts();
        StringBuilder all = new StringBuilder();
        texts.keySet().stream().filter(n -> n.startsWith("rules/")).forEach(n -> all.append(texts.get(n)));
        texts.keySet().removeIf(n -> n.startsWith("rules/"));
        List<String> single = Arrays.asList(all.toString().split("(?m)^(?=rule )"));
        int each = (single.size() + parts - 1) / parts;
        for (int i = 0; i < parts; i++) {
            texts.put(
                    String.format("rules/part-%02d.drl", i),
                    String.join("", single.subList(i * each, Math.min(single.size(), (i + 1) * each))));
        }
        return new TreeMap<>(SmallEdition.files(texts).files());
    }

    /** Never the same text twice, so that nothing is remembered of it. */
    private static String changed(String text, int[] change) {
        return text.replaceFirst("Mind it\\.", "Mind it " + ++change[0] + ".");
    }

    private static int found(Map<String, byte[]> files, String text, ReadFiles memory) {
        Map<String, byte[]> with = new TreeMap<>(files);
        with.put(CHANGED, text.getBytes(StandardCharsets.UTF_8));
        EditionReader.Inspection seen = new EditionReader(new DrlReader(), memory).inspect(new EditionFiles(with));
        if (seen.diagnostics().hasErrors()) {
            throw new IllegalStateException("the edition is not sound: " + seen.diagnostics().all().get(0));
        }
        return seen.readable().rules().size();
    }

    private interface Contender {
        int run();
    }

    private static double micros(Contender contender) {
        long until = System.nanoTime() + WARM_UP_NANOS;
        int sink = 0;
        while (System.nanoTime() < until) {
            sink += contender.run();
        }
        double[] micros = new double[ROUNDS];
        for (int round = 0; round < ROUNDS; round++) {
            long cpu = thread();
            int done = 0;
            while (thread() - cpu < ROUND_NANOS) {
                sink += contender.run();
                done++;
            }
            micros[round] = (thread() - cpu) / 1e3 / done;
        }
        if (sink == 0) {
            throw new IllegalStateException("nothing was read");
        }
        Arrays.sort(micros);
        return micros[ROUNDS / 2];
    }

    private static long thread() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
