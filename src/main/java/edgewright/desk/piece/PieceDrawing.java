package edgewright.desk.piece;

import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.desk.fitting.Piece;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.Look;
import edgewright.fit.Ties;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/**
 * The piece as a box with its border around it. The fields of the sides lie on it, each at its side, and between them what
 * ties opposite sides; marks on the border show where something is done.
 */
final class PieceDrawing extends JComponent {
    private static final int INSIDE_PX = 16;

    private final transient Messages says;
    private final transient Piece piece;
    private final Map<Side, PieceSide> sides = new EnumMap<>(Side.class);
    private final JPanel middle = new JPanel(new MigLayout("insets 0, gap 4, wrap 1", "[left]"));
    private final JCheckBox level = new JCheckBox();
    private final JCheckBox upright = new JCheckBox();
    private final JButton nearest = new JButton();

    PieceDrawing(Piece piece, Language language) {
        says = language.messages("desk/piece");
        this.piece = piece;
        setName("pieceDrawing");
        for (Side side : Side.values()) {
            PieceSide fields = new PieceSide(piece, side, language);
            sides.put(side, fields);
            add(fields);
            // Enter goes on to the next side, as the maker does.
            fields.field()
                    .addActionListener(event -> sides.get(side.next()).field().requestFocusInWindow());
        }
        Forms.caption(level, says.text("piece-tie-level"), says.text("piece-tie-level-tip"))
                .setName("piece.tie.level");
        Forms.caption(upright, says.text("piece-tie-upright"), says.text("piece-tie-upright-tip"))
                .setName("piece.tie.upright");
        Forms.caption(nearest, says.text("piece-nearest"), says.text("piece-nearest-tip"))
                .setName("piece.nearest");
        level.setOpaque(false);
        upright.setOpaque(false);
        level.addActionListener(event -> tie());
        upright.addActionListener(event -> tie());
        nearest.addActionListener(event -> piece.nearest());
        middle.setOpaque(false);
        middle.add(level);
        middle.add(upright);
        middle.add(nearest, "gaptop 4, center");
        add(middle);
        setFocusTraversalPolicyProvider(true);
        setFocusTraversalPolicy(new PieceOrder(this));
        piece.listen(this::follow);
        follow();
    }

    /** The fields in working order, then what ties them. */
    List<Component> inOrder() {
        return List.of(
                sides.get(Side.TOP), sides.get(Side.LEFT), sides.get(Side.BOTTOM), sides.get(Side.RIGHT), middle);
    }

    /** The field of a side. */
    JComponent field(Side side) {
        return sides.get(side).field();
    }

    private void tie() {
        piece.tie(new Ties(level.isSelected(), upright.isSelected()));
    }

    private void follow() {
        sides.values().forEach(PieceSide::follow);
        level.setSelected(piece.ties().topAndBottom());
        upright.setSelected(piece.ties().leftAndRight());
        nearest.setVisible(!piece.isNearest());
        getAccessibleContext().setAccessibleDescription(piece.outcome().headline());
        revalidate();
        repaint();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (sides != null && sides.size() == Side.values().length) {
            sides.values().forEach(PieceSide::follow);
        }
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(700, 580);
    }

    @Override
    public void doLayout() {
        PieceBox box = box();
        Rectangle2D inner = box.inner();
        for (Map.Entry<Side, PieceSide> entry : sides.entrySet()) {
            Dimension size = entry.getValue().getPreferredSize();
            double x = switch (entry.getKey()) {
                case LEFT -> inner.getMinX() + INSIDE_PX;
                case RIGHT -> inner.getMaxX() - INSIDE_PX - size.width;
                case TOP, BOTTOM -> inner.getCenterX() - size.width / 2.0;
            };
            double y = switch (entry.getKey()) {
                case TOP -> inner.getMinY() + INSIDE_PX;
                case BOTTOM -> inner.getMaxY() - INSIDE_PX - size.height;
                case LEFT, RIGHT -> inner.getCenterY() - size.height / 2.0;
            };
            entry.getValue().setBounds((int) Math.round(x), (int) Math.round(y), size.width, size.height);
        }
        Dimension size = middle.getPreferredSize();
        middle.setBounds(
                (int) Math.round(inner.getCenterX() - size.width / 2.0),
                (int) Math.round(inner.getCenterY() - size.height / 2.0),
                size.width,
                size.height);
    }

    private PieceBox box() {
        Optional<PerSide<Integer>> known = piece.outcome().targets().map(targets -> targets.wanted());
        double proportion = known.map(stitches ->
                        (stitches.top() + stitches.bottom() + 0.0) / Math.max(1, stitches.left() + stitches.right()))
                .orElse(0.0);
        return PieceBox.in(
                getWidth(), getHeight(), proportion, piece.chart().rounds().size());
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setColor(Look.colour("canvas"));
        g.fillRect(0, 0, getWidth(), getHeight());
        new PiecePainter(g, box(), piece, says).paint();
        g.dispose();
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.PANEL;
                }
            };
            accessibleContext.setAccessibleName(says.text("piece-drawing"));
        }
        return accessibleContext;
    }
}
