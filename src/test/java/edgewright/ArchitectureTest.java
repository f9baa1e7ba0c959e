package edgewright;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.lang.conditions.ArchPredicates.are;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.as;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.io.File;
import java.io.FileOutputStream;
import java.io.FileWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.RandomAccessFile;
import java.net.URI;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Holds the program to the tables of DEVELOPERS.md, and to the laws that stand under them. */
class ArchitectureTest {
    private static final int MOST_CLASSES_OF_A_ROOM = 30;

    private static final DescribedPredicate<JavaClass> THE_COMMAND_LINE =
            resideInAPackage("edgewright.cli").or(type(Main.class));

    /** Those that know how a file is made without a moment in which it is half a file; one makes empty files only. */
    private static final DescribedPredicate<JavaClass> WRITERS = describe(
            "the writers in file",
            found -> List.of("SafeFile", "PartFile", "HeldFile", "ProcessLock").contains(found.getSimpleName())
                    && found.getPackageName().equals("edgewright.file"));

    private static final Set<String> WAYS_TO_WRITE = Set.of(
            "write", "writeString", "newOutputStream", "newBufferedWriter", "newByteChannel", "createFile", "move");

    private static boolean writesAFile(JavaMethodCall call) {
        String name = call.getTarget().getName();
        return call.getTargetOwner().isEquivalentTo(Files.class)
                ? WAYS_TO_WRITE.contains(name) || copiesToAFile(call)
                : call.getTargetOwner().isEquivalentTo(FileChannel.class) && name.equals("open");
    }

    /** Copying into a stream writes no file by itself. */
    private static boolean copiesToAFile(JavaMethodCall call) {
        return call.getTarget().getName().equals("copy")
                && !call.getTarget().getRawParameterTypes().get(1).isEquivalentTo(OutputStream.class);
    }

    private static final ArchRule SPEAKING = noClasses()
            .that(are(not(THE_COMMAND_LINE)))
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .because("whoever calls the core decides what is said, and in which language");

    private static final ArchRule ENDING = noClasses()
            .that(are(not(THE_COMMAND_LINE)))
            .should()
            .callMethod(System.class, "exit", int.class)
            .because("an exit status is the answer of a command, and a window asks about unsaved work first");

    private static final ArchRule STACK_TRACES = noClasses()
            .should()
            .callMethodWhere(describe(
                    "it prints a stack trace",
                    call -> call.getTarget().getName().equals("printStackTrace")
                            && call.getTargetOwner().isAssignableTo(Throwable.class)))
            .because("bad input gets one sentence: file, place and what was expected");

    private static final ArchRule WRITING = noClasses()
            .that(are(not(WRITERS)))
            .should()
            .callMethodWhere(describe("it writes a file", ArchitectureTest::writesAFile))
            .orShould()
            .callConstructor(FileOutputStream.class, String.class)
            .orShould()
            .callConstructor(FileOutputStream.class, File.class)
            .orShould()
            .dependOnClassesThat(are(type(FileWriter.class).or(type(RandomAccessFile.class))))
            .because("a file is whole at any moment only if file.SafeFile puts it in its place");

    private static JavaClasses program;
    private static PackageLaw law;

    @BeforeAll
    static void readTheProgramAndItsLaw() throws IOException {
        program = new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests())
                .importPackages("edgewright");
        law = PackageLaw.read(Files.readString(Path.of("DEVELOPERS.md")));
    }

    @Test
    void everyClassUsesOnlyWhatTheTablesOpenToIt() {
        assertThat(program.stream().flatMap(ArchitectureTest::objections)).isEmpty();
    }

    @Test
    void theLawSeesWhatAClassUses() {
        JavaClasses offender = new ClassFileImporter().importClasses(PaintsOutsideTheDesk.class);

        assertThat(offender.stream().flatMap(ArchitectureTest::objections))
                .singleElement(as(InstanceOfAssertFactories.STRING))
                .startsWith("edgewright.ArchitectureTest$PaintsOutsideTheDesk uses javax.swing.JPanel, but only desk,")
                .endsWith(
                        " may: the core must run, and be tested, where there is no screen; so must the state of the desk");
    }

    /** A class is built into each room that reaches for every package which the table does not open to that room. */
    @Test
    void everyForbiddenArrowOutOfEveryRoomIsRefused(@TempDir Path folder) throws IOException {
        List<String> rooms =
                law.packages().stream().filter(name -> name.contains(".")).toList();
        List<JavaFileObject> offenders = new ArrayList<>();
        for (String room : rooms) {
            String fields = forbiddenTo(room).stream()
                    .map(used -> used.getName() + " " + used.getName().replace('.', '_') + ";\n")
                    .collect(Collectors.joining());
            offenders.add(new OffendingSource(
                    room, "package edgewright." + room + ";\nclass ReachesTooFar {\n" + fields + "}\n"));
        }
        List<String> options = List.of("-proc:none", "-cp", System.getProperty("java.class.path"), "-d", "" + folder);
        assertThat(ToolProvider.getSystemJavaCompiler()
                        .getTask(null, null, null, options, null, offenders)
                        .call())
                .isTrue();
        JavaClasses built = new ClassFileImporter().importPath(folder);
        for (String room : rooms) {
            List<String> expected =
                    forbiddenTo(room).stream().map(JavaClass::getName).sorted().toList();
            assertThat(expected).as(room).hasSizeGreaterThan(5);
            assertThat(objections(built.get("edgewright." + room + ".ReachesTooFar"))
                            .map(said -> said.replaceAll(".* uses (\\S+), but .*", "$1")))
                    .containsExactlyElementsOf(expected);
        }
    }

    /** A public class of each package that the table does not open to this room. */
    private static List<JavaClass> forbiddenTo(String room) {
        List<String> open = law.openTo(room);
        return law.packages().stream()
                .filter(name -> !name.equals(room) && !open.contains(name))
                .flatMap(name -> program.stream()
                        .filter(found -> found.getPackageName().equals(packageName(name)))
                        .filter(found -> found.getModifiers().contains(JavaModifier.PUBLIC) && !found.isNestedClass())
                        .filter(found -> !open.contains(name + "." + found.getSimpleName()))
                        .min(Comparator.comparing(JavaClass::getName))
                        .stream())
                .toList();
    }

    private static String packageName(String name) {
        return name.equals("edgewright") ? name : "edgewright." + name;
    }

    /** A source of a class that breaks the law. */
    private static final class OffendingSource extends SimpleJavaFileObject {
        private final String code;

        OffendingSource(String room, String code) {
            super(URI.create("string:///" + room.replace('.', '/') + "/ReachesTooFar.java"), Kind.SOURCE);
            this.code = code;
        }

        @Override
        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return code;
        }
    }

    @Test
    void everyPackageOfTheTableSaysWhatItIsFor() {
        assertThat(law.packages()).allSatisfy(name -> {
            Path folder = Path.of("src/main/java/edgewright", name.equals("edgewright") ? "" : name.replace('.', '/'));
            assertThat(folder.resolve("package-info.java")).content().contains("/**");
        });
    }

    @Test
    void noRoomHasMoreClassesThanANewcomerCanLookOver() throws IOException {
        for (String name : law.packages()) {
            if (name.contains(".")) {
                assertThat(sourcesIn(name)).as(name).hasSizeBetween(2, MOST_CLASSES_OF_A_ROOM);
            }
        }
    }

    private static List<Path> sourcesIn(String name) throws IOException {
        try (Stream<Path> files = Files.list(Path.of("src/main/java/edgewright", name.replace('.', '/')))) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> !file.endsWith("package-info.java"))
                    .toList();
        }
    }

    @Test
    void onlyTheCommandLineSpeaksOnTheTerminal() {
        SPEAKING.check(program);
    }

    @Test
    void onlyTheCommandLineEndsTheProgram() {
        ENDING.check(program);
    }

    @Test
    void nobodyPrintsAStackTrace() {
        STACK_TRACES.check(program);
    }

    @Test
    void everyFileIsWrittenWholeOrNotAtAll() {
        WRITING.check(program);
        JavaClasses offender = new ClassFileImporter().importClasses(WritesByItself.class);
        assertThat(WRITING.evaluate(offender).getFailureReport().getDetails()).hasSize(3);
    }

    /** Three ways past the one that is safe. */
    @SuppressWarnings("unused")
    private static final class WritesByItself {
        void write(Path file) throws IOException {
            Files.writeString(file, "half");
            Files.copy(Files.newInputStream(file), file);
            new FileOutputStream(file.toFile()).close();
        }
    }

    @Test
    void theLawsOfTheTerminalSeeAnOffender() {
        JavaClasses offender = new ClassFileImporter().importClasses(SpeaksAndEnds.class);

        assertThat(List.of(SPEAKING, ENDING, STACK_TRACES))
                .allSatisfy(rule ->
                        assertThat(rule.evaluate(offender).hasViolation()).isTrue());
    }

    private static Stream<String> objections(JavaClass user) {
        return user.getDirectDependenciesFromSelf().stream()
                .map(dependency -> dependency.getTargetClass().getBaseComponentType())
                .filter(used -> !used.isPrimitive())
                .flatMap(used -> law.objectionTo(user.getName(), used.getName()).stream())
                .distinct()
                .sorted();
    }

    /** Does what the law forbids, so that a test can see it forbidden. */
    @SuppressWarnings("unused")
    private static final class PaintsOutsideTheDesk {
        private final List<String> allowed = List.of();
        private javax.swing.JPanel[] forbidden;
    }

    /** Breaks each law of the terminal once. */
    @SuppressWarnings("unused")
    private static final class SpeaksAndEnds {
        void breakEachLaw(Exception problem) {
            System.out.println("said");
            problem.printStackTrace();
            System.exit(0);
        }
    }
}
