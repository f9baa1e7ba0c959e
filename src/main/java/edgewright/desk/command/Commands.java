package edgewright.desk.command;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** What can be done, by id, in the order in which it was added. */
public final class Commands {
    private final Map<String, Command> byId = new LinkedHashMap<>();

    /**
     * Adds a command.
     *
     * @throws IllegalArgumentException if there is one with its id already
     */
    public void add(Command command) {
        if (byId.putIfAbsent(command.id(), command) != null) {
            throw new IllegalArgumentException("there is a command '" + command.id() + "' already");
        }
    }

    /** Adds a command that is always possible. */
    public void add(String id, Runnable deed) {
        add(Command.of(id, deed));
    }

    /** Adds a command that is possible where this holds. */
    public void add(String id, Runnable deed, BooleanSupplier holds, Hindrance otherwise) {
        add(Command.of(id, deed).when(holds, otherwise));
    }

    /** Adds all the commands of another registry. */
    public void addAll(Commands others) {
        others.all().forEach(this::add);
    }

    public Optional<Command> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    public Collection<Command> all() {
        return Collections.unmodifiableCollection(byId.values());
    }
}
