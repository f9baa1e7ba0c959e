package edgewright.desk.guide;

import static edgewright.texts.Arg.number;

import edgewright.chart.Chart;
import edgewright.chart.HookHand;
import edgewright.chart.Side;
import edgewright.desk.parts.Look;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.paint.Area;
import edgewright.draw.picture.PictureStyle;
import edgewright.draw.raster.RasterSurface;
import edgewright.draw.side.SideLayout;
import edgewright.draw.side.SidePicture;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.Optional;
import javax.swing.JPanel;

/**
 * The bit of the chart that is being worked: a round on one side from corner to corner, on the two rounds that its stitches stand
 * on and land in, with the round above it, which may cover some of them. Where a side is too long for the window, as much of it
 * as there is room for, the repeat in the middle.
 */
final class RoundStrip extends JPanel {
    /** The rounds below that stitches reach. */
    private static final int BELOW = 2;

    private static final int ROWS = BELOW + 2;
    private static final double MOST_CELL_PX = 22;
    private static final double LEAST_CELL_PX = 14;
    private static final int VEIL = 130;

    private final transient Language language;
    private final transient Messages says;
    private transient Optional<Chart> chart = Optional.empty();
    private transient Optional<SidePicture> picture = Optional.empty();
    private HookHand hand = HookHand.RIGHT;
    private int round;

    RoundStrip(Language language) {
        this.language = language;
        says = language.messages("desk/guide");
        setName("guideStrip");
        setOpaque(false);
        setPreferredSize(new Dimension(400, (int) (ROWS * MOST_CELL_PX) + 2));
        setMinimumSize(new Dimension(200, (int) (ROWS * LEAST_CELL_PX)));
    }

    /** Shows a round of a chart whose sections are even; empty for none. */
    void show(Optional<Chart> of, int shownRound, HookHand by) {
        boolean same = chart.equals(of) && hand == by;
        chart = of;
        hand = by;
        round = shownRound;
        if (!same) {
            draw();
        }
        getAccessibleContext()
                .setAccessibleName(
                        of.isEmpty()
                                ? says.text("guide-strip-none")
                                : says.text("guide-strip", number("round", round)));
        repaint();
    }

    private void draw() {
        picture = chart.map(each -> SidePicture.of(
                each,
                Side.FIRST,
                PictureStyle.screen(language)
                        .withPalette(Look.palette())
                        .withLabels(false)
                        .withLegend(false)
                        .withHand(hand),
                Emphasis.NONE));
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (chart != null) {
            draw();
        }
    }

    /** What is shown, on the sheet of the picture. */
    private Area shown(SideLayout layout) {
        int inner = Math.max(0, round - BELOW);
        int outer = Math.min(layout.rounds(), round + 1);
        Area outermost = row(layout, outer);
        Area rows = outermost.with(row(layout, inner));
        double most = getWidth() / LEAST_CELL_PX * layout.cellMm();
        if (rows.widthMm() <= most) {
            return rows;
        }
        int first = layout.shape().a() + round;
        Area repeat = layout.areaOf(layout.cell(round, first + 1))
                .with(layout.areaOf(layout.cell(round, first + layout.shape().w())));
        double left = Math.max(rows.xMm(), Math.min(repeat.middleXMm() - most / 2, rows.rightMm() - most));
        return Area.between(left, rows.yMm(), left + most, rows.bottomMm());
    }

    private static Area row(SideLayout layout, int round) {
        return layout.areaOf(layout.cell(round, 0)).with(layout.areaOf(layout.cell(round, layout.stitches(round) + 1)));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        picture.ifPresent(drawn -> {
            Graphics2D g = (Graphics2D) graphics.create();
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            SideLayout layout = drawn.layout();
            Area shown = shown(layout);
            double scale = Math.min(
                    MOST_CELL_PX / layout.cellMm(),
                    Math.min((getWidth() - 1) / shown.widthMm(), (getHeight() - 1) / shown.heightMm()));
            g.scale(scale, scale);
            g.translate(-shown.xMm(), -shown.yMm());
            g.clip(RasterSurface.boxOf(shown));
            RasterSurface surface = new RasterSurface(g);
            drawn.marksIn(shown).forEach(mark -> mark.drawOn(surface));
            frame(g, shown, row(layout, round), scale);
            g.dispose();
        });
    }

    /** The other rounds stand back, and the round has a frame. */
    private static void frame(Graphics2D g, Area shown, Area row, double scale) {
        Color paper = Look.colour("paper");
        g.setColor(new Color(paper.getRed(), paper.getGreen(), paper.getBlue(), VEIL));
        g.fill(RasterSurface.boxOf(Area.between(shown.xMm(), shown.yMm(), shown.rightMm(), row.yMm())));
        g.fill(RasterSurface.boxOf(Area.between(shown.xMm(), row.bottomMm(), shown.rightMm(), shown.bottomMm())));
        g.setColor(Look.colour("accent"));
        g.setStroke(new BasicStroke((float) (2 / scale)));
        g.draw(RasterSurface.boxOf(row));
    }
}
