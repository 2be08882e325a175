package org.washwright.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Runs every measurement, each contender in fresh JVMs and the contenders in turn, and prints ratios against the baseline of
 * the same run as Markdown. Times are processor times; on another machine only the ratios mean anything.
 */
public final class Bench {

    /** How often each contender gets its turn; odd, so that there is a middle. */
    private static final int TURNS = Integer.getInteger("bench.turns", 3);

    private static final List<String> ALL = List.of(
            "if-chain",
            "indexed",
            "compiled",
            "compiled, not recorded",
            "compiled, no companions",
            "compiled, one session",
            "interpreter",
            "bare Drools, new sessions",
            "bare Drools, one session",
            "Evrete",
            "JEXL");

    private Bench() {}

    /** Arguments: names of parts (engine, scale, starter, compile, memory); all when there are none. */
    public static void main(String[] args) throws Exception {
        List<String> parts = args.length == 0
                ? List.of("engine", "scale", "starter", "compile", "memory")
                : Arrays.asList(args);
        for (String part : parts) {
            switch (part) {
                case "engine" -> engine();
                case "scale" -> scale();
                case "starter" -> starter();
                case "compile" -> compile();
                case "memory" -> memory();
                case "editions" -> editions();
                case "lines" -> lines();
                case "search" -> search();
                case "what-if" -> whatIf();
                case "diagnostics" -> diagnostics();
                default -> throw new IllegalArgumentException("no part of the benchmark: " + part);
            }
        }
    }

    private static void engine() throws IOException, InterruptedException {
        print("## Engine only\n");
        for (int rules : new int[] {300, 1000, 3000}) {
            List<String> names = new ArrayList<>(ALL);
            if (rules > 1000) {
                // The others take minutes to compile so many rules, and their course shows before.
                names.retainAll(List.of("if-chain", "indexed", "compiled", "compiled, not recorded", "interpreter"));
            }
            Map<String, double[]> results = rates(names, rules, 1);
            double base = results.get("if-chain")[0];
            print("%d rules, each may be touched: if-chain %.1f µs a task%n", rules, base);
            print("| contender | µs a task | rate against the if-chain | matches in 200 tasks |");
            print("|---|---|---|---|");
            for (String name : names) {
                double[] r = results.get(name);
                print("| %s | %.1f | %.3f | %.0f |", name, r[0], base / r[0], r[1]);
            }
            print("");
            print("recorded against not recorded, same compiled base: %.3f%n",
                    results.get("compiled")[0] / results.get("compiled, not recorded")[0]);
        }
    }

    private static void scale() throws IOException, InterruptedException {
        print("## Ten times the rules, of which a task touches the same number\n");
        print("| contender | 300 rules, µs | 3,000 rules, µs | ratio |");
        print("|---|---|---|---|");
        for (String name : List.of("indexed", "compiled", "if-chain", "interpreter")) {
            double few = rates(List.of(name), 300, 1).get(name)[0];
            double many = rates(List.of(name), 3000, 10).get(name)[0];
            print("| %s | %.1f | %.1f | %.2f |", name, few, many, many / few);
        }
        print("");
    }

    private static void starter() throws IOException, InterruptedException {
        print("## The starter rulebook, its demo tasks\n");
        List<String> names = List.of(
                "indexed", "compiled", "interpreter", "end to end, indexed", "end to end, compiled", "freezing alone");
        Map<String, double[]> results = rates(names, 0, 1);
        double base = results.get("indexed")[0];
        print("| what | µs a task | times the indexed engine |");
        print("|---|---|---|");
        names.forEach(n -> print("| %s | %.0f | %.1f |", n, results.get(n)[0], results.get(n)[0] / base));
        print("");
        print("## End to end over the synthetic rules\n");
        print("| rules | indexed, µs | compiled, µs | ratio |");
        print("|---|---|---|---|");
        for (int rules : new int[] {300, 1000}) {
            Map<String, double[]> whole = rates(List.of("end to end, indexed", "end to end, compiled"), rules, 1);
            double indexed = whole.get("end to end, indexed")[0];
            double compiled = whole.get("end to end, compiled")[0];
            print("| %d | %.0f | %.0f | %.2f |", rules, indexed, compiled, compiled / indexed);
        }
        print("");
    }

    /** What a change costs beside an answer; the answer to the task itself is kept and only read again. */
    private static void whatIf() throws IOException, InterruptedException {
        print("## A what-if against one assessment, demo tasks by the starter rulebook\n");
        Map<String, double[]> results = rates(List.of("one assessment", "what-if"), 0, 1);
        double base = results.get("one assessment")[0];
        print("| what | µs a task | times one assessment |");
        print("|---|---|---|");
        results.forEach((n, r) -> print("| %s | %.0f | %.2f |", n, r[0], r[0] / base));
        print("");
    }

    private static void compile() throws IOException, InterruptedException {
        print("## Until an edition can be evaluated, processor seconds\n");
        print("| rules | all in one text | shared out | one rule changed (units compiled) | from the store | indexed "
                + "| changed / one text |");
        print("|---|---|---|---|---|---|---|");
        for (int rules : new int[] {300, 1000}) {
            double[] r = median(CompileCost.class, List.of(String.valueOf(rules)), 1);
            print("| %d | %.1f | %.1f | %.2f (%.0f) | %.2f | %.3f | %.3f |",
                    rules, r[0], r[1], r[2], r[5], r[3], r[4], r[2] / r[0]);
        }
        print("");
    }

    /** The first of two or more editions is the baseline; all answer the same tasks. */
    private static void editions() throws IOException, InterruptedException {
        List<String> folders = List.of(System.getProperty("bench.editions").split(","));
        String tasks = System.getProperty("bench.tasks", "demo-data/tasks");
        Map<String, List<double[]>> all = new LinkedHashMap<>();
        for (int turn = 0; turn < TURNS; turn++) {
            for (String folder : folders) {
                all.computeIfAbsent(folder, k -> new ArrayList<>()).add(run(EditionCost.class, List.of(folder, tasks)));
            }
        }
        print("## Editions on the same tasks\n");
        print("| edition | rules | processes | tasks | rules alone, µs a task | ns a rule and process | ratio "
                + "| whole answer, µs a task | ns a rule and process | ratio |");
        print("|---|---|---|---|---|---|---|---|---|---|");
        double[] base = median(all.get(folders.get(0)));
        for (String folder : folders) {
            double[] r = median(all.get(folder));
            double size = r[2] * r[3];
            double baseSize = base[2] * base[3];
            print("| %s | %.0f | %.0f | %.0f | %.0f | %.2f | %.2f | %.0f | %.1f | %.2f |",
                    folder, r[2], r[3], r[4], r[0], r[0] * 1e3 / size, r[0] / size / (base[0] / baseSize),
                    r[1], r[1] * 1e3 / size, r[1] / size / (base[1] / baseSize));
        }
        print("");
    }

    /** What comes after the rules, as a multiple of the rules, on the demo tasks by the starter rulebook. */
    private static void lines() throws IOException, InterruptedException {
        String tasks = System.getProperty("bench.tasks", "demo-data/tasks");
        print("## Lines after the rules, µs of processor time a task\n");
        print("| engine | facts | rules | recording | composing | sizing and grading | composing, sizing and grading ÷ rules and"
                + " recording | whole answer |");
        print("|---|---|---|---|---|---|---|---|");
        for (String engine : List.of("compiled", "indexed")) {
            double[] r = median(org.washwright.assessment.LineCost.class, List.of(engine, "rules/starter", tasks), TURNS);
            print("| %s | %.0f | %.0f | %.0f | %.0f | %.0f | %.2f | %.0f |",
                    engine, r[0], r[1], r[2], r[3], r[4], (r[3] + r[4]) / (r[1] + r[2]), r[5]);
        }
        print("");
    }

    /** What one evaluation of a search for changes costs, as a share of a whole answer, on the demo tasks by the starter rulebook. */
    private static void search() throws IOException, InterruptedException {
        String tasks = System.getProperty("bench.tasks", "demo-data/tasks");
        double[] r = median(SearchCost.class, List.of("rules/starter", tasks), TURNS);
        print("## Searching, µs of processor time an evaluation\n");
        print("| evaluation | µs | ÷ whole answer |");
        print("|---|---|---|");
        print("| a task as it stands, statuses | %.0f | %.2f |", r[0], r[0] / r[4]);
        print("| a task as it stands, with its order | %.0f | %.2f |", r[1], r[1] / r[4]);
        print("| nothing known of what may change, statuses | %.0f | %.2f |", r[2], r[2] / r[4]);
        print("| a short search for single changes, by evaluation | %.0f | %.2f |", r[3], r[3] / r[4]);
        print("| whole answer | %.0f | 1 |%n", r[4]);
    }

    /** What an author waits for after a change in one file, as a multiple of parsing that file alone. */
    private static void diagnostics() throws IOException, InterruptedException {
        print("## Diagnostics after a change in one file, µs of processor time\n");
        print("| rules | files of rules | one parse of the changed file | diagnostics of the edition | ÷ parse "
                + "| reading everything | ÷ parse |");
        print("|---|---|---|---|---|---|---|");
        for (String parts : List.of("20", "100")) {
            double[] r = median(DiagnosticsCost.class, List.of("1000", parts), TURNS);
            print("| %.0f | %.0f | %.0f | %.0f | %.2f | %.0f | %.1f |",
                    r[3], r[4], r[0], r[1], r[1] / r[0], r[2], r[2] / r[0]);
        }
        print("");
    }

    private static void memory() throws IOException, InterruptedException {
        double[] r = median(MemoryCost.class, List.of(), 1);
        print("## Memory, 300 rules\n");
        print("A held edition: %.1f MB of heap. Over 200 cycles of loading and dropping, last quarter against second:"
                        + " heap %.1f / %.1f MB = %.3f, loaded classes %.0f / %.0f = %.3f.%n",
                r[0], r[2], r[1], r[2] / r[1], r[4], r[3], r[4] / r[3]);
    }

    private static Map<String, double[]> rates(List<String> names, int rules, int spread)
            throws IOException, InterruptedException {
        Map<String, List<double[]>> all = new TreeMap<>();
        for (int turn = 0; turn < TURNS; turn++) {
            for (String name : names) {
                all.computeIfAbsent(name, k -> new ArrayList<>())
                        .add(run(Rate.class, List.of(name, String.valueOf(rules), String.valueOf(spread))));
            }
        }
        Map<String, double[]> medians = new TreeMap<>();
        all.forEach((name, runs) -> medians.put(name, median(runs)));
        return medians;
    }

    private static double[] median(Class<?> main, List<String> arguments, int turns)
            throws IOException, InterruptedException {
        List<double[]> runs = new ArrayList<>();
        for (int i = 0; i < turns; i++) {
            runs.add(run(main, arguments));
        }
        return median(runs);
    }

    private static double[] median(List<double[]> runs) {
        double[] out = new double[runs.get(0).length];
        for (int i = 0; i < out.length; i++) {
            int column = i;
            out[i] = runs.stream().mapToDouble(r -> r[column]).sorted().toArray()[runs.size() / 2];
        }
        return out;
    }

    private static double[] run(Class<?> main, List<String> arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx3g",
                "-cp",
                System.getProperty("java.class.path"),
                main.getName()));
        command.addAll(arguments);
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new IllegalStateException(main.getSimpleName() + " " + arguments + " failed: " + output);
        }
        String last = output.lines().reduce("", (a, b) -> b);
        return Arrays.stream(last.split(" ")).mapToDouble(Double::parseDouble).toArray();
    }

    private static void print(String format, Object... values) {
        System.out.println(String.format(Locale.ROOT, format, values));
    }
}
