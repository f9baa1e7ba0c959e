package edgewright.desk.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.texts.English;
import edgewright.texts.Language;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import javax.swing.JMenuItem;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Lines of menus, pressed by their keys. */
class MenuLineTest {
    private static Stream<BiFunction<DeskAction, Language, JMenuItem>> kinds() {
        return Stream.of(MenuLine::of, MenuLine::oneOf, MenuLine::onOff);
    }

    /** Whoever is interrupted cannot sleep: the sleep ends at once, and with it the mark of the interruption. */
    @ParameterizedTest
    @MethodSource("kinds")
    void aPressedLineIsDoneOnceAndHoldsTheEventThreadForNoTime(BiFunction<DeskAction, Language, JMenuItem> kind) {
        DeskAction action = new DeskActions(English.LANGUAGE).get("undo");
        List<String> done = new ArrayList<>();
        boolean sleptNever = execute(() -> {
            JMenuItem line = kind.apply(action, English.LANGUAGE);
            line.setEnabled(true);
            line.setAction(null);
            line.addActionListener(event -> done.add("undo"));
            Thread.currentThread().interrupt();
            line.doClick();
            return Thread.interrupted();
        });
        assertThat(done).containsExactly("undo");
        assertThat(sleptNever).isTrue();
    }
}
