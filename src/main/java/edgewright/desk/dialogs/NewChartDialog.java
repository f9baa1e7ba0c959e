package edgewright.desk.dialogs;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.commas;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Counting;
import edgewright.chart.SideShape;
import edgewright.chart.Yarn;
import edgewright.desk.parts.ColourButton;
import edgewright.desk.parts.FormDialog;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.Look;
import edgewright.desk.work.SideCountTexts;
import edgewright.desk.work.YarnShelf;
import edgewright.fit.SideMultiple;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Color;
import java.awt.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** Begins a design: its title, the shape of a side, the rounds and the yarns that take turns in them. */
public final class NewChartDialog extends FormDialog {
    private static final int MOST_ROUNDS = 400;
    private static final int MOST_WIDTH = 200;
    private static final int MOST_YARNS = 6;
    private static final int EXAMPLES = 3;

    private record YarnRow(JTextField name, ColourButton colour) {}

    private final transient Messages says;
    private final transient Messages common;
    private final Counting counting;
    private final transient Language language;
    private final JTextField title = new JTextField(24);
    private final JLabel counts = new JLabel();
    private final JSpinner fromCorner;
    private final JSpinner repeat;
    private final JSpinner toCorner;
    private final JSpinner rounds;
    private final SkeletonPicture picture;
    private final JPanel yarnPanel = new JPanel(new MigLayout("insets 0, gap 6, fillx", "[][grow, fill][]"));
    private final List<YarnRow> yarns = new ArrayList<>();
    private final JButton more = new JButton();
    private final JButton fewer = new JButton();

    public NewChartDialog(Window owner, Counting counting, Language language) {
        super(owner, "newChart", language);
        says = language.messages("desk/dialogs");
        common = language.messages("desk/common");
        titled(says.text("newChart-title"), says.text("newChart-accept"));
        this.counting = counting;
        this.language = language;
        field("newChart.chartTitle", says.text("newChart-chartTitle"), title).setText(common.text("newChart-untitled"));
        title.selectAll();
        rounds = number("newChart.rounds", says.text("newChart-rounds"), 12, 1, MOST_ROUNDS);
        fromCorner = number("newChart.fromCorner", says.text("newChart-fromCorner"), 2, 0, MOST_WIDTH);
        repeat = number("newChart.repeat", says.text("newChart-repeat"), 6, 1, MOST_WIDTH);
        toCorner = number("newChart.toCorner", says.text("newChart-toCorner"), 3, 0, MOST_WIDTH);
        addYarn(common.text("newChart-firstYarn"), Colour.parse("#2b2a33"));
        addYarn(common.text("newChart-secondYarn"), Colour.parse("#f2ead8"));
        counts.setName("newChart.counts");
        picture = new SkeletonPicture(shape(), value(rounds), colours(), language);
        beside(says.text("newChart-picture"), picture);
        form().add(counts, "span, growx, wmin 0");
        explain(says.text("newChart-explain"));
        form().add(Look.heading(says.text("newChart-yarns")), "span, gaptop 4");
        form().add(yarnPanel, "span, growx");
        Forms.caption(more, says.text("newChart-moreYarn")).setName("moreYarn");
        Forms.caption(fewer, says.text("newChart-fewerYarn")).setName("fewerYarn");
        more.addActionListener(event -> {
            addYarn(
                    says.text("newChart-nextYarn", arg("letter", letter(yarns.size()))),
                    YarnShelf.unlike(
                            yarns.stream().map(row -> row.colour().colour()).toList()));
            resize();
        });
        fewer.addActionListener(event -> {
            yarns.remove(yarns.size() - 1);
            resize();
        });
        form().add(more, "span, split 2, growx 0");
        form().add(fewer, "growx 0");
        layOutYarns();
    }

    /** The blank chart that the form describes. */
    public Chart chart() {
        List<Yarn> shelf = new ArrayList<>();
        for (int i = 0; i < yarns.size(); i++) {
            YarnRow row = yarns.get(i);
            shelf.add(new Yarn(
                    letter(i), row.name().getText().strip(), row.colour().colour()));
        }
        return Chart.blank(title.getText().strip(), shape(), value(rounds), shelf);
    }

    private List<Color> colours() {
        return yarns.stream().map(row -> new Color(row.colour().colour().rgb())).toList();
    }

    /** For which counts it closes, and the three smallest of them. */
    private String closing() {
        SideMultiple multiple = SideMultiple.of(shape(), 0, counting);
        return says.text(
                "newChart-closes",
                arg("counts", SideCountTexts.ofBaseRound(shape(), counting, language)),
                commas(
                        "examples",
                        IntStream.range(0, EXAMPLES)
                                .mapToObj(i -> String.valueOf(multiple.fewest() + i * multiple.of()))
                                .toList()));
    }

    private SideShape shape() {
        return new SideShape(value(fromCorner), value(repeat), value(toCorner));
    }

    @Override
    protected Optional<String> objection() {
        if (picture != null) {
            // The title is looked at before there are numbers.
            picture.show(shape(), value(rounds), colours());
            counts.setText(closing());
        }
        if (title.getText().isBlank()) {
            return Optional.of(says.text("newChart-objection-title"));
        }
        return yarns.stream().anyMatch(row -> row.name().getText().isBlank())
                ? Optional.of(common.text("yarn-objection-name"))
                : Optional.empty();
    }

    private static String letter(int index) {
        return String.valueOf((char) ('A' + index));
    }

    private void addYarn(String yarnName, Colour colour) {
        String key = "newChart.yarn" + (yarns.size() + 1);
        JTextField field = new JTextField(yarnName, 16);
        field.setName(key);
        watch(field);
        ColourButton button = new ColourButton(key + ".colour", colour, language);
        button.addPropertyChangeListener("colour", event -> look());
        yarns.add(new YarnRow(field, button));
    }

    private void layOutYarns() {
        yarnPanel.removeAll();
        for (int i = 0; i < yarns.size(); i++) {
            YarnRow row = yarns.get(i);
            JLabel label = new JLabel(says.text("newChart-yarnLabel", arg("letter", letter(i))));
            label.setLabelFor(row.name());
            row.name().getAccessibleContext().setAccessibleName(label.getText());
            yarnPanel.add(label);
            yarnPanel.add(row.name(), "wmin 0");
            yarnPanel.add(row.colour(), "wrap, sizegroup colour");
        }
        more.setEnabled(yarns.size() < MOST_YARNS);
        fewer.setEnabled(yarns.size() > 1);
    }

    private void resize() {
        layOutYarns();
        setMinimumSize(null);
        pack();
        look();
    }
}
