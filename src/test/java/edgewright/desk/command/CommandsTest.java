package edgewright.desk.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;

/** The registry: each command once, and done only where nothing hinders it. */
class CommandsTest {
    private final Commands commands = new Commands();
    private final List<String> done = new ArrayList<>();

    @Test
    void aCommandIsHinderedByTheFirstConditionThatDoesNotHoldAndThenDoesNothing() {
        AtomicBoolean even = new AtomicBoolean();
        AtomicBoolean wide = new AtomicBoolean();
        commands.add(Command.of("deleteColumn", () -> done.add("deleted"))
                .when(even::get, Hindrance.RAGGED)
                .when(wide::get, Hindrance.LAST_COLUMN));
        Command command = commands.find("deleteColumn").orElseThrow();

        command.perform();
        assertThat(command.hindrance()).contains(Hindrance.RAGGED);
        even.set(true);
        command.perform();
        assertThat(command.hindrance()).contains(Hindrance.LAST_COLUMN);
        assertThat(done).isEmpty();
        wide.set(true);
        command.perform();
        assertThat(command.hindrance()).isEmpty();
        assertThat(done).containsExactly("deleted");
    }

    @Test
    void thereIsOneCommandOfAnId() {
        commands.add("undo", () -> done.add("undone"));
        Commands others = new Commands();
        others.add("undo", () -> done.add("undone otherwise"));

        assertThatThrownBy(() -> commands.addAll(others)).hasMessage("there is a command 'undo' already");
        assertThat(commands.find("redo")).isEmpty();
    }
}
