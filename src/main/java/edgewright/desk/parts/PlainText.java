package edgewright.desk.parts;

import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import javax.swing.JComponent;
import javax.swing.JToolTip;
import javax.swing.UIDefaults;
import javax.swing.plaf.ComponentUI;

/**
 * The law that no text is ever HTML to a component. Swing takes each label, button, tool tip and line of a list whose text
 * begins with {@code <html>} for a page, and fetches its pictures from wherever they lie; but titles, names of yarns and names
 * of files are written by others. So every component is told to take its text as it stands at the moment in which it gets its
 * look, also those that Swing makes itself, as in the choice of a file.
 */
public final class PlainText {
    /** Swing's own name for it. */
    private static final String HTML_DISABLE = "html.disable";

    private static final int TIP_PX = 520;
    private static final int TIP_LINES = 8;

    /** What makes the look of each kind of component. */
    private static final Map<String, String> LOOKS = new ConcurrentHashMap<>();

    private PlainText() {}

    /** The defaults of a look, with this law put before what they make of a component. */
    static UIDefaults lawFor(UIDefaults look) {
        for (Object key : new ArrayList<>(look.keySet())) {
            if (key instanceof String kind && kind.endsWith("UI") && look.get(kind) instanceof String maker) {
                LOOKS.put(kind, maker);
                look.put(kind, PlainText.class.getName());
            }
        }
        look.put(PlainText.class.getName(), PlainText.class);
        return look;
    }

    /** Called by Swing for each component that gets its look. */
    public static ComponentUI createUI(JComponent component) {
        only(component);
        String maker = LOOKS.get(component.getUIClassID());
        try {
            return (ComponentUI)
                    Class.forName(maker).getMethod("createUI", JComponent.class).invoke(null, component);
        } catch (InvocationTargetException e) {
            throw new IllegalStateException(maker, e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(maker, e);
        }
    }

    /** Has a component take its text as it stands; for one that brings a look of its own. */
    static void only(JComponent component) {
        component.putClientProperty(HTML_DISABLE, true);
        if (component instanceof JToolTip tip && tip.getClientProperty(PlainText.class) == null) {
            tip.putClientProperty(PlainText.class, true);
            tip.addPropertyChangeListener("tiptext", event -> wrap(tip));
        }
    }

    /** A tip of any length in lines. */
    private static void wrap(JToolTip tip) {
        String text = tip.getTipText();
        if (text != null) {
            tip.setTipText(ShortText.inLines(text, tip.getFontMetrics(tip.getFont()), TIP_PX, TIP_LINES));
        }
    }
}
