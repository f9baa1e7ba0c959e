package edgewright.booklet.own;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.decimal;
import static edgewright.texts.Arg.number;

import edgewright.chart.CleanText;
import edgewright.file.fault.ProblemSentences;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.nio.file.Path;

/** Makes one sentence of a fault: the file, the place in it, what is wrong there, what was expected. */
public final class OwnSentences {
    private final Language language;
    private final Messages says;

    public OwnSentences(Language language) {
        this.language = language;
        this.says = language.messages("booklet");
    }

    public String of(OwnFault fault) {
        if (fault instanceof OwnFault.OfPhoto photo) {
            return says.text(
                    "own-of-photo",
                    arg("file", name(photo.chart())),
                    number("place", photo.place()),
                    arg("fault", of(photo.name(), photo.fault())));
        }
        if (fault instanceof OwnFault.OfImprintName imprint) {
            return says.text(
                    "own-of-imprint",
                    arg("file", name(imprint.chart())),
                    arg("fault", of(imprint.name(), imprint.fault())));
        }
        if (fault instanceof OwnFault.OfLogo logo) {
            return says.text(
                    "own-of-logo", arg("file", name(logo.imprint())), arg("fault", of(logo.name(), logo.fault())));
        }
        if (fault instanceof OwnFault.PaleAccent pale) {
            return says.text(
                    "own-pale",
                    arg("file", name(pale.imprint())),
                    arg("colour", pale.accent().toString()),
                    decimal("ratio", pale.ratio(), 2),
                    decimal("least", OwnFiles.LEAST_CONTRAST, 2));
        }
        OwnFault.OfImprint imprint = (OwnFault.OfImprint) fault;
        return new ProblemSentences(language).of(imprint.imprint(), imprint.problem());
    }

    private String of(String file, PhotoFault fault) {
        return says.text(
                "own-photo-" + fault.reason(),
                arg("name", CleanText.oneLine(file)),
                count("found", fault.number()),
                count("bytes", PictureFile.MOST_BYTES),
                count("pixels", PictureFile.MOST_PIXELS));
    }

    private static String name(Path file) {
        return CleanText.oneLine(file.toString());
    }
}
