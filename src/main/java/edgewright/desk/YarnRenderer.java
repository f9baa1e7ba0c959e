package edgewright.desk;

import edgewright.chart.Yarn;
import java.awt.Component;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JList;

/** A yarn in a list: its card, its letter and its name. */
final class YarnRenderer extends DefaultListCellRenderer {
    @Override
    public Component getListCellRendererComponent(
            JList<?> list, Object value, int index, boolean chosen, boolean focused) {
        super.getListCellRendererComponent(list, value, index, chosen, focused);
        if (value instanceof Yarn yarn) {
            setText(Texts.of("yarn.short", yarn.id(), yarn.name()));
            setIcon(new Swatch(yarn.colour(), 14));
            setIconTextGap(7);
        }
        return this;
    }
}
