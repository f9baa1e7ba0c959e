package edgewright.words.read;

import edgewright.words.tree.Group;
import edgewright.words.tree.Run;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.SideStep;
import edgewright.words.tree.StartMark;
import edgewright.words.tree.StartMark.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads what is worked along a whole side: steps round a group, with the mark of a start among them. */
final class StretchReader {
    private final TokenCursor cursor;
    private final WorkReader work;

    private final List<SideStep> before = new ArrayList<>();
    private Optional<Group> group = Optional.empty();
    private final List<SideStep> after = new ArrayList<>();
    private Optional<StartMark> mark = Optional.empty();
    private Token markStart;
    private int last;

    /** @param work reads the single steps */
    StretchReader(TokenCursor cursor, WorkReader work) {
        this.cursor = cursor;
        this.work = work;
    }

    /** What was worked along the side that was taken last. */
    SideInstructions stretch() {
        return group.map(each -> SideInstructions.of(before, each, after)).orElseGet(() -> SideInstructions.of(before));
    }

    /** Where a round starts that is worked in these words, if a mark stands in them. */
    Optional<StartMark> mark() {
        return mark;
    }

    /** Where the mark stands in the text; only if there is one. */
    Token markStart() {
        return markStart;
    }

    /** Takes what is worked up to the corner. */
    boolean takeStretch() {
        before.clear();
        after.clear();
        group = Optional.empty();
        mark = Optional.empty();
        int end = cursor.mark();
        while (takeItem()) {
            end = cursor.mark();
            if (!cursor.between("clauses-next")) {
                cursor.between("runs-next");
            }
        }
        cursor.reset(end);
        if (group.isPresent() || !before.isEmpty()) {
            return true;
        }
        if (takeCorner()) {
            cursor.reset(end);
            throw cursor.stop("work");
        }
        return false;
    }

    private boolean takeItem() {
        Token start = cursor.peek();
        if (group.isPresent() && cursor.opens("group")) {
            throw cursor.stop("oneGroup");
        }
        Optional<Group> next = takeGroup();
        List<SideStep> steps = group.isEmpty() ? before : after;
        Part part = group.isEmpty() ? Part.BEFORE : Part.AFTER;
        if (next.isEmpty() && takeMarkedStep(steps, part)) {
            return true;
        }
        next = next.isEmpty() ? takeMarkedEvery() : next;
        if (next.isPresent() && group.isPresent()) {
            throw cursor.stopAt(start, Expectation.of("oneGroup"));
        }
        group = next.isPresent() ? next : group;
        return next.isPresent() || takeMark(steps, part);
    }

    /**
     * Takes a step, with the mark of the start or without it.
     *
     * @param steps those of the part before it; takes up this one
     */
    private boolean takeMarkedStep(List<SideStep> steps, Part part) {
        Token start = cursor.peek();
        Step step = new Step();
        boolean marked = cursor.takeOptional("marked", gap -> {
            if (!gap.equals("step")) {
                throw Phrase.unknown(gap);
            }
            step.taken = work.takeStep();
            return step.taken.isPresent();
        });
        step.taken = marked ? step.taken : work.takeStep();
        if (marked) {
            put(start, new StartMark(part, steps.size()));
        }
        step.taken.ifPresent(steps::add);
        return step.taken.isPresent();
    }

    private static final class Step {
        private Optional<SideStep> taken = Optional.empty();
    }

    /** Takes a group without an asterisk likewise. */
    private Optional<Group> takeMarkedEvery() {
        Token start = cursor.peek();
        List<Group> every = new ArrayList<>();
        boolean marked = cursor.takeOptional("marked", gap -> {
            if (!gap.equals("step")) {
                throw Phrase.unknown(gap);
            }
            return takeEvery().map(every::add).orElse(false);
        });
        if (marked) {
            put(start, new StartMark(Part.GROUP, 0));
            return Optional.of(every.get(0));
        }
        return takeEvery();
    }

    /** Takes the mark of the start at the end of a part. */
    private boolean takeMark(List<SideStep> steps, Part part) {
        Token start = cursor.peek();
        boolean taken = cursor.takeWord("start-mark-word");
        if (taken) {
            put(start, new StartMark(part, steps.size()));
        }
        return taken;
    }

    private void put(Token start, StartMark here) {
        if (mark.isPresent()) {
            throw cursor.stopAt(start, Expectation.of("oneMark"));
        }
        mark = Optional.of(here);
        markStart = start;
    }

    private Optional<Group> takeGroup() {
        List<SideStep> steps = new ArrayList<>();
        boolean taken = cursor.take("group", gap -> switch (gap) {
            case "steps" -> takeGroupSteps(steps);
            case "upTo" -> takeUpTo();
            default -> throw Phrase.unknown(gap);
        });
        return taken ? Optional.of(new Group(steps, last)) : Optional.empty();
    }

    /** Takes what stands in the cell of a repeat: the group and how far it goes on. */
    Optional<Group> takeRepeat() {
        if (cursor.take("every-to", this::takeEvery)) {
            return Optional.of(new Group(List.of(new Run(1, work.stitch())), last));
        }
        List<SideStep> steps = new ArrayList<>();
        boolean taken = cursor.take("repeat-cell", gap -> switch (gap) {
            case "steps" -> work.takeSteps(steps);
            case "upTo" -> takeUpTo();
            default -> throw Phrase.unknown(gap);
        });
        return taken ? Optional.of(new Group(steps, last)) : Optional.empty();
    }

    private boolean takeGroupSteps(List<SideStep> steps) {
        steps.clear();
        int end = cursor.mark();
        while (takeMarkedStep(steps, Part.GROUP) || takeMark(steps, Part.GROUP)) {
            end = cursor.mark();
            if (!cursor.between("runs-next")) {
                break;
            }
        }
        cursor.reset(end);
        return !steps.isEmpty();
    }

    private Optional<Group> takeEvery() {
        boolean to = cursor.take("every-to", this::takeEvery);
        last = to ? last : 0;
        boolean taken = to || cursor.take("every", this::takeEvery);
        return taken ? Optional.of(new Group(List.of(new Run(1, work.stitch())), last)) : Optional.empty();
    }

    private boolean takeEvery(String gap) {
        return switch (gap) {
            case "stitch" -> work.takeStitch(true);
            case "upTo" -> takeUpTo();
            default -> throw Phrase.unknown(gap);
        };
    }

    private boolean takeUpTo() {
        last = 0;
        if (cursor.take("to-corner")) {
            return true;
        }
        last = 1;
        boolean taken = cursor.take("to-last", gap -> {
            if (!gap.equals("last")) {
                throw Phrase.unknown(gap);
            }
            boolean number = cursor.takeNumber(1, "number");
            last = number ? cursor.number() : 1;
            return number;
        });
        return taken || cursor.miss("upTo");
    }

    /** Takes the corner at the end of a side. */
    boolean takeCorner() {
        return work.takeCornerAlone() || missItem();
    }

    /** Notes that neither work nor a corner stands here. */
    private boolean missItem() {
        if (group.isEmpty() && cursor.is("repeat-word")) {
            throw cursor.stop("asteriskBefore");
        }
        if (cursor.atEnd() || cursor.peek().kind() != Token.Kind.WORD) {
            return cursor.miss("item");
        }
        int mark = cursor.mark();
        boolean isStitch = cursor.takeStitch().isPresent();
        cursor.reset(mark);
        return !isStitch && cursor.missStitch();
    }
}
