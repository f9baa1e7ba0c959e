package edgewright.texts;

import fluent.syntax.AST.Expression;
import fluent.syntax.AST.InlineExpression.MessageReference;
import fluent.syntax.AST.InlineExpression.TermReference;
import fluent.syntax.AST.InlineExpression.VariableReference;
import fluent.syntax.AST.Literal;
import fluent.syntax.AST.Pattern;
import fluent.syntax.AST.PatternElement;
import fluent.syntax.AST.SelectExpression;
import fluent.syntax.AST.Variant;
import java.util.List;

/**
 * A message with values for what it names. Filled in here, over the tree that the library parses: the library's own way takes
 * too long the first time, and knows no variant for one very number. A function in a message is refused, since a value comes
 * with the way in which it is written.
 */
final class MessageFilling {
    /** A message that refers to messages more deeply refers to itself. */
    private static final int DEEPEST = 10;

    private final Messages messages;
    private final String key;
    private final Arg[] values;

    MessageFilling(Messages messages, String key, Arg... values) {
        this.messages = messages;
        this.key = key;
        this.values = values;
    }

    /**
     * The text.
     *
     * @throws IllegalArgumentException if the message, a value or another message that it refers to is missing
     */
    String text() {
        StringBuilder text = new StringBuilder();
        fill(messages.pattern(key), text, 0);
        return text.toString();
    }

    private void fill(Pattern pattern, StringBuilder text, int depth) {
        if (depth > DEEPEST) {
            throw mistake("refers to itself");
        }
        for (PatternElement element : pattern.elements()) {
            if (element instanceof PatternElement.TextElement words) {
                text.append(words.value());
            } else {
                fill(((PatternElement.Placeable) element).expression(), text, depth + 1);
            }
        }
    }

    private void fill(Expression expression, StringBuilder text, int depth) {
        if (expression instanceof VariableReference variable) {
            text.append(value(variable.name()).written(messages.language()));
        } else if (expression instanceof SelectExpression choice) {
            fill(variant(choice).value(), text, depth);
        } else if (expression instanceof Literal<?> literal) {
            text.append(literal.value());
        } else if (expression instanceof TermReference term
                && term.attributeID().isEmpty()
                && term.arguments().isEmpty()) {
            fill(messages.pattern("-" + term.name()), text, depth);
        } else if (expression instanceof MessageReference other
                && other.attributeID().isEmpty()) {
            fill(messages.pattern(other.name()), text, depth);
        } else {
            throw mistake("no way to fill in " + expression);
        }
    }

    /** The variant of the closest case that there is one for. */
    private Variant variant(SelectExpression choice) {
        if (!(choice.selector() instanceof VariableReference variable)) {
            throw mistake("only a value can be chosen by, not " + choice.selector());
        }
        List<Variant> variants = choice.variants();
        // Loops, since a command that says one sentence would pay for each lambda on its way, also for those in the
        // library.
        for (String name : value(variable.name()).cases(messages.language())) {
            for (Variant variant : variants) {
                if (variant.key().equals(name)) {
                    return variant;
                }
            }
        }
        for (Variant variant : variants) {
            if (variant.isDefault()) {
                return variant;
            }
        }
        throw mistake("no variant for other cases");
    }

    private Arg value(String name) {
        for (Arg value : values) {
            if (value.name().equals(name)) {
                return value;
            }
        }
        throw mistake("the value $" + name + " is missing");
    }

    private IllegalArgumentException mistake(String what) {
        return new IllegalArgumentException(messages.file() + ", message " + key + ": " + what);
    }
}
