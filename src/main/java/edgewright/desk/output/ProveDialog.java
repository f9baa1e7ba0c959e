package edgewright.desk.output;

import static edgewright.texts.Arg.count;

import edgewright.chart.PerSide;
import edgewright.chart.Terms;
import edgewright.desk.parts.FormDialog;
import edgewright.desk.parts.Forms;
import edgewright.proof.SizeProofs;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Window;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JComboBox;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;

/** In which terms the words are to be worked, and on sides of how many repeats: a line for each size of piece. */
final class ProveDialog extends FormDialog {
    /** So many sizes are worked at once; each is a whole border. */
    private static final int MOST_SIZES = 50;

    /** The most repeats on a side. */
    private static final int MOST_REPEATS = 1_000;

    private final transient Messages says;
    private final transient Messages common;
    private final JComboBox<Terms> terms = new JComboBox<>(Terms.values());
    private final JTextArea sizes = new JTextArea(8, 16);

    ProveDialog(Window owner, Terms usual, Language language) {
        super(owner, "prove", language);
        says = language.messages("desk/output");
        common = language.messages("desk/common");
        titled(says.text("prove-title"), says.text("prove-accept"));
        explain(says.text("prove-explain"));
        terms.setRenderer(Forms.renderer((Terms each) -> common.text("terms-" + each.name())));
        field("prove.terms", says.text("prove-terms"), terms).setSelectedItem(usual);
        sizes.setText(SizeProofs.USUAL.stream().map(ProveDialog::line).collect(Collectors.joining("\n")));
        sizes.setCaretPosition(0);
        watch(sizes);
        sizes.setName("prove.sizes");
        form().add(Forms.label(says.text("prove-sizes"), sizes), "aligny top, gaptop 4");
        form().add(new JScrollPane(sizes), "wmin 0");
        explain(says.text("prove-example"));
    }

    Terms terms() {
        return (Terms) terms.getSelectedItem();
    }

    /** How often the repeat is worked on each side, for each size. */
    List<PerSide<Integer>> sizes() {
        return sizes.getText()
                .lines()
                .filter(line -> !line.isBlank())
                .map(PerSide::parse)
                .toList();
    }

    @Override
    public Optional<String> objection() {
        List<PerSide<Integer>> read;
        try {
            read = sizes();
        } catch (IllegalArgumentException e) {
            return Optional.of(says.text("prove-notSizes"));
        }
        if (read.isEmpty() || read.size() > MOST_SIZES) {
            return Optional.of(says.text("prove-howMany", count("most", MOST_SIZES)));
        }
        boolean tooLong = read.stream().flatMap(PerSide::stream).anyMatch(times -> times > MOST_REPEATS);
        return tooLong ? Optional.of(says.text("prove-tooLong", count("most", MOST_REPEATS))) : Optional.empty();
    }

    /** Two numbers where opposite sides are alike, else four. */
    static String line(PerSide<Integer> size) {
        return PerSide.typed(size);
    }
}
