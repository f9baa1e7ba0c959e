package edgewright.draw.paint;

import edgewright.draw.paint.Shape.Weight;
import java.io.InputStream;

/** A face that travels with the program, in the order in which {@link FontStack} asks them for a character. */
public enum Typeface {
    /** The face of all text that it can print. */
    HYPERLEGIBLE("Atkinson Hyperlegible Next", "AtkinsonHyperlegibleNext"),
    /** Noto Sans, cut to what the first face lacks of Latin, Greek and Cyrillic; its capitals are made as high. */
    NOTO("Noto Sans", "NotoSans-Cut");

    private static final String FOLDER = "/edgewright/fonts/";

    private final String family;
    private final String file;

    Typeface(String family, String file) {
        this.family = family;
        this.file = file;
    }

    /** The name of its family. */
    public String family() {
        return family;
    }

    /** Its file of a weight, as TrueType. The caller closes it. */
    public InputStream open(Weight weight) {
        String path = FOLDER + file + (weight == Weight.BOLD ? "-Bold.ttf" : "-Regular.ttf");
        InputStream stream = Typeface.class.getResourceAsStream(path);
        if (stream == null) {
            throw new IllegalStateException("the program was built without its font " + path);
        }
        return stream;
    }
}
