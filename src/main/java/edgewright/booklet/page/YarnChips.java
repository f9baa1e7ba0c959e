package edgewright.booklet.page;

import edgewright.booklet.choice.Edition;
import edgewright.chart.Chart;
import edgewright.chart.Yarn;
import edgewright.draw.marks.Drawing;
import edgewright.draw.picture.YarnChip;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Small squares in the colours of the yarns, or hatched like their cells where there is no colour. */
public final class YarnChips {
    /** In parts of a line. */
    private static final double SIDE = 0.6;

    private static final double INDENT = 16 / 15.0;

    /** From one chip to the next beside it. */
    private static final double STEP = 0.75;

    private final PageLayout sheet;
    private final Map<String, Drawing> hatched = new HashMap<>();
    private final boolean colour;

    public YarnChips(Chart chart, PageLayout sheet, Edition edition) {
        this.sheet = sheet;
        this.colour = edition != Edition.BLACK_AND_WHITE;
        if (!colour) {
            for (Yarn yarn : chart.yarns()) {
                hatched.put(yarn.id(), YarnChip.hatched(chart, yarn.id(), sidePt() / PageLayout.PT_PER_MM));
            }
        }
    }

    /** From the left edge of a chip to what stands beside it. */
    public double indentPt() {
        return INDENT * sheet.linePt();
    }

    /** From the left edge of the first of so many chips to what stands beside the last; 0 for none. */
    public double indentPt(int chips) {
        return chips == 0 ? 0 : indentPt() + (chips - 1) * STEP * sheet.linePt();
    }

    /** The chips of some yarns side by side, in the first line. */
    public List<PageItem> of(List<Yarn> yarns) {
        List<PageItem> chips = new ArrayList<>();
        for (Yarn yarn : yarns) {
            chips.add(of(yarn, chips.size() * STEP * sheet.linePt(), 0));
        }
        return chips;
    }

    /** The chip of a yarn, in the line that begins at {@code yPt}. */
    public PageItem of(Yarn yarn, double xPt, double yPt) {
        double top = yPt + (sheet.linePt() - sidePt()) / 2;
        if (colour) {
            return new PageItem.Box(
                    xPt + 0.5,
                    top,
                    sidePt(),
                    sidePt(),
                    Optional.of(yarn.colour()),
                    Optional.of(PageColour.INK),
                    sheet.linePt() / 25);
        }
        Drawing chip = hatched.get(yarn.id());
        return new PageItem.Art(xPt + 0.5, top, sidePt(), sidePt(), () -> chip, 0, 0, 1);
    }

    private double sidePt() {
        return SIDE * sheet.linePt();
    }
}
