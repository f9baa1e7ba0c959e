package edgewright.cli;

import static edgewright.cli.CommandLineHelper.run;
import static org.assertj.core.api.Assertions.assertThat;

import edgewright.cli.CommandLineHelper.Ended;
import edgewright.texts.English;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine.Model.CommandSpec;

class ProgramTest {
    @TempDir
    private Path folder;

    @Test
    void helpNamesEveryCommand() {
        Ended help = run("--help");
        assertThat(help.status()).isZero();
        assertThat(help.err()).isEmpty();
        assertThat(commandNames()).allSatisfy(name -> assertThat(help.out()).containsPattern("(?m)^  " + name + " "));
    }

    static List<String> commandNames() {
        return List.copyOf(CommandLineHelper.commands().getSubcommands().keySet());
    }

    @ParameterizedTest
    @MethodSource("commandNames")
    void everyCommandHelpsWithExamples(String name) {
        Ended help = run(name, "--help");
        assertThat(help.status()).isZero();
        assertThat(help.err()).isEmpty();
        if (!name.equals("help")) {
            assertThat(help.out()).contains("Examples:\n  edgewright " + name).contains("Exit status: 0");
            assertThat(run("help", name)).isEqualTo(help);
        }
    }

    @ParameterizedTest
    @MethodSource("commandNames")
    void everyOptionAndArgumentIsExplained(String name) {
        CommandSpec command =
                CommandLineHelper.commands().getSubcommands().get(name).getCommandSpec();
        List<String> unexplained = new ArrayList<>();
        Stream.concat(command.options().stream(), command.positionalParameters().stream())
                .filter(argument -> argument.description().length == 0)
                .forEach(argument -> unexplained.add(argument.paramLabel()));
        assertThat(unexplained).isEmpty();
    }

    @Test
    void theVersionIsSaid() {
        assertThat(run("--version").out()).startsWith("Edgewright");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "chek",
                "chek x",
                "--chek",
                "check",
                "check --jsn x",
                "check --sides",
                "check --sides 1,2,3 x",
                "check --sides 1,-2 x",
                "check --sides one,two x",
                "write",
                "write x y",
                "write --terms CA x",
                "write --counting both x",
                "write --repeats 1 x",
                "fit x",
                "fit x --at-round 1",
                "fit x --at-round one --counts 1,2",
                "fit x --at-round 99999999999 --counts 1,2",
                "fit x --at-round 1 --counts 1,2,3",
                "fit x --at-round 1 --counts 1,2 --counting all",
                "fit x --at-round 1 --counts 1,2 --untie top",
                "fit x --at-round 1 --counts 1,2 --target 3,4 --repeats 1,1",
                "draw x",
                "draw --to x.svg",
                "draw x --to"
            })
    void wrongUsageIsOneLine(String line) {
        Ended ended = run((Object[]) line.split(" "));
        assertThat(ended.status()).isEqualTo(2);
        assertThat(ended.out()).isEmpty();
        assertThat(ended.err().lines())
                .singleElement()
                .asString()
                .contains("; 'edgewright")
                .endsWith("--help' shows how");
    }

    @Test
    void noCommandButOptionsIsWrongUsage() {
        assertThat(run().status()).isEqualTo(2);
    }

    @Test
    void aNameThatNoFileCanHaveIsOneLine() {
        Ended ended = run("check", "a\0b");
        assertThat(ended.status()).isEqualTo(2);
        assertThat(ended.err().lines()).singleElement().asString().contains("cannot be the name of a file here");
        assertThat(run("check", "").err()).contains("expected the name of a file");
    }

    @Test
    void aChartAloneIsNoCommand() throws IOException {
        Path file = Files.createFile(folder.resolve("anything"));
        assertThat(Program.isCommand(List.of())).isFalse();
        assertThat(Program.isCommand(List.of("not-there.border.json"))).isFalse();
        assertThat(Program.isCommand(List.of(file.toString()))).isFalse();
        assertThat(Program.isCommand(List.of("check"))).isTrue();
        assertThat(Program.isCommand(List.of("chek"))).isTrue();
        assertThat(Program.isCommand(List.of("--help"))).isTrue();
        assertThat(Program.isCommand(List.of("a\0b"))).isTrue();
        assertThat(Program.isCommand(List.of("check", file.toString()))).isTrue();
    }

    @Test
    void anAnswerThatCannotBeWrittenIsAFailure() {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = Program.run(
                List.of("--help"), new Terminal(failing("No space left on device"), err, false, English.LANGUAGE));
        assertThat(status).isEqualTo(2);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .isEqualTo(
                        "the answer could not be written (No space left on device); expected somewhere with room for it\n");
    }

    @Test
    void aFileThatWasWrittenIsDoneWhereNobodyCanBeToldOfIt() throws IOException {
        Path chart = Charts.sound(folder);
        for (List<String> command : List.of(
                List.of(
                        "draw",
                        chart.toString(),
                        "--to",
                        folder.resolve("y.svg").toString()),
                List.of(
                        "write",
                        chart.toString(),
                        "--to",
                        folder.resolve("y.txt").toString()),
                List.of(
                        "publish",
                        chart.toString(),
                        "--to",
                        folder.resolve("y.pdf").toString()))) {
            ByteArrayOutputStream err = new ByteArrayOutputStream();
            int status =
                    Program.run(command, new Terminal(failing("Bad file descriptor"), err, false, English.LANGUAGE));
            assertThat(err.toString(StandardCharsets.UTF_8)).isEmpty();
            assertThat(status).isZero();
            assertThat(Path.of(command.get(3))).isNotEmptyFile();
        }
    }

    @Test
    void aReaderThatLeavesEarlyIsNoFailure() {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = Program.run(List.of("--help"), new Terminal(failing("Broken pipe"), err, false, English.LANGUAGE));
        assertThat(status).isZero();
        assertThat(err.size()).isZero();
    }

    @Test
    void coloursAreForScreensWhereNobodyMinds() {
        assertThat(Terminal.wantsColours(true, Map.of())).isTrue();
        assertThat(Terminal.wantsColours(false, Map.of())).isFalse();
        assertThat(Terminal.wantsColours(true, Map.of("NO_COLOR", "1"))).isFalse();
        assertThat(Terminal.wantsColours(true, Map.of("NO_COLOR", ""))).isTrue();
        assertThat(Terminal.wantsColours(true, Map.of("TERM", "dumb"))).isFalse();
    }

    @Test
    void theCommandsAreKnownByTheirNamesWithoutALanguage() {
        assertThat(RootCommand.commandNames()).containsExactlyElementsOf(commandNames());
    }

    @Test
    void aCommandIsSetUpAlone() {
        assertThat(RootCommand.commandsFor(List.of("check", "fit"))).containsExactly(CheckCommand.class);
        assertThat(RootCommand.commandsFor(List.of("help", "check"))).hasSameSizeAs(commandNames());
        assertThat(RootCommand.commandsFor(List.of("chek"))).hasSameSizeAs(commandNames());
        assertThat(RootCommand.commandsFor(List.of())).hasSameSizeAs(commandNames());
    }

    @Test
    void everyExampleOfTheHelpWorks() throws IOException {
        Properties usage = new Properties();
        try (InputStream in = Program.class.getResourceAsStream("/edgewright/language/en/usage.properties")) {
            usage.load(in);
        }
        Path sample = Path.of("sample-charts/reed-bank.border.json");
        Files.copy(sample, folder.resolve("reed-bank.border.json"));
        Files.copy(Path.of("sample-charts/mud-ripple.border.json"), folder.resolve("mud-ripple.border.json"));
        Files.writeString(folder.resolve("heron.txt"), "ABBA\nBAAB\nABBA\n");
        BufferedImage heron = new BufferedImage(260, 180, BufferedImage.TYPE_BYTE_GRAY);
        ImageIO.write(heron, "png", folder.resolve("heron.png").toFile());
        String pattern = run("write", sample, "--sides", "53,35").out();
        Files.writeString(folder.resolve("typed.txt"), pattern);
        Files.writeString(folder.resolve("old-pattern.txt"), pattern);
        Pattern example = Pattern.compile("edgewright\\.[\\w-]+\\.usage\\.footer\\.\\d+");
        int examples = 0;
        for (String key : new TreeSet<>(usage.stringPropertyNames())) {
            if (example.matcher(key).matches()) {
                String line = usage.getProperty(key).strip().replaceAll(" > .*", "");
                Object[] words = Stream.of(line.replace("--to corners", "--to corners.d")
                                .replace("--to variations", "--to variations.d")
                                .split(" "))
                        .skip(1)
                        .map(this::inFolder)
                        .toArray();
                assertThat(run(words))
                        .as(line)
                        .extracting(Ended::status, Ended::err)
                        .containsExactly(0, "");
                examples++;
            }
        }
        assertThat(examples).isGreaterThanOrEqualTo(12);
    }

    /** The shell would put the names of all charts in the place of the asterisk. */
    private String inFolder(String word) {
        String name = word.replace("*", "reed-bank");
        return word.matches(".*\\.\\w+") ? folder.resolve(name).toString() : word;
    }

    @Test
    void withoutAScreenTheSampleIsCheckedAndPublished() throws IOException {
        Path sample = WithoutScreen.sample(folder);
        Files.createDirectories(sample.getParent());
        Files.createDirectory(folder.resolve("target"));
        Files.copy(Path.of("sample-charts/reed-bank.border.json"), sample);
        Ended ended = withoutScreen(List.of());
        assertThat(ended.status()).isZero();
        assertThat(ended.err()).isEmpty();
        assertThat(ended.out())
                .startsWith("There is no screen here")
                .contains(sample + ": 'Reed Bank'")
                .contains("wrote " + folder.resolve("target/reed-bank.pdf"));
        assertThat(Files.readAllBytes(folder.resolve("target/reed-bank.pdf")))
                .startsWith("%PDF-".getBytes(StandardCharsets.US_ASCII));
    }

    @Test
    void withoutAScreenAndASampleThereIsNothingToDo() {
        Ended nothing = withoutScreen(List.of());
        assertThat(nothing.status()).isEqualTo(2);
        assertThat(nothing.err().lines()).singleElement().asString().startsWith("there is no screen here");
        Ended chart = withoutScreen(List.of("my.border.json"));
        assertThat(chart.status()).isEqualTo(2);
        assertThat(chart.err().lines()).singleElement().asString().contains("'my.border.json'");
    }

    private Ended withoutScreen(List<String> charts) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = WithoutScreen.run(charts, folder, new Terminal(out, err, false, English.LANGUAGE));
        return new Ended(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    private static OutputStream failing(String why) {
        return new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException(why);
            }
        };
    }
}
