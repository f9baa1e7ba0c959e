package edgewright.booklet;

import edgewright.booklet.ChartOnPaper.Seen;
import edgewright.booklet.ChartOnPaper.Sign;
import edgewright.booklet.EndLabels.Label;
import edgewright.chart.Chart;
import edgewright.chart.GridCell;
import edgewright.draw.Drawing;
import edgewright.draw.Mark;
import edgewright.draw.MarkKind;
import edgewright.draw.Palette;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** What a sheet must show for the marks of its drawing, and how it differs from what was read. */
final class MarksExpected {
    private final Chart chart;
    private final Palette palette;
    private final List<Mark> marks;
    private final int firstX;
    private final int firstY;

    MarksExpected(Chart chart, Drawing sheet, Palette palette) {
        this.chart = chart;
        this.palette = palette;
        this.marks = sheet.marks().stream()
                .filter(mark -> mark.cell().isPresent())
                .filter(mark -> switch (mark.kind().layer()) {
                    case FABRIC, MARKS -> true;
                    default -> mark.kind() == MarkKind.ROUND_NUMBER;
                })
                .toList();
        this.firstX = cells().stream().mapToInt(GridCell::x).min().orElseThrow();
        this.firstY = cells().stream().mapToInt(GridCell::y).min().orElseThrow();
    }

    private List<GridCell> cells() {
        return marks.stream().map(mark -> mark.cell().orElseThrow()).toList();
    }

    /** One line for each sign that is missing, too many or elsewhere; none if the sheet is right. */
    List<String> differences(ChartOnPaper paper) {
        List<String> differences = new ArrayList<>(paper.unknown());
        Map<String, Integer> balance = new TreeMap<>();
        signs().forEach(sign -> balance.merge(sign.toString(), 1, Integer::sum));
        paper.seen().forEach(sign -> balance.merge(sign.toString(), -1, Integer::sum));
        balance.forEach((sign, left) -> {
            if (left != 0) {
                differences.add((left > 0 ? "missing: " : "too many: ") + sign);
            }
        });
        compareLabels(differences, paper);
        return differences;
    }

    private List<Seen> signs() {
        List<Seen> signs = new ArrayList<>();
        for (Mark mark : marks) {
            switch (mark.kind()) {
                case FABRIC_STITCH, FABRIC_CORNER -> signs.add(seen(Sign.GROUND, mark, yarn(mark), ""));
                case FABRIC_BASE ->
                    signs.add(seen(Sign.GROUND, mark, palette.base().toString(), ""));
                case FABRIC_MISSING ->
                    signs.add(seen(Sign.GROUND, mark, palette.paper().toString(), ""));
                case BACK_LOOP ->
                    signs.add(seen(Sign.BACK_LOOP, mark, "", piece(mark).word()));
                case PLAIN -> signs.add(seen(Sign.PLAIN, mark, "", ""));
                case CHAIN -> signs.add(seen(Sign.CHAIN, mark, "", isLevel(mark) ? "level" : "upright"));
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

    private void addLong(List<Seen> signs, Mark mark) {
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
        GridCell cell = mark.cell().orElseThrow();
        return new Seen(sign, cell.x() - firstX, cell.y() - firstY, detail, pieceLies);
    }

    private String yarn(Mark mark) {
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

    private static Direction piece(Mark mark) {
        return isLevel(mark) ? Direction.DOWN : Direction.RIGHT;
    }

    /** At the ends of every part of a round that is on the sheet stand its number and its yarn. */
    private void compareLabels(List<String> differences, ChartOnPaper paper) {
        Map<Integer, Integer> roundOfRow = new HashMap<>();
        Map<Integer, Integer> roundOfColumn = new HashMap<>();
        for (Mark mark : marks) {
            GridCell cell = mark.cell().orElseThrow();
            if (cell.y() <= cell.x()) {
                roundOfRow.put(cell.y() - firstY, round(mark));
            }
            if (cell.x() <= cell.y()) {
                roundOfColumn.put(cell.x() - firstX, round(mark));
            }
        }
        compareLabels(differences, "row", roundOfRow, paper.rowLabels());
        compareLabels(differences, "column", roundOfColumn, paper.columnLabels());
    }

    private void compareLabels(
            List<String> differences, String what, Map<Integer, Integer> roundOfLine, EndLabels labels) {
        Set<Integer> lines = new HashSet<>(roundOfLine.keySet());
        lines.addAll(labels.lines());
        for (int line : lines) {
            Integer round = roundOfLine.get(line);
            Set<Label> expected = round == null ? Set.of() : Set.of(label(round));
            Set<Label> read = new HashSet<>(labels.of(line));
            if (!read.equals(expected)) {
                differences.add(what + " " + line + " is labelled " + read + ", not " + expected);
            }
        }
    }

    private Label label(int round) {
        return round == 0
                ? new Label("base", "")
                : new Label(Integer.toString(round), chart.yarnOf(round).id());
    }
}
