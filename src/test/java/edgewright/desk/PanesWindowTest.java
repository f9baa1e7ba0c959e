package edgewright.desk;

import static edgewright.desk.WindowParts.named;
import static edgewright.desk.WindowParts.parts;
import static edgewright.desk.WindowParts.remedy;
import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.chart.PerSide;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import edgewright.check.Finding;
import edgewright.check.FindingSentences;
import edgewright.check.RuleBook;
import edgewright.check.RuleEntry;
import edgewright.check.Severity;
import edgewright.desk.guide.GuideWindow;
import edgewright.desk.panes.RoundTable;
import edgewright.desk.parts.DeskActions;
import edgewright.desk.parts.RulePageView;
import edgewright.desk.parts.TextColumn;
import edgewright.desk.work.ChartView;
import edgewright.desk.yarn.YarnWindow;
import edgewright.texts.English;
import java.awt.Dimension;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import javax.swing.AbstractButton;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JSpinner;
import javax.swing.JSplitPane;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The panes of the desk beside each other: what each says of what was done in another. */
class PanesWindowTest {
    @TempDir
    private Path folder;

    private DeskFrame desk;

    @BeforeEach
    void open() {
        desk = WindowParts.shownDesk(folder);
    }

    @AfterEach
    void close() {
        execute(() -> desk.dispose());
    }

    @Test
    void theStatusLineNamesWhatWasDoneLast() {
        Place place = new Place(3, Section.REPEAT, 4);
        execute(() -> {
            desk.bench().moveCursor(place);
            desk.bench().work(List.of(place), Stitch.LONG);
        });
        assertThat(text("stitchAtCursor")).startsWith("Round 3, repeat, stitch 4: long stitch");
        assertThat(text("news")).isEqualTo("Done: 1 long stitch");

        execute(() -> desk.bench().undo());
        assertThat(text("news")).isEqualTo("Undone: 1 long stitch");
        execute(() -> desk.bench().redo());
        assertThat(text("news")).isEqualTo("Redone: 1 long stitch");
        execute(() -> desk.bench().edit("the same", chart -> chart));
        assertThat(text("news")).as("an edit that changes nothing is none").isEqualTo("Redone: 1 long stitch");
    }

    @Test
    void afterARemedyTheNextFindingIsChosenAndTheRemedyIsNamed() {
        execute(() -> desk.bench()
                .work(List.of(new Place(1, Section.REPEAT, 2), new Place(1, Section.REPEAT, 4)), Stitch.LONG));
        @SuppressWarnings("unchecked") // The list of findings shows findings.
        JList<Finding> list = (JList<Finding>) named(desk, "findings");
        execute(() -> list.setSelectedIndex(0));
        clickRemedy();

        assertThat(execute(() -> list.getModel().getSize())).isEqualTo(1);
        assertThat(execute(() -> list.getSelectedIndex())).isZero();
        assertThat(execute(() -> desk.bench().cursor())).isEqualTo(new Place(1, Section.REPEAT, 4));
        assertThat(text("news")).startsWith("Done: ").hasSizeGreaterThan("Done: ".length());

        clickRemedy();
        assertThat(execute(() -> list.getModel().getSize())).isZero();
    }

    @Test
    void theDeskHasOneSizeForEveryCount() {
        ChartView view = new ChartView(English.LANGUAGE);
        GuideWindow guide = execute(() -> new GuideWindow(desk, desk.bench(), view));
        YarnWindow yarn = execute(() -> new YarnWindow(desk, desk.bench(), view));
        execute(() -> ((JSpinner) named(guide, "guideLevel")).setValue(9));
        execute(() -> ((JSpinner) named(yarn, "yarns.upright")).setValue(2));

        assertThat(execute(view::repeats)).isEqualTo(PerSide.pairs(9, 2));
        assertThat(execute(() -> ((JSpinner) named(guide, "guideUpright")).getValue()))
                .isEqualTo(2);
        assertThat(execute(() -> ((JSpinner) named(yarn, "yarns.level")).getValue()))
                .isEqualTo(9);
        execute(() -> List.of(guide, yarn).forEach(JDialog::dispose));
    }

    @Test
    void theListOfRoundsCountsBothPairsOfSidesWhereTheyDiffer() {
        JTable rounds = (JTable) named(desk, "rounds");
        int last = execute(rounds::getRowCount) - 1;
        int w = desk.bench().chart().shape().w();
        int level = desk.bench().chart().shape().stitches(1, 6);
        assertThat(execute(() -> rounds.getValueAt(last, RoundTable.STITCHES))).isEqualTo("" + level);

        execute(() -> ((JSpinner) named(desk, "repeatsUpright")).setValue(7));
        assertThat(execute(() -> rounds.getValueAt(last, RoundTable.STITCHES))).isEqualTo(level + ", " + (level + w));
    }

    @Test
    void panesThatGaveWayToANarrowWindowGrowBack() {
        int findings = 310;
        int side = 326;
        int yarns = 286;
        until(
                "the panes have the size they are given",
                () -> divider("deskSplit") == findings
                        && secondSize("sideSplit") == side
                        && secondSize("roundsSplit") == yarns);
        Dimension before = execute(() -> desk.getSize());
        execute(() -> desk.setSize(900, 620));
        until("the panes have given way", () -> divider("deskSplit") < findings && secondSize("sideSplit") < side);
        execute(() -> desk.setSize(before));
        until(
                "they have grown back",
                () -> divider("deskSplit") == findings
                        && secondSize("sideSplit") == side
                        && secondSize("roundsSplit") == yarns);
    }

    @Test
    void wordsOfARoundThatCannotBeWorkedSaySoFirst() {
        execute(() -> desk.bench().work(List.of(new Place(1, Section.REPEAT, 2)), Stitch.LONG));
        until(
                "the words say so",
                () -> words().startsWith(
                                "There is an error finding in this round: it cannot be worked as it is.\nRound 1 "));

        execute(() -> desk.bench().undo());
        until("they can be followed again", () -> words().startsWith("Round"));
    }

    private String words() {
        return execute(() -> ((JTextComponent) named(desk, "words")).getText()).replace('\u00a0', ' ');
    }

    @Test
    void thePicturesOfAWarningAreNotCalledUnworkable() {
        assertThat(headings("deep-gap")).contains("Better not", "Better").doesNotContain("Cannot be worked");
        assertThat(headings("covered-loop")).contains("Cannot be worked", "Can be worked");
    }

    @Test
    void theLawsStandInTheHelpAsErrorsThenWarningsEachByTitle() {
        HelpWindow help = execute(() -> new HelpWindow(
                desk, new DeskActions(English.LANGUAGE), new FindingSentences(English.LANGUAGE), English.LANGUAGE));
        @SuppressWarnings("unchecked") // The list of laws shows the entries of the rule book.
        JList<RuleEntry> list = (JList<RuleEntry>) named(help, "laws");
        List<RuleEntry> shown = execute(() -> IntStream.range(0, list.getModel().getSize())
                .mapToObj(list.getModel()::getElementAt)
                .toList());
        execute(help::dispose);

        assertThat(shown)
                .containsExactlyInAnyOrderElementsOf(RuleBook.all())
                .isSortedAccordingTo(Comparator.comparing((RuleEntry entry) -> entry.severity() == Severity.WARNING)
                        .thenComparing(entry -> new FindingSentences(English.LANGUAGE).title(entry.id())));
    }

    private static List<String> headings(String rule) {
        return execute(() -> {
            TextColumn column = new TextColumn(0, 0, 0);
            RulePageView.addTo(column, new RuleBook(English.LANGUAGE).page(rule), English.LANGUAGE);
            return parts(column).stream()
                    .filter(JLabel.class::isInstance)
                    .map(part -> ((JLabel) part).getText())
                    .toList();
        });
    }

    private String text(String name) {
        return execute(() -> ((JLabel) named(desk, name)).getText());
    }

    private int divider(String split) {
        return execute(() -> ((JSplitPane) named(desk, split)).getDividerLocation());
    }

    private int secondSize(String split) {
        return execute(() -> {
            JSplitPane of = (JSplitPane) named(desk, split);
            Dimension size = of.getRightComponent().getSize();
            return of.getOrientation() == JSplitPane.HORIZONTAL_SPLIT ? size.width : size.height;
        });
    }

    private void clickRemedy() {
        AbstractButton button = (AbstractButton) remedy(desk);
        execute(() -> button.doClick());
    }
}
