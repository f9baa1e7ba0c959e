package edgewright.desk.piece;

import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.desk.fitting.Piece;
import edgewright.desk.parts.Look;
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
import javax.swing.JComponent;

/**
 * The piece as a box with its border around it. The fields of the sides lie on it, each at its side; marks on the border show
 * where something is done.
 */
final class PieceDrawing extends JComponent {
    private static final int INSIDE_PX = 14;
    private static final int GAP_PX = 6;

    private final transient Messages says;
    private final transient Piece piece;
    private final Map<Side, PieceSide> sides = new EnumMap<>(Side.class);

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
                    .addActionListener(
                            event -> sides.get(piece.hand().after(side)).field().requestFocusInWindow());
        }
        setFocusTraversalPolicyProvider(true);
        setFocusTraversalPolicy(new PieceTabOrder(this));
        piece.listen(change -> follow());
        follow();
    }

    /** The fields in the order in which the hand comes to the sides. */
    List<Component> inOrder() {
        return piece.hand().workingOrder().stream().<Component>map(sides::get).toList();
    }

    /** The field of a side. */
    JComponent field(Side side) {
        return sides.get(side).field();
    }

    private void follow() {
        sides.values().forEach(PieceSide::follow);
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

    /** The least size at which nothing lies on anything else; there may be more room. */
    @Override
    public Dimension getPreferredSize() {
        return PieceBox.around(fields());
    }

    /** The room that the fields need within the piece. */
    private Dimension fields() {
        Dimension top = sides.get(Side.TOP).getPreferredSize();
        Dimension bottom = sides.get(Side.BOTTOM).getPreferredSize();
        Dimension left = sides.get(Side.LEFT).getPreferredSize();
        Dimension right = sides.get(Side.RIGHT).getPreferredSize();
        int level = Math.max(top.width, bottom.width);
        int upright = Math.max(left.height, right.height);
        return new Dimension(
                Math.max(level, left.width + GAP_PX + right.width) + 2 * INSIDE_PX,
                top.height + upright + bottom.height + 2 * GAP_PX + 2 * INSIDE_PX);
    }

    @Override
    public void doLayout() {
        Rectangle2D room = PieceBox.within(getWidth(), getHeight(), fields());
        for (Map.Entry<Side, PieceSide> entry : sides.entrySet()) {
            Dimension size = entry.getValue().getPreferredSize();
            double x = switch (entry.getKey()) {
                case LEFT -> room.getMinX() + INSIDE_PX;
                case RIGHT -> room.getMaxX() - INSIDE_PX - size.width;
                case TOP, BOTTOM -> room.getCenterX() - size.width / 2.0;
            };
            double y = switch (entry.getKey()) {
                case TOP -> room.getMinY() + INSIDE_PX;
                case BOTTOM -> room.getMaxY() - INSIDE_PX - size.height;
                case LEFT, RIGHT -> room.getCenterY() - size.height / 2.0;
            };
            entry.getValue().setBounds((int) Math.round(x), (int) Math.round(y), size.width, size.height);
        }
    }

    private PieceBox box() {
        Optional<PerSide<Integer>> known = piece.outcome().targets().map(targets -> targets.wanted());
        double proportion = known.map(stitches ->
                        (stitches.top() + stitches.bottom() + 0.0) / Math.max(1, stitches.left() + stitches.right()))
                .orElse(0.0);
        return PieceBox.in(
                getWidth(), getHeight(), proportion, piece.chart().rounds().size(), fields());
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
