package edgewright.draw.fabric;

import edgewright.chart.Colour;
import edgewright.draw.paint.ColourMixing;
import edgewright.draw.paint.Frame;
import edgewright.draw.paint.PenPath;
import edgewright.draw.paint.Shape;
import java.util.ArrayList;
import java.util.List;

/** Draws strands of one yarn, in light that falls from the top of the paper. */
final class YarnBrush {
    /** How far the shadow of a raised strand falls. */
    private static final double SHADOW = 0.07;

    private final Tones tones;
    private final Frame frame;
    private final Detail detail;
    private final List<Shape> shapes = new ArrayList<>();
    private final double lightAlong;
    private final double lightOut;
    private final double cellMm;

    /** @param frame of the cell, one wide */
    YarnBrush(Tones tones, Frame frame, Detail detail) {
        this.tones = tones;
        this.frame = frame;
        this.detail = detail;
        this.cellMm = Math.hypot(frame.alongXMm(), frame.alongYMm());
        this.lightAlong = -frame.alongYMm() / cellMm;
        this.lightOut = -frame.outYMm() / cellMm;
    }

    List<Shape> shapes() {
        return shapes;
    }

    /** A strand that lies over what is drawn already, and throws its shadow on it. */
    void raised(Strand strand) {
        PenPath shadow = strand.outline(1, 0, -SHADOW, detail == Detail.SIMPLE ? 4 : 6);
        shapes.add(new Shape.Fill(shadow.through(frame), tones.edge()));
        if (detail == Detail.SIMPLE) {
            layer(strand, 0.86, 0.1, tones.light(), 4);
        } else {
            strand(strand);
        }
    }

    /** What is open between strands, in their shadow. */
    void dark(Strand strand) {
        if (detail != Detail.SIMPLE) {
            layer(strand, 1, 0, ColourMixing.shade(tones.hollow(), 0.35), 4);
        }
    }

    /** A strand in the shadow of others. */
    void deep(Strand strand) {
        if (detail != Detail.SIMPLE) {
            layer(strand, 1, 0, tones.groove(), 4);
            layer(strand, 0.6, 0.1, tones.shade(), 4);
        }
    }

    void strand(Strand strand) {
        switch (detail) {
            case SIMPLE -> layer(strand, 0.86, 0.1, tones.body(), 4);
            case STRANDS -> {
                layer(strand, 1, 0, tones.edge(), 6);
                layer(strand, 0.84, 0.06, tones.shade(), 6);
                layer(strand, 0.62, 0.2, tones.body(), 6);
                layer(strand, 0.3, 0.4, tones.light(), 6);
            }
            case PLIES -> {
                layer(strand, 1, 0, tones.edge(), 6);
                layer(strand, 0.86, 0.05, tones.shade(), 6);
                layer(strand, 0.7, 0.14, tones.body(), 6);
                layer(strand, 0.46, 0.3, tones.light(), 6);
                layer(strand, 0.2, 0.46, tones.shine(), 6);
                shapes.add(new Shape.Line(strand.grooves().through(frame), Strand.GROOVE * cellMm, tones.groove()));
            }
        }
    }

    /** @param towardsLight how far it lies towards the light, in parts of half the thickness that is left */
    private void layer(Strand strand, double part, double towardsLight, Colour colour, int steps) {
        double shift = towardsLight * (1 - part) * strand.middle();
        PenPath path = strand.outline(part, shift * lightAlong, shift * lightOut, steps);
        shapes.add(new Shape.Fill(path.through(frame), colour));
    }
}
