package edgewright.fit;

import edgewright.chart.Side;

/** The four edges of a bare piece. */
public record Edges(Edge top, Edge left, Edge bottom, Edge right) {
    /** A piece whose opposite edges are alike. */
    public static Edges rectangle(Edge level, Edge upright) {
        return new Edges(level, upright, level, upright);
    }

    /** The edge on this side. */
    public Edge of(Side side) {
        return switch (side) {
            case TOP -> top;
            case LEFT -> left;
            case BOTTOM -> bottom;
            case RIGHT -> right;
        };
    }
}
