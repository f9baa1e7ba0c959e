package edgewright;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LineMap;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreePathScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/** Laws about the sources themselves, which the built classes no longer show. */
class SourceLawsTest {

    private static final int MOST_LINES_OF_A_SOURCE = 400;
    private static final int MOST_LINES_OF_A_METHOD = 40;

    /** Abbreviations of stitches and loops in UK and US terms; {@code <tr>} is a row of a table. */
    private static final Pattern STITCH_WORD =
            Pattern.compile("(?i)(?<![\\w</])(dc|sc|hdc|htr|tr|dtr|ttr|blo|flo|sl st|chs?)(?!\\w)");

    @Test
    void whatIsLongStandsInTheListOfDebtsAndNothingElseDoes() throws IOException {
        assertThat(new TreeSet<>(longOnes(programSources())))
                .isEqualTo(new TreeSet<>(debts(Files.readString(Path.of("DEVELOPERS.md")))));
    }

    @Test
    void noStitchWordStandsInCode() throws IOException {
        assertThat(stitchWords(programSources())).isEmpty();
    }

    @Test
    void aSourceAndAMethodOverTheirLinesAreSeen() throws IOException {
        String body = "        count++;\n".repeat(MOST_LINES_OF_A_METHOD - 2);
        String fits = "class Ladder {\n    int count;\n    void climb() {\n" + body + "    }\n}\n";
        String methodTooLong = fits.replace("climb() {\n", "climb() {\n        count++;\n");
        String sourceTooLong = fits + "//\n".repeat(MOST_LINES_OF_A_SOURCE);

        assertThat(longOnes(List.of(source(fits)))).isEmpty();
        assertThat(longOnes(List.of(source(methodTooLong)))).containsExactly("Ladder.climb");
        assertThat(longOnes(List.of(source(sourceTooLong)))).containsExactly("Ladder.java");
    }

    @Test
    void aStitchWordInAStringIsSeenAndInACommentIsNot() throws IOException {
        String code = """
                class Ladder {
                    /** One dc in each. */
                    String[] said = {"1 dc blo", "<tr><td>", "scale", "1 drop TR", "track"};
                }
                """;

        assertThat(stitchWords(List.of(source(code))))
                .containsExactly("Ladder.java:3 says '1 dc blo'", "Ladder.java:3 says '1 drop TR'");
    }

    @Test
    void theListOfDebtsIsReadFromItsTable() {
        assertThat(
                        debts(
                                "## Other\n| `No.no` | x | y |\n## Debts\n| where | debt | because |\n|---|---|---|\n| `A.java`, `B.c` | long | why |\n"))
                .containsExactly("A.java", "B.c");
    }

    /** Names a source by its file ({@code Ladder.java}) and a method by its class ({@code Ladder.climb}). */
    private static List<String> longOnes(List<JavaFileObject> sources) throws IOException {
        List<String> found = new ArrayList<>();
        read(sources, (unit, positions) -> new TreePathScanner<Void, Void>() {
            @Override
            public Void visitCompilationUnit(CompilationUnitTree tree, Void unused) {
                if (text(tree).lines().count() > MOST_LINES_OF_A_SOURCE) {
                    found.add(fileName(tree));
                }
                return super.visitCompilationUnit(tree, null);
            }

            @Override
            public Void visitMethod(MethodTree method, Void unused) {
                long lines = lineOf(positions.getEndPosition(unit, method)) - lineOf(start(method)) + 1;
                if (lines > MOST_LINES_OF_A_METHOD
                        && getCurrentPath().getParentPath().getLeaf() instanceof ClassTree owner) {
                    found.add(owner.getSimpleName() + "." + method.getName());
                }
                return super.visitMethod(method, null);
            }

            /** Annotations stand above a method; its lines are counted from its first own line. */
            private long start(MethodTree method) {
                Tree first = method.getReturnType() == null ? method.getBody() : method.getReturnType();
                return positions.getStartPosition(unit, first == null ? method : first);
            }

            private long lineOf(long position) {
                LineMap lines = unit.getLineMap();
                return lines.getLineNumber(position);
            }
        });
        return found;
    }

    private static List<String> stitchWords(List<JavaFileObject> sources) throws IOException {
        List<String> found = new ArrayList<>();
        read(sources, (unit, positions) -> new TreePathScanner<Void, Void>() {
            @Override
            public Void visitLiteral(LiteralTree literal, Void unused) {
                if (literal.getValue() instanceof String said
                        && STITCH_WORD.matcher(said).find()) {
                    long line = unit.getLineMap().getLineNumber(positions.getStartPosition(unit, literal));
                    found.add(fileName(unit) + ":" + line + " says '" + said + "'");
                }
                return null;
            }
        });
        return found;
    }

    private static List<String> debts(String developersPage) {
        return PageTable.rowsUnder(developersPage, "## Debts").stream()
                .flatMap(row -> PageTable.quoted(row.get(0)).stream())
                .toList();
    }

    private interface Reader {
        TreePathScanner<Void, Void> over(CompilationUnitTree unit, SourcePositions positions);
    }

    private static void read(List<JavaFileObject> sources, Reader reader) throws IOException {
        JavacTask task = (JavacTask)
                ToolProvider.getSystemJavaCompiler().getTask(null, null, null, List.of("-proc:none"), null, sources);
        SourcePositions positions = Trees.instance(task).getSourcePositions();
        for (CompilationUnitTree unit : task.parse()) {
            reader.over(unit, positions).scan(unit, null);
        }
    }

    private static String text(CompilationUnitTree unit) {
        try {
            return unit.getSourceFile().getCharContent(true).toString();
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    private static String fileName(CompilationUnitTree unit) {
        return Path.of(unit.getSourceFile().toUri().getPath()).getFileName().toString();
    }

    private static List<JavaFileObject> programSources() throws IOException {
        List<Path> files;
        try (Stream<Path> tree = Files.walk(Path.of("src/main/java"))) {
            files = tree.filter(file -> file.toString().endsWith(".java"))
                    .sorted()
                    .toList();
        }
        List<JavaFileObject> sources = new ArrayList<>();
        for (Path file : files) {
            sources.add(new Source(file.toUri(), Files.readString(file)));
        }
        return sources;
    }

    private static JavaFileObject source(String code) {
        return new Source(URI.create("string:///Ladder.java"), code);
    }

    /** A source whose text is at hand. */
    private static final class Source extends SimpleJavaFileObject {
        private final String code;

        Source(URI uri, String code) {
            super(uri, Kind.SOURCE);
            this.code = code;
        }

        @Override
        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return code;
        }
    }
}
