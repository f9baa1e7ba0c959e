package edgewright.cli;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.assist.letter.LetterAnswer;
import edgewright.assist.letter.LetterBand;
import edgewright.assist.letter.LetterSentences;
import edgewright.chart.Chart;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** {@code letter}: a band with a line of text. */
@Command(name = "letter", mixinStandardHelpOptions = true)
final class LetterCommand implements Callable<Integer> {
    @ParentCommand
    private RootCommand root;

    @Parameters(paramLabel = "TEXT", descriptionKey = "TEXT")
    private String text;

    @Option(names = "--to", required = true, paramLabel = "CHART", converter = PathConverter.class)
    private Path to;

    @Option(names = "--like", paramLabel = "CHART", converter = PathConverter.class)
    private Path like;

    @Override
    public Integer call() {
        Terminal terminal = root.terminal();
        OutputFile output = OutputFile.ofChart(to, like == null ? List.of() : List.of(like), terminal);
        Optional<Chart> model = Optional.ofNullable(like).map(file -> ChartInput.read(file, terminal));
        LetterAnswer answer = LetterBand.of(text, model);
        if (answer instanceof LetterAnswer.Band band) {
            output.write(band.chart());
            terminal.sayWritten(terminal.says()
                    .text(
                            "letter-done",
                            arg("file", ScreenText.name(to)),
                            count("rounds", band.chart().rounds().size()),
                            count("stitches", band.chart().shape().w())));
            return ExitStatus.DONE;
        }
        throw refused(answer);
    }

    private BadInput refused(LetterAnswer answer) {
        Terminal terminal = root.terminal();
        LetterSentences sentences = new LetterSentences(terminal.language());
        if (answer instanceof LetterAnswer.OneYarn one) {
            return new BadInput(terminal.says()
                    .text("made-refused", arg("file", ScreenText.name(like)), arg("mistake", sentences.of(one))));
        }
        String mistake = answer instanceof LetterAnswer.Missing missing
                ? sentences.of(missing)
                : answer instanceof LetterAnswer.TooLong tooLong
                        ? sentences.of(tooLong)
                        : sentences.of(new LetterAnswer.NoText());
        return new BadInput(terminal.says().text("letter-text", arg("mistake", ScreenText.oneLine(mistake))));
    }
}
