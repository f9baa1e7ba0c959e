package edgewright.desk.reading;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.commas;
import static edgewright.texts.Arg.count;

import edgewright.chart.Chart;
import edgewright.chart.GridCell;
import edgewright.desk.parts.Look;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.paint.Area;
import edgewright.draw.picture.CellLayout;
import edgewright.draw.picture.CornerPicture;
import edgewright.draw.picture.PictureStyle;
import edgewright.draw.raster.RasterSurface;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JPanel;

/** The chart that a text makes, drawn whole, with the rounds of the chosen line framed. */
final class RoundPicture extends JPanel {
    private static final double MOST_CELL_PX = 22;
    private static final int MOST_REPEATS = 2;

    private final transient Language language;
    private final transient Messages says;
    private transient Optional<Chart> chart = Optional.empty();
    private transient Optional<CornerPicture> picture = Optional.empty();
    private List<Integer> rounds = List.of();

    RoundPicture(Language language) {
        this.language = language;
        this.says = language.messages("desk/reading");
        setName("reading.picture");
        setOpaque(false);
        setPreferredSize(new Dimension(340, 340));
        setMinimumSize(new Dimension(160, 160));
        name();
    }

    /** Shows another chart, no round of it chosen; empty for none. */
    void show(Optional<Chart> shown) {
        chart = shown;
        rounds = List.of();
        draw();
    }

    /** Frames these rounds. */
    void choose(List<Integer> chosen) {
        rounds = List.copyOf(chosen);
        name();
        repaint();
    }

    List<Integer> rounds() {
        return rounds;
    }

    private void name() {
        getAccessibleContext()
                .setAccessibleName(
                        chart.isEmpty()
                                ? says.text("picture-none")
                                : rounds.isEmpty()
                                        ? says.text(
                                                "picture-chart",
                                                arg("title", chart.get().title()))
                                        : says.text(
                                                "picture-rounds",
                                                count("count", rounds.size()),
                                                commas(
                                                        "rounds",
                                                        rounds.stream()
                                                                .map(String::valueOf)
                                                                .toList())));
    }

    private void draw() {
        picture = chart.map(each -> CornerPicture.of(
                each,
                PictureStyle.screen(language).withPalette(Look.palette()).withRepeats(MOST_REPEATS),
                Emphasis.NONE));
        name();
        repaint();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (chart != null) {
            draw();
        }
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        if (picture.isEmpty()) {
            g.setColor(Look.colour("quiet"));
            g.setFont(Look.font(13));
            g.drawString(says.text("picture-none"), 16, 28);
        }
        picture.ifPresent(shown -> {
            double scale = Math.min(
                    MOST_CELL_PX / PictureStyle.CELL_MM,
                    Math.min(getWidth() / shown.widthMm(), getHeight() / shown.heightMm()));
            g.scale(scale, scale);
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            RasterSurface surface = new RasterSurface(g);
            shown.marksIn(new Area(0, 0, shown.widthMm(), shown.heightMm())).forEach(mark -> mark.drawOn(surface));
            frame(g, shown.layout());
        });
        g.dispose();
    }

    private void frame(Graphics2D g, CellLayout layout) {
        Color accent = Look.colour("accent");
        for (Area cell : chosen(layout)) {
            Rectangle2D box = RasterSurface.boxOf(cell);
            g.setColor(new Color(accent.getRed(), accent.getGreen(), accent.getBlue(), 70));
            g.fill(box);
            g.setColor(accent);
            g.setStroke(new BasicStroke((float) (layout.cellMm() / 8)));
            g.draw(box);
        }
    }

    private List<Area> chosen(CellLayout layout) {
        List<Area> cells = new ArrayList<>();
        Area all = layout.area();
        double step = layout.cellMm();
        for (double y = all.yMm() + step / 2; y < all.yMm() + all.heightMm(); y += step) {
            for (double x = all.xMm() + step / 2; x < all.xMm() + all.widthMm(); x += step) {
                layout.cellAt(x, y)
                        .filter(cell -> isChosen(layout, cell))
                        .ifPresent(cell -> cells.add(layout.areaOf(cell)));
            }
        }
        return cells;
    }

    private boolean isChosen(CellLayout layout, GridCell cell) {
        return layout.stitchIn(cell)
                        .filter(stitch -> rounds.contains(stitch.place().round()))
                        .isPresent()
                || layout.cornerIn(cell).filter(rounds::contains).isPresent();
    }
}
