package edgewright.desk.output;

import static edgewright.booklet.choice.BookletPart.CHART;
import static edgewright.booklet.choice.BookletPart.COUNTS;
import static edgewright.booklet.choice.BookletPart.COVER;
import static edgewright.booklet.choice.BookletPart.FACTS;
import static edgewright.booklet.choice.BookletPart.FINISHING;
import static edgewright.booklet.choice.BookletPart.GUIDE;
import static edgewright.booklet.choice.BookletPart.INTRODUCTION;
import static edgewright.booklet.choice.BookletPart.PROOF;
import static edgewright.booklet.choice.BookletPart.SECTIONS;
import static edgewright.booklet.choice.BookletPart.TECHNIQUES;
import static edgewright.booklet.choice.BookletPart.WORDS;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.BookletPart;
import edgewright.booklet.choice.BookletParts;
import edgewright.booklet.own.PrintedMatter;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.SideShape;
import edgewright.chart.Yarn;
import edgewright.desk.WindowParts;
import edgewright.desk.parts.Look;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Settings;
import edgewright.desk.work.Theme;
import edgewright.texts.English;
import java.awt.event.ActionEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;
import org.assertj.swing.edt.FailOnThreadViolationRepaintManager;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The parts of a pattern in the dialog for publishing, ticked and moved with keys and buttons. */
class PartsListWindowTest {
    @TempDir
    private Path folder;

    private final Chart chart = Chart.blank(
            "Reed Bank",
            new SideShape(2, 5, 1),
            4,
            List.of(new Yarn("A", "Peat", Colour.parse("#2b2a33")), new Yarn("B", "Chalk", Colour.parse("#f2ead8"))));
    private PublishDialog dialog;

    @BeforeAll
    static void catchWhatIsDoneOffTheEventThread() {
        FailOnThreadViolationRepaintManager.install();
    }

    @BeforeEach
    void open() {
        dialog = opened();
    }

    private PublishDialog opened() {
        return execute(() -> {
            Look.setUp(Theme.LIGHT);
            PublishDialog made = new PublishDialog(
                    null, chart, new ChartView(English.LANGUAGE), 0, new Settings(folder.resolve("desk.properties")));
            made.pack();
            return made;
        });
    }

    @AfterEach
    void close() {
        execute(() -> dialog.dispose());
    }

    @Test
    void anotherImprintIsChosenRatherThanTyped() {
        Path imprint = folder.resolve("saltmarsh.imprint.json");
        PublishDialog other = execute(() -> new PublishDialog(
                null,
                chart,
                new ChartView(English.LANGUAGE),
                0,
                new Settings(folder.resolve("desk.properties")),
                PublishDialog.Use.PUBLISH,
                PrintedMatter.NONE,
                () -> Optional.of(imprint)));
        execute(() -> ((AbstractButton) WindowParts.named(other, "publish.imprint.choose")).doClick());
        assertThat(execute(() -> ((JTextComponent) WindowParts.named(other, "publish.imprint")).getText()))
                .isEqualTo(imprint.toString());
        execute(other::dispose);
    }

    private void key(BookletPart part, String key) {
        execute(() -> {
            JList<BookletPart> list = list();
            list.setSelectedValue(part, true);
            Object bound = list.getInputMap(JComponent.WHEN_FOCUSED).get(KeyStroke.getKeyStroke(key));
            list.getActionMap().get(bound).actionPerformed(new ActionEvent(list, ActionEvent.ACTION_PERFORMED, key));
        });
    }

    @SuppressWarnings("unchecked") // Only the parts have this name.
    private JList<BookletPart> list() {
        return (JList<BookletPart>) WindowParts.named(dialog, "publish.parts");
    }

    private AbstractButton button(String name) {
        return (AbstractButton) WindowParts.named(dialog, name);
    }

    private List<BookletPart> chosen() {
        BookletOptions options = execute(() -> dialog.options());
        return options.inOrder();
    }

    @Test
    void spaceTicksAPartAndAltWithAnArrowMovesIt() {
        assertThat(chosen())
                .containsExactly(
                        COVER, INTRODUCTION, FACTS, CHART, WORDS, TECHNIQUES, COUNTS, FINISHING, SECTIONS, PROOF);
        key(PROOF, "SPACE");
        key(GUIDE, "SPACE");
        key(WORDS, "alt UP");
        assertThat(chosen())
                .containsExactly(
                        COVER, INTRODUCTION, FACTS, WORDS, CHART, TECHNIQUES, COUNTS, FINISHING, SECTIONS, GUIDE);
        key(WORDS, "alt DOWN");
        assertThat(chosen())
                .containsExactly(
                        COVER, INTRODUCTION, FACTS, CHART, WORDS, TECHNIQUES, COUNTS, FINISHING, SECTIONS, GUIDE);
    }

    @Test
    void theButtonsMoveThePartThatIsChosenAndNothingGoesOverTheCover() {
        execute(() -> list().setSelectedValue(WORDS, true));
        execute(() -> button("publish.partUp").doClick());
        assertThat(chosen()).startsWith(COVER, INTRODUCTION, FACTS, WORDS, CHART);
        execute(() -> list().setSelectedValue(COVER, true));
        assertThat(execute(() -> button("publish.partUp").isEnabled())).isFalse();
        assertThat(execute(() -> button("publish.partDown").isEnabled())).isFalse();
        execute(() -> list().setSelectedIndex(1));
        assertThat(execute(() -> button("publish.partUp").isEnabled())).isFalse();
    }

    @Test
    void theWorkbookGoesIntoASecondFileWhole() {
        execute(() -> button("publish.apart").doClick());
        assertThat(chosen())
                .containsExactly(
                        COVER, INTRODUCTION, FACTS, CHART, WORDS, TECHNIQUES, COUNTS, FINISHING, SECTIONS, PROOF);
        assertThat(execute(() -> dialog.workbook()).map(BookletOptions::parts)).contains(BookletParts.WORKBOOK);
    }

    @Test
    void aPatternOfNoPartCannotBePublished() {
        for (BookletPart part : chosen()) {
            key(part, "SPACE");
        }
        assertThat(execute(() -> button("accept").isEnabled())).isFalse();
        assertThat(execute(() -> ((JLabel) WindowParts.named(dialog, "objection")).getText()))
                .isEqualTo("Tick at least one part for the pattern.");
        key(WORDS, "SPACE");
        assertThat(execute(() -> button("accept").isEnabled())).isTrue();
    }

    @Test
    void whatWasChosenLastIsProposedAgain() {
        key(PROOF, "SPACE");
        key(WORDS, "alt UP");
        execute(() -> dialog.remember());
        close();
        dialog = opened();
        assertThat(chosen())
                .containsExactly(COVER, INTRODUCTION, FACTS, WORDS, CHART, TECHNIQUES, COUNTS, FINISHING, SECTIONS);
    }
}
