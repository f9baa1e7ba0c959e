package edgewright.desk.panes;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.number;

import edgewright.check.Finding;
import edgewright.check.FindingSentences;
import edgewright.check.Severity;
import edgewright.desk.parts.Look;
import edgewright.desk.parts.SeverityIcon;
import edgewright.texts.Messages;
import java.awt.Component;
import java.util.OptionalInt;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import net.miginfocom.swing.MigLayout;

/** A finding in two lines: what the matter is, and where. The first of a group has a line over it, and says how many it has. */
final class FindingRow extends JPanel implements ListCellRenderer<Finding> {
    static final int HEIGHT_PX = 46;

    private final transient FindingRows rows;
    private final transient FindingSentences sentences;
    private final transient Messages says;
    private final JLabel icon = new JLabel();
    private final JLabel title = new JLabel();
    private final JLabel where = new JLabel();
    private final JLabel group = new JLabel();

    FindingRow(FindingRows rows, FindingSentences sentences, Messages says) {
        super(new MigLayout("insets 3 8 4 8, gap 8 0, fill", "[][grow, fill][]", "[][]"));
        this.rows = rows;
        this.sentences = sentences;
        this.says = says;
        add(icon, "spany 2, top, gaptop 2");
        add(title, "wmin 0, spanx 2, wrap");
        add(where, "wmin 0");
        add(group);
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends Finding> of, Finding finding, int index, boolean chosen, boolean focused) {
        FindingChoice.Listed row = rows.row(index);
        setBackground(chosen ? of.getSelectionBackground() : of.getBackground());
        title.setForeground(chosen ? of.getSelectionForeground() : of.getForeground());
        where.setForeground(chosen ? of.getSelectionForeground() : Look.colour("quiet"));
        group.setForeground(where.getForeground());
        icon.setIcon(
                SeverityIcon.of(finding.severity() == Severity.ERROR, chosen ? of.getSelectionForeground() : null));
        title.setText(says.text(
                "findings-number", number("place", row.number()), arg("title", sentences.title(finding.rule()))));
        where.setText(sentences.of(finding.place()));
        group.setText(groupText(row.group()));
        boolean begins = row.group().isPresent() && index > 0;
        setBorder(BorderFactory.createMatteBorder(begins ? 1 : 0, 0, 0, 0, Look.colour("quiet")));
        getAccessibleContext().setAccessibleName(sentences.of(finding));
        return this;
    }

    private String groupText(OptionalInt findings) {
        return findings.isPresent() ? says.text("findings-group", count("findings", findings.getAsInt())) : "";
    }
}
