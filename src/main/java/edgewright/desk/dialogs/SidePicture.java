package edgewright.desk.dialogs;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.chart.Section;
import edgewright.chart.SideShape;
import edgewright.desk.parts.Look;
import edgewright.desk.work.ChartCommands;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import javax.swing.JPanel;

/**
 * A side of the base round as its three parts, with the repeat twice, and the next two rounds on it: each is one stitch longer
 * at each end, and the repeat stays as it is. It is worked from the right to the left, as the top of a piece is.
 */
final class SidePicture extends JPanel {
    private static final int WIDTH_PX = 420;
    private static final int HEIGHT_PX = 100;
    private static final int ROUNDS = 3;
    private static final int REPEATS = 2;
    private static final int MOST_CELL_PX = 16;
    private static final int LEAST_FRAMED_PX = 4;

    private final transient Language language;
    private final transient Messages says;
    private transient SideShape shape;

    SidePicture(SideShape shape, Language language) {
        this.language = language;
        says = language.messages("desk/dialogs");
        setName("sidePicture");
        setOpaque(false);
        setPreferredSize(new Dimension(WIDTH_PX, HEIGHT_PX));
        show(shape);
    }

    /** Shows another side. */
    void show(SideShape shown) {
        shape = shown;
        getAccessibleContext()
                .setAccessibleName(says.text(
                        "sidePicture-heard",
                        count("fromCorner", shape.a()),
                        count("repeat", shape.w()),
                        count("toCorner", shape.b()),
                        count("rounds", ROUNDS - 1)));
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        int longest = shape.stitches(ROUNDS - 1, REPEATS);
        double cell = Math.min(MOST_CELL_PX, (getWidth() - 2.0) / longest);
        double right = (getWidth() + longest * cell) / 2;
        int rowPx = MOST_CELL_PX;
        for (int round = 0; round < ROUNDS; round++) {
            double at = right - (ROUNDS - 1 - round) * cell;
            int y = (ROUNDS - 1 - round) * rowPx;
            at = part(g, at, y, cell, shape.a() + round, Look.colour("good"));
            for (int i = 0; i < REPEATS; i++) {
                at = part(g, at, y, cell, shape.w(), i == 0 ? Look.colour("accent") : mixed(Look.colour("accent")));
            }
            part(g, at, y, cell, shape.b() + round, Look.colour("warning"));
        }
        caption(g, right - (ROUNDS - 1) * cell, ROUNDS * rowPx, cell);
        g.dispose();
    }

    /** Paints so many stitches from the right on, and says where the next one begins. */
    private double part(Graphics2D g, double from, int y, double cell, int stitches, Color colour) {
        for (int i = 1; i <= stitches; i++) {
            int x = (int) Math.round(from - i * cell);
            int end = (int) Math.round(from - (i - 1) * cell);
            boolean framed = cell >= LEAST_FRAMED_PX;
            g.setColor(colour);
            g.fillRect(x, y, Math.max(1, end - x - (framed ? 1 : 0)), MOST_CELL_PX - 1);
        }
        return from - stitches * cell;
    }

    /** The number of each part under it, and in the line below what the parts are. */
    private void caption(Graphics2D g, double right, int y, double cell) {
        g.setFont(getFont() == null ? Look.font(12) : getFont());
        g.setColor(Look.colour("quiet"));
        FontMetrics font = g.getFontMetrics();
        int line = y + font.getAscent() + 3;
        double repeat = right - shape.a() * cell;
        double last = repeat - REPEATS * shape.w() * cell;
        centred(g, String.valueOf(shape.a()), right - shape.a() * cell / 2, line);
        for (int i = 0; i < REPEATS; i++) {
            centred(g, String.valueOf(shape.w()), repeat - (i + 0.5) * shape.w() * cell, line);
        }
        centred(g, String.valueOf(shape.b()), last - shape.b() * cell / 2, line);
        int below = line + font.getHeight() + 2;
        g.drawString(
                says.text("sidePicture-to", arg("section", ChartCommands.sectionName(Section.TO_CORNER, language))),
                0,
                below);
        centred(
                g,
                says.text("sidePicture-repeat", arg("section", ChartCommands.sectionName(Section.REPEAT, language))),
                getWidth() / 2.0,
                below);
        String from =
                says.text("sidePicture-from", arg("section", ChartCommands.sectionName(Section.FROM_CORNER, language)));
        g.drawString(from, getWidth() - font.stringWidth(from), below);
    }

    private static void centred(Graphics2D g, String text, double x, int y) {
        g.drawString(text, (float) (x - g.getFontMetrics().stringWidth(text) / 2.0), y);
    }

    private static Color mixed(Color colour) {
        return new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), 150);
    }
}
