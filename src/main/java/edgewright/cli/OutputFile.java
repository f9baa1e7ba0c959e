package edgewright.cli;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.commas;

import edgewright.chart.Chart;
import edgewright.file.ChartFiles;
import edgewright.file.FileProblemException;
import edgewright.file.SafeFile;
import edgewright.file.fault.ProblemSentences;
import edgewright.texts.Language;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** The file that a command writes: whole or not at all, and never the chart itself. */
final class OutputFile {
    private final Path file;
    private final Language language;

    /**
     * @param endings those that the file may have, in small letters
     * @throws BadInput if it has another, or is the chart
     */
    OutputFile(Path file, Path chart, List<String> endings, Terminal terminal) {
        this(file, endings, terminal);
        if (isSame(file, chart)) {
            throw new BadInput(terminal.says().text("output-chart", arg("file", ScreenText.name(file))));
        }
    }

    private OutputFile(Path file, List<String> endings, Terminal terminal) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        if (endings.stream().noneMatch(name::endsWith)) {
            throw new BadInput(terminal.says()
                    .text("output-ending", arg("file", ScreenText.name(file)), commas("endings", endings)));
        }
        this.file = file;
        this.language = terminal.language();
    }

    /**
     * The file of a chart that a command makes of other files.
     *
     * @param sources the files that it is made of
     * @throws BadInput if it has not the ending of charts, or is one of these
     */
    static OutputFile ofChart(Path file, List<Path> sources, Terminal terminal) {
        for (Path source : sources) {
            if (isSame(file, source)) {
                throw new BadInput(terminal.says().text("output-source", arg("file", ScreenText.name(file))));
            }
        }
        return new OutputFile(file, List.of(ChartFiles.ENDING), terminal);
    }

    Path path() {
        return file;
    }

    /** Whether its name has this ending, in small or capital letters. */
    boolean hasEnding(String ending) {
        return file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(ending);
    }

    /** @throws BadInput if it cannot be written */
    void write(SafeFile.Content content) {
        try {
            SafeFile.write(file, content);
        } catch (FileProblemException e) {
            throw new BadInput(new ProblemSentences(language).of(file, e.problem()));
        }
    }

    /** @throws BadInput if it cannot be written */
    void write(Chart chart) {
        try {
            ChartFiles.write(file, chart);
        } catch (FileProblemException e) {
            throw new BadInput(new ProblemSentences(language).of(file, e.problem()));
        }
    }

    private static boolean isSame(Path file, Path chart) {
        try {
            return Files.exists(file) && Files.isSameFile(file, chart);
        } catch (IOException e) {
            // Then it cannot be written either, and that is what will be said.
            return false;
        }
    }
}
