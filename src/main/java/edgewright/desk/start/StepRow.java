package edgewright.desk.start;

import java.awt.Component;
import java.awt.Dimension;
import java.util.List;
import javax.swing.JPanel;

/** The first steps side by side, each as wide as the others and as high as the one that says most. */
final class StepRow extends JPanel {
    private static final int GAP_PX = 10;

    private final transient List<StartStep> steps;

    StepRow(List<StartStep> steps) {
        super(null);
        this.steps = steps;
        setName("start.steps");
        setOpaque(false);
        steps.forEach(this::add);
    }

    @Override
    public void doLayout() {
        int width = width();
        int height = getPreferredSize().height;
        int x = 0;
        for (Component step : steps) {
            step.setBounds(x, 0, width, height);
            x += width + GAP_PX;
        }
    }

    @Override
    public Dimension getPreferredSize() {
        int width = width();
        int height = steps.stream().mapToInt(step -> step.heightAt(width)).max().orElse(0);
        return new Dimension(1, height);
    }

    private int width() {
        return Math.max(1, (getWidth() - (steps.size() - 1) * GAP_PX) / steps.size());
    }
}
