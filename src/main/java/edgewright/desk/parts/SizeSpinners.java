package edgewright.desk.parts;

import edgewright.chart.PerSide;
import edgewright.desk.work.ChartView;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;

/**
 * How often the repeat is worked at top and bottom, and at left and right. The desk has one size: whatever shows it changes it
 * everywhere.
 */
public final class SizeSpinners {
    private static final int MOST_REPEATS = 9_999;

    private final ChartView view;
    private final JSpinner level;
    private final JSpinner upright;
    /** Set while the numbers follow the view: between the two settings they are of no size that anybody chose. */
    private boolean following;

    /** The two numbers of this view, under these names. */
    public SizeSpinners(ChartView view, String levelName, String uprightName) {
        this.view = view;
        level = spinner(levelName, view.repeats().top());
        upright = spinner(uprightName, view.repeats().left());
        level.addChangeListener(event -> tell());
        upright.addChangeListener(event -> tell());
        view.listen(this::follow);
    }

    public JSpinner level() {
        return level;
    }

    public JSpinner upright() {
        return upright;
    }

    private void tell() {
        if (following) {
            return;
        }
        int across = FormDialog.value(level);
        int down = FormDialog.value(upright);
        view.resize(PerSide.pairs(across, down));
    }

    private void follow() {
        following = true;
        level.setValue(view.repeats().top());
        upright.setValue(view.repeats().left());
        following = false;
    }

    private static JSpinner spinner(String name, int repeats) {
        JSpinner spinner = new JSpinner(new SpinnerNumberModel(repeats, 0, MOST_REPEATS, 1));
        spinner.setName(name);
        TypedNumber.in(spinner);
        return spinner;
    }
}
