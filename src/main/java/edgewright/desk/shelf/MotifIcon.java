package edgewright.desk.shelf;

import edgewright.chart.Motif;
import edgewright.chart.Stitch;
import java.awt.Component;
import java.awt.Graphics;
import javax.swing.Icon;

/** A motif as small as a menu wants it: the outermost round on top, a dark square for each long stitch. */
final class MotifIcon implements Icon {
    private static final int WIDTH_PX = 48;
    private static final int HEIGHT_PX = 24;
    private static final int LARGEST_PX = 6;

    private final Motif motif;
    private final int cellPx;

    MotifIcon(Motif motif) {
        this.motif = motif;
        int fitting =
                Math.min(WIDTH_PX / motif.columns(), HEIGHT_PX / motif.rounds().size());
        cellPx = Math.max(1, Math.min(LARGEST_PX, fitting));
    }

    @Override
    public void paintIcon(Component component, Graphics g, int x, int y) {
        g.setColor(component.getForeground());
        int rows = Math.min(motif.rounds().size(), HEIGHT_PX / cellPx);
        for (int row = 0; row < rows; row++) {
            String round = motif.rounds().get(rows - 1 - row);
            for (int column = 0; column < Math.min(round.length(), WIDTH_PX / cellPx); column++) {
                paint(g, round.charAt(column), x + column * cellPx, y + row * cellPx);
            }
        }
    }

    private void paint(Graphics g, char letter, int x, int y) {
        int edge = Math.max(1, cellPx - 1);
        if (letter == Stitch.LONG.letter() || letter == Motif.CORNER) {
            g.fillRect(x, y, edge, edge);
        } else if (letter == Stitch.PLAIN.letter() || letter == Stitch.CHAIN.letter()) {
            g.drawRect(x, y, edge - 1, edge - 1);
        } else if (letter != Motif.NOTHING) {
            g.fillRect(x + edge / 2, y + edge / 2, 1, 1);
        }
    }

    @Override
    public int getIconWidth() {
        return WIDTH_PX;
    }

    @Override
    public int getIconHeight() {
        return HEIGHT_PX;
    }
}
