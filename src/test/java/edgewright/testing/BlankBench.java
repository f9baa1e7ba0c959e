package edgewright.testing;

import edgewright.chart.Chart;
import edgewright.chart.SideShape;
import edgewright.desk.Desk;
import edgewright.desk.work.Workbench;
import edgewright.texts.English;
import java.util.Optional;

/** A bench to draw on, with nothing drawn yet. */
public final class BlankBench {
    private static final int ROUNDS = 6;

    private BlankBench() {}

    /** Six rounds of back-loop stitches in two yarns, on a chart that has no file. */
    public static Workbench of(SideShape shape) {
        return new Workbench(
                Chart.blank(
                        "Reed Bank", shape, ROUNDS, Desk.blank(English.LANGUAGE).yarns()),
                Optional.empty(),
                English.LANGUAGE);
    }
}
