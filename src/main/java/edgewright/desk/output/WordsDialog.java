package edgewright.desk.output;

import static edgewright.texts.Arg.count;

import edgewright.booklet.WordsFormat;
import edgewright.booklet.choice.PrintedTerms;
import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.chart.Terms;
import edgewright.desk.parts.FormDialog;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.SizeFields;
import edgewright.desk.work.ChartView;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.write.RoundsLayout;
import edgewright.words.write.WordingOptions;
import java.awt.Window;
import java.util.List;
import java.util.Optional;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;

/** How the words of the pattern are to be saved in a file of their own. A chart that cannot be worked makes a draft. */
public final class WordsDialog extends FormDialog {
    private final transient Messages says;
    private final transient Messages common;
    private final transient Language language;
    private final boolean draft;
    private final JComboBox<WordsFormat> format = new JComboBox<>(WordsFormat.values());
    private final JComboBox<PrintedTerms> terms = new JComboBox<>(PrintedTerms.values());
    private final JComboBox<HookHand> hand = new JComboBox<>(HookHand.values());
    private final JComboBox<Counting> counting = new JComboBox<>(Counting.values());
    private final JComboBox<RoundsLayout> layout = new JComboBox<>(RoundsLayout.values());
    private final JCheckBox eachRound = new JCheckBox();
    private final SizeFields size;

    /**
     * The dialog for a chart.
     *
     * @param errors how many error findings it has
     */
    public WordsDialog(Window owner, Chart chart, ChartView view, int errors) {
        super(owner, "saveWords", view.language());
        says = view.language().messages("desk/output");
        common = view.language().messages("desk/common");
        titled(says.text("saveWords-title"), says.text("saveWords-accept"));
        language = view.language();
        draft = errors > 0;
        format.setRenderer(Forms.renderer((WordsFormat each) -> says.text("saveWords-format-" + each.name())));
        field("saveWords.format", says.text("saveWords-format"), format).setSelectedItem(WordsFormat.HTML);
        terms.setRenderer(Forms.renderer((PrintedTerms each) -> common.text("terms-" + each.name())));
        field("saveWords.terms", says.text("saveWords-terms"), terms).setSelectedItem(PrintedTerms.of(chart.terms()));
        hand.setRenderer(Forms.renderer((HookHand each) -> says.text("saveWords-hand-" + each.name())));
        field("saveWords.hand", says.text("saveWords-hand"), hand);
        layout.setRenderer(Forms.renderer((RoundsLayout each) -> common.text("layout-" + each.name())));
        field("saveWords.layout", says.text("saveWords-layout"), layout);
        Forms.caption(eachRound, common.text("eachRound"), common.text("eachRound-tip"))
                .setName("saveWords.eachRound");
        form().add(eachRound, "skip, span");
        // A table has a row for each round, whatever is ticked.
        layout.addActionListener(event -> eachRound.setEnabled(layout.getSelectedItem() != RoundsLayout.TABLE));
        counting.setRenderer(Forms.renderer((Counting each) -> common.text("counting-" + each.name())));
        field("saveWords.counting", says.text("saveWords-counting"), counting).setSelectedItem(view.counting());
        size = new SizeFields(chart, this, counting, view.language());
        if (draft) {
            explain(says.text("publish-unworkable", count("errors", errors)));
        }
    }

    /** Proposes a pattern for one piece, and for whoever works it. */
    void forPiece(PieceOrder order) {
        size.offer(order.piece());
        hand.setSelectedItem(order.hand());
    }

    WordsFormat format() {
        return (WordsFormat) format.getSelectedItem();
    }

    /** The terms in turn, one or both. */
    List<Terms> terms() {
        return terms.getItemAt(terms.getSelectedIndex()).inTurn();
    }

    /** All but the terms. */
    WordingOptions options() {
        return new WordingOptions(
                language,
                terms().get(0),
                counting.getItemAt(counting.getSelectedIndex()),
                size.size(),
                draft,
                hand.getItemAt(hand.getSelectedIndex()),
                layout.getItemAt(layout.getSelectedIndex()),
                eachRound.isSelected(),
                false);
    }

    @Override
    protected Optional<String> objection() {
        return Optional.empty();
    }
}
