package edgewright.desk.dialogs;

import edgewright.chart.Counting;
import edgewright.chart.SideShape;
import edgewright.desk.parts.FormDialog;
import edgewright.desk.work.SideCountTexts;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Window;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JSpinner;

/** Changes the repeat and the parts at the corners. The corners keep their shape: the corner sections grow and shrink beside the repeat. */
public final class SideDialog extends FormDialog {
    private static final int MOST_WIDTH = 1_999;

    private final transient Messages says;
    private final Counting counting;
    private final transient Language language;
    private final JLabel counts = new JLabel();
    private final JSpinner fromCorner;
    private final JSpinner repeat;
    private final JSpinner toCorner;
    private final SidePicture picture;

    public SideDialog(Window owner, SideShape before, Counting counting, Language language) {
        super(owner, "side", language);
        says = language.messages("desk/dialogs");
        titled(says.text("side-title"), says.text("side-accept"));
        this.counting = counting;
        this.language = language;
        fromCorner = number("side.fromCorner", says.text("side-fromCorner"), before.a(), 0, MOST_WIDTH);
        repeat = number("side.repeat", says.text("side-repeat"), before.w(), 1, MOST_WIDTH);
        toCorner = number("side.toCorner", says.text("side-toCorner"), before.b(), 0, MOST_WIDTH);
        picture = new SidePicture(before, language);
        form().add(picture, "span, growx");
        counts.setName("side.counts");
        form().add(counts, "span, growx, wmin 0");
        explain(says.text("side-explain"));
    }

    public SideShape shape() {
        return new SideShape(value(fromCorner), value(repeat), value(toCorner));
    }

    @Override
    protected Optional<String> objection() {
        picture.show(shape());
        counts.setText(SideCountTexts.ofBaseRound(shape(), counting, language));
        return Optional.empty();
    }
}
