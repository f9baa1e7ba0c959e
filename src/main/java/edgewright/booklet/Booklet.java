package edgewright.booklet;

import static edgewright.texts.Arg.arg;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.Progress;
import edgewright.booklet.page.PageColour;
import edgewright.booklet.page.PageLayout;
import edgewright.booklet.page.Paginator;
import edgewright.booklet.page.Paginator.Placed;
import edgewright.booklet.page.TextSetter;
import edgewright.booklet.page.TextStyles;
import edgewright.booklet.page.YarnChips;
import edgewright.booklet.press.HeaderFooter;
import edgewright.booklet.press.PrintedFile;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.check.Checker;
import edgewright.check.Verdict;
import edgewright.draw.picture.ChartPicture;
import edgewright.draw.picture.PictureStyle;
import edgewright.draw.picture.UnprintedText;
import edgewright.file.SafeFile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Publishes a chart as a printable pattern: a PDF with picture, chart, words and counts. It is tagged for readers that do
 * not see it (PDF/UA-1), keeps for ever (PDF/A-2a), and comes out byte for byte the same for the same chart and options.
 */
public final class Booklet {
    /** The most stitches that the chart of a pattern shows; some 400 rounds with a repeat of a dozen stitches. */
    public static final long MOST_STITCHES = ChartPicture.MOST_STITCHES;

    private Booklet() {}

    /**
     * Publishes to a file. The file appears whole or not at all: it is written beside its place and then renamed, so a file
     * that was there before is kept until the new one is safe.
     *
     * @throws IOException if the file cannot be written
     */
    public static PublishOutcome publish(Chart chart, BookletOptions options, Path file, Progress progress)
            throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PublishOutcome outcome = publish(chart, options, bytes, progress);
        if (outcome instanceof PublishOutcome.Published) {
            SafeFile.write(file, bytes::writeTo);
        }
        return outcome;
    }

    /**
     * Publishes to a stream, which is left open. Nothing is written before the pattern is finished.
     *
     * @throws IOException if the stream cannot be written
     */
    public static PublishOutcome publish(Chart chart, BookletOptions options, OutputStream out, Progress progress)
            throws IOException {
        Verdict verdict = options.repeats().isPresent()
                ? Checker.check(
                        chart, chart.border().stitches(0, options.repeats().get()))
                : Checker.check(chart);
        return publish(verdict, options, out, progress);
    }

    /**
     * Publishes a chart that has been judged already, for sides that may not close, to a stream, which is left open. Nothing
     * is written before the pattern is finished.
     *
     * @throws IOException if the stream cannot be written
     */
    public static PublishOutcome publish(Verdict verdict, BookletOptions options, OutputStream out, Progress progress)
            throws IOException {
        Chart chart = verdict.chart();
        if (verdict.hasErrors() && !options.draft()) {
            return new PublishOutcome.Refused(verdict);
        }
        if (stitchesShown(chart) > MOST_STITCHES) {
            return new PublishOutcome.TooLarge(stitchesShown(chart));
        }
        boolean draft = verdict.hasErrors();
        try (PrintedFile file = new PrintedFile(options.languageTag(options.terms()))) {
            PageLayout sheet = PageLayout.of(options.paper(), options.edition());
            TextSetter setter = new TextSetter(
                    sheet,
                    TextStyles.of(file.typefaces(), sheet, accent(options)),
                    new YarnChips(chart, sheet, options.edition()),
                    options.language());
            PatternPages content = new PatternPages(setter, chart, options, verdict, progress);
            List<List<Placed>> pages = new Paginator(sheet.heightPt()).pages(content.strips());
            if (!content.problems().isEmpty() && !options.draft()) {
                return new PublishOutcome.NotProved(content.problems());
            }
            HeaderFooter running = new HeaderFooter(setter, chart, options, draft);
            if (!file.print(pages, sheet, options.edition(), running, progress)) {
                return new PublishOutcome.Cancelled();
            }
            file.save(out, title(chart, options), chart.designer(), rights(options), seed(chart, options));
            return new PublishOutcome.Published(pages.size(), draft, verdict);
        } catch (CancellationException e) {
            return new PublishOutcome.Cancelled();
        }
    }

    /**
     * The texts with characters that no face has, to be named before the pattern is published: of the chart and of what the
     * publisher says.
     */
    public static List<UnprintedText> unprinted(Chart chart, BookletOptions options) {
        return Stream.of(
                        UnprintedText.inPattern(chart).stream(),
                        UnprintedText.of(UnprintedText.Where.SECTIONS, sections(chart)),
                        UnprintedText.of(UnprintedText.Where.PHOTOS, captions(options)),
                        UnprintedText.of(UnprintedText.Where.IMPRINT, imprint(options)),
                        UnprintedText.of(
                                UnprintedText.Where.VERSION, options.imprint().version()),
                        UnprintedText.of(
                                UnprintedText.Where.DATE, options.imprint().date()))
                .flatMap(texts -> texts)
                .toList();
    }

    /** As many as the two arms of the corner have, and those in front of the outermost round. */
    private static long stitchesShown(Chart chart) {
        return ChartPicture.stitchesOfCorner(chart, PictureStyle.usualRepeats(chart));
    }

    private static String sections(Chart chart) {
        return chart.own().sections().stream()
                .map(section -> section.title() + " " + section.text().replaceAll("\\s+", " "))
                .collect(Collectors.joining(" "));
    }

    private static String captions(BookletOptions options) {
        return options.matter().photos().stream()
                .map(printed -> printed.photo().caption())
                .collect(Collectors.joining(" "));
    }

    private static String imprint(BookletOptions options) {
        return options.matter()
                .imprint()
                .map(printed -> printed.imprint())
                .map(imprint -> String.join(
                        " ", imprint.name(), imprint.contact(), imprint.web(), imprint.copyright(), imprint.use()))
                .orElse("");
    }

    private static String rights(BookletOptions options) {
        return options.matter()
                .imprint()
                .map(printed -> printed.imprint().copyright().strip())
                .orElse("");
    }

    private static Colour accent(BookletOptions options) {
        return options.matter()
                .imprint()
                .flatMap(imprint -> imprint.imprint().accent())
                .filter(accent -> options.edition() == Edition.STANDARD)
                .orElse(PageColour.MARSH);
    }

    private static String title(Chart chart, BookletOptions options) {
        String title = chart.title().isBlank() ? options.says().text("untitled") : chart.title();
        return options.parts().isWorkbook() ? options.says().text("workbook-title", arg("title", title)) : title;
    }

    /** A number that follows from what is printed and from nothing else; records are hashed by content. */
    private static long seed(Chart chart, BookletOptions options) {
        return (chart.toString() + options).chars().asLongStream().reduce(17, (sum, c) -> 31 * sum + c);
    }
}
