package edgewright.desk.work;

import edgewright.chart.Chart;
import edgewright.chart.Edits;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import edgewright.chart.Stitches;
import edgewright.check.Checker;
import edgewright.check.Verdict;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/**
 * The chart in work, and what belongs to working on it: the edits made, what the checker says, the cursor and the chosen
 * stitch. Everything in the window shows this and changes this; it shows nothing itself.
 *
 * <p>The cursor always stands on a stitch that the chart has. Unsaved work is a chart that is not equal to the one that was
 * saved or opened last, so undoing back to that one leaves nothing to save.
 *
 * <p>For one thread only, which is the event thread in the window.
 */
public final class Workbench {
    private final Listeners<WorkbenchChange> listeners = new Listeners<>();
    private final Messages says;
    private History history;
    private Chart chart;
    private Chart saved;
    private Verdict verdict;
    private Place cursor;
    private Optional<Path> file;
    private Stitch stitch = Stitch.LONG;
    private Optional<Transaction> transaction = Optional.empty();
    private Optional<Deed> lastDeed = Optional.empty();
    private int deeds;

    /**
     * What was done to the chart last, so that it can be said.
     *
     * @param number from 1, so that the same done twice is two deeds
     */
    public record Deed(int number, Way way, String name) {
        /** Done for the first time, taken back, or done once more. */
        public enum Way {
            DONE,
            UNDONE,
            REDONE
        }
    }

    /**
     * A bench with this chart on it.
     *
     * @param language in which its edits have their names
     */
    public Workbench(Chart chart, Optional<Path> file, Language language) {
        says = language.messages("desk/work");
        layOn(chart, file);
    }

    /** In which its edits are named. */
    Messages says() {
        return says;
    }

    public Chart chart() {
        return chart;
    }

    /** What the checker says about the chart as it is now. */
    public Verdict verdict() {
        return verdict;
    }

    /** Where the cursor stands; {@link #chart} has a stitch there. */
    public Place cursor() {
        return cursor;
    }

    /** The file that the chart was opened from or saved to; empty for a new one. */
    public Optional<Path> file() {
        return file;
    }

    /** The stitch that is worked next. */
    public Stitch stitch() {
        return stitch;
    }

    /** The chart without what is only looked at. */
    public Chart worked() {
        return transaction
                .filter(Transaction::isLookedAt)
                .map(Transaction::before)
                .orElse(chart);
    }

    public boolean hasUnsavedWork() {
        return !worked().equals(saved);
    }

    /** The edit, undo or redo that was the last; empty for a chart that was only opened. */
    public Optional<Deed> lastDeed() {
        return lastDeed;
    }

    public Optional<String> undoName() {
        return history.undoName();
    }

    public Optional<String> redoName() {
        return history.redoName();
    }

    /** Tells the listener of every change from now on, after it has happened. */
    public Listening listen(Consumer<WorkbenchChange> listener) {
        return listeners.add(listener);
    }

    /** Lets every listener go. */
    void endListening() {
        listeners.endAll();
    }

    /**
     * Puts another chart on the bench. The one that lay there, its edits and one that is being made are gone: ask about unsaved
     * work before, which an edit that is not ended yet is part of.
     */
    public void open(Chart opened, Optional<Path> from) {
        Chart before = chart;
        layOn(opened, from);
        tell(WorkbenchChange.Kind.OPENED, before);
    }

    /** Notes that this chart now lies in that file. */
    public void saved(Chart written, Path to) {
        saved = written;
        file = Optional.of(to);
        tell(WorkbenchChange.Kind.SAVED, chart);
    }

    /**
     * Makes an edit. Nothing happens if it leaves the chart equal to what it was.
     *
     * @param name of the edit, for people
     * @throws IllegalArgumentException if the chart cannot take the edit; then nothing has changed
     */
    public void edit(String name, UnaryOperator<Chart> edit) {
        finishTransaction();
        Chart edited = edit.apply(chart);
        if (edited.equals(chart)) {
            return;
        }
        history.add(name, edited, cursor);
        note(Deed.Way.DONE, Optional.of(name));
        show(edited, cursor);
    }

    /**
     * Works a stitch at all these places as one edit, which is named after how many stitches it changes. The cursor goes to the
     * last of them.
     */
    public void work(Collection<Place> places, Stitch worked) {
        if (places.isEmpty()) {
            return;
        }
        Transaction one = beginDrawing(worked);
        one.preview(
                chart -> Edits.setStitches(chart, places, worked),
                List.copyOf(places).get(places.size() - 1));
        one.commit();
    }

    /** Begins an edit that is shown while it is being made; one that is going on is committed first. */
    public Transaction begin(Transaction.EditName name) {
        return begin(name, false);
    }

    /**
     * Begins an edit that is only looked at: it is taken back before anything else is done, unless it is committed. What is
     * saved or kept meanwhile is the chart without it.
     */
    public Transaction look(Transaction.EditName name) {
        return begin(name, true);
    }

    /** Takes back what is only looked at; nothing happens if nothing is. */
    public void stopLooking() {
        transaction.filter(Transaction::isLookedAt).ifPresent(Transaction::cancel);
    }

    private Transaction begin(Transaction.EditName name, boolean isLookedAt) {
        finishTransaction();
        Transaction begun = new Transaction(this, name, isLookedAt);
        transaction = Optional.of(begun);
        return begun;
    }

    /** Begins an edit that works this stitch at several places, and is named after it and their number. */
    public Transaction beginDrawing(Stitch worked) {
        return begin((before, after) -> StitchEdits.name(says, worked, before, after));
    }

    /** Takes the last edit back; nothing happens if there is none. */
    public void undo() {
        finishTransaction();
        if (history.undoName().isPresent()) {
            note(Deed.Way.UNDONE, history.undoName());
            Place at = history.undo();
            show(history.chart(), at);
        }
    }

    /** Does the edit again that was undone last; nothing happens if there is none. */
    public void redo() {
        finishTransaction();
        if (history.redoName().isPresent()) {
            note(Deed.Way.REDONE, history.redoName());
            Place at = history.redo();
            show(history.chart(), at);
        }
    }

    /** Puts the cursor on a stitch, or on the nearest one the chart has in that section. */
    public void moveCursor(Place to) {
        Place nearest = nearest(to);
        if (!nearest.equals(cursor)) {
            cursor = nearest;
            tell(WorkbenchChange.Kind.CURSOR, chart);
        }
    }

    public void choose(Stitch chosen) {
        if (stitch != chosen) {
            stitch = chosen;
            tell(WorkbenchChange.Kind.STITCH, chart);
        }
    }

    private void layOn(Chart opened, Optional<Path> from) {
        transaction.ifPresent(Transaction::leave);
        lastDeed = Optional.empty();
        chart = opened;
        saved = opened;
        file = from;
        verdict = Checker.check(opened);
        cursor = new Place(1, Section.REPEAT, 1);
        history = new History(opened, cursor);
    }

    /** Lays a chart that came from this one by an edit in its place. */
    void show(Chart edited, Place at) {
        Chart before = chart;
        chart = edited;
        verdict = Checker.recheck(verdict, edited);
        cursor = nearest(at);
        tell(WorkbenchChange.Kind.EDITED, before);
    }

    /** Makes what is shown an edit with a name, after it was told of as a chart. */
    void committed(String name) {
        history.add(name, chart, cursor);
        note(Deed.Way.DONE, Optional.of(name));
        tell(WorkbenchChange.Kind.DRAWN, chart);
    }

    /** Forgets a transaction that has ended. */
    @SuppressWarnings("ReferenceEquality") // a transaction is itself
    void leave(Transaction ended) {
        transaction = transaction.filter(going -> going != ended);
    }

    private void note(Deed.Way way, Optional<String> name) {
        deeds++;
        lastDeed = name.map(known -> new Deed(deeds, way, known));
    }

    private void finishTransaction() {
        transaction.ifPresent(Transaction::finish);
    }

    private Place nearest(Place place) {
        int round = Math.max(1, Math.min(place.round(), chart.rounds().size()));
        Stitches stitches = chart.round(round).section(place.section());
        if (stitches.length() > 0) {
            return new Place(round, place.section(), Math.min(place.place(), stitches.length()));
        }
        for (Section section : Section.values()) {
            if (chart.round(round).section(section).length() > 0) {
                return new Place(round, section, 1);
            }
        }
        // Round 1 is never empty.
        return new Place(1, Section.REPEAT, 1);
    }

    private void tell(WorkbenchChange.Kind kind, Chart before) {
        listeners.tell(new WorkbenchChange(kind, before, chart));
    }
}
