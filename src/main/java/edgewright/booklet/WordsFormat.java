package edgewright.booklet;

import edgewright.booklet.choice.BookletPart;
import edgewright.booklet.matter.OwnPartsMaker;
import edgewright.booklet.own.PrintedMatter;
import edgewright.booklet.sheets.CoverPicture;
import edgewright.booklet.sheets.StitchNames;
import edgewright.chart.Chart;
import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.chart.Terms;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.paint.ColourMode;
import edgewright.draw.picture.ChartPicture;
import edgewright.draw.picture.FabricFill;
import edgewright.draw.picture.Legend;
import edgewright.draw.picture.PictureStyle;
import edgewright.draw.svg.SvgPicture;
import edgewright.draw.technique.TechniqueFigure;
import edgewright.texts.Language;
import edgewright.words.page.HtmlPage;
import edgewright.words.page.MarkdownText;
import edgewright.words.page.OwnParts;
import edgewright.words.page.PatternPart;
import edgewright.words.page.PatternText;
import edgewright.words.page.PlainText;
import edgewright.words.page.TermsVersion;
import edgewright.words.technique.ToldTechnique;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.WordingOptions;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The formats in which the words of a pattern are written to a file of their own. */
public enum WordsFormat {
    /** Lines of plain text. */
    TEXT(".txt") {
        @Override
        String format(Made made) {
            return PlainText.of(made.versions(), made.own());
        }
    },
    /** Markdown, with a table of counts. */
    MARKDOWN(".md") {
        @Override
        String format(Made made) {
            return MarkdownText.of(made.versions(), made.own());
        }
    },
    /** One page of HTML, with the chart before the rounds unless it is very large, and with the techniques. */
    HTML(".html") {
        @Override
        String format(Made made) {
            return HtmlPage.of(
                    made.versions(),
                    made.chart(),
                    made.parts().contains(BookletPart.COVER) ? fabric(made) : Optional.empty(),
                    made.parts().contains(BookletPart.CHART) ? picture(made) : Optional.empty(),
                    made.own(),
                    (told, prefix) -> figure(told, prefix, made.hand()));
        }
    };

    /** The most stitches of a picture in a page; more make a page that is slow to open, and cells too small to be seen. */
    private static final long MOST_STITCHES = 20_000;

    /** The parts that words can have, in their usual order. */
    public static final List<BookletPart> PARTS = List.of(
            BookletPart.COVER,
            BookletPart.INTRODUCTION,
            BookletPart.FACTS,
            BookletPart.CHART,
            BookletPart.WORDS,
            BookletPart.TECHNIQUES,
            BookletPart.FINISHING,
            BookletPart.COUNTS,
            BookletPart.SECTIONS);

    private final String ending;

    WordsFormat(String ending) {
        this.ending = ending;
    }

    /** What the name of such a file ends in. */
    public String ending() {
        return ending;
    }

    /** The format of a file with this name, by its ending in small or capital letters; empty for any other. */
    public static Optional<WordsFormat> ofName(String name) {
        return Arrays.stream(values())
                .filter(format -> name.regionMatches(
                        true, name.length() - format.ending.length(), format.ending, 0, format.ending.length()))
                .findFirst();
    }

    /** The chart in words; the last line ends with a line feed. */
    public String write(Chart chart, WordingOptions options, Language language) {
        return write(chart, options, List.of(options.terms()), language);
    }

    /**
     * The chart in words in each of the terms, in their order, as one text under one title; the last line ends with a line
     * feed.
     *
     * @param options all but the terms
     * @param terms each once, at least one
     * @param language in which a picture beside the words speaks
     */
    public String write(Chart chart, WordingOptions options, List<Terms> terms, Language language) {
        return write(chart, options, terms, PrintedMatter.NONE, language);
    }

    /**
     * The same with files of the designer's own.
     *
     * @param matter photographs, which are shown in HTML and named elsewhere, and the imprint
     */
    public String write(
            Chart chart, WordingOptions options, List<Terms> terms, PrintedMatter matter, Language language) {
        return write(chart, options, terms, matter, PARTS, language);
    }

    /**
     * The same made of other parts.
     *
     * @param parts of {@link #PARTS}, in the order in which they are to stand; each once. The title always stands
     */
    public String write(
            Chart chart,
            WordingOptions options,
            List<Terms> terms,
            PrintedMatter matter,
            List<BookletPart> parts,
            Language language) {
        boolean asked = options.techniques() || this == HTML || !parts.equals(PARTS);
        WordingOptions words = options.withTechniques(asked && parts.contains(BookletPart.TECHNIQUES));
        List<TermsVersion> versions = terms.stream()
                .map(each -> new TermsVersion(
                        options.language(), each, made(PatternWriter.write(chart, words.withTerms(each)), parts)))
                .toList();
        OwnParts own = new OwnPartsMaker(language).of(chart, matter);
        return format(new Made(
                chart,
                versions,
                options.hand(),
                own.without(!parts.contains(BookletPart.INTRODUCTION), !parts.contains(BookletPart.SECTIONS)),
                parts,
                language));
    }

    /** The title, and of the rest what was chosen, as it was ordered. */
    private static PatternText made(PatternText words, List<BookletPart> parts) {
        return new PatternText(Stream.concat(
                        words.parts().stream().limit(1),
                        parts.stream()
                                .flatMap(part ->
                                        words.parts().stream().skip(1).filter(each -> partOf(each.kind()) == part)))
                .toList());
    }

    private static BookletPart partOf(PatternPart.Kind kind) {
        return switch (kind) {
            case HEADING -> BookletPart.COVER;
            case TERMS, NEEDS, DESIGNER_NOTES, NOTES, ABBREVIATIONS, SET_UP, JOINING -> BookletPart.FACTS;
            case ROUNDS, BACK -> BookletPart.WORDS;
            case TECHNIQUES -> BookletPart.TECHNIQUES;
            case FINISHING -> BookletPart.FINISHING;
            case COUNTS -> BookletPart.COUNTS;
        };
    }

    abstract String format(Made made);

    /** What stands in the file, however it is formatted; the language is that of the pictures. */
    private record Made(
            Chart chart,
            List<TermsVersion> versions,
            HookHand hand,
            OwnParts own,
            List<BookletPart> parts,
            Language language) {}

    /** The border around a small piece, so that its stitches are seen; drawn simply, so that the page opens fast. */
    private static Optional<HtmlPage.Fabric> fabric(Made made) {
        PerSide<Integer> repeats = CoverPicture.repeatsOfSmallPiece(made.chart());
        if (ChartPicture.stitchesOfBorder(made.chart(), repeats) > MOST_STITCHES) {
            return Optional.empty();
        }
        // A page gives it its size; in small numbers it is said in fewer letters.
        PictureStyle style = PictureStyle.fabric(made.language())
                .withLook(FabricFill.SMALL)
                .withCellMm(1)
                .withHand(made.hand());
        return Optional.of(new HtmlPage.Fabric(
                SvgPicture.inPage(ChartPicture.wholeBorder(made.chart(), repeats, style), "f-"), repeats));
    }

    /** The chart, and under it what its marks mean, in the terms of the words. */
    private static String figure(ToldTechnique told, String prefix, HookHand hand) {
        return SvgPicture.inPage(
                TechniqueFigure.of(told.shown(), hand, ColourMode.COLOUR, told.title(), told.alternative()), prefix);
    }

    private static Optional<String> picture(Made made) {
        Chart chart = made.chart();
        Language language = made.language();
        PictureStyle style = PictureStyle.print(language).withHand(made.hand()).withLegend(false);
        if (ChartPicture.stitchesOfCorner(chart, style) > MOST_STITCHES) {
            return Optional.empty();
        }
        List<Terms> terms = made.versions().stream().map(TermsVersion::terms).toList();
        Drawing key = Legend.of(chart, style, Emphasis.NONE, stitch -> StitchNames.of(stitch, terms, language));
        return Optional.of(SvgPicture.inPage(ChartPicture.corner(chart, style, Emphasis.NONE), "chart-")
                + SvgPicture.inPage(key, "key-"));
    }
}
