package edgewright.cli;

import edgewright.booklet.own.OwnFiles;
import edgewright.booklet.own.OwnSentences;
import edgewright.booklet.own.PrintedMatter;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The files of the designer's own that are printed with a pattern. */
final class OwnMatterInput {
    @Option(names = "--imprint", paramLabel = "FILE", converter = PathConverter.class)
    private Path imprint;

    /**
     * Those that the chart names, with the imprint that was asked for.
     *
     * @throws BadInput if one of them cannot be printed
     */
    PrintedMatter read(ChartArgument.Judged judged, Terminal terminal) {
        OwnFiles.Result result = OwnFiles.read(judged.chart().own(), judged.file(), Optional.ofNullable(imprint));
        if (result instanceof OwnFiles.Refused refused) {
            throw new BadInput(new OwnSentences(terminal.language()).of(refused.fault()));
        }
        return ((OwnFiles.Read) result).matter();
    }
}
