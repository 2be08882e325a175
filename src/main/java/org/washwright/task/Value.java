package org.washwright.task;

import java.util.Collection;
import java.util.SortedSet;
import java.util.TreeSet;
import org.washwright.quantity.Span;

/** What is known of one attribute. */
public sealed interface Value {

    /** Nothing is known: the full range. */
    Value UNKNOWN = new Unknown();

    /** The attribute has no meaning here: every comparison with it is false. */
    Value NOT_APPLICABLE = new NotApplicable();

    /** Nothing is known. */
    record Unknown() implements Value {}

    /** Has no meaning here. */
    record NotApplicable() implements Value {}

    /** A number in SI, known exactly or within a span. */
    record Number(Span span) implements Value {}

    /** One of these terms; a single one when known exactly. Never empty. */
    record OneOf(SortedSet<String> terms) implements Value {
        /** Keeps an ordered copy. */
        public OneOf {
            if (terms.isEmpty()) {
                throw new IllegalArgumentException("a value has at least one possible term");
            }
            terms = java.util.Collections.unmodifiableSortedSet(new TreeSet<>(terms));
        }
    }

    /** All of these terms at once, for instance every group a process belongs to; known exactly. */
    record AllOf(SortedSet<String> terms) implements Value {
        /** Keeps an ordered copy. */
        public AllOf {
            terms = java.util.Collections.unmodifiableSortedSet(new TreeSet<>(terms));
        }
    }

    /** Another fact, by id. */
    record Reference(String factId) implements Value {}

    /** A single term. */
    static Value term(String term) {
        return new OneOf(new TreeSet<>(java.util.List.of(term)));
    }

    /** One of several terms. */
    static Value oneOf(Collection<String> terms) {
        return new OneOf(new TreeSet<>(terms));
    }

    /** A flag. */
    static Value flag(boolean value) {
        return term(value ? FieldType.YES : FieldType.NO);
    }

    /** A single number in SI. */
    static Value number(double si) {
        return new Number(Span.of(si));
    }

    /** {@code known}, {@code range}, {@code several}, {@code unknown} or {@code not applicable}. */
    default String knowledge() {
        if (this instanceof Unknown) {
            return "unknown";
        }
        if (this instanceof NotApplicable) {
            return "not applicable";
        }
        if (this instanceof Number n) {
            return n.span().isPoint() ? "known" : "range";
        }
        return this instanceof OneOf o && o.terms().size() > 1 ? "several" : "known";
    }

    /** True when nothing is left open. */
    default boolean isDefinite() {
        String knowledge = knowledge();
        return knowledge.equals("known") || knowledge.equals("not applicable");
    }
}
