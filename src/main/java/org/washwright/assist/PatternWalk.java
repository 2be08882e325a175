package org.washwright.assist;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.washwright.rule.FactType;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Field;

/** Follows the constraints of one pattern from its bracket on, to know what is expected next. */
final class PatternWalk {

    private enum Place {
        FIELD,
        OPERATOR,
        LITERAL,
        LIST_OPEN,
        LIST_ITEM,
        LIST_JOINT,
        JOINT
    }

    private final FactTypes types;
    private final boolean attribute;
    private final List<Bound> inside = new ArrayList<>();
    private Optional<FactType> type;
    private Place place = Place.FIELD;
    private int depth = 1;
    private String pending = "";
    private String fieldName = "";
    private String op = "";

    PatternWalk(String typeName, FactTypes types) {
        this.types = types;
        this.attribute = typeName.equals(FactTypes.ATTRIBUTE);
        this.type = attribute || typeName.contains("/") ? Optional.empty() : types.type(typeName);
    }

    /** Takes the next word or sign; true when it closed the pattern. */
    boolean take(Token token) {
        if (token.isSign("(")) {
            depth++;
            place = place == Place.LIST_OPEN ? Place.LIST_ITEM : place;
        } else if (token.isSign(")")) {
            depth--;
            place = Place.JOINT;
        } else if (place == Place.LIST_ITEM || place == Place.LIST_JOINT) {
            place = token.isSign(",") ? Place.LIST_ITEM : Place.LIST_JOINT;
        } else if (token.isSign(",") || token.isSign("&&") || token.isSign("||")) {
            place = Place.FIELD;
        } else if (place == Place.FIELD) {
            field(token);
        } else if (place == Place.OPERATOR) {
            operator(token);
        } else if (place == Place.LITERAL) {
            literal(token);
        }
        return depth == 0;
    }

    private void field(Token token) {
        if (token.isVariable()) {
            pending = token.text();
        } else if (token.kind() == Token.Kind.WORD) {
            fieldName = token.text();
            op = "";
            place = Place.OPERATOR;
            if (!pending.isEmpty()) {
                String name = pending;
                pending = "";
                type.ifPresent(t -> t.field(fieldName).ifPresent(f -> inside.add(new Bound(name, t, Optional.of(f)))));
            }
        }
    }

    private void operator(Token token) {
        if (token.isWord("in")) {
            op = op.equals("not") ? "not in" : "in";
            place = Place.LIST_OPEN;
        } else {
            op = token.text();
            place = token.isWord("not") ? Place.OPERATOR : Place.LITERAL;
        }
    }

    private void literal(Token token) {
        if (attribute && fieldName.equals("id") && token.kind() == Token.Kind.TEXT) {
            type = types.type(FactTypes.declared(token.text()));
        }
        place = Place.JOINT;
    }

    /** Names bound to fields inside the pattern. */
    List<Bound> inside() {
        return inside;
    }

    Optional<FactType> type() {
        return type;
    }

    /** What is expected next. */
    Situation expected(List<Bound> bounds) {
        Situation.PatternSoFar soFar = new Situation.PatternSoFar(type, attribute);
        return switch (place) {
            case FIELD -> new Situation.FieldPlace(soFar, bounds);
            case OPERATOR ->
                op.equals("not") ? new Situation.Joint(List.of("in (")) : new Situation.OperatorPlace(soFar, field());
            case LITERAL -> new Situation.LiteralPlace(soFar, field(), op, bounds);
            case LIST_OPEN -> new Situation.Joint(List.of("("));
            case LIST_ITEM -> new Situation.LiteralPlace(soFar, field(), "in", List.of());
            case LIST_JOINT -> new Situation.Joint(List.of(", ", ")"));
            // Which attribute it is has to stand by itself.
            case JOINT ->
                new Situation.Joint(
                        attribute && fieldName.equals("id") ? List.of(", ", ")") : List.of(", ", ")", " && ", " || "));
        };
    }

    private Optional<Field> field() {
        return type.flatMap(t -> t.field(fieldName));
    }
}
