package edgewright.desk.output;

import static edgewright.texts.Arg.count;

import edgewright.booklet.Preview;
import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.ChartKind;
import edgewright.booklet.choice.ChartPaper;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.Paper;
import edgewright.booklet.choice.PrintChoice;
import edgewright.booklet.choice.PrintedTerms;
import edgewright.booklet.choice.PrintingNotice;
import edgewright.booklet.choice.Supplements;
import edgewright.booklet.choice.WordingChoice;
import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.desk.parts.FormDialog;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.SizeFields;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Settings;
import edgewright.draw.marks.MarkStyle;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.write.RoundsLayout;
import java.awt.Window;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JSpinner;
import javax.swing.JTextField;
import javax.swing.SpinnerNumberModel;

/**
 * How the printable pattern is to be, with its pages beside. A chart that cannot be worked is published as a draft only. What
 * was chosen last is proposed again.
 */
public final class PublishDialog extends FormDialog {
    private final transient Messages says;
    private final transient Messages common;
    private final boolean unworkable;
    private final transient Settings settings;
    private final transient Language language;
    private final JComboBox<Edition> edition = new JComboBox<>(Edition.values());
    private final JComboBox<Paper> paper = new JComboBox<>(Paper.values());
    private final JComboBox<ChartPaper> chartPaper = new JComboBox<>(ChartPaper.values());
    private final JComboBox<ChartKind> pictures = new JComboBox<>(ChartKind.values());
    private final JComboBox<MarkStyle> marks = new JComboBox<>(MarkStyle.values());
    private final JComboBox<PrintedTerms> terms = new JComboBox<>(PrintedTerms.values());
    private final JComboBox<Counting> counting = new JComboBox<>(Counting.values());
    private final JComboBox<RoundsLayout> layout = new JComboBox<>(RoundsLayout.values());
    private final JComboBox<HookHand> hand = new JComboBox<>(HookHand.values());
    private final JCheckBox fit = new JCheckBox();
    private final JSpinner cell =
            new JSpinner(new SpinnerNumberModel(5.0, PrintChoice.SMALLEST_CELL_MM, PrintChoice.LARGEST_CELL_MM, 0.5));
    private final SizeFields size;
    private final JCheckBox guide = new JCheckBox();
    private final JCheckBox worksheet = new JCheckBox();
    private final JCheckBox yarn = new JCheckBox();
    private final JTextField version = new JTextField(8);
    private final JTextField date = new JTextField(12);
    private final JCheckBox draft = new JCheckBox();

    /**
     * The dialog for a chart.
     *
     * @param errors how many error findings it has
     */
    public PublishDialog(Window owner, Chart chart, ChartView view, int errors, Settings settings) {
        super(owner, "publish", view.language());
        says = view.language().messages("desk/output");
        common = view.language().messages("desk/common");
        titled(says.text("publish-title"), says.text("publish-accept"));
        this.settings = settings;
        this.language = view.language();
        unworkable = errors > 0;
        edition.setRenderer(Forms.renderer((Edition each) -> says.text("edition-" + each.name())));
        field("publish.edition", says.text("publish-edition"), edition)
                .setSelectedItem(settings.choice(Edition.STANDARD));
        paper.setRenderer(Forms.renderer((Paper each) -> says.text("paper-" + each.name())));
        field("publish.paper", says.text("publish-paper"), paper).setSelectedItem(settings.choice(usualPaper()));
        chartFields();
        fitFields();
        terms.setRenderer(Forms.renderer((PrintedTerms each) -> common.text("terms-" + each.name())));
        field("publish.terms", says.text("publish-terms"), terms).setSelectedItem(PrintedTerms.of(chart.terms()));
        hand.setRenderer(Forms.renderer((HookHand each) -> says.text("publish-hand-" + each.name())));
        field("publish.hand", says.text("publish-hand"), hand).setSelectedItem(settings.choice(HookHand.RIGHT));
        layout.setRenderer(Forms.renderer((RoundsLayout each) -> common.text("layout-" + each.name())));
        field("publish.layout", says.text("publish-layout"), layout)
                .setSelectedItem(settings.choice(RoundsLayout.SENTENCES));
        counting.setRenderer(Forms.renderer((Counting each) -> common.text("counting-" + each.name())));
        field("publish.counting", says.text("publish-counting"), counting).setSelectedItem(view.counting());
        size = new SizeFields(chart, this, counting, view.language());
        supplements();
        field("publish.version", says.text("publish-version"), version);
        field("publish.date", says.text("publish-date"), date);
        Forms.caption(draft, says.text("publish-draft")).setName("publish.draft");
        if (unworkable) {
            draft.addActionListener(event -> look());
            form().add(draft, "span, gaptop 6");
            explain(says.text("publish-unworkable", count("errors", errors)));
        }
        beside(new PagePreview((options, progress) -> Preview.of(chart, options, progress), this::options, language));
    }

    private void chartFields() {
        chartPaper.setRenderer(Forms.renderer((ChartPaper each) -> says.text("chartPaper-" + each.name())));
        field("publish.chartPaper", says.text("publish-chartPaper"), chartPaper)
                .setSelectedItem(settings.choice(ChartPaper.SAME));
        pictures.setRenderer(Forms.renderer((ChartKind each) -> says.text("pictures-" + each.name())));
        field("publish.pictures", says.text("publish-pictures"), pictures)
                .setSelectedItem(settings.choice(ChartKind.CORNER));
        marks.setRenderer(Forms.renderer((MarkStyle each) -> says.text("marks-" + each.name())));
        field("publish.marks", says.text("publish-marks"), marks).setSelectedItem(settings.choice(MarkStyle.USUAL));
    }

    private void fitFields() {
        Forms.caption(fit, says.text("publish-fit")).setName("publish.fit");
        fit.setSelected(true);
        fit.addActionListener(event -> cell.setEnabled(!fit.isSelected()));
        form().add(fit, "span");
        cell.setName("publish.cell");
        cell.setEnabled(false);
        form().add(Forms.label(says.text("publish-cell"), cell), "gapleft 22");
        form().add(cell, "growx 0, wmin 90");
    }

    private void supplements() {
        Forms.caption(guide, says.text("publish-guide"), says.text("publish-guide-tip"))
                .setName("publish.guide");
        Forms.caption(worksheet, says.text("publish-worksheet"), says.text("publish-worksheet-tip"))
                .setName("publish.worksheet");
        Forms.caption(yarn, says.text("publish-yarn")).setName("publish.yarn");
        for (JCheckBox box : List.of(guide, worksheet, yarn)) {
            box.setSelected(true);
            form().add(box, "span");
        }
    }

    BookletOptions options() {
        return new BookletOptions(
                new PrintChoice(
                        edition.getItemAt(edition.getSelectedIndex()),
                        paper.getItemAt(paper.getSelectedIndex()),
                        chartPaper.getItemAt(chartPaper.getSelectedIndex()),
                        fit.isSelected() ? OptionalDouble.empty() : OptionalDouble.of((Double) cell.getValue()),
                        pictures.getItemAt(pictures.getSelectedIndex()),
                        marks.getItemAt(marks.getSelectedIndex())),
                new WordingChoice(
                        terms.getItemAt(terms.getSelectedIndex()),
                        counting.getItemAt(counting.getSelectedIndex()),
                        hand.getItemAt(hand.getSelectedIndex()),
                        size.size(),
                        layout.getItemAt(layout.getSelectedIndex())),
                new PrintingNotice(version.getText(), date.getText()),
                new Supplements(guide.isSelected(), worksheet.isSelected(), yarn.isSelected()),
                draft.isSelected(),
                language);
    }

    /** Keeps what suits the maker or the printer rather than the chart, for next time. */
    void remember() {
        BookletOptions chosen = options();
        settings.choose(chosen.edition());
        settings.choose(chosen.paper());
        settings.choose(chosen.appearance().chartPaper());
        settings.choose(chosen.appearance().chart());
        settings.choose(chosen.appearance().marks());
        settings.choose(chosen.hand());
        settings.choose(chosen.telling().layout());
    }

    @Override
    protected Optional<String> objection() {
        return unworkable && !draft.isSelected() ? Optional.of(says.text("publish-objection")) : Optional.empty();
    }

    /** What is sold in the shops where this machine is. */
    private static Paper usualPaper() {
        return Locale.getDefault().getCountry().matches("US|CA") ? Paper.LETTER : Paper.A4;
    }
}
