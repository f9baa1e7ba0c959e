package edgewright.desk.parts;

import edgewright.desk.work.Settings;
import java.awt.Component;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JSplitPane;
import javax.swing.plaf.basic.BasicSplitPaneUI;

/**
 * Two panes, one of which keeps the size it was given while the other takes what is left. Where there is not room enough it gives
 * way down to its least size, and grows back as soon as there is: a split of its own accord only ever remembers the last size.
 */
public final class KeptSplit extends JSplitPane {
    /** Which of the two panes keeps its size. */
    public enum Keeps {
        FIRST,
        SECOND
    }

    private final Keeps keeps;
    private int wantedPx;
    private transient Optional<Settings> memory = Optional.empty();

    /**
     * A split.
     *
     * @param way as of {@link JSplitPane}
     * @param wantedPx the size of the pane that keeps it, before the scaling of the screen
     */
    public KeptSplit(String name, int way, Component first, Component second, Keeps keeps, int wantedPx) {
        super(way, first, second);
        this.keeps = keeps;
        this.wantedPx = wantedPx;
        setName(name);
        setResizeWeight(keeps == Keeps.FIRST ? 0 : 1);
        setContinuousLayout(true);
        setBorder(BorderFactory.createEmptyBorder());
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                // Laid out, the split shares out what its size has changed by; what is wanted stays only if set after
                // that.
                validate();
                settle();
            }
        });
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (getUI() instanceof BasicSplitPaneUI ui) {
            ui.getDivider().addMouseListener(new MouseAdapter() {
                @Override
                public void mouseReleased(MouseEvent event) {
                    wantedPx = keeps == Keeps.FIRST ? getDividerLocation() : room() - getDividerLocation();
                    memory.ifPresent(settings -> settings.keep("split." + getName(), String.valueOf(wantedPx)));
                }
            });
        }
    }

    /** Has the settings remember the size that is given to the pane, and gives it the one that they remember. */
    public KeptSplit remembered(Settings settings) {
        memory = Optional.of(settings);
        recall();
        return this;
    }

    private void recall() {
        String kept =
                memory.map(settings -> settings.kept("split." + getName())).orElse("");
        if (kept.matches("\\d{1,5}")) {
            wantedPx = Integer.parseInt(kept);
        }
    }

    @Override
    public void addNotify() {
        super.addNotify();
        // Another document may have been given another size meanwhile.
        recall();
        if (room() > 0) {
            settle();
        }
    }

    private void settle() {
        int least = least(getLeftComponent());
        int most = room() - least(getRightComponent());
        int wanted = keeps == Keeps.FIRST ? wantedPx : room() - wantedPx;
        setDividerLocation(Math.max(least, Math.min(wanted, most)));
    }

    private int room() {
        return along(getSize().width, getSize().height) - getDividerSize();
    }

    private int least(Component pane) {
        return along(pane.getMinimumSize().width, pane.getMinimumSize().height);
    }

    private int along(int width, int height) {
        return getOrientation() == HORIZONTAL_SPLIT ? width : height;
    }
}
