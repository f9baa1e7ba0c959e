package edgewright.desk.canvas;

import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;

/** Does the same whether a part has been given the keys or has lost them. */
record WhenFocusMoves(Runnable deed) implements FocusListener {
    @Override
    public void focusGained(FocusEvent event) {
        deed.run();
    }

    @Override
    public void focusLost(FocusEvent event) {
        deed.run();
    }
}
