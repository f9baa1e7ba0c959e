package edgewright.words.others;

import edgewright.words.grammar.Cursor;
import edgewright.words.grammar.Extent;
import edgewright.words.grammar.Item;
import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.Remark;
import edgewright.words.grammar.Stopped;
import edgewright.words.tree.Bracket;
import edgewright.words.tree.Group;
import edgewright.words.tree.Run;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.SideStep;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Makes a side of the tree from what is worked between two corners. The stitches that go into the corners belong to the side.
 */
final class SideBuilder {
    /**
     * A number of times that differs from size to size, held open in the tree.
     *
     * @param fixed the stitches of the side beside it
     * @param step the stitches of one time
     */
    record SizedTimes(Lexeme at, int fixed, int step, List<Integer> times) {}

    /** A side; the number of times in it that differs by size; and a place where once more or less was unclear. */
    record Built(SideInstructions words, Optional<SizedTimes> sized, Optional<Lexeme> unclear) {}

    private final RoundShape.Stretch stretch;
    private final boolean less;
    private final List<SideStep> before = new ArrayList<>();
    private final List<SideStep> after = new ArrayList<>();
    private Optional<Item> open = Optional.empty();
    /** How many stitches are left up to the corner's own, once the open part is done; below 0 where that is not known. */
    private long left = -1;

    private Optional<Lexeme> unclear = Optional.empty();

    private SideBuilder(RoundShape.Stretch stretch, boolean less) {
        this.stretch = stretch;
        this.less = less;
    }

    /**
     * The side of this stretch.
     *
     * @param less whether a number of times that is unclear counts the first time
     */
    static Built of(RoundShape.Stretch stretch, boolean less) {
        return new SideBuilder(stretch, less).build();
    }

    private Built build() {
        stretch.before().after().ifPresent(arm -> before.add(new Run(1, arm)));
        requireCornerWorkAtEnds();
        stretch.items().forEach(this::add);
        if (open.isPresent()) {
            requireLeft();
        }
        List<SideStep> last = open.isPresent() ? after : before;
        stretch.after().before().ifPresent(arm -> last.add(new Run(1, arm)));
        if (open.isEmpty() && before.isEmpty()) {
            throw Cursor.stop(stretch.after().at(), "work", "");
        }
        return open.map(this::grouped)
                .orElseGet(() -> new Built(SideInstructions.of(before), Optional.empty(), unclear));
    }

    private Built grouped(Item item) {
        List<SideStep> steps = steps(inner(item));
        Group group = new Group(steps, SideStep.stitches(after));
        Optional<SizedTimes> sized = Optional.empty();
        if (item instanceof Item.Times times) {
            sized = Optional.of(new SizedTimes(
                    times.at(), SideStep.stitches(before) + SideStep.stitches(after), group.stitches(), times.times()));
        }
        return new Built(SideInstructions.of(before, group, after), sized, unclear);
    }

    private static List<Item> inner(Item item) {
        return item instanceof Item.Times times ? times.items() : ((Item.Open) item).items();
    }

    private void add(Item item) {
        boolean sized = item instanceof Item.Times times
                && times.times().stream().distinct().count() > 1;
        boolean isOpen = item instanceof Item.Open || sized;
        if (!isOpen) {
            steps(List.of(item)).forEach(step -> addStep(item.at(), step));
            return;
        }
        if (open.isEmpty()) {
            open = Optional.of(item);
            left = item instanceof Item.Open said
                    ? said.extent().kind() == Extent.Kind.LAST ? said.extent().last() : 0
                    : -1;
            return;
        }
        if (left < 0 || sized) {
            throw Cursor.stop(item.at(), "oneGroup", "");
        }
        addKnown((Item.Open) item);
    }

    /** A second open part: how many stitches are left is known from the first, so it is worked a number of times. */
    private void addKnown(Item.Open item) {
        int rest = item.extent().kind() == Extent.Kind.LAST ? item.extent().last() : 0;
        long room = left - SideStep.stitches(after) - rest;
        List<SideStep> steps = steps(item.items());
        int size = SideStep.stitches(steps);
        if (room <= 0 || room % size != 0) {
            throw new Stopped(Remark.of(Remark.Kind.FINDING, item.extent().at(), "comesOut", Math.max(0, room)));
        }
        int times = (int) (room / size);
        if (times == 1) {
            after.addAll(steps);
        } else if (steps.size() == 1 && steps.get(0) instanceof Run run) {
            after.add(new Run(run.count() * times, run.stitch()));
        } else {
            after.add(new Bracket(steps, times));
        }
    }

    private void addStep(Lexeme at, SideStep step) {
        if (open.isPresent() && left == 0) {
            throw Cursor.stop(at, "corner", "");
        }
        (open.isPresent() ? after : before).add(step);
    }

    /** What is said to be left must be what follows. */
    private void requireLeft() {
        int follow = SideStep.stitches(after);
        if (left >= 0 && left != follow) {
            Lexeme at = ((Item.Open) open.orElseThrow()).extent().at();
            throw new Stopped(Remark.of(Remark.Kind.FINDING, at, "lastSts", follow));
        }
    }

    /** A stitch that is said to go into the corner stands at an end of the side. */
    private void requireCornerWorkAtEnds() {
        List<Item> items = stretch.items();
        for (int i = 0; i < items.size(); i++) {
            boolean first = i == 0 && stretch.before().after().isEmpty();
            boolean last = i == items.size() - 1 && stretch.after().before().isEmpty();
            if (items.get(i) instanceof Item.Work work && work.inCorner() && (work.count() != 1 || (!first && !last))) {
                throw Cursor.stop(work.at(), "cornerGroup", "");
            }
        }
    }

    private List<SideStep> steps(List<Item> items) {
        List<SideStep> steps = new ArrayList<>();
        for (Item item : items) {
            if (item instanceof Item.Work work) {
                steps.add(new Run(work.count(), work.stitch()));
            } else if (item instanceof Item.Times times) {
                steps.addAll(times(times));
            } else {
                throw Cursor.stop(item.at(), item instanceof Item.Open ? "openInside" : "item", "");
            }
        }
        return steps;
    }

    private List<SideStep> times(Item.Times times) {
        List<SideStep> steps = steps(times.items());
        int many = times.times().get(0);
        if (times.times().stream().distinct().count() > 1) {
            throw Cursor.stop(times.at(), "openInside", "");
        }
        if (times.unclear()) {
            unclear = Optional.of(times.at());
            many -= less ? 1 : 0;
        }
        if (many < 1) {
            throw Cursor.stop(times.at(), "number", "");
        }
        boolean deep = steps.stream()
                .anyMatch(step ->
                        step instanceof Bracket inner && inner.steps().stream().anyMatch(Bracket.class::isInstance));
        if (deep && many > 1) {
            throw Cursor.stop(times.at(), "twoBrackets", "");
        }
        return many == 1 ? steps : List.of(new Bracket(steps, many));
    }
}
