package edgewright.desk.jobs;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.file.ChartFiles;
import edgewright.file.ReadResult;
import edgewright.file.fault.ProblemSentences;
import edgewright.texts.Messages;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads chart files beside the event thread, and says what is wrong with one that is no chart. */
public final class ChartOpener {
    private static final int MOST_PROBLEMS = 3;

    /** Lays a chart that was read on the desk, and says so. */
    public interface Taker {
        String take(Path file, ReadResult.Read read);
    }

    private final DeskState desk;
    private final Jobs jobs;
    private final Messages says;
    private final ProblemSentences problemSentences;

    public ChartOpener(DeskState desk) {
        this.desk = desk;
        jobs = desk.lanes().in(Lanes.Lane.FILE);
        says = desk.language().messages("desk/jobs");
        problemSentences = new ProblemSentences(desk.language());
    }

    /** Reads a file and hands it on, if it is a chart. Where another file is being opened or saved, says so and does nothing. */
    public void open(Path file, Taker taker) {
        if (jobs.isBusy()) {
            desk.news().accept(says.text("news-busy"));
            return;
        }
        String name = String.valueOf(file.getFileName());
        jobs.begin(
                says.text("job-open", arg("file", name)),
                worker -> ChartFiles.read(file),
                result -> {
                    if (result instanceof ReadResult.Read read) {
                        return taker.take(file, read);
                    }
                    if (Files.notExists(file)) {
                        desk.settings().removeRecent(file);
                    }
                    desk.questions().tellSentence(sentences(file, (ReadResult.Problems) result));
                    return says.text("news-notOpened", arg("file", name));
                },
                problem -> says.text("news-notOpened", arg("file", name)));
    }

    /** The first few problems; a person mends one at a time. */
    private String sentences(Path file, ReadResult.Problems problems) {
        StringBuilder text = new StringBuilder();
        problems.problems().stream()
                .limit(MOST_PROBLEMS)
                .forEach(problem -> text.append(problemSentences.of(file.getFileName(), problem))
                        .append('\n'));
        int more = problems.problems().size() - MOST_PROBLEMS;
        return more > 0
                ? text + says.text("files-more", count("problems", more))
                : text.toString().strip();
    }
}
