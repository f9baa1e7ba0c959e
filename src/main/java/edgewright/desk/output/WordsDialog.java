package edgewright.desk.output;

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
import edgewright.desk.work.DeskTexts;
import edgewright.texts.Language;
import edgewright.words.write.WordingOptions;
import java.awt.Window;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;

/** How the words of the pattern are to be saved in a file of their own. A chart that cannot be worked makes a draft. */
public final class WordsDialog extends FormDialog {
    private final Language language;
    private final boolean draft;
    private final JComboBox<WordsFormat> format = new JComboBox<>(WordsFormat.values());
    private final JComboBox<PrintedTerms> terms = new JComboBox<>(PrintedTerms.values());
    private final JComboBox<HookHand> hand = new JComboBox<>(HookHand.values());
    private final JComboBox<Counting> counting = new JComboBox<>(Counting.values());
    private final SizeFields size;

    /**
     * The dialog for a chart.
     *
     * @param errors how many error findings it has
     */
    public WordsDialog(Window owner, Chart chart, ChartView view, int errors) {
        super(owner, "saveWords");
        language = view.language();
        draft = errors > 0;
        format.setRenderer(Forms.renderer((WordsFormat each) -> DeskTexts.of("saveWords.format." + each.name())));
        field("saveWords.format", format).setSelectedItem(WordsFormat.HTML);
        terms.setRenderer(Forms.renderer((PrintedTerms each) -> DeskTexts.of("terms." + each.name())));
        field("saveWords.terms", terms).setSelectedItem(PrintedTerms.of(chart.terms()));
        hand.setRenderer(Forms.renderer((HookHand each) -> DeskTexts.of("saveWords.hand." + each.name())));
        field("saveWords.hand", hand);
        counting.setRenderer(Forms.renderer((Counting each) -> DeskTexts.of("counting." + each.name())));
        field("saveWords.counting", counting).setSelectedItem(view.counting());
        size = new SizeFields(chart, this, counting);
        if (draft) {
            explain(DeskTexts.of("publish.unworkable", errors));
        }
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
                size.repeats(),
                draft,
                hand.getItemAt(hand.getSelectedIndex()));
    }

    @Override
    protected Optional<String> objection() {
        return Optional.empty();
    }
}
