package org.washwright.drools;

import com.github.javaparser.JavaParser;
import com.github.javaparser.ParseResult;
import com.github.javaparser.ParserConfiguration;
import com.github.javaparser.Position;
import com.github.javaparser.Problem;
import com.github.javaparser.ast.Node;
import com.github.javaparser.ast.expr.Expression;
import com.github.javaparser.ast.expr.FieldAccessExpr;
import com.github.javaparser.ast.expr.IntegerLiteralExpr;
import com.github.javaparser.ast.expr.MethodCallExpr;
import com.github.javaparser.ast.expr.NameExpr;
import com.github.javaparser.ast.expr.StringLiteralExpr;
import com.github.javaparser.ast.stmt.BlockStmt;
import com.github.javaparser.ast.stmt.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.document.SourceText;
import org.washwright.rule.syntax.SyntaxCall;
import org.washwright.rule.syntax.SyntaxCall.Argument;

/** Reads the consequences of one rule: calls of plain names with texts, whole numbers, bound values and nested places. */
final class ConsequenceReader {

    private static final Set<String> NESTED = Set.of("after", "before", "between", "min", "max");
    private static final String ADVICE = "Write verbs with texts in quotes, whole numbers and bound values";

    /** Comments say nothing to the program, so no place is worked out for them. */
    private static final ParserConfiguration PLAIN = new ParserConfiguration()
            .setLanguageLevel(ParserConfiguration.LanguageLevel.JAVA_11)
            .setAttributeComments(false);

    private final SourceText source;
    private final Diagnostics diagnostics;
    private Place start = Place.ofFile("");

    ConsequenceReader(SourceText source, Diagnostics diagnostics) {
        this.source = source;
        this.diagnostics = diagnostics;
    }

    List<SyntaxCall> read(String text, int thenLine) {
        // Drools says where "then" stands, but not whether the text begins on that line or on a later one.
        String stripped = text.strip();
        start = source.find(stripped, thenLine);
        JavaParser parser = new JavaParser(PLAIN);
        ParseResult<BlockStmt> result = parser.parseBlock("{" + stripped + "\n}");
        if (!result.isSuccessful() || result.getResult().isEmpty()) {
            for (Problem problem : result.getProblems()) {
                Place place = problem.getLocation()
                        .flatMap(tokens -> tokens.getBegin().getRange())
                        .map(range -> place(range.begin))
                        .orElse(source.at(thenLine, 1));
                diagnostics.add(
                        Message.DRL_SYNTAX,
                        place,
                        source.line(place.line()),
                        "consequence: "
                                + problem.getMessage().lines().findFirst().orElse(""));
            }
            return List.of();
        }
        List<SyntaxCall> calls = new ArrayList<>();
        for (Statement statement : result.getResult().get().getStatements()) {
            if (statement.isExpressionStmt()
                    && statement.asExpressionStmt().getExpression() instanceof MethodCallExpr call) {
                call(call).ifPresent(calls::add);
            } else {
                refuse(statement, "a statement that is no verb");
            }
        }
        return calls;
    }

    private Optional<SyntaxCall> call(MethodCallExpr call) {
        if (call.getScope().isPresent() || call.getTypeArguments().isPresent()) {
            refuse(call, "a call on an object or class");
            return Optional.empty();
        }
        List<Argument> arguments = new ArrayList<>();
        for (Expression e : call.getArguments()) {
            Optional<Argument> argument = argument(e, true);
            if (argument.isEmpty()) {
                return Optional.empty();
            }
            arguments.add(argument.get());
        }
        return Optional.of(new SyntaxCall(call.getNameAsString(), arguments, place(call)));
    }

    private Optional<Argument> argument(Expression e, boolean nestedAllowed) {
        if (e instanceof StringLiteralExpr s) {
            return Optional.of(new Argument.Text(s.asString()));
        }
        if (e instanceof IntegerLiteralExpr i && i.getValue().matches("[0-9]{1,6}")) {
            return Optional.of(new Argument.Whole(Integer.parseInt(i.getValue())));
        }
        if (e instanceof NameExpr || e instanceof FieldAccessExpr) {
            Optional<String> path = path(e);
            if (path.isPresent() && path.get().startsWith("$")) {
                int dot = path.get().indexOf('.');
                return Optional.of(
                        dot < 0
                                ? new Argument.Variable(path.get(), "")
                                : new Argument.Variable(
                                        path.get().substring(0, dot), path.get().substring(dot + 1)));
            }
        }
        if (nestedAllowed
                && e instanceof MethodCallExpr n
                && n.getScope().isEmpty()
                && n.getTypeArguments().isEmpty()
                && NESTED.contains(n.getNameAsString())) {
            List<Argument> inner = new ArrayList<>();
            for (Expression x : n.getArguments()) {
                argument(x, false).ifPresent(inner::add);
            }
            return inner.size() == n.getArguments().size()
                    ? Optional.of(new Argument.Nested(n.getNameAsString(), inner))
                    : Optional.empty();
        }
        refuse(e, "an argument that is no literal or bound value");
        return Optional.empty();
    }

    private static Optional<String> path(Expression e) {
        if (e instanceof NameExpr n) {
            return Optional.of(n.getNameAsString());
        }
        if (e instanceof FieldAccessExpr f && f.getTypeArguments().isEmpty()) {
            return path(f.getScope()).map(p -> p + "." + f.getNameAsString());
        }
        return Optional.empty();
    }

    private void refuse(Node node, String what) {
        diagnostics.add(
                Message.REFUSED,
                place(node),
                node.toString().lines().findFirst().orElse(""),
                what,
                ADVICE);
    }

    private Place place(Node node) {
        return node.getBegin().map(this::place).orElse(start);
    }

    /** A position in the text that was parsed, which has a brace before it. */
    private Place place(Position p) {
        return source.at(start.line() + p.line - 1, p.line == 1 ? start.column() + p.column - 2 : p.column);
    }
}
