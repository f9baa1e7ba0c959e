package edgewright.cli;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.booklet.Booklet;
import edgewright.booklet.PublishOutcome;
import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.PrintingNotice;
import edgewright.booklet.choice.Progress;
import edgewright.booklet.choice.WordingChoice;
import edgewright.texts.Messages;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
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
    private SupplementsOption leaveOut;

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
        OutputFile output = new OutputFile(to, judged.file(), List.of(".pdf"), terminal);
        BookletOptions options = options(judged);
        Booklet.unprinted(judged.chart(), options)
                .forEach(text -> terminal.complain(text.sentence(terminal.language())));
        ByteArrayOutputStream pages = new ByteArrayOutputStream();
        PublishOutcome outcome = Booklet.publish(judged.verdict(), options, pages, Progress.NONE);
        Messages says = terminal.says();
        if (outcome instanceof PublishOutcome.TooLarge large) {
            throw new BadInput(says.text(
                    "publish-stitches", count("stitches", large.stitches()), count("most", Booklet.MOST_STITCHES)));
        }
        if (outcome instanceof PublishOutcome.NotProved no) {
            terminal.err()
                    .println(says.text(
                            "publish-notProved", arg("problem", no.problems().get(0))));
            return ExitStatus.NO;
        }
        if (!(outcome instanceof PublishOutcome.Published published)) {
            throw new IllegalStateException("a draft that nobody stops is published, not " + outcome);
        }
        output.write(pages::writeTo);
        terminal.sayWritten(says.text(
                "publish-done", arg("file", ScreenText.name(output.path())), count("pages", published.pages())));
        return ExitStatus.DONE;
    }

    private BookletOptions options(ChartArgument.Judged judged) {
        return new BookletOptions(
                appearance.appearance(),
                new WordingChoice(
                        wording.terms(judged.chart()),
                        wording.counting(),
                        wording.hand(),
                        judged.size(),
                        wording.layout()),
                new PrintingNotice(version, date),
                leaveOut.supplements(),
                judged.isDraft(),
                root.terminal().language());
    }
}
