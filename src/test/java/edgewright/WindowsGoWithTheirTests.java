package edgewright;

import java.awt.GraphicsEnvironment;
import java.awt.Window;
import java.lang.reflect.InvocationTargetException;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * Empties every window that a class of window tests has left, shown or not. Swing tells each of a new look, and a robot searches
 * each for parts, so the hundredth desk would be opened slower than the first.
 *
 * <p>JUnit finds it by itself, through {@code META-INF/services}.
 */
public final class WindowsGoWithTheirTests implements AfterAllCallback {
    @Override
    public void afterAll(ExtensionContext context) throws InvocationTargetException, InterruptedException {
        boolean window = context.getRequiredTestClass().getSimpleName().endsWith("WindowTest");
        if (window && !GraphicsEnvironment.isHeadless()) {
            SwingUtilities.invokeAndWait(WindowsGoWithTheirTests::empty);
        }
    }

    private static void empty() {
        for (Window window : Window.getWindows()) {
            window.dispose();
            if (window instanceof JFrame frame) {
                frame.setJMenuBar(null);
                frame.setContentPane(new JPanel());
            }
        }
    }
}
