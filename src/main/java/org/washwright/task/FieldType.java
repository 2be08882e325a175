package org.washwright.task;

import org.washwright.quantity.Dimension;

/** What an attribute can hold. */
public sealed interface FieldType {

    /** Kind whose terms are {@code yes} and {@code no}. */
    String FLAG = "flag";

    /** The term for true. */
    String YES = "yes";

    /** The term for false. */
    String NO = "no";

    /** A quantity of a dimension. */
    record NumberType(Dimension dimension) implements FieldType {}

    /** A term of a kind of the catalogue. */
    record TermType(String kind) implements FieldType {
        /** True for yes and no. */
        public boolean isFlag() {
            return kind.equals(FLAG);
        }
    }

    /** A code in text, kept as it is; rules read what is computed from it. */
    record CodeType(Code code) implements FieldType {}

    /** Codes of standards. */
    enum Code {
        /** Component cleanliness code of ISO 16232. */
        COMPONENT_CLEANLINESS,
        /** Product cleanliness level of IEST-STD-CC1246: particle level, level of non-volatile residue, or both. */
        PRODUCT_CLEANLINESS
    }

    /** Another fact. */
    record FactType() implements FieldType {}

    /** A quantity. */
    static FieldType number(Dimension dimension) {
        return new NumberType(dimension);
    }

    /** A term. */
    static FieldType term(String kind) {
        return new TermType(kind);
    }

    /** A flag. */
    static FieldType flag() {
        return new TermType(FLAG);
    }

    /** A code of a standard. */
    static FieldType code(Code code) {
        return new CodeType(code);
    }

    /** In words, for messages. */
    default String describe() {
        if (this instanceof NumberType n) {
            return n.dimension().label();
        }
        if (this instanceof TermType t) {
            return t.isFlag() ? "yes or no" : t.kind().replace('-', ' ');
        }
        return this instanceof CodeType ? "code" : "fact";
    }
}
