package edgewright.draw.raster;

import edgewright.draw.paint.Shape.Weight;
import edgewright.draw.paint.Typeface;
import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.util.EnumMap;
import java.util.Map;

/** The bundled faces as fonts of the JDK, each loaded once, when it is first asked for. */
final class RasterFonts {
    /** The size of the fonts handed out. */
    static final float SIZE = 100;

    private static final Map<Typeface, Map<Weight, Font>> FONTS = new EnumMap<>(Typeface.class);

    private RasterFonts() {}

    /** The font of a face and weight, at {@link #SIZE}. */
    static synchronized Font of(Typeface typeface, Weight weight) {
        return FONTS.computeIfAbsent(typeface, face -> new EnumMap<>(Weight.class))
                .computeIfAbsent(weight, each -> load(typeface, each));
    }

    private static Font load(Typeface typeface, Weight weight) {
        try (InputStream stream = typeface.open(weight)) {
            return Font.createFont(Font.TRUETYPE_FONT, stream).deriveFont(SIZE);
        } catch (IOException | FontFormatException e) {
            throw new IllegalStateException("the bundled font cannot be read", e);
        }
    }
}
