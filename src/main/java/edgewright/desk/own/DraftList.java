package edgewright.desk.own;

import edgewright.desk.parts.Forms;
import edgewright.desk.parts.Look;
import edgewright.texts.Messages;
import java.awt.Graphics;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import javax.swing.CellRendererPane;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** A list of what is being drafted, with buttons that take out what is chosen and move it; what is added is chosen. */
final class DraftList<T> extends JPanel {
    private final DefaultListModel<T> drafts = new DefaultListModel<>();
    private final JList<T> list;
    private final JButton remove;
    private final JButton up;
    private final JButton down;
    private transient Runnable chosen = () -> {};

    /**
     * @param name under which tests find it
     * @param add adds a draft
     * @param title what a draft is called in the list
     */
    DraftList(String name, List<T> before, JButton add, Function<T, String> title, Messages says) {
        super(new MigLayout("insets 0, gap 6, fill", "[grow, fill]", "[grow, fill][]"));
        before.forEach(drafts::addElement);
        list = new EmptyList<>(drafts, says.text("empty-" + name.replace("own.", "")));
        list.setName(name);
        list.getAccessibleContext().setAccessibleName(says.text("list-" + name.replace("own.", "")));
        list.setVisibleRowCount(5);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(Forms.renderer(title));
        remove = Forms.caption(new JButton(), says.text("remove"));
        up = Forms.caption(new JButton(), says.text("up"));
        down = Forms.caption(new JButton(), says.text("down"));
        remove.setName(name + ".remove");
        up.setName(name + ".up");
        down.setName(name + ".down");
        remove.addActionListener(event -> remove());
        up.addActionListener(event -> move(-1));
        down.addActionListener(event -> move(1));
        list.addListSelectionListener(event -> look());
        add(new JScrollPane(list), "wrap, hmin 90");
        JPanel buttons = new JPanel(new MigLayout("insets 0, gap 6"));
        List.of(add, remove, up, down).forEach(buttons::add);
        add(buttons);
        list.setSelectedIndex(drafts.isEmpty() ? -1 : 0);
        look();
    }

    /** A list that says so as long as nothing is in it. */
    private static final class EmptyList<T> extends JList<T> {
        private final String nothing;

        EmptyList(DefaultListModel<T> drafts, String nothing) {
            super(drafts);
            this.nothing = nothing;
            getAccessibleContext().setAccessibleDescription(nothing);
        }

        @Override
        protected void paintComponent(Graphics g) {
            super.paintComponent(g);
            if (getModel().getSize() == 0) {
                JLabel label = Look.quiet(nothing);
                label.setHorizontalAlignment(SwingConstants.CENTER);
                SwingUtilities.paintComponent(g, label, new CellRendererPane(), 0, 0, getWidth(), getHeight());
            }
        }
    }

    /** Told whenever another draft is chosen. */
    void onChoice(Runnable told) {
        chosen = told;
        told.run();
    }

    /** What is chosen; empty if nothing is. */
    Optional<T> choice() {
        return Optional.ofNullable(list.getSelectedValue());
    }

    /** All drafts in their order. */
    List<T> all() {
        List<T> all = new ArrayList<>();
        drafts.elements().asIterator().forEachRemaining(all::add);
        return all;
    }

    /** Changes what is chosen. */
    void change(UnaryOperator<T> edit) {
        int at = list.getSelectedIndex();
        if (at >= 0) {
            drafts.set(at, edit.apply(drafts.get(at)));
        }
    }

    void addDraft(T draft) {
        drafts.addElement(draft);
        list.setSelectedIndex(drafts.size() - 1);
    }

    private void remove() {
        int at = list.getSelectedIndex();
        drafts.remove(at);
        list.setSelectedIndex(Math.min(at, drafts.size() - 1));
        look();
    }

    private void move(int by) {
        int at = list.getSelectedIndex();
        T draft = drafts.remove(at);
        drafts.add(at + by, draft);
        list.setSelectedIndex(at + by);
        look();
    }

    private void look() {
        int at = list.getSelectedIndex();
        remove.setEnabled(at >= 0);
        up.setEnabled(at > 0);
        down.setEnabled(at >= 0 && at < drafts.size() - 1);
        chosen.run();
    }
}
