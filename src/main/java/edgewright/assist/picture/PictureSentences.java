package edgewright.assist.picture;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;
import static edgewright.texts.Arg.or;

import edgewright.chart.Chart;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.List;
import java.util.stream.Stream;

/** Says what this package finds. */
public final class PictureSentences implements PictureFault.Cases<String> {
    /** So many yarns are named where there are many. */
    private static final int MOST_NAMED = 8;

    private final Messages says;

    public PictureSentences(Language language) {
        this.says = language.messages("assist");
    }

    /** Where a picture cannot be read and why, without the name of its file. */
    public String of(PictureFault fault) {
        return fault.among(this);
    }

    /** One cell that does not show what is wanted. */
    public String of(Miss miss) {
        return says.text(
                "picture-miss",
                number("round", miss.place().round()),
                number("place", miss.place().place()),
                arg("wanted", miss.wanted()),
                arg("shows", miss.shows()));
    }

    @Override
    public String of(PictureFault.NoCells fault) {
        return says.text("picture-noSquares");
    }

    @Override
    public String of(PictureFault.TooManyRounds fault) {
        return says.text("picture-rounds", count("rounds", fault.rounds()), count("most", Chart.MOST_ROUNDS));
    }

    @Override
    public String of(PictureFault.TooWide fault) {
        return says.text("picture-wide", count("stitches", fault.stitches()), count("most", Chart.MOST_STITCHES));
    }

    @Override
    public String of(PictureFault.Uneven fault) {
        return says.text(
                "picture-uneven",
                number("line", fault.line()),
                count("found", fault.length()),
                count("expected", fault.expected()));
    }

    @Override
    public String of(PictureFault.NoSuchYarn fault) {
        List<String> yarns = Stream.concat(fault.yarns().stream().limit(MOST_NAMED), Stream.of(PictureText.NEVER_MIND))
                .map(id -> says.text("picture-letter", arg("letter", id)))
                .toList();
        return says.text(
                "picture-yarn",
                number("line", fault.line()),
                number("column", fault.column()),
                arg("letter", fault.letter()),
                or("yarns", yarns));
    }

    @Override
    public String of(PictureFault.CropOutside fault) {
        return says.text("picture-crop", count("width", fault.width()), count("height", fault.height()));
    }

    @Override
    public String of(PictureFault.TooManyPixels fault) {
        return says.text("picture-pixels", count("pixels", fault.pixels()), count("most", fault.most()));
    }
}
