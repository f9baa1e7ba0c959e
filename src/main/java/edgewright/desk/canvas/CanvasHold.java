package edgewright.desk.canvas;

import java.awt.Cursor;
import java.awt.Point;
import java.awt.event.ActionEvent;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.KeyEvent;
import java.awt.event.KeyListener;
import java.awt.event.MouseEvent;
import java.util.Optional;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;

/**
 * The space bar, held: the chart is taken hold of, and moves with the mouse as long as the left button is down. A bar that is
 * only tapped does what the key says; so its press waits until it is known which of the two it is. Where the focus goes, the bar
 * is let go, and the frame of the cursor is drawn otherwise.
 */
final class CanvasHold implements KeyListener, FocusListener {
    /** Whoever holds the bar for longer, in milliseconds between the two events, has not tapped it. */
    private static final long LONGEST_TAP_MS = 350;

    /** A bar that is held repeats itself: on some systems it is reported as let go and pressed again at one and the same time. */
    private static final long REPEAT_MS = 2;

    private final ChartCanvas canvas;
    private boolean down;
    private boolean used;
    private long pressed;
    private long released;
    private Optional<Point> grip = Optional.empty();

    CanvasHold(ChartCanvas canvas) {
        this.canvas = canvas;
    }

    @Override
    public void keyPressed(KeyEvent event) {
        if (event.getKeyCode() != KeyEvent.VK_SPACE || (event.getModifiersEx() != 0 && grip.isEmpty())) {
            return;
        }
        event.consume();
        if (!down && event.getWhen() - released > REPEAT_MS) {
            used = false;
            pressed = event.getWhen();
        }
        down = true;
        canvas.setCursor(Cursor.getPredefinedCursor(Cursor.MOVE_CURSOR));
    }

    @Override
    public void keyReleased(KeyEvent event) {
        if (event.getKeyCode() != KeyEvent.VK_SPACE || !down) {
            return;
        }
        event.consume();
        released = event.getWhen();
        boolean tapped = !used && released - pressed <= LONGEST_TAP_MS;
        letGo();
        if (tapped) {
            canvas.getActionMap()
                    .get(CanvasKeys.AT_SPACE)
                    .actionPerformed(new ActionEvent(canvas, ActionEvent.ACTION_PERFORMED, " ", released, 0));
        }
    }

    @Override
    public void keyTyped(KeyEvent event) {}

    /** Moves the chart, if it is held; whether it was, so that nothing else is done with the mouse. */
    boolean takes(MouseEvent event) {
        boolean isLeft = SwingUtilities.isLeftMouseButton(event);
        if (event.getID() == MouseEvent.MOUSE_PRESSED && down && isLeft) {
            used = true;
            grip = Optional.of(event.getLocationOnScreen());
            return true;
        }
        if (grip.isEmpty()) {
            return false;
        }
        if (event.getID() == MouseEvent.MOUSE_DRAGGED) {
            Point from = grip.get();
            Point to = event.getLocationOnScreen();
            if (canvas.getParent() instanceof JViewport window) {
                CanvasWindow.drag(window, canvas, to.x - from.x, to.y - from.y);
            }
            grip = Optional.of(to);
            return true;
        }
        if (event.getID() == MouseEvent.MOUSE_RELEASED && isLeft) {
            grip = Optional.empty();
            return true;
        }
        return event.getID() == MouseEvent.MOUSE_CLICKED;
    }

    private void letGo() {
        down = false;
        canvas.setCursor(null);
    }

    @Override
    public void focusGained(FocusEvent event) {
        canvas.repaintCursor();
    }

    @Override
    public void focusLost(FocusEvent event) {
        letGo();
        canvas.repaintCursor();
    }
}
