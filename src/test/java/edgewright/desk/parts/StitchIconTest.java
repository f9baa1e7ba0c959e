package edgewright.desk.parts;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Stitch;
import edgewright.draw.EnglishStyle;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import edgewright.draw.paint.Surface;
import edgewright.draw.picture.ChartPicture;
import edgewright.testing.Sketches;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JLabel;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class StitchIconTest {
    private static final Chart ALL_STITCHES = Sketches.chart("""
            3 A bbb|blpb|bbb
            2 B  bb|bbcb|bb
            1 A   b|bbbb|b
            """);

    private static final int SCALE = 24;
    private static final int ROOM = 4;

    @ParameterizedTest
    @EnumSource
    void a_button_shows_the_sign_that_the_chart_has_for_the_stitch(Stitch stitch) {
        StitchIcon icon = new StitchIcon(stitch);
        BufferedImage button = painted(g -> icon.paintIcon(label(), g, ROOM, ROOM), icon);
        BufferedImage chart = painted(g -> paintAsInChart(g, stitch, icon), icon);
        assertThat(farthest(chart, button))
                .as("of the chart's sign is in the icon")
                .isLessThan(0.06);
        assertThat(farthest(button, chart))
                .as("of the icon is in the chart's sign")
                .isLessThan(0.06);
    }

    private static JLabel label() {
        JLabel label = new JLabel();
        label.setForeground(Color.BLACK);
        return label;
    }

    private static BufferedImage painted(Consumer<Graphics2D> painter, StitchIcon icon) {
        BufferedImage image = new BufferedImage(
                SCALE * (icon.getIconWidth() + 2 * ROOM),
                SCALE * (icon.getIconHeight() + 2 * ROOM),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.scale(SCALE, SCALE);
        painter.accept(g);
        g.dispose();
        return image;
    }

    /** The lines and the ball of the chart's mark for the stitch, on the side above the piece, as large as the icon and as bold. */
    private static void paintAsInChart(Graphics2D g, Stitch stitch, StitchIcon icon) {
        Path2D sign = new Path2D.Double();
        Path2D feet = new Path2D.Double();
        trace(stitch, sign, feet);
        Rectangle2D bounds = sign.getBounds2D();
        double scale = Math.min(
                (icon.getIconWidth() - 4) / bounds.getWidth(), (icon.getIconHeight() - 4) / bounds.getHeight());
        g.setColor(Color.BLACK);
        g.translate(ROOM + 2, ROOM + 2);
        g.scale(scale, scale);
        g.translate(-bounds.getX(), -bounds.getY());
        g.setStroke(new BasicStroke((float) (1.6 / scale), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(sign);
        if (feet.getCurrentPoint() != null) {
            double ball = 1.6 / scale;
            Rectangle2D foot = feet.getBounds2D();
            g.fill(new Ellipse2D.Double(foot.getCenterX() - ball, foot.getCenterY() - ball, 2 * ball, 2 * ball));
        }
    }

    private static void trace(Stitch stitch, Path2D lines, Path2D fills) {
        ChartPicture.corner(ALL_STITCHES, EnglishStyle.SCREEN.withRepeats(1), Emphasis.NONE).marks().stream()
                .filter(mark -> mark.kind() == MarkKind.of(stitch))
                .filter(mark -> mark.cell().orElseThrow().x()
                        > mark.cell().orElseThrow().y())
                .findFirst()
                .orElseThrow()
                .drawOn(new Surface() {
                    @Override
                    public void fill(Shape.Fill fill) {
                        fill.path().trace(into(fills));
                    }

                    @Override
                    public void line(Shape.Line line) {
                        line.path().trace(into(lines));
                    }

                    @Override
                    public void text(Shape.Text text) {
                        throw new AssertionError(text.text());
                    }
                });
    }

    private static PenPath.Pen into(Path2D path) {
        return new PenPath.Pen() {
            @Override
            public void moveTo(double x, double y) {
                path.moveTo(x, y);
            }

            @Override
            public void lineTo(double x, double y) {
                path.lineTo(x, y);
            }

            @Override
            public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
                path.curveTo(x1, y1, x2, y2, x, y);
            }

            @Override
            public void close() {
                path.closePath();
            }
        };
    }

    /** How far what is inked in one picture lies at most from what is inked in the other; both stretched to 1 by 1. */
    private static double farthest(BufferedImage one, BufferedImage other) {
        List<double[]> others = inked(other);
        return inked(one).stream()
                .mapToDouble(dot -> others.stream()
                        .mapToDouble(near -> Math.hypot(dot[0] - near[0], dot[1] - near[1]))
                        .min()
                        .orElse(1))
                .max()
                .orElse(1);
    }

    private static List<double[]> inked(BufferedImage image) {
        List<double[]> dots = new ArrayList<>();
        for (int x = 0; x < image.getWidth(); x += 3) {
            for (int y = 0; y < image.getHeight(); y += 3) {
                if ((image.getRGB(x, y) & 0xff) < 128) {
                    dots.add(new double[] {x, y});
                }
            }
        }
        double left = dots.stream().mapToDouble(dot -> dot[0]).min().orElse(0);
        double top = dots.stream().mapToDouble(dot -> dot[1]).min().orElse(0);
        double wide = dots.stream().mapToDouble(dot -> dot[0]).max().orElse(0) - left;
        double high = dots.stream().mapToDouble(dot -> dot[1]).max().orElse(0) - top;
        return dots.stream()
                .map(dot -> new double[] {(dot[0] - left) / wide, (dot[1] - top) / high})
                .toList();
    }
}
