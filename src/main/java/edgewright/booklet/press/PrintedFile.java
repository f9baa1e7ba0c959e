package edgewright.booklet.press;

import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.Progress;
import edgewright.booklet.page.PageLayout;
import edgewright.booklet.page.Paginator.Placed;
import edgewright.booklet.page.Typefaces;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.pdfbox.pdmodel.PDDocument;

/** A pattern as a file while it is printed. To be used once and closed. */
public final class PrintedFile implements AutoCloseable {
    /** Kept, because a logger that nobody holds is forgotten together with its level. */
    private static final Logger LIBRARIES = Logger.getLogger("org.apache");

    static {
        // What the PDF library logs is for those who write it. What goes wrong is said by the command or the desk.
        LIBRARIES.setLevel(Level.OFF);
    }

    private final PDDocument document = new PDDocument();
    private final EmbeddedFonts fonts = new EmbeddedFonts(document);
    private final String language;

    /** @param language the tag of BCP 47 of the whole */
    public PrintedFile(String language) {
        this.language = language;
    }

    /** The faces by which its pages are set. */
    public Typefaces typefaces() {
        return fonts.typefaces();
    }

    /**
     * Prints set pages.
     *
     * @param sheet what a page is like that says nothing else
     * @return whether it came to the end; {@code false} if the caller asked to stop
     */
    public boolean print(
            List<List<Placed>> pages, PageLayout sheet, Edition edition, HeaderFooter running, Progress progress)
            throws IOException {
        StructureTree structure = new StructureTree(document, language);
        return new Press(document, sheet, fonts, edition, structure).print(pages, running, progress);
    }

    /**
     * Writes the file to a stream, which is left open.
     *
     * @param rights the line of copyright; may be empty
     * @param seed any number that follows from the chart and the options; two files with the same seed have the same id
     */
    public void save(OutputStream out, String title, String author, String rights, long seed) throws IOException {
        Metadata.write(document, title, author, rights, language, seed);
        document.save(out);
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}
