package edgewright.desk.output;

import edgewright.booklet.own.OwnFiles;
import edgewright.booklet.own.OwnSentences;
import edgewright.booklet.own.PrintedMatter;
import edgewright.chart.Chart;
import edgewright.desk.jobs.FileCommands;
import edgewright.desk.jobs.Jobs;
import edgewright.desk.jobs.Questions;
import edgewright.desk.work.Workbench;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/** Reads the photographs and the imprint that a chart names, before it is made into something for others. */
final class OwnFilesJob {
    private final Workbench bench;
    private final Questions asking;
    private final Jobs jobs;
    private final Language language;
    private final Messages says;

    OwnFilesJob(Workbench bench, Questions asking, Jobs jobs, Language language) {
        this.bench = bench;
        this.asking = asking;
        this.jobs = jobs;
        this.language = language;
        says = language.messages("desk/output");
    }

    /**
     * Goes on with the files that the chart names, on the event thread. They are read beside it, since photographs are large;
     * if one of them cannot be printed it is said why, and nothing else is done.
     */
    void with(Chart chart, Consumer<PrintedMatter> goOn) {
        if (chart.own().photos().isEmpty() && chart.own().imprint().isEmpty()) {
            goOn.accept(PrintedMatter.NONE);
            return;
        }
        Path file = bench.file().orElse(Path.of(FileCommands.fileName(chart.title(), language)));
        jobs.begin(
                says.text("job-ownFiles"),
                worker -> OwnFiles.read(chart.own(), file, Optional.empty()),
                result -> {
                    if (result instanceof OwnFiles.Refused refused) {
                        asking.tellSentence("news.ownFiles", new OwnSentences(language).of(refused.fault()));
                        return says.text("news-ownFilesRefused");
                    }
                    // The lane is free again before the dialog opens, which begins a job in it.
                    SwingUtilities.invokeLater(() -> goOn.accept(((OwnFiles.Read) result).matter()));
                    return says.text("news-ownFiles");
                },
                problem -> says.text("news-ownFilesRefused"));
    }
}
