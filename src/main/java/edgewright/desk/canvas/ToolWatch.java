package edgewright.desk.canvas;

import edgewright.desk.tool.Toolbox;
import edgewright.desk.work.WorkbenchChange;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;

/** Has the canvas show again what depends on the focus, on the tool and on the mirrors. */
final class ToolWatch implements FocusListener {
    private final ChartCanvas canvas;

    private ToolWatch(ChartCanvas canvas) {
        this.canvas = canvas;
    }

    /** Watches for a canvas from now on. Called after the canvas itself follows its bench. */
    static void on(ChartCanvas canvas) {
        ToolWatch watch = new ToolWatch(canvas);
        canvas.addFocusListener(watch);
        canvas.toolbox().listen(watch::toolChanged);
        canvas.bench().listen(watch::benchChanged);
    }

    private void benchChanged(WorkbenchChange change) {
        if (change.kind() != WorkbenchChange.Kind.CURSOR && change.kind() != WorkbenchChange.Kind.SAVED) {
            canvas.ghost().follow();
        }
    }

    private void toolChanged(Toolbox.Change change) {
        if (change != Toolbox.Change.GHOST) {
            canvas.ghost().follow();
            canvas.repaintCursor();
            canvas.repaint();
        }
    }

    @Override
    public void focusGained(FocusEvent event) {
        canvas.repaintCursor();
    }

    @Override
    public void focusLost(FocusEvent event) {
        canvas.repaintCursor();
    }
}
