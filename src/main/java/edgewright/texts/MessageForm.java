package edgewright.texts;

import fluent.syntax.AST.Expression;
import fluent.syntax.AST.InlineExpression.MessageReference;
import fluent.syntax.AST.InlineExpression.VariableReference;
import fluent.syntax.AST.Literal;
import fluent.syntax.AST.Pattern;
import fluent.syntax.AST.PatternElement;
import fluent.syntax.AST.SelectExpression;
import fluent.syntax.AST.Variant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * One way in which a message can come out, taken apart into what stands in it, in order. A message with variants has a form for
 * each of them.
 */
public record MessageForm(List<Part> parts) {
    /** What a form is made of. */
    public sealed interface Part {
        /** A text as it stands, blanks among it. */
        record Words(String text) implements Part {}

        /** A gap for a value. */
        record Value(String name) implements Part {}

        /** Another message of the same file. */
        record Other(String key) implements Part {}
    }

    public MessageForm {
        parts = List.copyOf(parts);
    }

    static List<MessageForm> of(Messages messages, String key) {
        return of(messages, key, messages.pattern(key));
    }

    private static List<MessageForm> of(Messages messages, String key, Pattern pattern) {
        List<MessageForm> forms = List.of(new MessageForm(List.of()));
        for (PatternElement element : pattern.elements()) {
            List<MessageForm> ends = element instanceof PatternElement.TextElement words
                    ? alone(new Part.Words(words.value()))
                    : of(messages, key, ((PatternElement.Placeable) element).expression());
            forms = forms.stream()
                    .flatMap(begun -> ends.stream().map(begun::followedBy))
                    .toList();
        }
        return forms;
    }

    private static List<MessageForm> of(Messages messages, String key, Expression expression) {
        if (expression instanceof VariableReference variable) {
            return alone(new Part.Value(variable.name()));
        }
        if (expression instanceof Literal<?> literal) {
            return alone(new Part.Words(String.valueOf(literal.value())));
        }
        if (expression instanceof MessageReference other && other.attributeID().isEmpty()) {
            return alone(new Part.Other(other.name()));
        }
        if (expression instanceof SelectExpression choice) {
            List<MessageForm> forms = new ArrayList<>();
            for (Variant variant : choice.variants()) {
                forms.addAll(of(messages, key, variant.value()));
            }
            return forms;
        }
        throw new IllegalArgumentException(
                messages.file() + ", message " + key + ": no reader can take " + expression + " apart");
    }

    private static List<MessageForm> alone(Part part) {
        return List.of(new MessageForm(List.of(part)));
    }

    private MessageForm followedBy(MessageForm end) {
        return new MessageForm(
                Stream.concat(parts.stream(), end.parts().stream()).toList());
    }
}
