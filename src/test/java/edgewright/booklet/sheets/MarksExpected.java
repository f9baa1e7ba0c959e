package edgewright.booklet.sheets;

import edgewright.booklet.ChartOnPaper;
import edgewright.booklet.ChartOnPaper.Seen;
import edgewright.booklet.ChartOnPaper.Sign;
import edgewright.booklet.Direction;
import edgewright.booklet.EndLabels;
import edgewright.booklet.EndLabels.Label;
import edgewright.booklet.page.PageItem;
import edgewright.chart.Chart;
import edgewright.chart.GridCell;
import edgewright.chart.HookHand;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.draw.marks.Drawing;
import edgewright.draw.marks.Layer;
import edgewright.draw.marks.Mark;
import edgewright.draw.marks.MarkKind;
import edgewright.draw.marks.MarkStyle;
import edgewright.draw.paint.Area;
import edgewright.draw.paint.ColourMode;
import edgewright.draw.picture.PictureStyle;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What a sheet must show for the marks of its drawing, and how it differs from what was read. */
final class MarksExpected {
    private record Square(int column, int row) {}

    private final Chart chart;
    private final PictureStyle style;
    private final boolean level;
    private final List<Mark> marks;
    private final int firstX;
    private final int lastX;
    private final int firstY;

    /**
     * @param level whether the sheet shows one side from corner to corner, else a corner
     * @param style in which the sheet was drawn
     */
    MarksExpected(Chart chart, Drawing sheet, PictureStyle style, boolean level) {
        this.chart = chart;
        this.style = style;
        this.level = level;
        this.marks = sheet.marks().stream()
                .filter(mark -> mark.cell().isPresent())
                .filter(mark -> switch (mark.kind().layer()) {
                    case FABRIC, MARKS -> true;
                    default -> mark.kind() == MarkKind.ROUND_NUMBER;
                })
                .toList();
        IntSummaryStatistics xs = cells(marks).mapToInt(GridCell::x).summaryStatistics();
        this.firstX = xs.getMin();
        this.lastX = xs.getMax();
        this.firstY = cells(marks).mapToInt(GridCell::y).min().orElseThrow();
    }

    private static Stream<GridCell> cells(List<Mark> marks) {
        return marks.stream().map(mark -> mark.cell().orElseThrow());
    }

    /** One line for each sign that is missing, too many or elsewhere; none if the sheet is right. */
    List<String> differences(ChartOnPaper paper) {
        List<String> differences = new ArrayList<>(paper.unknown());
        Map<String, Integer> balance = new TreeMap<>();
        signs().forEach(sign -> balance.merge(sign.toString(), 1, Integer::sum));
        paper.seen().stream()
                .filter(sign -> sign.sign() != Sign.HATCHING)
                .forEach(sign -> balance.merge(sign.toString(), -1, Integer::sum));
        balance.forEach((sign, left) -> {
            if (left != 0) {
                differences.add((left > 0 ? "missing: " : "too many: ") + sign);
            }
        });
        compareLabels(differences, paper);
        compareHatchings(differences, paper);
        return differences;
    }

    /**
     * The same for one sheet of a picture that is cut anywhere: signs in squares that are seen whole must be there, those in
     * others may be.
     *
     * @param art which part of the picture the sheet shows
     */
    List<String> differencesInPart(ChartOnPaper paper, PageItem.Art art) {
        List<String> differences = new ArrayList<>(paper.unknown());
        Point2D.Double beginning = beginningOf(paper, art);
        int column = (int) Math.round(beginning.x);
        int row = (int) Math.round(beginning.y);
        if (Math.abs(beginning.x - column) > 0.02 || Math.abs(beginning.y - row) > 0.02) {
            differences.add("the squared paper begins " + beginning.x + " squares right and " + beginning.y + " down");
        }
        Map<Seen, Integer> balance = new HashMap<>();
        signs().forEach(sign -> balance.merge(sign, 1, Integer::sum));
        for (Seen moved : seenFrom(paper, column, row)) {
            if (balance.merge(moved, -1, Integer::sum) < 0) {
                differences.add("too many: " + moved);
            }
        }
        balance.forEach((sign, left) -> {
            if (left > 0 && paper.isSeenWhole(sign.column() - column, sign.row() - row)) {
                differences.add("missing: " + sign);
            }
        });
        return differences;
    }

    /**
     * The signs that can be read on none of the sheets of a picture that is cut.
     *
     * @param arts which part of the picture each of the sheets shows
     */
    List<Seen> onNoSheet(List<ChartOnPaper> papers, List<PageItem.Art> arts) {
        List<Seen> missing = signs();
        for (int i = 0; i < papers.size(); i++) {
            Point2D.Double beginning = beginningOf(papers.get(i), arts.get(i));
            missing.removeAll(
                    Set.copyOf(seenFrom(papers.get(i), (int) Math.round(beginning.x), (int) Math.round(beginning.y))));
        }
        return missing;
    }

    /** How many squares right of and below the first one of the whole picture the squared paper of a sheet begins. */
    private Point2D.Double beginningOf(ChartOnPaper paper, PageItem.Art art) {
        Area first = marks.stream()
                .filter(mark -> mark.kind().layer() == Layer.FABRIC)
                .map(mark -> mark.shapes().get(0).bounds())
                .reduce((a, b) ->
                        new Area(Math.min(a.xMm(), b.xMm()), Math.min(a.yMm(), b.yMm()), b.widthMm(), b.heightMm()))
                .orElseThrow();
        return new Point2D.Double(
                (art.fromXMm() - first.xMm()) / first.widthMm() + paper.columnsFromEdge(),
                (art.fromYMm() - first.yMm()) / first.heightMm() + paper.rowsFromEdge());
    }

    /** What is read on a sheet, as it is counted in the whole picture. */
    private static List<Seen> seenFrom(ChartOnPaper paper, int column, int row) {
        List<Seen> seen = new ArrayList<>();
        for (Seen sign : paper.seen()) {
            if (sign.sign() != Sign.HATCHING) {
                seen.add(new Seen(
                        sign.sign(), sign.column() + column, sign.row() + row, sign.detail(), sign.pieceLies()));
            }
        }
        return seen;
    }

    /** How each yarn is hatched on the sheet: the strokes in the squares in which it shows, an empty set if there are none. */
    Map<String, Set<List<String>>> hatchings(ChartOnPaper paper) {
        Map<Square, List<String>> strokes = strokes(paper);
        Map<String, Set<List<String>>> ofYarn = new TreeMap<>();
        for (Mark mark : marks) {
            if (mark.kind() == MarkKind.FABRIC_STITCH) {
                ofYarn.computeIfAbsent(mark.yarn().orElseThrow(), yarn -> new HashSet<>())
                        .add(strokes.getOrDefault(square(mark), List.of()));
            }
        }
        return ofYarn;
    }

    private static Map<Square, List<String>> strokes(ChartOnPaper paper) {
        Map<Square, List<String>> strokes = new HashMap<>();
        paper.seen().stream()
                .filter(sign -> sign.sign() == Sign.HATCHING)
                .forEach(sign -> strokes.computeIfAbsent(
                                new Square(sign.column(), sign.row()), square -> new ArrayList<>())
                        .add(sign.detail()));
        return strokes;
    }

    /** The squares in which a yarn shows are all hatched alike, those of other yarns otherwise, all others not at all. */
    private void compareHatchings(List<String> differences, ChartOnPaper paper) {
        Map<String, Set<List<String>>> ofYarn = hatchings(paper);
        Set<List<String>> all = new HashSet<>();
        ofYarn.forEach((yarn, hatchings) -> {
            if (hatchings.size() > 1) {
                differences.add("yarn " + yarn + " is hatched in several ways: " + hatchings);
            }
            if (style.inking() == ColourMode.BLACK && !all.addAll(hatchings)) {
                differences.add("yarn " + yarn + " is hatched as another: " + hatchings);
            }
        });
        Set<Square> hatched = new HashSet<>(strokes(paper).keySet());
        marks.stream()
                .filter(mark -> mark.kind() == MarkKind.FABRIC_STITCH)
                .forEach(mark -> hatched.remove(square(mark)));
        if (!hatched.isEmpty()) {
            differences.add("hatched without a stitch: " + hatched);
        }
    }

    private List<Seen> signs() {
        List<Seen> signs = new ArrayList<>();
        for (Mark mark : marks) {
            switch (mark.kind()) {
                case FABRIC_STITCH, FABRIC_CORNER -> signs.add(seen(Sign.GROUND, mark, ground(mark), ""));
                case FABRIC_BASE ->
                    signs.add(seen(Sign.GROUND, mark, style.palette().base().toString(), ""));
                case FABRIC_MISSING ->
                    signs.add(seen(Sign.GROUND, mark, style.palette().paper().toString(), ""));
                case BACK_LOOP -> add(signs, Sign.BACK_LOOP, mark, piece(mark).word());
                case PLAIN -> add(signs, Sign.PLAIN, mark, "");
                case CHAIN -> add(signs, Sign.CHAIN, mark, isLevel(mark) ? "level" : "upright");
                case LONG -> addLong(signs, mark);
                case CORNER_CHAINS -> {
                    for (int i = 0; i < chart.corner().chains(); i++) {
                        signs.add(seen(Sign.CORNER_CHAIN, mark, "", ""));
                    }
                }
                case BASE_STITCH -> signs.add(seen(Sign.BASE_STITCH, mark, "", ""));
                case MISSING -> {
                    signs.add(seen(Sign.MISSING, mark, "dashed", ""));
                    signs.add(seen(Sign.MISSING, mark, "bar", ""));
                }
                case ROUND_NUMBER -> signs.add(seen(Sign.NUMBER, mark, Integer.toString(round(mark)), ""));
                default -> throw new IllegalStateException("no sign for " + mark.kind());
            }
        }
        return signs;
    }

    /** A sign that is parted from hatching by a wider white stroke under it. */
    private void add(List<Seen> signs, Sign sign, Mark mark, String pieceLies) {
        signs.add(seen(sign, mark, "", pieceLies));
        if (style.inking() == ColourMode.BLACK) {
            signs.add(seen(sign, mark, "edge", pieceLies));
        }
    }

    private void addLong(List<Seen> signs, Mark mark) {
        if (style.markStyle() == MarkStyle.SQUARES) {
            add(signs, Sign.LONG_IN_SQUARE, mark, piece(mark).word());
            return;
        }
        boolean cutOff = mark.shapes().size() < 4;
        String piece = piece(mark).word();
        for (String detail : List.of("edge", yarn(mark))) {
            signs.add(seen(cutOff ? Sign.LONG_CUT_OFF : Sign.LONG, mark, detail, piece));
            if (!cutOff) {
                signs.add(seen(Sign.LONG_FOOT, mark, detail, piece));
            }
        }
    }

    private Seen seen(Sign sign, Mark mark, String detail, String pieceLies) {
        Square square = square(mark);
        return new Seen(sign, square.column(), square.row(), detail, pieceLies);
    }

    private Square square(Mark mark) {
        GridCell cell = mark.cell().orElseThrow();
        return new Square(style.hand() == HookHand.LEFT ? lastX - cell.x() : cell.x() - firstX, cell.y() - firstY);
    }

    private String ground(Mark mark) {
        return style.inking() == ColourMode.BLACK ? "#ffffff" : yarn(mark);
    }

    private String yarn(Mark mark) {
        if (style.inking() == ColourMode.BLACK) {
            return "#000000";
        }
        return chart.yarn(mark.yarn().orElseThrow()).orElseThrow().colour().toString();
    }

    /** The round of a square: rings around the piece, whose upper left corner is at (0, 0). */
    private static int round(Mark mark) {
        GridCell cell = mark.cell().orElseThrow();
        return -1 - Math.min(cell.x(), cell.y());
    }

    /** Squares over the diagonal belong to the top of the piece, those under it to its left side. */
    private static boolean isLevel(Mark mark) {
        GridCell cell = mark.cell().orElseThrow();
        return cell.y() <= cell.x();
    }

    private Direction piece(Mark mark) {
        if (isLevel(mark)) {
            return Direction.DOWN;
        }
        return style.hand() == HookHand.LEFT ? Direction.LEFT : Direction.RIGHT;
    }

    /** At the ends of every part of a round that is on the sheet stand its number and its yarn. */
    private void compareLabels(List<String> differences, ChartOnPaper paper) {
        Map<Integer, Integer> roundOfRow = new HashMap<>();
        Map<Integer, Integer> roundOfColumn = new HashMap<>();
        for (Mark mark : marks) {
            GridCell cell = mark.cell().orElseThrow();
            if (cell.y() <= cell.x()) {
                roundOfRow.put(square(mark).row(), round(mark));
            }
            if (cell.x() <= cell.y()) {
                roundOfColumn.put(square(mark).column(), round(mark));
            }
        }
        compareLabels(differences, "row", roundOfRow, paper.rowLabels());
        if (level) {
            compareRuler(differences, paper.columnLabels());
            return;
        }
        compareLabels(differences, "column", roundOfColumn, paper.columnLabels());
    }

    /** Over the topmost row every tenth stitch has its number: from the corner just turned, after the repeat from the next one. */
    private void compareRuler(List<String> differences, EndLabels labels) {
        SideShape shape = chart.shape(Side.TOP);
        int round = -1 - firstY;
        int stitches = shape.a() + shape.w() + shape.b() + 2 * round;
        Map<Integer, Set<Label>> expected = new HashMap<>();
        for (Mark mark : marks) {
            GridCell cell = mark.cell().orElseThrow();
            int stitch = shape.a() + shape.w() + shape.b() + round - cell.x();
            int number = stitch <= shape.a() + round + shape.w() ? stitch : stitches + 1 - stitch;
            if (cell.y() == firstY && stitch >= 1 && stitch <= stitches && number % 10 == 0) {
                expected.put(square(mark).column(), Set.of(new Label(Integer.toString(number), "")));
            }
        }
        Set<Integer> columns = new HashSet<>(expected.keySet());
        columns.addAll(labels.lines());
        for (int column : columns) {
            Set<Label> read = new HashSet<>(labels.of(column));
            if (!read.equals(expected.getOrDefault(column, Set.of()))) {
                differences.add("column " + column + " is numbered " + read + ", not " + expected.get(column));
            }
        }
    }

    private void compareLabels(
            List<String> differences, String what, Map<Integer, Integer> roundOfLine, EndLabels labels) {
        Set<Integer> lines = new HashSet<>(roundOfLine.keySet());
        lines.addAll(labels.lines());
        for (int line : lines) {
            Integer round = roundOfLine.get(line);
            Set<Label> expected = round == null ? Set.of() : Set.of(label(round));
            List<Label> ends = labels.of(line);
            Set<Label> read = new HashSet<>(ends);
            if (!read.equals(expected) || (level && ends.size() < 2)) {
                differences.add(what + " " + line + " is labelled " + ends + ", not " + expected);
            }
        }
    }

    private Label label(int round) {
        return round == 0
                ? new Label("base", "")
                : new Label(Integer.toString(round), chart.yarnOf(round).id());
    }
}
