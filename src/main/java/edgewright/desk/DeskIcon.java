package edgewright.desk;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.IntStream;

/** The sign of the program: a corner of a border in chalk, peat and sea lavender. */
final class DeskIcon {
    private static final int CELLS = 5;
    private static final Color PEAT = new Color(0x2b2a33);
    private static final Color CHALK = new Color(0xf2ead8);
    private static final Color LAVENDER = new Color(0x6f65a3);

    private DeskIcon() {}

    /** The sign in the sizes that desktops ask for. */
    static List<Image> images() {
        return IntStream.of(16, 24, 32, 48, 64, 128)
                .mapToObj(DeskIcon::image)
                .map(Image.class::cast)
                .toList();
    }

    private static BufferedImage image(int sizePx) {
        BufferedImage image = new BufferedImage(sizePx, sizePx, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        for (int x = 0; x < CELLS; x++) {
            for (int y = 0; y < CELLS; y++) {
                int ring = Math.min(x, y);
                if (ring < 3) {
                    g.setColor(ring == 1 ? LAVENDER : x % 2 == 0 && y % 2 == 0 ? CHALK : PEAT);
                    int left = x * sizePx / CELLS;
                    int top = y * sizePx / CELLS;
                    g.fillRect(left, top, (x + 1) * sizePx / CELLS - left, (y + 1) * sizePx / CELLS - top);
                }
            }
        }
        g.dispose();
        return image;
    }
}
