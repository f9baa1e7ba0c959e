package edgewright.assist.picture;

import edgewright.assist.picture.ColumnSearch.Column;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The fabric columns of a picture in work: which are alike, what each kind is asked for, and its stitches so far. Columns of one
 * kind have one solution, so a picture that is the same in a mirror or after a shift comes out so.
 */
final class Columns {
    private final ColumnSearch search;
    private final LongRuns runs;
    /** The kind of each column, from 0. */
    private final int[] kinds;

    private final int[] members;
    private final ColumnTask[] tasks;
    private final Column[] found;

    private Columns(ColumnSearch search, LongRuns runs, int[] kinds, List<ColumnTask> tasks) {
        this.search = search;
        this.runs = runs;
        this.kinds = kinds;
        this.tasks = tasks.toArray(ColumnTask[]::new);
        this.found = new Column[this.tasks.length];
        this.members = new int[this.tasks.length];
        for (int kind : kinds) {
            members[kind]++;
        }
    }

    /** @param alike whether columns of which the same is asked are one kind; if not, each is a kind of its own */
    static Columns of(PictureTask task, boolean alike) {
        int rounds = task.picture().rounds();
        int[] kinds = new int[task.picture().width()];
        Map<List<Object>, Integer> known = new HashMap<>();
        List<ColumnTask> tasks = new ArrayList<>();
        for (int place = 1; place <= kinds.length; place++) {
            List<Wanted> wanted = task.picture().column(place);
            List<Stitch> locked = new ArrayList<>();
            for (int r = 1; r <= rounds && !task.locked().isEmpty(); r++) {
                locked.add(task.locked().get(new Place(r, Section.REPEAT, place)));
            }
            List<Object> key = alike ? List.of(wanted, locked) : List.of(place);
            Integer kind = known.putIfAbsent(key, tasks.size());
            if (kind == null) {
                kinds[place - 1] = tasks.size();
                tasks.add(ColumnTask.of(task.yarns(), wanted, locked));
            } else {
                kinds[place - 1] = kind;
            }
        }
        return new Columns(
                new ColumnSearch(task.rules()), new LongRuns(task.rules().looseRun()), kinds, tasks);
    }

    /** Finds the best stitches of every kind; the places, from 1, of the columns that cannot be worked as they are locked. */
    List<Integer> solve() {
        List<Integer> clashing = new ArrayList<>();
        for (int kind = 0; kind < tasks.length; kind++) {
            found[kind] = search.best(tasks[kind]).orElse(null);
        }
        for (int i = 0; i < kinds.length; i++) {
            if (found[kinds[i]] == null) {
                clashing.add(i + 1);
            }
        }
        return clashing;
    }

    int width() {
        return kinds.length;
    }

    int rounds() {
        return tasks[0].rounds();
    }

    int kindOf(int column) {
        return kinds[column];
    }

    ColumnTask task(int kind) {
        return tasks[kind];
    }

    Column found(int kind) {
        return found[kind];
    }

    boolean isLong(int row, int column) {
        return found[kinds[column]].isLong(row);
    }

    /** The pieces of runs in a round that are longer than allowed. */
    List<int[]> loose(int row) {
        return runs.pieces(column -> isLong(row, column), width());
    }

    /** The stitches of a kind if a round of it is not long. */
    Optional<Column> withoutLong(int kind, int row) {
        return search.best(tasks[kind].withoutLong(row));
    }

    /** What it costs more if a kind is worked so. */
    Cost increase(int kind, Column column) {
        return Cost.ofColumn(column.cost())
                .minus(Cost.ofColumn(found[kind].cost()))
                .times(members[kind]);
    }

    void put(int kind, ColumnTask task, Column column) {
        tasks[kind] = task;
        found[kind] = column;
    }

    Cost cost() {
        Cost sum = Cost.NOTHING;
        for (int kind = 0; kind < found.length; kind++) {
            sum = sum.plus(Cost.ofColumn(found[kind].cost()).times(members[kind]));
        }
        return sum;
    }

    Column[] snapshot() {
        return found.clone();
    }

    void restore(Column[] snapshot) {
        System.arraycopy(snapshot, 0, found, 0, found.length);
    }

    /** The letters of a round. */
    String letters(int row) {
        StringBuilder letters = new StringBuilder();
        for (int kind : kinds) {
            letters.append(Stitch.values()[found[kind].stitches()[row]].letter());
        }
        return letters.toString();
    }
}
