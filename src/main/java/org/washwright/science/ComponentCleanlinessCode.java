package org.washwright.science;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The component cleanliness code of ISO 16232:2018 (also VDA 19.1:2015): {@code A(B-E17/F-G14/H-I4/J-K00)}.
 *
 * <p>{@code A} counts per 1000 cm² of wetted area, {@code V} per 100 cm³ of wetted volume, {@code N} plain counts per part.
 * Letters joined by a hyphen share one summed limit; letters written together each take the limit. Level {@code 00} allows
 * no particle. Size classes: {@link SizeClass}; levels: {@link ContaminationLevel}. What is no code is refused with a reason.
 *
 * @param text the code without blanks
 * @param basis {@code A}, {@code V} or {@code N}
 * @param limits limits in the order written
 */
public record ComponentCleanlinessCode(String text, char basis, List<Limit> limits) {

    private static final Pattern CODE = Pattern.compile("(?:CCC=)?([AVN])\\(([^()]+)\\)");
    private static final Pattern LIMIT = Pattern.compile("([B-N])-([B-N])([0-9]{1,9})|([B-N]+)([0-9]{1,9})");

    /**
     * One limit.
     *
     * @param smallest letter of the smallest class
     * @param largest letter of the largest class
     * @param level level 0 to 24, or a count for basis N; -1 for level 00
     */
    public record Limit(char smallest, char largest, int level) {

        /** The classes that share this limit, smallest first. */
        public List<SizeClass> classes() {
            return List.copyOf(EnumSet.range(
                    SizeClass.of(smallest).orElseThrow(), SizeClass.of(largest).orElseThrow()));
        }

        /** Largest count allowed, or measured, per 1000 cm², per 100 cm³ or, for basis N, per part. */
        public double largestCount(char basis) {
            return basis == 'N' ? Math.max(0, level) : ContaminationLevel.upperBound(level);
        }

        /** Count that a measured level stays above, or for basis N the count itself. */
        public double smallestCount(char basis) {
            return basis == 'N' ? Math.max(0, level) : ContaminationLevel.lowerBound(level);
        }
    }

    /** Whether a measured code meets a demanded one. */
    public enum Meets {
        /** Surely. */
        YES,
        /** Surely not. */
        NO,
        /** Another basis, a class that was not measured, or levels that leave both open. */
        UNDECIDED
    }

    /** Says what is wrong with a code. */
    public static final class BadCode extends Exception {
        private static final long serialVersionUID = 1L;

        BadCode(String reason) {
            super(reason);
        }
    }

    /** Keeps a copy. */
    public ComponentCleanlinessCode {
        limits = List.copyOf(limits);
    }

    /**
     * Reads a code.
     *
     * @throws BadCode when it is none, with the reason
     */
    public static ComponentCleanlinessCode parse(String code) throws BadCode {
        String text = code.replaceAll("\\s", "");
        Matcher matcher = CODE.matcher(text);
        if (!matcher.matches()) {
            throw new BadCode("it needs a basis A, V or N and limits in parentheses");
        }
        char basis = matcher.group(1).charAt(0);
        List<Limit> limits = new ArrayList<>();
        for (String part : matcher.group(2).split("/", -1)) {
            limits.addAll(limits(part, basis));
        }
        return new ComponentCleanlinessCode(text.replace("CCC=", ""), basis, limits);
    }

    private static List<Limit> limits(String part, char basis) throws BadCode {
        Matcher matcher = LIMIT.matcher(part);
        if (!matcher.matches()) {
            throw new BadCode("\"" + part + "\" is no size class with a level");
        }
        boolean span = matcher.group(1) != null;
        String digits = span ? matcher.group(3) : matcher.group(5);
        int level = digits.equals("00") || (basis == 'N' && digits.equals("0")) ? -1 : Integer.parseInt(digits);
        if (basis != 'N' && level > ContaminationLevel.HIGHEST) {
            throw new BadCode("level " + level + " is above " + ContaminationLevel.HIGHEST);
        }
        if (span) {
            char smallest = matcher.group(1).charAt(0);
            char largest = matcher.group(2).charAt(0);
            if (smallest >= largest) {
                throw new BadCode("the classes " + smallest + "-" + largest + " run backwards");
            }
            return List.of(new Limit(smallest, largest, level));
        }
        List<Limit> each = new ArrayList<>();
        for (char letter : matcher.group(4).toCharArray()) {
            each.add(new Limit(letter, letter, level));
        }
        return each;
    }

    /** Lower bound in metres of the smallest class of which no particle is allowed; empty when none is excluded. */
    public OptionalDouble smallestForbiddenSize() {
        return limits.stream()
                .filter(l -> l.level() < 0)
                .mapToDouble(l -> lowerBound(l.smallest()))
                .min();
    }

    /** Lower bound in metres of the smallest class that is counted at all. */
    public double smallestCountedSize() {
        return limits.stream().mapToDouble(l -> lowerBound(l.smallest())).min().orElseThrow();
    }

    /** Largest count that one size class may have by the tightest limit on it, alone or within a sum; empty without limit. */
    public OptionalDouble largestCount(SizeClass size) {
        return limits.stream()
                .filter(l -> l.classes().contains(size))
                .mapToDouble(l -> l.largestCount(basis))
                .min();
    }

    /**
     * Whether a measured code meets a demanded one. Counts behind measured levels are only known between bounds: a sum of
     * finer classes is compared by its bounds, a coarser measurement decides only when even its whole sum is within.
     */
    public static Meets meets(ComponentCleanlinessCode measured, ComponentCleanlinessCode demand) {
        return new CleanlinessComparison(measured).with(demand);
    }

    /** Lower bound of a size class in metres. */
    public static double lowerBound(char letter) {
        return SizeClass.of(letter).orElseThrow().lowerBound();
    }
}
