package edgewright.desk.canvas;

import edgewright.chart.Chart;
import edgewright.chart.Yarn;
import edgewright.desk.parts.Look;
import edgewright.desk.picture.RulerPlan;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.picture.CellLayout;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import javax.swing.JComponent;
import javax.swing.UIManager;

/**
 * A ruler beside the rows of the chart or over its columns: number and yarn of each round, the stitches of the round in which
 * the cursor stands, and where the repeat is, with an arrow the way it is worked. Its letters keep their size whatever that of
 * the squares is; where squares are small fewer numbers are written.
 */
final class CanvasRuler extends JComponent {
    /** The size of its letters, in pixels before the scaling of the screen. */
    static final float LETTERS_PX = 11;

    private static final int GAP_PX = 4;
    private static final int CARD_PX = 9;
    private static final int BRACKET_PX = 8;

    private final transient ChartCanvas canvas;
    private final boolean down;
    private transient RulerPlan plan;
    private transient CellLayout planned;
    private int plannedRound;

    /** @param down whether it stands beside the rows */
    CanvasRuler(ChartCanvas canvas, boolean down) {
        this.canvas = canvas;
        this.down = down;
        setName(down ? "ruler.beside" : "ruler.above");
        setOpaque(true);
        setFocusable(false);
    }

    void follow() {
        revalidate();
        repaint();
    }

    private RulerPlan plan() {
        CellLayout layout = canvas.cells();
        int round = RulerPlan.roundOf(layout, canvas.standing());
        if (plan == null || planned != layout || plannedRound != round) {
            plan = RulerPlan.of(layout, down, round);
            planned = layout;
            plannedRound = round;
        }
        return plan;
    }

    private Font letters() {
        return Look.font(LETTERS_PX);
    }

    private FontMetrics metrics() {
        return getFontMetrics(letters());
    }

    private Chart chart() {
        return canvas.bench().chart();
    }

    @Override
    public Dimension getPreferredSize() {
        Dimension all = canvas.getPreferredSize();
        int thick = 2 * GAP_PX + CARD_PX + GAP_PX + (down ? widest() : metrics().getAscent());
        return down ? new Dimension(thick, all.height) : new Dimension(all.width, thick);
    }

    /** How wide the widest number is, with the letter of its yarn where there is room for that. */
    private int widest() {
        FontMetrics metrics = metrics();
        int number = metrics.stringWidth("0"
                .repeat(Integer.toString(Math.max(100, chart().rounds().size())).length()));
        int id = chart().yarns().stream()
                .mapToInt(yarn -> metrics.stringWidth(yarn.id()))
                .max()
                .orElse(0);
        return number + GAP_PX + Math.min(id, 3 * metrics.charWidth('M'));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setColor(UIManager.getColor("Panel.background"));
        g.fill(g.getClipBounds());
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setFont(letters());
        paintCursor(g);
        plan().repeats().forEach((first, last) -> paintRepeat(g, first, last));
        paintStitches(g);
        paintRounds(g);
        g.dispose();
    }

    /** Where a row or a column lies along the ruler: its first pixel, and how many there are. */
    private Rectangle band(int index) {
        CellLayout layout = canvas.cells();
        Rectangle cell = canvas.boundsOf(down ? layout.cellAtColumn(0, index) : layout.cellAtColumn(index, 0));
        return down
                ? new Rectangle(0, cell.y, getWidth(), cell.height)
                : new Rectangle(cell.x, 0, cell.width, getHeight());
    }

    private static boolean isSeen(Graphics2D g, Rectangle band) {
        int wide = 40;
        return g.hitClip(band.x - wide, band.y - wide, band.width + 2 * wide, band.height + 2 * wide);
    }

    private void paintCursor(Graphics2D g) {
        Color accent = Look.colour("accent");
        g.setColor(new Color(accent.getRed(), accent.getGreen(), accent.getBlue(), 48));
        g.fill(band(RulerPlan.of(canvas.cells(), canvas.standing(), down)));
    }

    private void paintRounds(Graphics2D g) {
        Map<Integer, List<Emphasis.Flag>> flagged =
                Emphasis.of(canvas.bench().verdict().findings()).byRound();
        int step = RulerPlan.step(canvas.cellPx(), down ? metrics().getAscent() + 1 : widestNumber() + 4);
        plan().rounds().forEach((index, round) -> {
            Rectangle band = band(index);
            if (isSeen(g, band) && round > 0) {
                Yarn yarn = chart().yarnOf(round);
                paintYarn(g, band, yarn);
                List<Emphasis.Flag> flags = flagged.getOrDefault(round, List.of());
                boolean beside = IntStream.range(round - step + 1, round + step).anyMatch(flagged::containsKey);
                if (!flags.isEmpty() || (round % step == 0 && !beside)) {
                    g.setColor(flags.isEmpty() ? UIManager.getColor("Label.foreground") : Look.colour("error"));
                    number(g, band, roundLabel(round, yarn, step));
                }
            }
        });
    }

    private int widestNumber() {
        return metrics().stringWidth(Integer.toString(chart().rounds().size()));
    }

    /** The letter stands beside the number where every round has its own and there is room. */
    private String roundLabel(int round, Yarn yarn, int step) {
        String number = Integer.toString(round);
        boolean fits = down && step == 1 && metrics().stringWidth(number + " " + yarn.id()) <= widest() + GAP_PX;
        return fits ? number + " " + yarn.id() : number;
    }

    /** A strip of the yarn along the squares, so that the rounds are told apart where no letters fit. */
    private void paintYarn(Graphics2D g, Rectangle band, Yarn yarn) {
        Rectangle strip = down
                ? new Rectangle(getWidth() - GAP_PX - CARD_PX, band.y, CARD_PX, band.height)
                : new Rectangle(band.x, getHeight() - GAP_PX - CARD_PX, band.width, CARD_PX);
        g.setColor(new Color(canvas.vision().seen(yarn.colour()).rgb()));
        g.fill(strip);
        g.setColor(Look.colour("line"));
        g.draw(new Rectangle(strip.x, strip.y, strip.width - (down ? 1 : 0), strip.height - (down ? 0 : 1)));
    }

    private void paintStitches(Graphics2D g) {
        int step = RulerPlan.step(
                canvas.cellPx(), down ? metrics().getAscent() + 2 : metrics().stringWidth("000") + 2.0 * GAP_PX);
        plan().stitches().forEach((index, stitch) -> {
            Rectangle band = band(index);
            if ((stitch % step == 0 || (stitch == 1 && step <= 2)) && isSeen(g, band)) {
                g.setColor(Look.colour("quiet"));
                number(g, band, Integer.toString(stitch));
            }
        });
    }

    private void number(Graphics2D g, Rectangle band, String text) {
        FontMetrics metrics = g.getFontMetrics();
        int wide = metrics.stringWidth(text);
        int ascent = metrics.getAscent() - metrics.getDescent() / 2;
        if (down) {
            g.drawString(text, getWidth() - 2 * GAP_PX - CARD_PX - wide, band.y + (band.height + ascent) / 2);
        } else {
            g.drawString(text, band.x + (band.width - wide) / 2, getHeight() - 2 * GAP_PX - CARD_PX);
        }
    }

    /** A bracket over a repeat that ends as an arrow, in working order. */
    private void paintRepeat(Graphics2D g, int first, int last) {
        Rectangle from = band(first);
        Rectangle to = band(last);
        Rectangle both = from.union(to);
        if (!isSeen(g, both)) {
            return;
        }
        g.setColor(Look.colour("accent"));
        g.setStroke(new BasicStroke(1.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        boolean onward = down ? to.y >= from.y : to.x >= from.x;
        double begin = along(onward ? both : from, !onward) + (onward ? 2 : -2);
        double end = along(onward ? to : both, onward) + (onward ? -2 : 2);
        double across = (down ? getWidth() : getHeight()) - GAP_PX - BRACKET_PX / 2.0;
        double back = onward ? -4 : 4;
        Path2D path = new Path2D.Double();
        move(path, begin, across + BRACKET_PX / 2.0, true);
        move(path, begin, across, false);
        move(path, end, across, false);
        move(path, end + back, across - 3, true);
        move(path, end, across, false);
        move(path, end + back, across + 3, false);
        g.draw(path);
    }

    private double along(Rectangle band, boolean end) {
        int begins = down ? band.y : band.x;
        return begins + (end ? (down ? band.height : band.width) : 0);
    }

    private void move(Path2D path, double along, double across, boolean jump) {
        double x = down ? across : along;
        double y = down ? along : across;
        if (jump) {
            path.moveTo(x, y);
        } else {
            path.lineTo(x, y);
        }
    }
}
