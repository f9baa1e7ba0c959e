package edgewright.draw.raster;

import edgewright.draw.paint.Lettering;
import edgewright.draw.paint.Shape.Weight;
import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.util.Map;

/** The bundled face as fonts of the JDK, loaded once. */
final class RasterFonts {
    /** The size of the fonts handed out. */
    static final float SIZE = 100;

    private static final Map<Weight, Font> FONTS =
            Map.of(Weight.REGULAR, load(Weight.REGULAR), Weight.BOLD, load(Weight.BOLD));

    private RasterFonts() {}

    /** The font of a weight, at {@link #SIZE}. */
    static Font of(Weight weight) {
        return FONTS.get(weight);
    }

    private static Font load(Weight weight) {
        try (InputStream stream = Lettering.open(weight)) {
            return Font.createFont(Font.TRUETYPE_FONT, stream).deriveFont(SIZE);
        } catch (IOException | FontFormatException e) {
            throw new IllegalStateException("the bundled font cannot be read", e);
        }
    }
}
