package edgewright.desk.parts;

import java.awt.Component;
import java.awt.event.HierarchyEvent;

/** Work for a window that is done only while that is shown; what was asked for meanwhile is done once, before it is seen again. */
public final class WhileShown implements Runnable {
    private final Component window;
    private final Runnable work;
    private boolean owed;

    /** Work that brings a window up to date. */
    public WhileShown(Component window, Runnable work) {
        this.window = window;
        this.work = work;
        window.addHierarchyListener(event -> {
            if ((event.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0 && owed && window.isShowing()) {
                run();
            }
        });
    }

    @Override
    public void run() {
        owed = !window.isShowing();
        if (!owed) {
            work.run();
        }
    }
}
