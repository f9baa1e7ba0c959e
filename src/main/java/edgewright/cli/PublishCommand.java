package edgewright.cli;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.booklet.Booklet;
import edgewright.booklet.PublishOutcome;
import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.BookletParts;
import edgewright.booklet.choice.PrintingNotice;
import edgewright.booklet.choice.Progress;
import edgewright.booklet.choice.WordingChoice;
import edgewright.texts.Messages;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** {@code publish}: the printable pattern. */
@Command(name = "publish", mixinStandardHelpOptions = true)
final class PublishCommand implements Callable<Integer> {
    @ParentCommand
    private RootCommand root;

    @Mixin
    private ChartArgument argument;

    @Mixin
    private PieceOption piece;

    @Option(names = "--to", required = true, paramLabel = "FILE.pdf", converter = PathConverter.class)
    private Path to;

    @Mixin
    private PrintOption appearance;

    @Mixin
    private WordingOption wording;

    @Mixin
    private PartsOption parts;

    @Mixin
    private OwnMatterInput own;

    @Option(names = "--pattern-version", paramLabel = "TEXT", defaultValue = "")
    private String version;

    @Option(names = "--pattern-date", paramLabel = "TEXT", defaultValue = "")
    private String date;

    @Override
    public Integer call() throws IOException {
        Terminal terminal = root.terminal();
        Optional<ChartArgument.Judged> given = argument.judged(piece, wording.counting(), terminal);
        if (given.isEmpty()) {
            return ExitStatus.NO;
        }
        ChartArgument.Judged judged = given.get();
        PartsOption.Files files = parts.files(appearance.appearance().edition(), terminal.says());
        List<Printing> printings = new ArrayList<>(List.of(printing(judged, to, files.pattern())));
        files.workbook().ifPresent(second -> printings.add(printing(judged, second.file(), second.parts())));
        if (printings.size() > 1 && isSame(printings.get(0), printings.get(1))) {
            throw new BadInput(terminal.says()
                    .text(
                            "publish-same",
                            arg("file", ScreenText.name(printings.get(1).to().path()))));
        }
        Booklet.unprinted(judged.chart(), printings.get(0).options())
                .forEach(text -> terminal.complain(text.sentence(terminal.language())));
        List<String> done = new ArrayList<>();
        for (Printing printing : printings) {
            Optional<String> written = print(judged, printing, terminal);
            if (written.isEmpty()) {
                return ExitStatus.NO;
            }
            done.add(written.get());
        }
        for (int i = 0; i < done.size(); i++) {
            printings.get(i).to().write(printings.get(i).pages()::writeTo);
            terminal.sayWritten(done.get(i));
        }
        return ExitStatus.DONE;
    }

    /** A file to be printed, and its bytes as soon as it is. */
    private record Printing(OutputFile to, BookletOptions options, ByteArrayOutputStream pages) {}

    private Printing printing(ChartArgument.Judged judged, Path file, BookletParts of) {
        return new Printing(
                new OutputFile(file, judged.file(), List.of(".pdf"), root.terminal()),
                options(judged, of),
                new ByteArrayOutputStream());
    }

    private static boolean isSame(Printing one, Printing other) {
        return one.to()
                .path()
                .toAbsolutePath()
                .normalize()
                .equals(other.to().path().toAbsolutePath().normalize());
    }

    /** What is said once the file is written; empty if its words do not make the chart. */
    private static Optional<String> print(ChartArgument.Judged judged, Printing printing, Terminal terminal)
            throws IOException {
        PublishOutcome outcome = Booklet.publish(judged.verdict(), printing.options(), printing.pages(), Progress.NONE);
        Messages says = terminal.says();
        if (outcome instanceof PublishOutcome.TooLarge large) {
            throw new BadInput(says.text(
                    "publish-stitches", count("stitches", large.stitches()), count("most", Booklet.MOST_STITCHES)));
        }
        if (outcome instanceof PublishOutcome.NotProved no) {
            terminal.err()
                    .println(says.text(
                            "publish-notProved", arg("problem", no.problems().get(0))));
            return Optional.empty();
        }
        if (!(outcome instanceof PublishOutcome.Published published)) {
            throw new IllegalStateException("a draft that nobody stops is published, not " + outcome);
        }
        return Optional.of(says.text(
                "publish-done", arg("file", ScreenText.name(printing.to().path())), count("pages", published.pages())));
    }

    private BookletOptions options(ChartArgument.Judged judged, BookletParts of) {
        return new BookletOptions(
                appearance.appearance(),
                new WordingChoice(
                        wording.terms(judged.chart()),
                        wording.counting(),
                        wording.hand(),
                        judged.size(),
                        wording.layout(),
                        wording.eachRound()),
                new PrintingNotice(version, date),
                of,
                judged.isDraft(),
                root.terminal().language(),
                own.read(judged, root.terminal()));
    }
}
