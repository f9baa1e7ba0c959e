package edgewright.desk.yarn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Round;
import edgewright.chart.SideShape;
import edgewright.chart.Yarn;
import edgewright.desk.parts.Look;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Theme;
import edgewright.desk.work.Workbench;
import edgewright.texts.English;
import edgewright.yarn.Contrast;
import java.awt.Component;
import java.awt.Container;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import javax.swing.AbstractButton;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.assertj.swing.timing.Condition;
import org.assertj.swing.timing.Pause;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class YarnWindowTest {
    private static final Yarn PEAT = new Yarn("A", "Peat", Colour.parse("#2b2a33"));
    private static final Yarn CHALK = new Yarn("B", "Chalk", Colour.parse("#f2ead8"));
    private static final Yarn FOG = new Yarn("C", "Fog", Colour.parse("#e4dccb"));

    /** With little Chalk in hand, and Chalk beside Fog at the end. */
    private static final Chart STRIPES = Chart.blank(
                    "Stripes",
                    new SideShape(1, 4, 1),
                    3,
                    List.of(PEAT, CHALK.withMetresInHand(OptionalDouble.of(1)), FOG))
            .withRounds(List.of(
                    Round.of("A", "bb", "bbbb", "bb"),
                    Round.of("B", "bbb", "bbbb", "bbb"),
                    Round.of("A", "bbbb", "bbbb", "bbbb")));

    private Workbench bench;
    private YarnWindow window;

    @BeforeEach
    void open() {
        execute(() -> {
            Look.setUp(Theme.LIGHT);
            bench = new Workbench(STRIPES, Optional.empty(), English.LANGUAGE);
            window = new YarnWindow(null, bench, new ChartView(English.LANGUAGE));
            window.open();
        });
    }

    @AfterEach
    void close() {
        execute(() -> window.dispose());
    }

    @Test
    void theRoundsThatAreEnoughInAnotherYarnAreWorkedInItByOneEdit() {
        AbstractButton swap = (AbstractButton) await(part -> "yarns.swap".equals(part.getName()));
        execute(() -> swap.doClick());
        assertThat(bench.chart().round(2).yarn()).isEqualTo("C");
        await(part -> part instanceof JTextComponent text && text.getText().equals("The yarn in hand is enough."));
        execute(() -> bench.undo());
        assertThat(bench.chart()).isEqualTo(STRIPES);
    }

    @Test
    void aYarnThatIsHardToTellApartGetsTheNearestColourByOneEdit() {
        execute(() -> bench.edit("change", chart -> chart.withRound(3, Round.of("C", "bbbb", "bbbb", "bbbb"))));
        AbstractButton button = (AbstractButton) await(part -> "yarns.recolour.C".equals(part.getName()));
        execute(() -> button.doClick());
        Colour given = bench.chart().yarn("C").orElseThrow().colour();
        assertThat(Contrast.between(given, CHALK.colour()).isLow()).isFalse();
        execute(() -> bench.undo());
        assertThat(bench.chart().yarn("C")).contains(FOG);
    }

    @Test
    void theTablesFollowTheChart() {
        JTable rounds = (JTable) await(part -> part instanceof JTable table
                && "yarns.roundsTable".equals(table.getName())
                && table.getRowCount() == 3);
        execute(() ->
                bench.edit("change", chart -> chart.withRounds(chart.rounds().subList(0, 2))));
        await(part -> part == rounds && rounds.getRowCount() == 2);
        JTable yarns = (JTable) await(part -> "yarns.table".equals(part.getName()));
        assertThat(execute(yarns::getRowCount)).isEqualTo(3);
    }

    /** The part, as soon as the window has it. */
    private Component await(Predicate<Component> wanted) {
        Component[] found = new Component[1];
        Pause.pause(new Condition("the window shows it") {
            @Override
            public boolean test() {
                found[0] = execute(() -> find(window, wanted));
                return found[0] != null;
            }
        });
        return found[0];
    }

    private static Component find(Container window, Predicate<Component> wanted) {
        for (Component part : window.getComponents()) {
            if (wanted.test(part)) {
                return part;
            }
            Component within = part instanceof Container container ? find(container, wanted) : null;
            if (within != null) {
                return within;
            }
        }
        return null;
    }
}
