package edgewright.desk.piece;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import javax.swing.LayoutFocusTraversalPolicy;

/** The tabulator goes round the piece as the maker's hand does: top, left, bottom, right, or with the left hand the other way round. */
final class PieceTabOrder extends LayoutFocusTraversalPolicy {
    private static final long serialVersionUID = 1;

    private final PieceDrawing drawing;

    PieceTabOrder(PieceDrawing drawing) {
        this.drawing = drawing;
    }

    @Override
    public Component getComponentAfter(Container root, Component from) {
        List<Component> all = stops();
        int at = all.indexOf(from);
        return at < 0 || at + 1 >= all.size() ? null : all.get(at + 1);
    }

    @Override
    public Component getComponentBefore(Container root, Component from) {
        List<Component> all = stops();
        int at = all.indexOf(from);
        return at <= 0 ? null : all.get(at - 1);
    }

    @Override
    public Component getFirstComponent(Container root) {
        return stops().get(0);
    }

    @Override
    public Component getDefaultComponent(Container root) {
        return stops().get(0);
    }

    @Override
    public Component getLastComponent(Container root) {
        List<Component> all = stops();
        return all.get(all.size() - 1);
    }

    private List<Component> stops() {
        List<Component> stops = new ArrayList<>();
        drawing.inOrder().forEach(part -> collect(part, stops));
        return stops;
    }

    private void collect(Component part, List<Component> stops) {
        if (accept(part)) {
            stops.add(part);
        } else if (part instanceof Container container) {
            for (Component inner : container.getComponents()) {
                collect(inner, stops);
            }
        }
    }
}
