package edgewright.desk.panes;

import static edgewright.texts.Arg.arg;

import edgewright.chart.Yarn;
import edgewright.desk.parts.YarnCard;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Component;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JList;

/** A yarn in a list: its card, its letter and its name. */
final class YarnRenderer extends DefaultListCellRenderer {
    private final transient Messages common;

    public YarnRenderer(Language language) {
        common = language.messages("desk/common");
    }

    @Override
    public Component getListCellRendererComponent(
            JList<?> list, Object value, int index, boolean chosen, boolean focused) {
        super.getListCellRendererComponent(list, value, index, chosen, focused);
        if (value instanceof Yarn yarn) {
            setText(common.text("yarn-short", arg("id", yarn.id()), arg("yarn", yarn.name())));
            setIcon(new YarnCard(yarn.colour(), 14));
            setIconTextGap(7);
        }
        return this;
    }
}
