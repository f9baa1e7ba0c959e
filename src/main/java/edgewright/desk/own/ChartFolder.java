package edgewright.desk.own;

import static edgewright.texts.Arg.arg;

import edgewright.chart.Imprint;
import edgewright.desk.jobs.FileCommands;
import edgewright.desk.jobs.Questions;
import edgewright.desk.own.PhotoFiles.Brought;
import edgewright.file.FileProblemException;
import edgewright.file.ImprintFiles;
import edgewright.file.fault.ProblemSentences;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Window;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/** The folder in which a chart lies. */
final class ChartFolder implements OwnFolder {
    private static final String[] PICTURES = {".jpg", ".jpeg", ".png"};

    private final Path chart;
    private final Questions asking;
    private final Language language;
    private final Messages says;

    ChartFolder(Path chart, Questions asking, Language language) {
        this.chart = chart.toAbsolutePath().normalize();
        this.asking = asking;
        this.language = language;
        says = language.messages("desk/own");
    }

    @Override
    public Optional<String> photograph() {
        return picture(chart);
    }

    /** Asks for a picture that is to lie beside this file. */
    private Optional<String> picture(Path beside) {
        return asking.companionToOpen(says.text("files-photos"), PICTURES)
                .flatMap(chosen -> told(new PhotoFiles(beside, language).bring(chosen)));
    }

    @Override
    public Optional<String> imprint() {
        return asking.companionToOpen(says.text("files-imprints"), ImprintFiles.ENDING)
                .flatMap(chosen -> told(new ImprintPlace(chart, language).bring(chosen)));
    }

    private Optional<String> told(Brought brought) {
        if (brought.name().isEmpty()) {
            asking.tellSentence("own.refused", brought.refusal());
        }
        return brought.name();
    }

    @Override
    public Optional<String> edited(Window above, String name) {
        Optional<Path> file = name.isEmpty() ? Optional.empty() : named(name);
        if (file.isEmpty() && !name.isEmpty()) {
            return refused(says.text("imprint-badName", arg("file", name)));
        }
        Optional<Imprint> before = Optional.empty();
        if (file.isPresent() && Files.exists(file.get())) {
            ImprintFiles.Result result = ImprintFiles.read(file.get());
            if (result instanceof ImprintFiles.Problems wrong) {
                return refused(new ProblemSentences(language)
                        .of(file.get(), wrong.problems().get(0)));
            }
            before = Optional.of(((ImprintFiles.Read) result).imprint());
        }
        ImprintDialog dialog = new ImprintDialog(above, before, () -> picture(file.orElse(chart)), language);
        if (!dialog.ask()) {
            return Optional.empty();
        }
        Imprint made = dialog.imprint();
        Path to = file.orElseGet(
                () -> chart.resolveSibling(FileCommands.fileName(made.name(), language) + ImprintFiles.ENDING));
        if (file.isEmpty() && Files.exists(to)) {
            return refused(
                    says.text("imprint-taken", arg("file", to.getFileName().toString())));
        }
        return written(to, made);
    }

    private Optional<String> written(Path to, Imprint imprint) {
        try {
            ImprintFiles.write(to, imprint);
            return Optional.of(PhotoFiles.name(chart.getParent().relativize(to)));
        } catch (FileProblemException e) {
            return refused(new ProblemSentences(language).of(to, e.problem()));
        }
    }

    /** The file of this name, if it can be that of an imprint in the folder or below it. */
    private Optional<Path> named(String name) {
        try {
            Path folder = chart.getParent();
            Path file = folder.resolve(name).normalize();
            boolean fits = !Path.of(name).isAbsolute()
                    && file.startsWith(folder)
                    && name.endsWith(ImprintFiles.ENDING)
                    && !file.getFileName().toString().equals(ImprintFiles.ENDING);
            return fits ? Optional.of(file) : Optional.empty();
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    private Optional<String> refused(String sentence) {
        asking.tellSentence("own.refused", sentence);
        return Optional.empty();
    }
}
