package edgewright.booklet.press;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * What a document says of itself: title and author, the standards that it keeps to (PDF/A-2a, ISO 19005-2, and PDF/UA-1, ISO
 * 14289-1), and the colour space that it was made for. It carries no date: a pattern is dated by its designer, and the same
 * chart gives the same file whenever it is printed.
 */
final class Metadata {
    private static final String SRGB = "sRGB IEC61966-2.1";
    private static final String PROGRAM = "Edgewright";
    private static final Pattern GAP = Pattern.compile("\\{(title|creator|rights|language|program)}");

    private Metadata() {}

    /**
     * @param rights the line of copyright; may be empty
     * @param seed any number that follows from the chart and the options; two files with the same seed have the same id
     */
    static void write(PDDocument document, String title, String author, String rights, String language, long seed)
            throws IOException {
        document.setDocumentId(seed);
        PDDocumentInformation information = document.getDocumentInformation();
        information.setTitle(title);
        if (!author.isEmpty()) {
            information.setAuthor(author);
        }
        information.setCreator(PROGRAM);

        PDDocumentCatalog catalog = document.getDocumentCatalog();
        PDViewerPreferences preferences = new PDViewerPreferences(catalog.getCOSObject());
        preferences.setDisplayDocTitle(true);
        catalog.setViewerPreferences(preferences);

        PDMetadata packet = new PDMetadata(document);
        packet.importXMPMetadata(xmp(title, author, rights, language).getBytes(StandardCharsets.UTF_8));
        catalog.setMetadata(packet);

        byte[] profile = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();
        PDOutputIntent intent = new PDOutputIntent(document, new ByteArrayInputStream(profile));
        intent.setInfo(SRGB);
        intent.setOutputCondition(SRGB);
        intent.setOutputConditionIdentifier(SRGB);
        intent.setRegistryName("http://www.color.org");
        catalog.addOutputIntent(intent);
    }

    private static String xmp(String title, String author, String rights, String language) throws IOException {
        try (InputStream in = Metadata.class.getResourceAsStream("/edgewright/booklet/metadata.xml")) {
            if (in == null) {
                throw new IllegalStateException("metadata.xml does not lie with the program");
            }
            String creator = author.isEmpty()
                    ? ""
                    : "<dc:creator><rdf:Seq><rdf:li>" + xml(author) + "</rdf:li></rdf:Seq></dc:creator>";
            Map<String, String> values = Map.of(
                    "title",
                    xml(title),
                    "creator",
                    creator,
                    "rights",
                    rights.isEmpty()
                            ? ""
                            : "<dc:rights><rdf:Alt><rdf:li xml:lang=\"x-default\">" + xml(rights)
                                    + "</rdf:li></rdf:Alt></dc:rights>",
                    "language",
                    xml(language.toLowerCase(Locale.ROOT)),
                    "program",
                    PROGRAM);
            // In one pass, so that a title that looks like a gap is no gap.
            return GAP.matcher(new String(in.readAllBytes(), StandardCharsets.UTF_8))
                    .replaceAll(gap -> Matcher.quoteReplacement(values.get(gap.group(1))));
        }
    }

    /** Text as XML 1.0 content; characters that XML does not know are left out. */
    private static String xml(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                default -> {
                    boolean control = c < ' ' && c != '\t' && c != '\n' && c != '\r';
                    boolean halfOfPair = c >= 0xd800 && c <= 0xdfff;
                    if (!control && !halfOfPair && c != 0xfffe && c != 0xffff) {
                        out.appendCodePoint(c);
                    }
                }
            }
        });
        return out.toString();
    }
}
