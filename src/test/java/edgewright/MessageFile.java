package edgewright;

import fluent.bundle.FluentResource;
import fluent.syntax.AST.Expression;
import fluent.syntax.AST.InlineExpression.MessageReference;
import fluent.syntax.AST.InlineExpression.TermReference;
import fluent.syntax.AST.InlineExpression.VariableReference;
import fluent.syntax.AST.Message;
import fluent.syntax.AST.Pattern;
import fluent.syntax.AST.PatternElement;
import fluent.syntax.AST.SelectExpression;
import fluent.syntax.AST.Term;
import fluent.syntax.parser.FTLParser;
import fluent.syntax.parser.FTLStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** A file of messages as the library parses it whole, beside the program's own reading message by message. */
final class MessageFile {
    private final Map<String, Pattern> patterns = new TreeMap<>();
    private final Set<String> referred = new TreeSet<>();

    private MessageFile(FluentResource resource) {
        resource.entries().forEach(entry -> {
            if (entry instanceof Message message) {
                patterns.put(message.name(), message.pattern().orElseThrow());
            } else if (entry instanceof Term term) {
                patterns.put("-" + term.name(), term.value());
            }
        });
    }

    static MessageFile read(Path file) throws IOException {
        FluentResource resource = FTLParser.parse(FTLStream.of(Files.readString(file)), false);
        if (!resource.errors().isEmpty() || !resource.junk().isEmpty()) {
            throw new IOException(file + ": " + resource.errors() + resource.junk());
        }
        return new MessageFile(resource);
    }

    /** By the key of each message the names of its values, and of those of the messages and terms that it refers to. */
    Map<String, Set<String>> arguments() {
        Map<String, Set<String>> arguments = new TreeMap<>();
        patterns.keySet().stream().filter(key -> !key.startsWith("-")).forEach(key -> {
            Set<String> names = new TreeSet<>();
            walk(patterns.get(key), names);
            arguments.put(key, names);
        });
        return arguments;
    }

    /** The keys of messages and terms that others refer to. */
    Set<String> referred() {
        arguments();
        return referred;
    }

    private void walk(Pattern pattern, Set<String> names) {
        for (PatternElement element : pattern.elements()) {
            if (element instanceof PatternElement.Placeable placeable) {
                walk(placeable.expression(), names);
            }
        }
    }

    private void walk(Expression expression, Set<String> names) {
        if (expression instanceof VariableReference variable) {
            names.add(variable.name());
        } else if (expression instanceof SelectExpression choice) {
            walk(choice.selector(), names);
            choice.variants().forEach(variant -> walk(variant.value(), names));
        } else if (expression instanceof TermReference term) {
            refer("-" + term.name(), names);
        } else if (expression instanceof MessageReference message) {
            refer(message.name(), names);
        }
    }

    private void refer(String key, Set<String> names) {
        if (referred.add(key) || patterns.containsKey(key)) {
            walk(patterns.get(key), names);
        }
    }
}
