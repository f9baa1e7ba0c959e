package edgewright.desk.tool;

import edgewright.chart.GridCell;
import edgewright.chart.Place;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The tools that there are. */
public enum Tools implements Tool {
    /** A click puts the cursor there; nothing is worked. */
    POINTER("pointer", Use.POINT) {
        @Override
        public Set<Place> work(Sheet sheet, List<GridCell> way) {
            return Set.of();
        }
    },
    /** Marks from where it begins to where it ends, or carries what is marked. */
    MARKER("marker", Use.MARK) {
        @Override
        public Set<Place> work(Sheet sheet, List<GridCell> way) {
            return Set.of();
        }
    },
    /** Every stitch that it comes over. */
    BRUSH("brush", Use.WORK) {
        @Override
        public Set<Place> work(Sheet sheet, List<GridCell> way) {
            return places(sheet, way);
        }
    },
    /** The stitches on the straight line from where it begins to where it ends. */
    LINE("line", Use.WORK) {
        @Override
        public Set<Place> work(Sheet sheet, List<GridCell> way) {
            return places(sheet, line(way.get(0), last(way)));
        }
    },
    /** All stitches of the rectangle between where it begins and where it ends. */
    RECTANGLE("rectangle", Use.WORK) {
        @Override
        public Set<Place> work(Sheet sheet, List<GridCell> way) {
            return places(sheet, rectangle(way.get(0), last(way)));
        }
    },
    /** The stitch where it stands, and all like it that hang together with it side by side or one above the other. */
    FILL("fill", Use.WORK) {
        @Override
        public Set<Place> work(Sheet sheet, List<GridCell> way) {
            return alike(sheet, last(way));
        }
    };

    private final String id;
    private final Use use;

    Tools(String id, Use use) {
        this.id = id;
        this.use = use;
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public Use use() {
        return use;
    }

    private static GridCell last(List<GridCell> way) {
        return way.get(way.size() - 1);
    }

    private static Set<Place> places(Sheet sheet, Collection<GridCell> cells) {
        Set<Place> places = new LinkedHashSet<>();
        cells.forEach(cell -> sheet.placeIn(cell).ifPresent(places::add));
        return places;
    }

    /** As many cells as the longer way across or down, each the nearest to the line; both ends included. */
    private static List<GridCell> line(GridCell from, GridCell to) {
        int across = to.x() - from.x();
        int down = to.y() - from.y();
        int steps = Math.max(Math.abs(across), Math.abs(down));
        List<GridCell> cells = new ArrayList<>(List.of(from));
        for (int i = 1; i <= steps; i++) {
            cells.add(new GridCell(from.x() + nearest(across, i, steps), from.y() + nearest(down, i, steps)));
        }
        return cells;
    }

    /** So many parts of a way, to the nearest whole cell; halves away from where it begins. */
    private static int nearest(int way, int part, int parts) {
        return Integer.signum(way) * ((2 * Math.abs(way) * part + parts) / (2 * parts));
    }

    private static List<GridCell> rectangle(GridCell one, GridCell other) {
        List<GridCell> cells = new ArrayList<>();
        for (int y = Math.min(one.y(), other.y()); y <= Math.max(one.y(), other.y()); y++) {
            for (int x = Math.min(one.x(), other.x()); x <= Math.max(one.x(), other.x()); x++) {
                cells.add(new GridCell(x, y));
            }
        }
        return cells;
    }

    private static Set<Place> alike(Sheet sheet, GridCell begin) {
        Set<Place> places = new LinkedHashSet<>();
        Set<GridCell> seen = new HashSet<>(Set.of(begin));
        Deque<GridCell> open = new ArrayDeque<>(seen);
        Optional<Place> first = sheet.placeIn(begin);
        while (first.isPresent() && !open.isEmpty()) {
            GridCell cell = open.remove();
            Optional<Place> place = sheet.placeIn(cell)
                    .filter(at -> sheet.chart().stitch(at) == sheet.chart().stitch(first.get()));
            if (place.isPresent()) {
                places.add(place.get());
                List.of(
                                new GridCell(cell.x() + 1, cell.y()),
                                new GridCell(cell.x() - 1, cell.y()),
                                new GridCell(cell.x(), cell.y() + 1),
                                new GridCell(cell.x(), cell.y() - 1))
                        .forEach(next -> {
                            if (seen.add(next)) {
                                open.add(next);
                            }
                        });
            }
        }
        return places;
    }
}
