package edgewright.booklet.matter;

import edgewright.booklet.own.EncodedPicture;
import edgewright.booklet.own.PrintedMatter;
import edgewright.booklet.own.PrintedPhoto;
import edgewright.chart.Chart;
import edgewright.chart.Imprint;
import edgewright.chart.OwnSection;
import edgewright.chart.Photo;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.own.OwnText;
import edgewright.words.page.OwnParts;
import edgewright.words.page.PatternPart;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a designer adds, for files of text and for pages of the browser. */
public final class OwnPartsMaker {
    /** As wide as a page of the browser shows a picture on a screen of double density. */
    private static final int MOST_PIXELS = 1200;

    private final Messages says;

    public OwnPartsMaker(Language language) {
        this.says = language.messages("booklet");
    }

    /** All of it. */
    public OwnParts of(Chart chart, PrintedMatter matter) {
        List<OwnSection> sections = chart.own().sections();
        List<OwnParts.Part> parts = new ArrayList<>(sections.stream()
                .map(section -> new OwnParts.Part(section.title(), OwnText.of(section.text()), List.of()))
                .toList());
        int opening = Math.min(1, parts.size());
        List<OwnParts.Part> closing = new ArrayList<>(parts.subList(opening, parts.size()));
        if (!matter.gallery().isEmpty()) {
            closing.add(
                    new OwnParts.Part(says.text("own-gallery"), new OwnText(List.of()), pictures(matter.gallery())));
        }
        Map<PatternPart.Kind, List<OwnParts.Picture>> beside = new LinkedHashMap<>();
        for (PatternPart.Kind part : PatternPart.Kind.values()) {
            for (Photo.At place : OwnPages.places(part)) {
                beside.put(part, pictures(matter.at(place)));
            }
        }
        return new OwnParts(
                matter.cover().map(OwnPartsMaker::picture),
                parts.subList(0, opening),
                beside,
                closing,
                says.text("own-gallery"),
                matter.imprint().map(printed -> imprint(printed.imprint())).orElse(List.of()));
    }

    private static List<OwnParts.Picture> pictures(List<PrintedPhoto> photos) {
        return photos.stream().map(OwnPartsMaker::picture).toList();
    }

    private static OwnParts.Picture picture(PrintedPhoto photo) {
        EncodedPicture picture = photo.picture().inPixels(MOST_PIXELS, false);
        return new OwnParts.Picture(
                photo.photo().alternative(),
                photo.photo().caption(),
                "data:" + picture.mediaType() + ";base64," + Base64.getEncoder().encodeToString(picture.bytes()),
                picture.width(),
                picture.height());
    }

    private List<OwnParts.Line> imprint(Imprint imprint) {
        List<OwnParts.Line> lines = new ArrayList<>();
        for (ImprintTexts.Text text : new ImprintTexts(says).of(imprint)) {
            lines.add(new OwnParts.Line(text.label(), text.text()));
        }
        return lines;
    }
}
