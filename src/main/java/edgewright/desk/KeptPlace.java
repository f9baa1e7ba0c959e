package edgewright.desk;

import edgewright.desk.work.Settings;
import java.awt.Frame;
import java.awt.GraphicsDevice;
import java.awt.GraphicsEnvironment;
import java.awt.Insets;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Where a window stood last and how large it was, from one day to the next, within the screens that there are by then. */
final class KeptPlace {
    private static final String FULL = "full";

    private KeptPlace() {}

    /** Puts a window where it stood last; false if nothing is remembered of it. */
    static boolean restore(Frame window, Settings settings) {
        String kept = settings.kept(name(window));
        Optional<Rectangle> place = read(kept);
        place.ifPresent(wanted -> {
            window.setBounds(within(wanted, screens()));
            if (kept.endsWith(FULL)) {
                window.setExtendedState(Frame.MAXIMIZED_BOTH);
            }
        });
        return place.isPresent();
    }

    /** Has the settings remember where a window stands. One that fills its screen keeps the place it would go back to. */
    static void keep(Frame window, Settings settings) {
        boolean full = (window.getExtendedState() & Frame.MAXIMIZED_BOTH) == Frame.MAXIMIZED_BOTH;
        Rectangle at = full ? read(settings.kept(name(window))).orElseGet(window::getBounds) : window.getBounds();
        settings.keep(name(window), at.x + " " + at.y + " " + at.width + " " + at.height + (full ? " " + FULL : ""));
    }

    private static String name(Frame window) {
        return "window." + window.getName();
    }

    private static Optional<Rectangle> read(String kept) {
        if (!kept.matches("-?\\d{1,6} -?\\d{1,6} \\d{1,6} \\d{1,6}( " + FULL + ")?")) {
            return Optional.empty();
        }
        int[] numbers =
                Stream.of(kept.split(" ")).limit(4).mapToInt(Integer::parseInt).toArray();
        return Optional.of(new Rectangle(numbers[0], numbers[1], numbers[2], numbers[3]));
    }

    /**
     * The place that is nearest to the wanted one on the screen that has most of it, or on the first screen if none has any:
     * no larger than the screen, and wholly on it.
     *
     * @param screens without what the machine keeps for itself; at least one
     */
    static Rectangle within(Rectangle wanted, List<Rectangle> screens) {
        Rectangle screen = screens.stream()
                .max(Comparator.comparingLong(each -> shared(each, wanted)))
                .filter(best -> shared(best, wanted) > 0)
                .orElse(screens.get(0));
        int width = Math.min(wanted.width, screen.width);
        int height = Math.min(wanted.height, screen.height);
        int x = Math.max(screen.x, Math.min(wanted.x, screen.x + screen.width - width));
        int y = Math.max(screen.y, Math.min(wanted.y, screen.y + screen.height - height));
        return new Rectangle(x, y, width, height);
    }

    private static long shared(Rectangle screen, Rectangle wanted) {
        Rectangle both = screen.intersection(wanted);
        return both.isEmpty() ? 0 : (long) both.width * both.height;
    }

    private static List<Rectangle> screens() {
        GraphicsEnvironment machine = GraphicsEnvironment.getLocalGraphicsEnvironment();
        return Stream.concat(Stream.of(machine.getDefaultScreenDevice()), Stream.of(machine.getScreenDevices()))
                .map(GraphicsDevice::getDefaultConfiguration)
                .map(screen -> {
                    Rectangle bounds = screen.getBounds();
                    Insets taken = Toolkit.getDefaultToolkit().getScreenInsets(screen);
                    return new Rectangle(
                            bounds.x + taken.left,
                            bounds.y + taken.top,
                            bounds.width - taken.left - taken.right,
                            bounds.height - taken.top - taken.bottom);
                })
                .toList();
    }
}
