package edgewright.desk;

import edgewright.booklet.PrintedTerms;
import edgewright.booklet.WordsFormat;
import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.Hand;
import edgewright.chart.Terms;
import edgewright.words.Options;
import java.awt.Window;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;

/** How the words of the pattern are to be saved in a file of their own. A chart that cannot be worked makes a draft. */
final class WordsDialog extends FormDialog {
    private final boolean draft;
    private final JComboBox<WordsFormat> format = new JComboBox<>(WordsFormat.values());
    private final JComboBox<PrintedTerms> terms = new JComboBox<>(PrintedTerms.values());
    private final JComboBox<Hand> hand = new JComboBox<>(Hand.values());
    private final JComboBox<Counting> counting = new JComboBox<>(Counting.values());
    private final SizeFields size;

    /**
     * The dialog for a chart.
     *
     * @param errors how many error findings it has
     */
    WordsDialog(Window owner, Chart chart, View view, int errors) {
        super(owner, "saveWords");
        draft = errors > 0;
        format.setRenderer(Forms.renderer((WordsFormat each) -> Texts.of("saveWords.format." + each.name())));
        field("saveWords.format", format).setSelectedItem(WordsFormat.HTML);
        terms.setRenderer(Forms.renderer((PrintedTerms each) -> Texts.of("terms." + each.name())));
        field("saveWords.terms", terms).setSelectedItem(PrintedTerms.of(chart.terms()));
        hand.setRenderer(Forms.renderer((Hand each) -> Texts.of("saveWords.hand." + each.name())));
        field("saveWords.hand", hand);
        counting.setRenderer(Forms.renderer((Counting each) -> Texts.of("counting." + each.name())));
        field("saveWords.counting", counting).setSelectedItem(view.counting());
        size = new SizeFields(chart, this, counting);
        if (draft) {
            explain(Texts.of("publish.unworkable", errors));
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
    Options options() {
        return new Options(
                terms().get(0),
                counting.getItemAt(counting.getSelectedIndex()),
                size.repeats(),
                draft,
                hand.getItemAt(hand.getSelectedIndex()));
    }

    @Override
    Optional<String> objection() {
        return Optional.empty();
    }
}
