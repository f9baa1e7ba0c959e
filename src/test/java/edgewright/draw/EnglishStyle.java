package edgewright.draw;

import edgewright.draw.picture.PictureStyle;
import edgewright.texts.English;

/** The styles that pictures start from, speaking English. */
public final class EnglishStyle {
    public static final PictureStyle PRINT = PictureStyle.print(English.LANGUAGE);
    public static final PictureStyle SCREEN = PictureStyle.screen(English.LANGUAGE);
    public static final PictureStyle DARK_SCREEN = PictureStyle.darkScreen(English.LANGUAGE);
    public static final PictureStyle FABRIC = PictureStyle.fabric(English.LANGUAGE);
    public static final PictureStyle BLACK_AND_WHITE = PictureStyle.blackAndWhite(English.LANGUAGE);

    private EnglishStyle() {}
}
