package edgewright;

import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ConditionalExpressionTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/**
 * One use of a message in a source: {@code says.text(key, arg("name", value), ...)}. Whoever has the messages of its own package
 * calls them {@code says}, and those that the rooms of words share {@code phrases}, those that the rooms of the desk share {@code common}; under another name their use is not seen, and
 * its keys count as unused. {@code phrases.list(key, parts)} says a message with the values {@code list} and {@code next}.
 *
 * @param place the source and its line, for whoever reads of a mistake
 * @param keys the keys that may be meant: one, or those of a condition; empty if the source does not show any
 * @param family whether the key is only the beginning of keys, and the name of a case follows
 * @param arguments the kind of each argument, such as {@code count}, by its name
 */
record MessageUse(String place, List<String> keys, boolean family, Map<String, String> arguments) {
    private static final List<String> KINDS =
            List.of("arg", "count", "plain", "number", "decimal", "shortest", "and", "or", "commas", "choice");

    boolean means(String key) {
        return keys.stream().anyMatch(said -> family ? key.startsWith(said) : key.equals(said));
    }

    /** All uses of messages called {@code says} in the sources of a folder and of the folders inside it. */
    static List<MessageUse> in(Path folder) throws IOException {
        return in(folder, "says");
    }

    /** All uses of messages called {@code says} in the sources of a folder, without those of the folders inside it. */
    static List<MessageUse> alone(Path folder) throws IOException {
        return in(folder, "says", 1);
    }

    /** All uses of messages of that name in the sources of a folder and of the folders inside it. */
    static List<MessageUse> in(Path folder, String messages) throws IOException {
        return in(folder, messages, Integer.MAX_VALUE);
    }

    private static List<MessageUse> in(Path folder, String messages, int depth) throws IOException {
        List<Path> sources;
        try (Stream<Path> files = Files.walk(folder, depth)) {
            sources = files.filter(file -> file.toString().endsWith(".java"))
                    .sorted()
                    .toList();
        }
        List<MessageUse> uses = new ArrayList<>();
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null)) {
            JavacTask task = (JavacTask)
                    compiler.getTask(null, manager, null, null, null, manager.getJavaFileObjectsFromPaths(sources));
            SourcePositions positions = Trees.instance(task).getSourcePositions();
            for (CompilationUnitTree unit : task.parse()) {
                new Uses(unit, positions, messages, uses).scan(unit, null);
            }
        }
        return uses;
    }

    private static final class Uses extends TreeScanner<Void, Void> {
        private final CompilationUnitTree unit;
        private final SourcePositions positions;
        private final String messages;
        private final List<MessageUse> uses;

        Uses(CompilationUnitTree unit, SourcePositions positions, String messages, List<MessageUse> uses) {
            this.messages = messages;
            this.unit = unit;
            this.positions = positions;
            this.uses = uses;
        }

        @Override
        public Void visitMethodInvocation(MethodInvocationTree call, Void nothing) {
            if (call.getMethodSelect() instanceof MemberSelectTree method && isMessages(method.getExpression())) {
                if (method.getIdentifier().contentEquals("text")) {
                    uses.add(use(call));
                } else if (method.getIdentifier().contentEquals("list")) {
                    uses.add(new MessageUse(
                            place(call),
                            literals(bare(call.getArguments().get(0))),
                            false,
                            Map.of("list", "arg", "next", "arg")));
                }
            }
            return super.visitMethodInvocation(call, null);
        }

        /** A field, a value or a method without arguments. */
        private boolean isMessages(ExpressionTree receiver) {
            String written = receiver.toString();
            return written.matches("(.*\\.)?" + messages + "(\\(\\))?");
        }

        private MessageUse use(MethodInvocationTree call) {
            ExpressionTree key = bare(call.getArguments().get(0));
            boolean family = key instanceof BinaryTree;
            ExpressionTree said = family ? bare(((BinaryTree) key).getLeftOperand()) : key;
            Map<String, String> arguments = new TreeMap<>();
            for (ExpressionTree argument :
                    call.getArguments().subList(1, call.getArguments().size())) {
                argument(argument)
                        .ifPresentOrElse(
                                one -> arguments.put(one.get(1), one.get(0)),
                                () -> arguments.put(argument.toString(), "unknown"));
            }
            return new MessageUse(place(call), literals(said), family, arguments);
        }

        private String place(MethodInvocationTree call) {
            String file = Path.of(unit.getSourceFile().getName()).getFileName().toString();
            return file + ":" + unit.getLineMap().getLineNumber(positions.getStartPosition(unit, call));
        }

        /** Kind and name. */
        private static Optional<List<String>> argument(ExpressionTree argument) {
            return argument instanceof MethodInvocationTree made
                            && made.getMethodSelect() instanceof IdentifierTree kind
                            && KINDS.contains(kind.getName().toString())
                            && made.getArguments().get(0) instanceof LiteralTree name
                    ? Optional.of(List.of(kind.getName().toString(), String.valueOf(name.getValue())))
                    : Optional.empty();
        }

        private static List<String> literals(ExpressionTree key) {
            if (key instanceof LiteralTree literal) {
                return List.of(String.valueOf(literal.getValue()));
            }
            if (key instanceof ConditionalExpressionTree choice) {
                return Stream.of(choice.getTrueExpression(), choice.getFalseExpression())
                        .flatMap(one -> literals(bare(one)).stream())
                        .toList();
            }
            return List.of();
        }

        private static ExpressionTree bare(ExpressionTree tree) {
            return tree instanceof ParenthesizedTree inside ? bare(inside.getExpression()) : tree;
        }
    }
}
