package edgewright.desk.dialogs;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Counting;
import edgewright.chart.SideShape;
import edgewright.chart.Yarn;
import edgewright.desk.parts.ColourButton;
import edgewright.desk.parts.FormDialog;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.Look;
import edgewright.desk.parts.SidePicture;
import edgewright.desk.work.DeskTexts;
import edgewright.desk.work.SideCountTexts;
import edgewright.desk.work.YarnShelf;
import edgewright.texts.Language;
import java.awt.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

    private record YarnRow(JTextField name, ColourButton colour) {}

    private final Counting counting;
    private final transient Language language;
    private final JTextField title = new JTextField(24);
    private final JLabel counts = new JLabel();
    private final JSpinner fromCorner;
    private final JSpinner repeat;
    private final JSpinner toCorner;
    private final JSpinner rounds;
    private final SidePicture picture;
    private final JPanel yarnPanel = new JPanel(new MigLayout("insets 0, gap 6, fillx", "[][grow, fill][]"));
    private final List<YarnRow> yarns = new ArrayList<>();
    private final JButton more = Forms.caption(new JButton(), "newChart.moreYarn");
    private final JButton fewer = Forms.caption(new JButton(), "newChart.fewerYarn");

    public NewChartDialog(Window owner, Counting counting, Language language) {
        super(owner, "newChart");
        this.counting = counting;
        this.language = language;
        field("newChart.chartTitle", title).setText(DeskTexts.of("newChart.untitled"));
        title.selectAll();
        rounds = number("newChart.rounds", 12, 1, MOST_ROUNDS);
        fromCorner = number("newChart.fromCorner", 2, 0, MOST_WIDTH);
        repeat = number("newChart.repeat", 6, 1, MOST_WIDTH);
        toCorner = number("newChart.toCorner", 3, 0, MOST_WIDTH);
        picture = new SidePicture(shape());
        form().add(picture, "span, growx");
        counts.setName("newChart.counts");
        form().add(counts, "span, growx, wmin 0");
        explain(DeskTexts.of("newChart.explain"));
        addYarn(DeskTexts.of("newChart.firstYarn"), Colour.parse("#2b2a33"));
        addYarn(DeskTexts.of("newChart.secondYarn"), Colour.parse("#f2ead8"));
        form().add(Look.heading(DeskTexts.of("newChart.yarns")), "span, gaptop 4");
        form().add(yarnPanel, "span, growx");
        more.setName("moreYarn");
        fewer.setName("fewerYarn");
        more.addActionListener(event -> {
            addYarn(
                    DeskTexts.of("newChart.nextYarn", letter(yarns.size())),
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

    private SideShape shape() {
        return new SideShape(value(fromCorner), value(repeat), value(toCorner));
    }

    @Override
    protected Optional<String> objection() {
        if (picture != null) {
            // The title is looked at before there are numbers.
            picture.show(shape());
            counts.setText(SideCountTexts.ofBaseRound(shape(), counting, language));
        }
        if (title.getText().isBlank()) {
            return Optional.of(DeskTexts.of("newChart.objection.title"));
        }
        return yarns.stream().anyMatch(row -> row.name().getText().isBlank())
                ? Optional.of(DeskTexts.of("yarn.objection.name"))
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
        ColourButton button = new ColourButton(key + ".colour", colour);
        yarns.add(new YarnRow(field, button));
    }

    private void layOutYarns() {
        yarnPanel.removeAll();
        for (int i = 0; i < yarns.size(); i++) {
            YarnRow row = yarns.get(i);
            JLabel label = new JLabel(DeskTexts.of("newChart.yarnLabel", letter(i)));
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
