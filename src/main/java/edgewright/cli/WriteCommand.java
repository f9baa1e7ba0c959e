package edgewright.cli;

import static edgewright.texts.Arg.arg;

import edgewright.booklet.WordsFormat;
import edgewright.booklet.choice.BookletPart;
import edgewright.booklet.own.PrintedMatter;
import edgewright.chart.Chart;
import edgewright.chart.Terms;
import edgewright.words.write.WordingOptions;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** {@code write}: the pattern in words. */
@Command(name = "write", mixinStandardHelpOptions = true)
final class WriteCommand implements Callable<Integer> {
    @ParentCommand
    private RootCommand root;

    @Mixin
    private ChartArgument argument;

    @Mixin
    private PieceOption piece;

    @Mixin
    private WordingOption wording;

    @Mixin
    private WordsPartsOption parts;

    @Mixin
    private OwnMatterInput own;

    @Option(names = "--format", paramLabel = "text|markdown|html")
    private WordsFormat format;

    @Option(names = "--techniques")
    private boolean techniques;

    @Option(names = "--to", paramLabel = "FILE", converter = PathConverter.class)
    private Path to;

    @Override
    public Integer call() {
        Terminal terminal = root.terminal();
        Optional<ChartArgument.Judged> judged = argument.judged(piece, wording.counting(), terminal);
        if (judged.isEmpty()) {
            return ExitStatus.NO;
        }
        Chart chart = judged.get().chart();
        WordingOptions options = new WordingOptions(
                terminal.language(),
                chart.terms(),
                wording.counting(),
                judged.get().size(),
                judged.get().isDraft(),
                wording.hand(),
                wording.layout(),
                wording.eachRound(),
                techniques);
        List<Terms> terms = wording.terms(chart).inTurn();
        PrintedMatter matter = own.read(judged.get(), terminal);
        List<BookletPart> chosen = parts.inOrder(terminal.says());
        if (to == null) {
            terminal.give((format == null ? WordsFormat.TEXT : format)
                    .write(chart, options, terms, matter, chosen, terminal.language()));
        } else {
            OutputFile output = new OutputFile(to, judged.get().file(), endings(), terminal);
            WordsFormat named = WordsFormat.ofName(to.getFileName().toString()).orElseThrow();
            String words = named.write(chart, options, terms, matter, chosen, terminal.language());
            output.write(out -> out.write(words.getBytes(StandardCharsets.UTF_8)));
            terminal.sayWritten(terminal.says().text("write-done", arg("file", ScreenText.name(output.path()))));
        }
        return ExitStatus.DONE;
    }

    /** The format goes by the ending of the file; one that was asked for must have its own. */
    private List<String> endings() {
        return (format == null ? Arrays.stream(WordsFormat.values()) : Stream.of(format))
                .map(WordsFormat::ending)
                .toList();
    }
}
