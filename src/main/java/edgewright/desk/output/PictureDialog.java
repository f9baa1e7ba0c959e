package edgewright.desk.output;

import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.decimal;

import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.desk.parts.FormDialog;
import edgewright.desk.parts.Forms;
import edgewright.desk.work.ChartView;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.marks.MarkStyle;
import edgewright.draw.paint.Area;
import edgewright.draw.picture.ChartPicture;
import edgewright.draw.picture.CornerPicture;
import edgewright.draw.picture.FabricFill;
import edgewright.draw.picture.PictureStyle;
import edgewright.draw.picture.UnprintedText;
import edgewright.draw.raster.RasterPicture;
import edgewright.draw.side.SidePicture;
import edgewright.texts.Messages;
import java.awt.Window;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JSpinner;

/** How the chart is to be written as a picture: what of it, what it shows, in which kind of file, and how large. */
public final class PictureDialog extends FormDialog {
    /** The kinds of picture file. */
    enum Kind {
        SVG,
        PNG;

        /** The ending of its names, with the dot. */
        String ending() {
            return "." + name().toLowerCase(Locale.ROOT);
        }
    }

    /** What the picture shows. */
    enum Content {
        CHART,
        FABRIC,
        MARKS
    }

    /** What of the border it shows. */
    enum Part {
        CORNER,
        SIDE,
        BORDER
    }

    private static final int MOST_PX = 200;
    private static final double MM_PER_INCH = 25.4;

    private final transient Messages says;
    private final transient Messages common;
    private final transient Chart chart;
    private final transient ChartView view;
    private final JComboBox<Kind> kind = new JComboBox<>(Kind.values());
    private final JComboBox<Part> part = new JComboBox<>(Part.values());
    private final JComboBox<Content> content = new JComboBox<>(Content.values());
    private final JComboBox<MarkStyle> marks = new JComboBox<>(MarkStyle.values());
    private final JCheckBox legend = new JCheckBox();
    private final JCheckBox turned = new JCheckBox();
    private final JSpinner cell;
    private final JSpinner repeats;
    private final JSpinner level;
    private final JSpinner upright;

    public PictureDialog(Window owner, Chart chart, ChartView view) {
        super(owner, "picture", view.language());
        says = view.language().messages("desk/output");
        common = view.language().messages("desk/common");
        titled(says.text("picture-title"), says.text("picture-accept"));
        this.chart = chart;
        this.view = view;
        kind.setRenderer(Forms.renderer((Kind each) -> says.text("picture-kind-" + each.name())));
        field("picture.kind", says.text("picture-kind"), kind);
        part.setRenderer(Forms.renderer((Part each) -> says.text("picture-part-" + each.name())));
        field("picture.part", says.text("picture-part"), part);
        content.setRenderer(Forms.renderer((Content each) -> says.text("picture-content-" + each.name())));
        field("picture.content", says.text("picture-content"), content);
        marks.setRenderer(Forms.renderer((MarkStyle each) -> says.text("marks-" + each.name())));
        field("picture.marks", says.text("picture-marks"), marks).setSelectedItem(MarkStyle.USUAL);
        repeats = number("picture.repeats", says.text("picture-repeats"), 2, 1, 20);
        level = number("size.level", common.text("size-level"), 3, 0, 9_999);
        upright = number("size.upright", common.text("size-upright"), 3, 0, 9_999);
        cell = number("picture.cell", says.text("picture-cell"), 24, 4, MOST_PX);
        Forms.caption(legend, says.text("picture-legend")).setName("picture.legend");
        legend.setSelected(true);
        Forms.caption(turned, says.text("picture-turned")).setName("picture.turned");
        turned.setSelected(true);
        form().add(legend, "span, gaptop 4");
        form().add(turned, "span");
        kind.addActionListener(event -> follow());
        part.addActionListener(event -> follow());
        content.addActionListener(event -> follow());
        follow();
    }

    /** Only what the picture depends on can be changed. */
    private void follow() {
        boolean corner = part() == Part.CORNER;
        boolean border = part() == Part.BORDER;
        repeats.setEnabled(corner);
        level.setEnabled(border);
        upright.setEnabled(border);
        cell.setEnabled(kind() == Kind.PNG);
        marks.setEnabled(content() != Content.FABRIC);
        legend.setEnabled(!border && content() != Content.FABRIC);
        turned.setEnabled(corner);
        look();
    }

    private Part part() {
        return part.getItemAt(part.getSelectedIndex());
    }

    private Content content() {
        return content.getItemAt(content.getSelectedIndex());
    }

    private PerSide<Integer> sides() {
        int across = value(level);
        int down = value(upright);
        return PerSide.pairs(across, down);
    }

    /** The picture, made when it is asked for; that can take a while. Nothing that is chosen later changes it. */
    Supplier<Drawing> drawing() {
        PictureStyle style = style();
        PerSide<Integer> sides = sides();
        return switch (part()) {
            case CORNER -> () -> ChartPicture.corner(chart, style, Emphasis.NONE);
            case SIDE -> () -> side(style).drawing();
            case BORDER -> () -> ChartPicture.wholeBorder(chart, sides, style);
        };
    }

    /** The texts in the picture with characters that no face has. */
    List<UnprintedText> unprinted() {
        return part() != Part.BORDER && content() != Content.FABRIC
                ? UnprintedText.inPicture(chart, legend.isSelected())
                : List.of();
    }

    Kind kind() {
        return kind.getItemAt(kind.getSelectedIndex());
    }

    /** Dots an inch at which a cell gets as many pixels as were asked for. */
    double dotsPerInch() {
        return value(cell) / PictureStyle.CELL_MM * MM_PER_INCH;
    }

    private PictureStyle style() {
        PictureStyle style = content() == Content.FABRIC
                ? PictureStyle.fabric(view.language())
                        .withLook(FabricFill.ofDots(
                                PictureStyle.CELL_MM, kind() == Kind.SVG ? FabricFill.SCREEN_DPI : dotsPerInch()))
                : PictureStyle.print(view.language())
                        .withFabric(content() == Content.CHART)
                        .withLegend(legend.isSelected());
        PictureStyle repeated =
                style.withRepeats(value(repeats)).withMarkStyle(marks.getItemAt(marks.getSelectedIndex()));
        return turned.isSelected() ? repeated.withRotation(view.turn()) : repeated;
    }

    @Override
    protected Optional<String> objection() {
        PictureStyle style = style();
        long stitches = switch (part()) {
            case CORNER -> ChartPicture.stitchesOfCorner(chart, style);
            case SIDE -> SidePicture.stitches(chart);
            case BORDER -> ChartPicture.stitchesOfBorder(chart, sides());
        };
        if (stitches > ChartPicture.MOST_STITCHES) {
            return Optional.of(says.text(
                    "picture-stitches", count("stitches", stitches), count("most", ChartPicture.MOST_STITCHES)));
        }
        if (kind() == Kind.SVG) {
            return Optional.empty();
        }
        Area sheet = switch (part()) {
            case CORNER -> cornerSheet(style);
            case SIDE -> new Area(0, 0, side(style).widthMm(), side(style).heightMm());
            case BORDER -> ChartPicture.sheetOfBorder(chart, sides(), style);
        };
        double pixels = RasterPicture.pixels(sheet.widthMm(), sheet.heightMm(), dotsPerInch());
        return pixels > RasterPicture.MOST_PIXELS
                ? Optional.of(says.text(
                        "picture-pixels",
                        decimal("millions", pixels / 1e6, 0),
                        decimal("most", RasterPicture.MOST_PIXELS / 1e6, 0)))
                : Optional.empty();
    }

    private SidePicture side(PictureStyle style) {
        return SidePicture.of(chart, Side.FIRST, style, Emphasis.NONE);
    }

    private Area cornerSheet(PictureStyle style) {
        CornerPicture picture = CornerPicture.of(chart, style, Emphasis.NONE);
        return new Area(0, 0, picture.widthMm(), picture.heightMm());
    }
}
