package edgewright.desk.parts;

import edgewright.chart.Yarn;
import edgewright.desk.work.DeskTexts;
import java.awt.Component;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JList;

/** A yarn in a list: its card, its letter and its name. */
public final class YarnRenderer extends DefaultListCellRenderer {
    @Override
    public Component getListCellRendererComponent(
            JList<?> list, Object value, int index, boolean chosen, boolean focused) {
        super.getListCellRendererComponent(list, value, index, chosen, focused);
        if (value instanceof Yarn yarn) {
            setText(DeskTexts.of("yarn.short", yarn.id(), yarn.name()));
            setIcon(new YarnCard(yarn.colour(), 14));
            setIconTextGap(7);
        }
        return this;
    }
}
