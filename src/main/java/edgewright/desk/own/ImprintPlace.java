package edgewright.desk.own;

import static edgewright.texts.Arg.arg;

import edgewright.booklet.own.OwnFiles;
import edgewright.booklet.own.OwnSentences;
import edgewright.chart.Extras;
import edgewright.chart.Imprint;
import edgewright.chart.OwnMatter;
import edgewright.desk.own.PhotoFiles.Brought;
import edgewright.file.FileProblemException;
import edgewright.file.ImprintFiles;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Brings an imprint, wherever it lies, into the folder of the chart. */
final class ImprintPlace {
    private final Path chart;
    private final Language language;
    private final Messages says;

    /** @param chart absolute */
    ImprintPlace(Path chart, Language language) {
        this.chart = chart;
        this.language = language;
        says = language.messages("desk/own");
    }

    /** The name of a file in the folder or below it; one that lies elsewhere is copied with its logo, unless a name is taken. */
    Brought bring(Path chosen) {
        Path file = chosen.toAbsolutePath().normalize();
        if (OwnFiles.read(OwnMatter.NONE, file, Optional.of(file)) instanceof OwnFiles.Refused refused) {
            return refused(new OwnSentences(language).of(refused.fault()));
        }
        Path folder = chart.getParent();
        if (file.startsWith(folder)) {
            return new Brought(Optional.of(PhotoFiles.name(folder.relativize(file))), "");
        }
        String name = file.getFileName().toString();
        Path copy = folder.resolve(name);
        if (Files.exists(copy)) {
            return refused(says.text("imprint-taken", arg("file", name)));
        }
        Imprint imprint = ((ImprintFiles.Read) ImprintFiles.read(file)).imprint();
        return imprint.logo().isBlank() ? written(copy, imprint) : withLogo(copy, file, imprint);
    }

    private Brought withLogo(Path copy, Path from, Imprint imprint) {
        Brought logo = new PhotoFiles(chart, language).bring(from.resolveSibling(imprint.logo()));
        return logo.name().map(name -> written(copy, withLogo(imprint, name))).orElse(logo);
    }

    private Brought written(Path copy, Imprint imprint) {
        try {
            ImprintFiles.write(copy, imprint);
            return new Brought(Optional.of(copy.getFileName().toString()), "");
        } catch (FileProblemException e) {
            return refused(says.text(
                    "imprint-notCopied", arg("file", copy.getFileName().toString())));
        }
    }

    private static Brought refused(String sentence) {
        return new Brought(Optional.empty(), sentence);
    }

    private static Imprint withLogo(Imprint of, String logo) {
        Extras extras = of.extras();
        return new Imprint(of.name(), of.contact(), of.web(), of.copyright(), of.use(), logo, of.accent(), extras);
    }
}
