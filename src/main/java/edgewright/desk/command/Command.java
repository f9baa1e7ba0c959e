package edgewright.desk.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.UnaryOperator;

/**
 * Something that can be done at the desk.
 *
 * @param id under which its texts stand; of one that belongs to a family, the part before the full stop is the family's
 * @param scope where its key counts
 * @param deed what it does
 * @param conditions what must hold for it to be possible, looked at in this order
 * @param chosen for what can be chosen: whether it is
 */
public record Command(String id, Scope scope, Runnable deed, List<Condition> conditions, Optional<Choice> chosen) {
    /**
     * What must hold.
     *
     * @param otherwise what hinders the command where it does not hold
     */
    public record Condition(BooleanSupplier holds, Hindrance otherwise) {}

    /**
     * Whether it is chosen.
     *
     * @param ofSeveral whether it is one of several of which one is chosen; else it is chosen or not by itself
     */
    public record Choice(BooleanSupplier holds, boolean ofSeveral) {}

    public Command {
        conditions = List.copyOf(conditions);
    }

    /** A command that is always possible, and whose key counts in the whole window. */
    public static Command of(String id, Runnable deed) {
        return new Command(id, Scope.WINDOW, deed, List.of(), Optional.empty());
    }

    /** The same, but its key counts only on the chart. */
    public Command onChart() {
        return new Command(id, Scope.CHART, deed, conditions, chosen);
    }

    /** The same, but possible only where this holds, too. */
    public Command when(BooleanSupplier holds, Hindrance otherwise) {
        List<Condition> more = new ArrayList<>(conditions);
        more.add(new Condition(holds, otherwise));
        return new Command(id, scope, deed, more, chosen);
    }

    /** The same as one of several of which one is chosen. */
    public Command chosenWhen(BooleanSupplier isChosen) {
        return new Command(id, scope, deed, conditions, Optional.of(new Choice(isChosen, true)));
    }

    /** The same as one that is on or off by itself. */
    public Command onWhen(BooleanSupplier isOn) {
        return new Command(id, scope, deed, conditions, Optional.of(new Choice(isOn, false)));
    }

    /** The same, but that is done which comes of what it does. */
    public Command doing(UnaryOperator<Runnable> inPlace) {
        return new Command(id, scope, inPlace.apply(deed), conditions, chosen);
    }

    /** What hinders it now; empty if it is possible. */
    public Optional<Hindrance> hindrance() {
        return conditions.stream()
                .filter(condition -> !condition.holds().getAsBoolean())
                .map(Condition::otherwise)
                .findFirst();
    }

    /** Does it, if it is possible. */
    public void perform() {
        if (hindrance().isEmpty()) {
            deed.run();
        }
    }
}
