package edgewright.cli;

import edgewright.booklet.WordsFormat;
import edgewright.chart.Chart;
import edgewright.words.Options;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** {@code write}: the pattern in words. */
@Command(name = "write", resourceBundle = "edgewright.cli.usage", mixinStandardHelpOptions = true)
final class WriteCommand implements Callable<Integer> {
    @ParentCommand
    private Root root;

    @Mixin
    private ChartArgument argument;

    @Mixin
    private WordingOption wording;

    @Option(names = "--format", paramLabel = "text|markdown|html", converter = ChoiceConverter.OfWordsFormat.class)
    private WordsFormat format;

    @Option(names = "--to", paramLabel = "FILE", converter = PathConverter.class)
    private Path to;

    @Override
    public Integer call() {
        Terminal terminal = root.terminal();
        Optional<ChartArgument.Judged> judged = argument.judged(terminal);
        if (judged.isEmpty()) {
            return ExitStatus.NO;
        }
        Chart chart = judged.get().chart();
        List<Options> versions = wording.terms(chart).inTurn().stream()
                .map(terms -> new Options(
                        terms,
                        wording.counting(),
                        judged.get().repeats(),
                        judged.get().isDraft(),
                        wording.hand()))
                .toList();
        if (to == null) {
            terminal.out().print(words(format == null ? WordsFormat.TEXT : format, chart, versions));
        } else {
            OutputFile output = new OutputFile(to, judged.get().file(), endings());
            WordsFormat named = WordsFormat.ofName(to.getFileName().toString()).orElseThrow();
            String words = words(named, chart, versions);
            output.write(out -> out.write(words.getBytes(StandardCharsets.UTF_8)));
            terminal.out().println(Texts.of("write.done", Texts.name(output.path())));
        }
        return ExitStatus.DONE;
    }

    /** The versions after each other; a page of HTML holds one. */
    private static String words(WordsFormat format, Chart chart, List<Options> versions) {
        if (format == WordsFormat.HTML && versions.size() > 1) {
            throw new BadInput(Texts.of("write.oneTerms"));
        }
        return versions.stream().map(options -> format.write(chart, options)).collect(Collectors.joining());
    }

    /** The format goes by the ending of the file; one that was asked for must have its own. */
    private List<String> endings() {
        return (format == null ? Arrays.stream(WordsFormat.values()) : Stream.of(format))
                .map(WordsFormat::ending)
                .toList();
    }
}
