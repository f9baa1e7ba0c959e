package edgewright.desk.fitting;

import static edgewright.desk.WindowParts.until;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.swing.edt.GuiActionRunner.execute;

import edgewright.booklet.WordsFormat;
import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.desk.Desk;
import edgewright.desk.DeskFrame;
import edgewright.desk.DeskOnDisplay;
import edgewright.desk.WindowParts;
import edgewright.desk.work.Settings;
import edgewright.fit.Fit;
import edgewright.fit.FitPlan;
import edgewright.fit.FitQuestion;
import edgewright.proof.ProofResult;
import edgewright.proof.Prover;
import edgewright.texts.English;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.assertj.swing.core.Robot;
import org.assertj.swing.finder.JFileChooserFinder;
import org.assertj.swing.finder.WindowFinder;
import org.assertj.swing.fixture.DialogFixture;
import org.assertj.swing.fixture.FrameFixture;
import org.assertj.swing.fixture.JFileChooserFixture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** A piece is fitted with mouse and keys on a display: counts are typed at its sides, and all else follows. */
class PieceWindowTest {
    private static final Path SAMPLE = Path.of("sample-charts", "reed-bank.border.json");

    @TempDir
    private Path folder;

    @RegisterExtension
    private final DeskOnDisplay display = new DeskOnDisplay();

    private Robot robot;
    private DeskFrame desk;
    private DialogFixture window;
    private FrameFixture frame;
    private Path file;

    @BeforeEach
    void openTheWindow() throws IOException {
        robot = display.robot();
        open();
    }

    @AfterEach
    void putAway() {
        execute(() -> desk.dispose());
    }

    @Test
    void countsTypedAtTheSidesGiveTargetsAndWords() {
        assertThat(headline()).isEqualTo("How long are the sides?");
        window.textBox("piece.TOP").enterText("60");
        window.textBox("piece.LEFT").enterText("41");
        until("the counts are answered", () -> headline().equals("10 changes make it fit"));
        assertThat(text("piece.wanted.TOP")).isEqualTo("63");
        assertThat(text("piece.wanted.RIGHT")).isEqualTo("39");
        assertThat(text("piece.change.BOTTOM")).isEqualTo("add 3 \u00b7 9 repeats");

        window.button("piece.larger.TOP").click();
        until("the next size is taken", () -> text("piece.wanted.BOTTOM").equals("69"));
        window.button("piece.nearest").click();
        until("the nearest is back", () -> text("piece.wanted.BOTTOM").equals("63"));
        window.checkBox("piece.tie.level").click();
        window.textBox("piece.BOTTOM").enterText("50");
        until("bottom is fitted by itself", () -> text("piece.wanted.BOTTOM").equals("51"));
    }

    @Test
    void enterGoesRoundThePieceAsTheMakerDoes() {
        for (String count : new String[] {"57", "39", "57", "39"}) {
            robot.enterText(count);
            robot.pressAndReleaseKey(KeyEvent.VK_ENTER);
            robot.waitForIdle();
        }
        until("all four are typed", () -> headline().equals("It fits as it is"));
        assertThat(window.textBox("piece.BOTTOM").text()).isEqualTo("57");
        until("the way leads back to the top", () -> hasFocus("piece.TOP"));
    }

    @Test
    void aPieceThatIsTooSmallIsRefusedInPlace() {
        window.textBox("piece.TOP").enterText("57");
        window.textBox("piece.LEFT").enterText("4");
        until("it is refused", () -> headline().equals("Too small for this border"));
        assertThat(execute(() -> window.textBox("piece.LEFT").target().getClientProperty("JComponent.outline")))
                .isEqualTo("error");
        window.textBox("piece.LEFT").enterText("x");
        until("it cannot be read", () -> headline().equals("This cannot be read yet"));
    }

    @Test
    void theWayOfCountingIsRememberedWhenTheDeskIsOpenedAgain() throws IOException {
        window.textBox("piece.TOP").enterText("60");
        window.textBox("piece.LEFT").enterText("41");
        window.comboBox("piece.counting").selectItem("with corner chains");
        until("it is the same piece", () -> window.textBox("piece.TOP").text().equals("62"));
        assertThat(text("piece.wanted.TOP")).isEqualTo("65");

        execute(() -> desk.dispose());
        open();
        assertThat(window.comboBox("piece.counting").selectedItem()).isEqualTo("with corner chains");
        assertThat(new Settings(folder.resolve("desk.properties")).counting()).isEqualTo(Counting.WITH_CHAINS);
    }

    @Test
    void thePieceComesBackWithItsChartAndItsWordsAreSavedForTheHandThatWorksIt() throws IOException {
        window.textBox("piece.TOP").enterText("103");
        window.textBox("piece.LEFT").enterText("131");
        window.button("piece.keep").click();
        until("they are kept", () -> !window.button("piece.keep").isEnabled());
        assertThat(text("piece.kept")).isEqualTo("Kept with the chart: round 2.");
        execute(() -> frame.menuItem("menu.save").target().doClick());
        until("the chart is saved", () -> Files.readString(file).contains("\"piece\": { \"front\": [{ \"round\": 2, "));
        execute(() -> desk.dispose());

        show();
        assertThat(window.textBox("piece.RIGHT").text()).isEqualTo("131");
        window.checkBox("piece.left").click();
        window.button("piece.words").click();
        DialogFixture form =
                WindowFinder.findDialog("saveWords").withTimeout(20_000).using(robot);
        assertThat(form.comboBox("size.choice").selectedItem()).isEqualTo("this piece alone");
        form.comboBox("saveWords.format").selectItem(execute(() -> WordsFormat.TEXT.ordinal()));
        form.button("accept").click();
        JFileChooserFixture where = JFileChooserFinder.findFileChooser("writeChooser")
                .withTimeout(20_000)
                .using(robot);
        Path words = folder.resolve("words.txt");
        where.fileNameTextBox().setText(words.toString());
        where.approve();
        until("the words are saved", () -> Files.exists(words) && Files.size(words) > 0);

        Chart chart = execute(() -> desk.bench().chart());
        FitPlan plan = (FitPlan) Fit.inWords(chart, FitQuestion.of(2, PerSide.pairs(103, 131), Counting.STITCHES));
        ProofResult proof = new Prover(chart, English.LANGUAGE).prove(Files.readString(words), plan);
        assertThat(proof).isInstanceOf(ProofResult.Agrees.class);
        assertThat(((ProofResult.Agrees) proof).pattern().hand()).isEqualTo(HookHand.LEFT);
    }

    private void open() throws IOException {
        file = folder.resolve("reed-bank.border.json");
        Files.deleteIfExists(file);
        Files.copy(SAMPLE, file);
        show();
    }

    private void show() {
        desk = WindowParts.desk(Desk.blank(English.LANGUAGE), folder);
        frame = new FrameFixture(robot, desk);
        frame.show();
        execute(() -> desk.open(file));
        until(
                "the sample is open",
                () -> execute(() -> desk.bench().chart().title()).equals("Reed Bank"));
        execute(() -> frame.menuItem("menu.fitPiece").target().doClick());
        window = WindowFinder.findDialog("pieceWindow").withTimeout(20_000).using(robot);
        until("the first field has the focus", () -> hasFocus("piece.TOP"));
    }

    private boolean hasFocus(String field) {
        return execute(() -> window.textBox(field).target().isFocusOwner());
    }

    private String headline() {
        return text("piece.headline");
    }

    private String text(String label) {
        return window.label(label).text();
    }
}
