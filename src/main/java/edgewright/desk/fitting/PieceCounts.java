package edgewright.desk.fitting;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.decimal;
import static edgewright.texts.Arg.number;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.SideShape;
import edgewright.chart.Swatch;
import edgewright.fit.BackLayer;
import edgewright.fit.CountTable;
import edgewright.fit.SizeTable;
import edgewright.fit.Targets;
import edgewright.texts.Messages;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;

/** The counts of a piece in every round, and the sizes that a side can have, as the cells of two tables. */
public final class PieceCounts {
    /** So many sizes are listed below the smallest side of the piece and above the largest. */
    private static final int SIZES_AROUND = 6;

    private static final double MM_IN_A_CM = 10;

    /**
     * A table.
     *
     * @param caption what its counts are, and how they are counted
     * @param marked the rows that stand out, counted from 0
     */
    public record Table(String caption, List<String> columns, List<List<String>> rows, List<Integer> marked) {
        public static final Table NONE = new Table("", List.of(), List.of(), List.of());

        public Table {
            columns = List.copyOf(columns);
            rows = rows.stream().map(List::copyOf).toList();
            marked = List.copyOf(marked);
        }
    }

    private final Piece piece;
    private final Messages says;
    private final Chart chart;
    private final SideShape shape;
    private final Counting counting;
    private final Targets targets;

    private PieceCounts(Piece piece, Targets targets) {
        this.piece = piece;
        says = piece.says();
        this.targets = targets;
        chart = piece.chart();
        shape = chart.shape();
        counting = piece.counting();
    }

    /** The four sides in every round, the outermost first; empty while no counts close. */
    public static Table rounds(Piece piece) {
        return piece.outcome()
                .targets()
                .map(targets -> new PieceCounts(piece, targets).rounds())
                .orElse(Table.NONE);
    }

    /** The sizes around those of the piece, the smallest first; empty while no counts close. */
    public static Table sizes(Piece piece) {
        return piece.outcome()
                .targets()
                .map(targets -> new PieceCounts(piece, targets).sizes())
                .orElse(Table.NONE);
    }

    private Table rounds() {
        boolean counted = piece.way() == Piece.Way.COUNTED && !piece.countedIn().back();
        boolean changed = counted && targets.totalChange() > 0;
        boolean layered = chart.making().back().isPresent();
        BackLayer back = new BackLayer(chart.border(), chart.rounds().size());
        List<CountTable.Row> all = CountTable.of(chart.border(), chart.rounds().size(), targets.repeats(), counting)
                .rows();
        List<List<String>> rows = new ArrayList<>();
        List<Integer> marked = new ArrayList<>();
        for (int i = all.size() - 1; i >= 0; i--) {
            CountTable.Row row = all.get(i);
            boolean before = changed && row.round() <= targets.round();
            if (changed && (row.round() == targets.round() || row.round() == targets.round() + 1)) {
                marked.add(rows.size());
            }
            List<String> cells = new ArrayList<>();
            cells.add(row.round() == 0 ? says.text("piece-cell-base") : String.valueOf(row.round()));
            (before ? asCounted(row.round()) : row.counts())
                    .stream().map(String::valueOf).forEach(cells::add);
            if (layered) {
                OptionalInt match = back.matching(row.round());
                cells.add(match.isPresent() ? says.text("piece-cell-back", number("round", match.getAsInt())) : "");
            }
            rows.add(cells);
        }
        String way = PieceTexts.counting(piece);
        String caption = changed
                ? says.text(
                        "piece-rounds-caption-changed",
                        arg("counting", way),
                        arg("where", PieceTexts.round(piece, targets.round())),
                        number("round", targets.round() + 1))
                : says.text("piece-rounds-caption", arg("counting", way));
        return new Table(caption, columns(layered), rows, marked);
    }

    /** What the piece has, or had, in a round up to the one in which it was counted: two less a side for each round. */
    private PerSide<Integer> asCounted(int round) {
        return targets.counted().map(stitches -> counting.shown(stitches + SideShape.growth(round - targets.round())));
    }

    private List<String> columns(boolean layered) {
        List<String> columns = new ArrayList<>();
        columns.add(says.text("piece-column-round"));
        for (Side side : Side.values()) {
            columns.add(PieceTexts.sideName(piece, side));
        }
        if (layered) {
            columns.add(says.text("piece-column-back"));
        }
        return columns;
    }

    private Table sizes() {
        PerSide<Integer> repeats = targets.repeats();
        int fewest = Math.max(0, Collections.min(repeats.stream().toList()) - SIZES_AROUND);
        int most = Collections.max(repeats.stream().toList()) + SIZES_AROUND;
        List<Integer> about = List.copyOf(
                new TreeSet<>(List.of(0, targets.round(), chart.rounds().size())));
        Optional<Swatch> swatch = PieceNumbers.swatch(piece);
        List<String> columns = new ArrayList<>();
        columns.add(says.text("piece-column-repeats"));
        about.forEach(round -> columns.add(
                round == 0
                        ? says.text("piece-column-base")
                        : says.text("piece-column-inRound", number("round", round))));
        swatch.ifPresent(any -> columns.add(says.text("piece-column-cm")));
        columns.add(says.text("piece-column-sides"));
        List<List<String>> rows = new ArrayList<>();
        List<Integer> marked = new ArrayList<>();
        // Where sides differ much, the sizes between them are of no use to anybody.
        for (int m : listed(repeats, fewest, most)) {
            String sides = sides(repeats, m);
            if (!sides.isEmpty()) {
                marked.add(rows.size());
            }
            List<String> cells = new ArrayList<>();
            cells.add(String.valueOf(m));
            SizeTable.of(shape, about, m, m, counting)
                    .rows()
                    .get(0)
                    .counts()
                    .forEach(count -> cells.add(String.valueOf(count)));
            swatch.ifPresent(border -> cells.add(says.text("piece-cm", decimal("cm", outerCm(m, border), 1))));
            cells.add(sides);
            rows.add(cells);
        }
        return new Table(
                says.text("piece-sizes-caption", arg("counting", PieceTexts.counting(piece))), columns, rows, marked);
    }

    private static List<Integer> listed(PerSide<Integer> repeats, int fewest, int most) {
        List<Integer> listed = new ArrayList<>();
        for (int m = fewest; m <= most; m++) {
            int size = m;
            if (repeats.stream().anyMatch(of -> Math.abs(of - size) <= SIZES_AROUND)) {
                listed.add(m);
            }
        }
        return listed;
    }

    private String sides(PerSide<Integer> repeats, int m) {
        List<String> sides = new ArrayList<>();
        for (Side side : Side.values()) {
            if (repeats.get(side) == m) {
                sides.add(PieceTexts.sideName(piece, side));
            }
        }
        return String.join(", ", sides);
    }

    /** One side of the whole with its border on. */
    private double outerCm(int repeats, Swatch swatch) {
        return (shape.stitches(0, repeats) * swatch.stitchMm()
                        + 2 * chart.rounds().size() * swatch.roundMm())
                / MM_IN_A_CM;
    }
}
