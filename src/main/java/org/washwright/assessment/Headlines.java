package org.washwright.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import org.washwright.catalogue.StageTerm;
import org.washwright.line.PlacedStage;
import org.washwright.line.ProcessLine;

/** Writes the one sentence of an answer out of the phrases of the first line's stages. */
final class Headlines {

    private static final List<String> SMALL = List.of(
            "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve");

    private Headlines() {}

    static Answer.Headline of(List<ProcessLine> ranked, int ruledOut) {
        long recommended = ranked.stream()
                .filter(l -> l.status() == ProcessLine.Status.RECOMMENDED)
                .count();
        long conditional = ranked.size() - recommended;
        String summary = (recommended == 0
                        ? "No process is"
                        : capital(processes(recommended)) + (recommended == 1 ? " is" : " are"))
                + " recommended, "
                + (conditional == 0 ? "none hangs" : count(conditional) + (conditional == 1 ? " hangs" : " hang"))
                + " on what is not known, "
                + (ruledOut == 0 ? "none is" : count(ruledOut) + (ruledOut == 1 ? " is" : " are"))
                + " ruled out.";
        if (ranked.isEmpty()) {
            return new Answer.Headline("No process of this edition may clean this task.", summary, List.of());
        }
        ProcessLine first = ranked.get(0);
        String sentence = sentence(first);
        TreeSet<Integer> firings = new TreeSet<>();
        first.steps().stream().filter(PlacedStage::certain).forEach(s -> firings.addAll(s.owedTo()));
        if (recommended == 0) {
            sentence = "Nothing is certain yet. If what is open turns out well: " + sentence;
        } else {
            sentence = capital(sentence);
        }
        return new Answer.Headline(sentence + ".", summary, List.copyOf(firings));
    }

    private static String sentence(ProcessLine line) {
        List<String> phrases = new ArrayList<>();
        List<Integer> times = new ArrayList<>();
        List<PlacedStage> certain =
                line.steps().stream().filter(PlacedStage::certain).toList();
        for (PlacedStage stage : certain) {
            String phrase = phrase(line, stage);
            int last = phrases.size() - 1;
            if (last >= 0 && phrases.get(last).equals(phrase)) {
                times.set(last, times.get(last) + 1);
            } else {
                phrases.add(phrase);
                times.add(1);
            }
        }
        List<String> said = new ArrayList<>();
        for (int i = 0; i < phrases.size(); i++) {
            int n = times.get(i);
            said.add(phrases.get(i) + (n == 1 ? "" : n == 2 ? " twice" : " " + count(n) + " times"));
        }
        int open = line.steps().size() - certain.size();
        String more = open == 0
                ? ""
                : "; " + count(open) + (open == 1 ? " further stage hangs" : " further stages hang")
                        + " on what is not known";
        String all = said.size() == 1
                ? said.get(0)
                : String.join(", ", said.subList(0, said.size() - 1)) + " and " + said.get(said.size() - 1);
        return all + more;
    }

    private static String phrase(ProcessLine line, PlacedStage stage) {
        String phrase = stage.setting().phrase();
        if (phrase.isEmpty()) {
            phrase = stage.stage()
                    .map(StageTerm::term)
                    .orElse(line.process().term())
                    .name()
                    .toLowerCase(Locale.ROOT);
        }
        return phrase;
    }

    private static String processes(long n) {
        return count(n) + (n == 1 ? " process" : " processes");
    }

    private static String count(long n) {
        return n < SMALL.size() ? SMALL.get((int) n) : String.valueOf(n);
    }

    static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
