package edgewright.booklet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import edgewright.booklet.ReadBack.Heard;
import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.PrintingNotice;
import edgewright.booklet.choice.Progress;
import edgewright.booklet.own.OwnFiles;
import edgewright.booklet.page.PageItem;
import edgewright.booklet.page.PageLayout;
import edgewright.booklet.page.TextSetter;
import edgewright.booklet.page.TextStyles;
import edgewright.booklet.page.YarnChips;
import edgewright.booklet.press.PrintedFile;
import edgewright.chart.Chart;
import edgewright.chart.OwnMatter;
import edgewright.chart.OwnSection;
import edgewright.chart.Photo;
import edgewright.check.Checker;
import edgewright.testing.Pictures;
import edgewright.texts.English;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionURI;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The designer's photographs, texts and imprint in a printed pattern. */
class OwnMatterInPrintTest {
    private static final OwnMatter OWN = new OwnMatter(
            List.of(
                    new Photo("shore.jpg", "A shore at low water", "The sea wall", Photo.At.COVER),
                    new Photo("reed.jpg", "Reeds, upright", "Reeds", Photo.At.JOINING),
                    new Photo("shore.jpg", "The shore again", "", Photo.At.GALLERY)),
            List.of(
                    new OwnSection(
                            "Introduction",
                            "Of *winter* walks; see [the studio](https://saltmarsh.example/reed).\n\n"
                                    + "- salt\n- sand\n  1. eel\n\n<b>As typed</b>"),
                    new OwnSection("Care", "Wash it **cold**."),
                    new OwnSection("Thanks", "To the herons.")),
            Optional.of("saltmarsh.imprint.json"));

    private static final String IMPRINT = """
            { "format": "edgewright-imprint", "version": 1, "name": "Saltmarsh Studio",
              "contact": "post@saltmarsh.example", "web": "https://saltmarsh.example",
              "copyright": "\u00a9 2026 Saltmarsh Studio", "use": "Sell what you make.", "logo": "logo.png",
              "accent": "#7a2e3a" }
            """;

    @TempDir
    private Path folder;

    private Chart chart() {
        return Published.sample("reed-bank").withOwn(OWN);
    }

    private BookletOptions options() throws IOException {
        Files.write(
                folder.resolve("shore.jpg"), Pictures.withPrivateMatter(Pictures.jpeg(Pictures.shore(2400, 1600)), 1));
        Files.write(folder.resolve("reed.jpg"), Pictures.withPrivateMatter(Pictures.jpeg(Pictures.shore(600, 300)), 6));
        Files.write(folder.resolve("logo.png"), Pictures.png(Pictures.shore(200, 100)));
        Files.writeString(folder.resolve("saltmarsh.imprint.json"), IMPRINT);
        OwnFiles.Read read =
                (OwnFiles.Read) OwnFiles.read(OWN, folder.resolve("reed-bank.border.json"), Optional.empty());
        return BookletOptions.of(chart(), English.LANGUAGE)
                .with(read.matter())
                .with(new PrintingNotice("2", "May 2026"));
    }

    @ParameterizedTest
    @EnumSource
    void aPatternWithPhotographsAndLinksKeepsTheStandardsAndComesOutTheSameTwice(Edition edition) throws Exception {
        BookletOptions options = options().withEdition(edition);
        byte[] pattern = Published.bytes(chart(), options);
        BookletStandardsTest.assertKeeps(BookletStandardsTest.STANDARDS, pattern);
        assertThat(Published.fresh(chart(), options().withEdition(edition))).isEqualTo(pattern);
    }

    @Test
    void nothingPrivateOfAPhotographIsInThePattern() throws IOException {
        String pattern = new String(Published.bytes(chart(), options()), StandardCharsets.ISO_8859_1);
        assertThat(pattern).doesNotContain("SECRET", "Exif\0");
    }

    @Test
    void everythingIsReadOutInItsPlace() throws IOException {
        try (ReadBack read = Published.read(chart(), options())) {
            assertThat(read.texts("Figure"))
                    .containsSubsequence(
                            "A shore at low water", "Logo of Saltmarsh Studio", "Reeds, upright", "The shore again")
                    .doesNotContain(
                            "The border Reed Bank around a piece, as it looks when it is worked, seen from the right side");
            assertThat(read.texts("H2"))
                    .startsWith("Introduction", "What you need")
                    .containsSubsequence("Finishing", "Care", "Thanks", "Photographs");
            int joining = indexOf(read, "Joining and closing a round");
            assertThat(read.heard().subList(joining, read.heard().size()).stream()
                            .filter(heard -> heard.role().equals("Figure"))
                            .findFirst()
                            .map(Heard::text))
                    .contains("Reeds, upright");
            assertThat(read.texts("Span")).containsExactly("winter ", "cold");
            assertThat(read.texts("Link")).contains("the studio (https://saltmarsh.example/reed)");
            assertThat(read.texts("P")).contains("<b>As typed</b>", "The sea wall", "Reeds");
            assertThat(read.texts("Lbl")).contains("\u2013 ", "1. ");
        }
    }

    @Test
    void photographsOfTheGalleryStandInTheMiddleOfThePage() throws IOException {
        OwnMatter gallery = OwnMatter.NONE.withPhotos(List.of(
                new Photo("shore.jpg", "A shore", "", Photo.At.GALLERY),
                new Photo("reed.jpg", "Reeds", "Reeds", Photo.At.GALLERY),
                new Photo("shore.jpg", "The shore again", "", Photo.At.GALLERY)));
        BookletOptions options = options();
        OwnFiles.Read read =
                (OwnFiles.Read) OwnFiles.read(gallery, folder.resolve("reed-bank.border.json"), Optional.empty());
        Chart chart = Published.sample("reed-bank").withOwn(gallery);
        List<PageItem.Photo> shown = new ArrayList<>();
        PageLayout sheet = PageLayout.of(options.paper(), options.edition());
        try (PrintedFile file = new PrintedFile("en")) {
            TextSetter setter = new TextSetter(
                    sheet,
                    TextStyles.of(file.typefaces(), sheet),
                    new YarnChips(chart, sheet, options.edition()),
                    options.language());
            new PatternPages(setter, chart, options.with(read.matter()), Checker.check(chart), Progress.NONE)
                    .strips().stream()
                            .flatMap(strip -> strip.pieces().stream())
                            .flatMap(piece -> piece.inks().stream())
                            .filter(PageItem.Photo.class::isInstance)
                            .map(PageItem.Photo.class::cast)
                            .forEach(shown::add);
        }
        assertThat(shown)
                .hasSize(3)
                .allSatisfy(photo ->
                        assertThat(photo.xPt() + photo.widthPt() / 2).isEqualTo(sheet.widthPt() / 2, within(0.01)));
    }

    /** A screen reader has letters that no face here has, so an alternative is kept as it was written and not complained of. */
    @Test
    void alternativesAreKeptInLettersThatNoFaceHas() throws IOException {
        List<Photo> photos = List.of(new Photo("shore.jpg", "The \u6f6e at dusk", "", Photo.At.GALLERY));
        OwnMatter own = OwnMatter.NONE.withPhotos(photos);
        Chart chart = Published.sample("reed-bank").withOwn(own);
        BookletOptions options = options();
        OwnFiles.Read files =
                (OwnFiles.Read) OwnFiles.read(own, folder.resolve("reed-bank.border.json"), Optional.empty());
        BookletOptions with = options.with(files.matter());
        assertThat(Booklet.unprinted(chart, with)).isEmpty();
        try (ReadBack read = Published.read(chart, with)) {
            assertThat(read.texts("Figure")).contains("The \u6f6e at dusk");
        }
    }

    @Test
    void linksLeadToTheirAddresses() throws IOException {
        List<String> addresses = new ArrayList<>();
        try (ReadBack read = Published.read(chart(), options())) {
            for (PDPage page : read.document().getPages()) {
                for (PDAnnotation annotation : page.getAnnotations()) {
                    if (((PDAnnotationLink) annotation).getAction() instanceof PDActionURI uri) {
                        addresses.add(uri.getURI());
                        assertThat(annotation.getContents()).isEqualTo("Link to " + uri.getURI());
                    }
                }
            }
        }
        assertThat(addresses)
                .containsOnly(
                        "mailto:post@saltmarsh.example", "https://saltmarsh.example", "https://saltmarsh.example/reed");
    }

    @Test
    void theFootOfEveryPageSaysWhoseThePatternIsAndWhichPageItIs() throws IOException {
        try (ReadBack read = Published.read(chart(), options())) {
            int pages = read.document().getNumberOfPages();
            for (int page = 1; page <= pages; page++) {
                PageText stripper = new PageText();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                assertThat(stripper.getText(read.document()))
                        .contains("\u00a9 2026 Saltmarsh Studio, Version 2, May 2026")
                        .contains("page " + page + " of " + pages);
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void photographsHaveThreeHundredDotsToTheInchAtMostAndAreGreyInOneInk(Edition edition) throws IOException {
        try (ReadBack read = Published.read(chart(), options().withEdition(edition))) {
            List<PDImageXObject> images = new ArrayList<>();
            for (PDPage page : read.document().getPages()) {
                for (COSName name : page.getResources().getXObjectNames()) {
                    PDXObject object = page.getResources().getXObject(name);
                    if (object instanceof PDImageXObject image) {
                        images.add(image);
                    }
                }
            }
            assertThat(images).hasSize(4);
            assertThat(images).allSatisfy(image -> {
                assertThat(image.getColorSpace().getName())
                        .isEqualTo(edition == Edition.BLACK_AND_WHITE ? "DeviceGray" : "DeviceRGB");
                // The column is at most 176 mm wide (Letter).
                assertThat(image.getWidth()).isLessThanOrEqualTo(2079);
            });
        }
    }

    private static int indexOf(ReadBack read, String heading) {
        List<String> texts = read.heard().stream().map(Heard::text).toList();
        return texts.lastIndexOf(heading);
    }
}
