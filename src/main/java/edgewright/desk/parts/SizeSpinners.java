package edgewright.desk.parts;

import edgewright.chart.PerSide;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.ViewChange;
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

    /** The two numbers of this view, under these names. */
    public SizeSpinners(ChartView view, String levelName, String uprightName) {
        this.view = view;
        level = spinner(levelName, view.repeats().top());
        upright = spinner(uprightName, view.repeats().left());
        // Each says its own number only: while the two follow the view they are of no size that anybody chose.
        level.addChangeListener(event -> view.resize(
                PerSide.pairs(FormDialog.value(level), view.repeats().left())));
        upright.addChangeListener(
                event -> view.resize(PerSide.pairs(view.repeats().top(), FormDialog.value(upright))));
        view.listen(change -> {
            if (change == ViewChange.REPEATS) {
                follow();
            }
        });
    }

    public JSpinner level() {
        return level;
    }

    public JSpinner upright() {
        return upright;
    }

    private void follow() {
        level.setValue(view.repeats().top());
        upright.setValue(view.repeats().left());
    }

    private static JSpinner spinner(String name, int repeats) {
        JSpinner spinner = new JSpinner(new SpinnerNumberModel(repeats, 0, MOST_REPEATS, 1));
        spinner.setName(name);
        TypedNumber.in(spinner);
        return spinner;
    }
}
