package edgewright.desk.parts;

import java.awt.Dimension;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTabbedPane;

/**
 * A form with something to look at beside it, which takes the room that the form leaves. Where there is too little for both,
 * because the screen is small or the letters are large, each lies on a tab of its own.
 */
final class FormBeside extends JPanel {
    private static final int GAP_PX = 18;

    private final JScrollPane scroll;
    private final JComponent form;
    private final JComponent view;
    private final String formTitle;
    private final String viewTitle;

    /** @param scroll in which the form lies */
    FormBeside(JScrollPane scroll, JComponent form, String formTitle, JComponent view, String viewTitle) {
        super(null);
        this.scroll = scroll;
        this.form = form;
        this.view = view;
        this.formTitle = formTitle;
        this.viewTitle = viewTitle;
        setOpaque(false);
        add(scroll);
        add(view);
    }

    @Override
    public Dimension getPreferredSize() {
        Dimension left = scroll.getPreferredSize();
        Dimension right = view.getPreferredSize();
        return new Dimension(left.width + gap() + right.width, Math.max(left.height, right.height));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(0, 0);
    }

    @Override
    public void doLayout() {
        int room = getWidth() - gap() - view.getMinimumSize().width;
        boolean bothFit = room >= leastOfForm();
        if (bothFit == isOnTabs()) {
            lay(bothFit);
        }
        if (bothFit) {
            int left = Math.min(room, scroll.getPreferredSize().width + bar());
            scroll.setBounds(0, 0, left, getHeight());
            view.setBounds(left + gap(), 0, getWidth() - left - gap(), getHeight());
        } else {
            getComponent(0).setBounds(0, 0, getWidth(), getHeight());
        }
    }

    private boolean isOnTabs() {
        return Stream.of(getComponents()).anyMatch(JTabbedPane.class::isInstance);
    }

    private void lay(boolean both) {
        removeAll();
        if (both) {
            add(scroll);
            add(view);
        } else {
            JTabbedPane tabs = new JTabbedPane();
            tabs.setName("form.tabs");
            tabs.addTab(formTitle, scroll);
            tabs.addTab(viewTitle, view);
            add(tabs);
        }
    }

    private int leastOfForm() {
        return form.getMinimumSize().width + bar();
    }

    /** Room for the bar by which the form scrolls where it is too high. */
    private int bar() {
        return scroll.getVerticalScrollBar().getPreferredSize().width;
    }

    private static int gap() {
        return Look.px(GAP_PX);
    }
}
