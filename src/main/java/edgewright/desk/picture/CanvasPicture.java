package edgewright.desk.picture;

import edgewright.chart.Chart;
import edgewright.chart.GridCell;
import edgewright.chart.Place;
import edgewright.chart.Round;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.chart.Stitches;
import edgewright.check.Finding;
import edgewright.check.Verdict;
import edgewright.desk.parts.Look;
import edgewright.desk.ring.RingPlan;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Seeing;
import edgewright.desk.work.Workbench;
import edgewright.draw.grid.Rotation;
import edgewright.draw.marks.Emphasis;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.ColourVision;
import edgewright.draw.paint.Shape;
import edgewright.draw.picture.CellLayout;
import edgewright.draw.picture.ChartPicture;
import edgewright.draw.picture.CornerPicture;
import edgewright.draw.picture.FabricFill;
import edgewright.draw.picture.PictureStyle;
import edgewright.draw.raster.RasterSurface;
import edgewright.draw.raster.SeenPixels;
import edgewright.draw.raster.StampPixels;
import edgewright.draw.side.SidePicture;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The picture that lies on the canvas: a chart and its findings as somebody looks at them. */
public final class CanvasPicture {
    /** The empty edge about the drawing on the screen, before the scaling of the screen. */
    public static final int MARGIN_PX = 10;

    /** The edge of a cell in the drawing; how large it gets on the screen is the view's to say. */
    public static final double CELL_MM = 5;

    private static final int SMALLEST_MARKED_PX = 6;
    /** Beyond this many places, each drawn in several cells, to paint all is less work than to say where they are. */
    private static final int MOST_SINGLE_PLACES = 300;

    private static final double MM_PER_INCH = 25.4;

    /** Stitches are drawn once for all pictures; each edit makes a picture. */
    private static final StampPixels STAMPS = new StampPixels();

    private final Chart chart;
    private final ChartPicture.InParts drawn;
    private final Emphasis emphasis;
    private final Set<Place> ringed;
    private final Rotation turn;
    private final Seeing seeing;
    private final ChartView.Layers layers;
    private final boolean dark;
    private final boolean large;
    private final FabricFill look;
    private final int cellPx;
    /** Made when first asked for; taken from the picture before where nothing else is to be ringed. */
    private RingPlan rings;

    private CanvasPicture(Chart chart, List<Finding> findings, ChartView view) {
        this.chart = chart;
        this.turn = view.turn();
        this.seeing = view.seeing();
        this.layers = view.layers();
        this.dark = Look.isDark();
        this.large = isLarge(view);
        this.look = look(view);
        this.emphasis = Emphasis.of(findings);
        this.ringed = emphasis.byStitch().keySet();
        this.cellPx = view.cellPx();
        PictureStyle style = (dark ? PictureStyle.darkScreen(view.language()) : PictureStyle.screen(view.language()))
                .withCellMm(CELL_MM)
                .withPalette(Look.palette())
                .withFabric(layers.fabric())
                .withMarks(layers.marks() && (large || !layers.fabric()))
                .withGrid(layers.marks())
                .withLook(look)
                .withRotation(turn)
                .withHand(seeing.hand())
                // The rulers beside the canvas say it, at every size and wherever it is scrolled to.
                .withLabels(false);
        // Rings are no part of it: on paper each square has its own, here they are gathered.
        this.drawn = switch (seeing.drawn()) {
            case CORNER -> CornerPicture.onScreen(chart, style, Emphasis.NONE);
            // The side that lies at the top, as far as the chart is rotated.
            case SIDE -> SidePicture.of(chart, Side.values()[turn.ordinal()], style, Emphasis.NONE);
        };
    }

    public static CanvasPicture of(Workbench bench, ChartView view) {
        return of(bench.verdict(), view);
    }

    /** A chart and what was said of it. */
    public static CanvasPicture of(Verdict verdict, ChartView view) {
        return new CanvasPicture(verdict.chart(), verdict.findings(), view);
    }

    public CellLayout layout() {
        return drawn.layout();
    }

    /** How its colours are seen. */
    public ColourVision vision() {
        return seeing.vision();
    }

    public double widthMm() {
        return drawn.widthMm();
    }

    public double heightMm() {
        return drawn.heightMm();
    }

    /** Whether its cells are those that are looked at now, however they lie. */
    public boolean hasCellsOf(ChartView view) {
        return seeing.drawn() == view.seeing().drawn()
                && (seeing.drawn() == Seeing.Drawn.CORNER || turn == view.turn());
    }

    /** Whether this is how the chart is looked at still. */
    public boolean isLookedAt(ChartView view) {
        return turn == view.turn()
                && layers == view.layers()
                && cellPx == view.cellPx()
                && seeing.equals(view.seeing())
                && dark == Look.isDark()
                && large == isLarge(view)
                && look == look(view);
    }

    /** On cells of a few pixels marks are a blur that only hides the fabric. */
    private static boolean isLarge(ChartView view) {
        return view.cellPx() >= SMALLEST_MARKED_PX;
    }

    /** The fabric alone is seen as it is worked; under marks it is flat. A fine screen has two dots for a pixel. */
    private static FabricFill look(ChartView view) {
        return view.layers() == ChartView.Layers.FABRIC
                ? FabricFill.ofDots(CELL_MM, 2 * view.cellPx() * MM_PER_INCH / CELL_MM)
                : FabricFill.FLAT;
    }

    /** Whether each cell lies where it lay, so that only what has changed is to be painted. */
    public boolean liesLike(CanvasPicture before) {
        return chart.rounds().size() == before.chart.rounds().size()
                && chart.border().equals(before.chart.border())
                && chart.yarns().equals(before.chart.yarns())
                && chart.raggedSections().equals(before.chart.raggedSections())
                && chart.corner().equals(before.chart.corner())
                && widthMm() == before.widthMm()
                && heightMm() == before.heightMm()
                && layout().area().equals(before.layout().area());
    }

    /** What looks otherwise than in a picture that {@link #liesLike} this one. */
    public List<Area> damageSince(CanvasPicture before) {
        List<Area> damage = new ArrayList<>();
        Set<Place> touched = new HashSet<>();
        for (int r = 1; r <= chart.rounds().size(); r++) {
            Round now = chart.round(r);
            Round then = before.chart.round(r);
            if (now.equals(then)) {
                continue;
            }
            if (!now.yarn().equals(then.yarn())) {
                // The label of the round and every cell of it.
                return List.of(new Area(0, 0, widthMm(), heightMm()));
            }
            for (Section section : Section.values()) {
                addChanged(r, section, now.section(section), then.section(section), touched);
            }
        }
        if (touched.size() > MOST_SINGLE_PLACES) {
            return List.of(new Area(0, 0, widthMm(), heightMm()));
        }
        touched.forEach(place -> damage.addAll(drawn.areasOf(place)));
        if (emphasis.equals(before.emphasis) && cellPx == before.cellPx) {
            rings = before.rings();
        } else {
            damage.addAll(rings().damageSince(before.rings()));
        }
        return damage;
    }

    /** The findings in rings, and where their numbers stand. */
    RingPlan rings() {
        if (rings == null) {
            double pxPerMm = cellPx / CELL_MM;
            // Numbers may stand in the margin too.
            Area within = new Area(0, 0, widthMm(), heightMm()).grown((MARGIN_PX - 2) / pxPerMm);
            rings = RingPlan.of(layout(), emphasis, pxPerMm, within);
        }
        return rings;
    }

    /** Paints a part of the canvas: the table, and what of the chart lies in that part. The clip may be no larger. */
    public void paintOn(Graphics2D g, CanvasScale scale, Rectangle part) {
        g.setColor(Look.colour("canvas"));
        g.fill(part);
        Rectangle reaching = new Rectangle(part);
        reaching.grow(1, 1);
        paint((Graphics2D) g.create(), scale, scale.toMm(reaching));
    }

    /** Whether a stitch is ringed. */
    public boolean isRinged(Place place) {
        return ringed.contains(place);
    }

    /**
     * Paints the ring about a cell alone, as over something that lies on them.
     *
     * @param g the graphics, used up by this
     */
    public void paintRing(Graphics2D g, CanvasScale scale, GridCell cell) {
        if (vision() == ColourVision.FULL) {
            paint(g, scale, ringOf(cell));
            return;
        }
        Rectangle at = scale.toPx(layout().areaOf(cell));
        // Its number stands out of the cell.
        at.grow(at.width, at.height);
        double density = g.getTransform().getScaleX();
        BufferedImage ring = new BufferedImage(
                (int) Math.ceil(at.width * density), (int) Math.ceil(at.height * density), BufferedImage.TYPE_INT_ARGB);
        Graphics2D on = ring.createGraphics();
        on.scale(density, density);
        on.translate(-at.x, -at.y);
        paint(on, scale, ringOf(cell));
        SeenPixels.see(ring, vision());
        g.translate(at.x, at.y);
        g.scale(1 / density, 1 / density);
        g.drawImage(ring, 0, 0, null);
        g.dispose();
    }

    private List<Shape> ringOf(GridCell cell) {
        return rings().shapesIn(layout().areaOf(cell), Look.palette()).toList();
    }

    /**
     * Paints what lies in an area.
     *
     * @param g the graphics, used up by this
     */
    public void paint(Graphics2D g, CanvasScale scale, Area area) {
        List<Shape> shapes = new ArrayList<>();
        drawn.marksIn(area).forEach(mark -> shapes.addAll(mark.shapes()));
        rings().shapesIn(area, Look.palette()).forEach(shapes::add);
        paint(g, scale, shapes);
    }

    private static void paint(Graphics2D g, CanvasScale scale, List<Shape> shapes) {
        g.translate(scale.zero().x, scale.zero().y);
        g.scale(scale.pxPerMm(), scale.pxPerMm());
        RasterSurface surface = new RasterSurface(g, STAMPS);
        shapes.forEach(shape -> shape.drawOn(surface));
        g.dispose();
    }

    private static void addChanged(int round, Section section, Stitches now, Stitches then, Set<Place> changed) {
        if (now.equals(then)) {
            return;
        }
        for (int place = 1; place <= now.length(); place++) {
            if (now.at(place) != then.at(place)) {
                changed.add(new Place(round, section, place));
            }
        }
    }
}
