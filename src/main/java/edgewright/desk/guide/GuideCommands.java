package edgewright.desk.guide;

import static edgewright.texts.Arg.number;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Start;
import edgewright.desk.command.Commands;
import edgewright.desk.command.Hindrance;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Workbench;
import edgewright.texts.Messages;
import java.awt.Window;
import java.util.Optional;
import java.util.OptionalInt;

/** What the desk does for makers: the round guide, and what the designer says of how the border is made. */
public final class GuideCommands {
    private final Messages says;
    private final Window owner;
    private final Workbench bench;
    private final ChartView view;
    private Optional<GuideWindow> guide = Optional.empty();

    public GuideCommands(Window owner, Workbench bench, ChartView view) {
        this.owner = owner;
        this.bench = bench;
        this.view = view;
        says = view.language().messages("desk/guide");
    }

    /** Adds what they do to the commands of a document. */
    public void addTo(Commands commands) {
        commands.add("making", this::making);
        commands.add("guide", this::show);
        commands.add("startHere", this::startHere, this::canStartHere, Hindrance.NO_START_HERE);
    }

    /** Shows the round guide; what was ticked in it is still there. */
    void show() {
        if (guide.isEmpty()) {
            guide = Optional.of(new GuideWindow(owner, bench, view));
        }
        guide.get().setVisible(true);
        guide.get().toFront();
    }

    /** Asks how the border is made. */
    void making() {
        PatternDetailsDialog dialog = new PatternDetailsDialog(owner, bench.chart(), view.language());
        if (dialog.ask()) {
            bench.edit(says.text("edit-making"), chart -> chart.withMaking(dialog.appliedTo(chart.making())));
        }
    }

    /** Whether rounds can be started in the column of the cursor. */
    boolean canStartHere() {
        return startColumn().isPresent();
    }

    /** Starts the rounds in the column of the cursor, on the sides that they were started on. */
    void startHere() {
        startColumn()
                .ifPresent(column -> bench.edit(says.text("edit-startHere", number("column", column)), chart -> {
                    Start start = chart.making().start().orElse(Start.DEFAULT);
                    return chart.withMaking(
                            chart.making().withStart(Optional.of(start.withColumn(OptionalInt.of(column)))));
                }));
    }

    /** The fabric column of the cursor, if rounds can be started there: not over the corner chain, nor past the repeat. */
    private OptionalInt startColumn() {
        Chart chart = bench.chart();
        Place at = bench.cursor();
        if (!bench.verdict().judged() || at.section() == Section.TO_CORNER) {
            return OptionalInt.empty();
        }
        int column = at.section().isRepeat()
                ? chart.border().length(Section.FROM_CORNER, 0) + at.place()
                : at.place() - at.round();
        return column < 1 ? OptionalInt.empty() : OptionalInt.of(column);
    }
}
