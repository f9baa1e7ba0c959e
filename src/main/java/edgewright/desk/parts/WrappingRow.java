package edgewright.desk.parts;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Insets;
import javax.swing.JPanel;

/** A row of things that goes on in a further row where the window is too narrow for it. */
public final class WrappingRow extends JPanel {
    public WrappingRow(int gapAcrossPx, int gapDownPx) {
        super(new FlowLayout(FlowLayout.LEADING, gapAcrossPx, gapDownPx));
    }

    /** As high as all rows together, at the width that there is. */
    @Override
    public Dimension getPreferredSize() {
        Container parent = getParent();
        int room = parent == null || parent.getWidth() == 0 ? Integer.MAX_VALUE : parent.getWidth();
        FlowLayout flow = (FlowLayout) getLayout();
        Insets insets = getInsets();
        int across = 0;
        int row = 0;
        int rowHeight = 0;
        int height = insets.top + insets.bottom + flow.getVgap();
        for (Component part : getComponents()) {
            Dimension size = part.getPreferredSize();
            int wider = row + size.width + flow.getHgap();
            if (row > 0 && wider + flow.getHgap() + insets.left + insets.right > room) {
                height += rowHeight + flow.getVgap();
                row = 0;
                rowHeight = 0;
                wider = size.width + flow.getHgap();
            }
            row = wider;
            rowHeight = Math.max(rowHeight, size.height);
            across = Math.max(across, row);
        }
        return new Dimension(across + flow.getHgap() + insets.left + insets.right, height + rowHeight + flow.getVgap());
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(0, getPreferredSize().height);
    }
}
