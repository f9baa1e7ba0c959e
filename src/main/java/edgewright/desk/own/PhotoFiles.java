package edgewright.desk.own;

import static edgewright.texts.Arg.arg;

import edgewright.booklet.own.OwnFiles;
import edgewright.booklet.own.OwnSentences;
import edgewright.chart.OwnMatter;
import edgewright.chart.Photo;
import edgewright.file.SafeFile;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/** Brings a photograph, wherever it lies, into the folder of the chart. */
final class PhotoFiles {
    private final Path chart;
    private final Language language;
    private final Messages says;

    /** What came of it: the name that the chart has for it, or why it is not taken. */
    record Brought(Optional<String> name, String refusal) {}

    PhotoFiles(Path chart, Language language) {
        this.chart = chart.toAbsolutePath().normalize();
        this.language = language;
        this.says = language.messages("desk/own");
    }

    /** The name of a file in the folder or below it; a copy is made of one that lies elsewhere, unless its name is taken. */
    Brought bring(Path chosen) {
        Path file = chosen.toAbsolutePath().normalize();
        Path folder = chart.getParent();
        if (file.startsWith(folder)) {
            return judged(file, name(folder.relativize(file)));
        }
        Path copy = folder.resolve(file.getFileName().toString());
        Brought judged = judged(file, file.getFileName().toString());
        if (judged.name().isEmpty()) {
            return judged;
        }
        if (Files.exists(copy)) {
            return refused("taken", copy);
        }
        try {
            SafeFile.write(copy, out -> Files.copy(file, out));
            return judged;
        } catch (IOException e) {
            return refused("notCopied", copy);
        }
    }

    private Brought refused(String key, Path copy) {
        String name = copy.getFileName().toString();
        return new Brought(
                Optional.empty(),
                key.equals("taken")
                        ? says.text("photo-taken", arg("file", name))
                        : says.text("photo-notCopied", arg("file", name)));
    }

    /** Whether it can be printed is seen now, not when the pattern is to be published. */
    private Brought judged(Path file, String name) {
        Photo alone = new Photo(file.getFileName().toString(), name, "", Photo.At.GALLERY);
        OwnFiles.Result result = OwnFiles.read(
                OwnMatter.NONE.withPhotos(List.of(alone)), file.resolveSibling(chart.getFileName()), Optional.empty());
        return result instanceof OwnFiles.Refused refused
                ? new Brought(Optional.empty(), new OwnSentences(language).of(refused.fault()))
                : new Brought(Optional.of(name), "");
    }

    /** With slashes on every system, so that the chart can be taken elsewhere. */
    static String name(Path inside) {
        return StreamSupport.stream(inside.spliterator(), false)
                .map(Path::toString)
                .collect(Collectors.joining("/"));
    }
}
