package edgewright.desk.parts;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.fonts.inter.FlatInterFont;
import edgewright.chart.Colour;
import edgewright.desk.work.Looks;
import edgewright.desk.work.Theme;
import edgewright.desk.work.TypeSize;
import edgewright.draw.paint.ColourVision;
import edgewright.draw.paint.Palette;
import edgewright.texts.Language;
import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.GraphicsConfiguration;
import java.awt.Insets;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.Window;
import java.util.Locale;
import java.util.Map;
import javax.swing.InputMap;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JRootPane;
import javax.swing.KeyStroke;
import javax.swing.LayoutFocusTraversalPolicy;
import javax.swing.SwingUtilities;
import javax.swing.UIDefaults;
import javax.swing.UIManager;
import javax.swing.text.JTextComponent;
import net.miginfocom.layout.PlatformDefaults;

/**
 * How the desk looks in each theme. Light and dark are chalk and peat, with the sea lavender of a salt marsh for what is chosen. The colours
 * and measures lie in {@code edgewright/desk/look}; the typeface comes with the program, never from the machine.
 */
public final class Look {
    /** The desk is denser than other windows: 13 where those have 14. */
    private static final double SHARE_OF_MACHINE = 13.0 / 14;

    private static final String FOREGROUND = "Edgewright.foreground";
    private static final String BACKGROUND = "Edgewright.background";
    private static final float USUAL_FONT_PX = 13;
    private static final String VISION = "Edgewright.vision";

    private Look() {}

    /**
     * Has Swing write its own texts and numbers in the language of the desk, whatever Java speaks on this machine. To be called
     * before there is a window. The country stays, since paper goes by it.
     */
    public static void speak(Language language) {
        // A text that Swing does not find in a language it looks for in that of the machine.
        Locale locale = Locale.forLanguageTag(language.tag());
        Locale.setDefault(new Locale(locale.getLanguage(), Locale.getDefault().getCountry()));
        JComponent.setDefaultLocale(locale);
    }

    /** Gives every window, open or still to come, the colours of a theme, and letters of the machine's size. */
    public static void setUp(Theme theme) {
        setUp(new Looks(theme, TypeSize.PERCENT_100));
    }

    /** Gives every window, open or still to come, this look. */
    public static void setUp(Looks looks) {
        FlatLaf.setGlobalExtraDefaults(Map.of(
                "defaultFont",
                Math.round(looks.size().percent() * SHARE_OF_MACHINE) + "% \"" + FlatInterFont.FAMILY + "\""));
        FlatInterFont.installLazy();
        FlatLaf.setPreferredFontFamily(FlatInterFont.FAMILY);
        FlatLaf.setPreferredSemiboldFontFamily(FlatInterFont.FAMILY_SEMIBOLD);
        FlatLaf.registerCustomDefaultsSource("edgewright.desk.look");
        FlatLaf.setup(
                switch (looks.theme()) {
                    case LIGHT -> new Day();
                    case DARK -> new Night();
                    case HIGH_CONTRAST -> new HighContrast();
                });
        PlatformDefaults.setHorizontalScaleFactor(scale());
        PlatformDefaults.setVerticalScaleFactor(scale());
        freeKeys();
        // The first root pane of a program has Swing set an order of its own, which must not come after this one.
        new JRootPane();
        KeyboardFocusManager.getCurrentKeyboardFocusManager().setDefaultFocusTraversalPolicy(new TabStops());
        FlatLaf.updateUI();
        for (Window window : Window.getWindows()) {
            colourAnew(window);
        }
    }

    private static final class Day extends FlatLightLaf {
        @Override
        public UIDefaults getDefaults() {
            return PlainText.lawFor(super.getDefaults());
        }
    }

    /** The file with its colours has its name, with that of this class before it. */
    private static final class HighContrast extends FlatDarkLaf {
        @Override
        public UIDefaults getDefaults() {
            return PlainText.lawFor(super.getDefaults());
        }
    }

    /** Where the tabulator stops: at all that can be worked with, but not at running text, which is only read. */
    private static final class TabStops extends LayoutFocusTraversalPolicy {
        @Override
        protected boolean accept(Component part) {
            boolean isProse = part instanceof JTextComponent text && !text.isEditable();
            return !isProse && super.accept(part);
        }
    }

    private static final class Night extends FlatDarkLaf {
        @Override
        public UIDefaults getDefaults() {
            return PlainText.lawFor(super.getDefaults());
        }
    }

    /** Frees the keys that the desk has for commands from what splits and tabs would do with them first. */
    private static void freeKeys() {
        free("SplitPane.ancestorInputMap", "F6", "ctrl TAB", "ctrl shift TAB");
        free("TabbedPane.ancestorInputMap", "ctrl UP", "ctrl KP_UP", "ctrl PAGE_UP", "ctrl PAGE_DOWN");
    }

    private static void free(String bindings, String... keys) {
        if (UIManager.get(bindings) instanceof InputMap map) {
            for (String key : keys) {
                map.remove(KeyStroke.getKeyStroke(key));
            }
        }
    }

    /** Gives parts that were out of their window while the look has changed the look that it has now. */
    public static void renew(Component part) {
        SwingUtilities.updateComponentTreeUI(part);
        colourAnew(part);
    }

    /** Writes a component in a colour of the look, also after the look has changed. */
    public static void write(JComponent component, String role) {
        component.putClientProperty(FOREGROUND, role);
        component.setForeground(own(role));
    }

    /** Gives a component a colour of the look for its ground, also after the look has changed. */
    public static void ground(JComponent component, String role) {
        component.putClientProperty(BACKGROUND, role);
        component.setBackground(own(role));
    }

    /** The colour as one of our own: one of the look gives way to what a style says. */
    private static Color own(String role) {
        return new Color(colour(role).getRGB());
    }

    private static void colourAnew(Component part) {
        if (part instanceof JComponent component) {
            if (component.getClientProperty(FOREGROUND) instanceof String role) {
                component.setForeground(own(role));
            }
            if (component.getClientProperty(BACKGROUND) instanceof String role) {
                component.setBackground(own(role));
            }
        }
        if (part instanceof Container container) {
            for (Component inner : container.getComponents()) {
                colourAnew(inner);
            }
        }
    }

    /** Has the cards of yarn in all windows look as somebody sees them. */
    public static void see(ColourVision vision) {
        if (vision() != vision) {
            UIManager.put(VISION, vision);
            for (Window window : Window.getWindows()) {
                window.repaint();
            }
        }
    }

    /** How the colours of yarns are seen. */
    static ColourVision vision() {
        return UIManager.get(VISION) instanceof ColourVision vision ? vision : ColourVision.FULL;
    }

    /** Whether the desk is dark now. */
    public static boolean isDark() {
        return FlatLaf.isLafDark();
    }

    /** A colour of the look: canvas, paper, quiet, line, accent, cursor, error, warning or good. */
    public static Color colour(String role) {
        Color colour = UIManager.getColor("Edgewright." + role);
        if (colour == null) {
            throw new IllegalArgumentException("the look has no colour '" + role + "'");
        }
        return colour;
    }

    /** The colours of the chart, on the paper of the look and with its accent. */
    public static Palette palette() {
        Palette usual = UIManager.getLookAndFeel() instanceof HighContrast
                ? Palette.HIGH_CONTRAST
                : isDark() ? Palette.DARK : Palette.LIGHT;
        return new Palette(
                new Colour(colour("paper").getRGB() & 0xffffff),
                usual.ink(),
                usual.quietInk(),
                usual.grid(),
                usual.tenth(),
                usual.base(),
                new Colour(colour("accent").getRGB() & 0xffffff),
                usual.error(),
                usual.warning());
    }

    /** The heading of a part of the window. */
    public static JLabel heading(String text) {
        JLabel heading = new JLabel(text);
        heading.putClientProperty("FlatLaf.styleClass", "h4");
        return heading;
    }

    /** A label that stands back: still readable on its ground, but said more softly. */
    public static JLabel quiet(String text) {
        JLabel label = new JLabel(text);
        write(label, "quiet");
        return label;
    }

    /** As large as is comfortable for a window, but within the screen on which this one is. */
    public static Dimension onScreen(Window window, int widthPx, int heightPx) {
        GraphicsConfiguration screen = window.getGraphicsConfiguration();
        Rectangle bounds = screen.getBounds();
        Insets taken = Toolkit.getDefaultToolkit().getScreenInsets(screen);
        return new Dimension(
                Math.min(px(widthPx), bounds.width - taken.left - taken.right),
                Math.min(px(heightPx), bounds.height - taken.top - taken.bottom));
    }

    /** The typeface of the desk in another size, which grows with all letters. */
    public static Font font(float size) {
        return UIManager.getFont("Label.font").deriveFont(size * scale());
    }

    /** A length that grows with the letters. */
    public static int px(int usual) {
        return Math.round(usual * scale());
    }

    /** How much larger the letters are than those for which the measures of the desk were chosen. */
    private static float scale() {
        return UIManager.getFont("Label.font").getSize2D() / USUAL_FONT_PX;
    }
}
