package edgewright.desk;

import edgewright.desk.CommandFinder.Found;
import edgewright.desk.parts.DeskActions;
import edgewright.desk.parts.Look;
import edgewright.desk.parts.TypingListener;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Component;
import java.awt.Window;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.AbstractAction;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/**
 * A search over everything that can be done: what is typed is looked for in names, menus and tips, the arrow keys choose, and
 * Enter does it. What is not possible now is listed too, with why.
 */
final class CommandSearch extends JDialog {
    private static final int WIDTH_PX = 620;
    private static final int HEIGHT_PX = 440;

    private final transient CommandFinder finder;
    private final transient Messages says;
    private final JTextField query = new JTextField();
    private final DefaultListModel<Found> rows = new DefaultListModel<>();
    private final JList<Found> list = new JList<>(rows);
    private final JLabel none = Look.quiet("");

    CommandSearch(Window owner, DeskActions actions, Language language) {
        super(owner, ModalityType.MODELESS);
        says = language.messages("desk");
        finder = new CommandFinder(actions, language);
        setName("commandSearch");
        setTitle(says.text("search-title"));
        query.setName("commandQuery");
        query.putClientProperty("JTextField.placeholderText", says.text("search-hint"));
        query.getAccessibleContext().setAccessibleName(says.text("search-query"));
        query.getDocument().addDocumentListener(new TypingListener(this::fill));
        list.setName("commandsFound");
        list.getAccessibleContext().setAccessibleName(says.text("search-found"));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new Row());
        list.setFixedCellHeight(48);
        list.setFixedCellWidth(1);
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                perform();
            }
        });
        none.setName("noCommandFound");
        JPanel content = new JPanel(
                new MigLayout("insets 12, gap 8, fill, hidemode 3, wrap 1", "[grow, fill]", "[][][grow, fill]"));
        content.add(query);
        content.add(none);
        content.add(new JScrollPane(list));
        setContentPane(content);
        bindKeys();
        fill();
        setSize(Look.onScreen(this, WIDTH_PX, HEIGHT_PX));
        setLocationRelativeTo(owner);
    }

    private void bindKeys() {
        onKey("ESCAPE", this::dispose);
        onKey("ENTER", this::perform);
        onKey("DOWN", () -> step(1));
        onKey("UP", () -> step(-1));
        onKey("PAGE_DOWN", () -> step(list.getLastVisibleIndex() - list.getFirstVisibleIndex()));
        onKey("PAGE_UP", () -> step(list.getFirstVisibleIndex() - list.getLastVisibleIndex()));
    }

    private void onKey(String key, Runnable deed) {
        for (JComponent part : new JComponent[] {query, list}) {
            part.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key), key);
            part.getActionMap().put(key, new AbstractAction() {
                @Override
                public void actionPerformed(ActionEvent event) {
                    deed.run();
                }
            });
        }
    }

    private void step(int by) {
        if (!rows.isEmpty()) {
            int to = Math.max(0, Math.min(list.getSelectedIndex() + by, rows.getSize() - 1));
            list.setSelectedIndex(to);
            list.ensureIndexIsVisible(to);
        }
    }

    private void fill() {
        rows.clear();
        rows.addAll(finder.find(query.getText()));
        none.setText(says.text("search-none"));
        none.setVisible(rows.isEmpty());
        step(1);
    }

    /** Does what is chosen, when the keys are back where they were. What is not possible only stays chosen. */
    private void perform() {
        Found chosen = list.getSelectedValue();
        if (chosen != null && chosen.why().isEmpty()) {
            dispose();
            SwingUtilities.invokeLater(chosen.command()::perform);
        }
    }

    /** A command in two lines: its name and key, and under them where it stands and what it does, or why it cannot. */
    private static final class Row extends JPanel implements ListCellRenderer<Found> {
        private final JLabel name = new JLabel();
        private final JLabel key = new JLabel();
        private final JLabel more = new JLabel();

        Row() {
            super(new MigLayout("insets 5 10 5 10, gap 10 1, fill", "[grow, fill][]", "[][]"));
            name.putClientProperty("FlatLaf.styleClass", "semibold");
            add(name, "wmin 0");
            add(key, "wrap");
            add(more, "span, wmin 0");
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends Found> of, Found found, int index, boolean chosen, boolean focused) {
            setBackground(chosen ? of.getSelectionBackground() : of.getBackground());
            boolean possible = found.why().isEmpty();
            name.setForeground(
                    chosen ? of.getSelectionForeground() : possible ? of.getForeground() : Look.colour("quiet"));
            key.setForeground(chosen ? of.getSelectionForeground() : Look.colour("quiet"));
            more.setForeground(chosen ? of.getSelectionForeground() : Look.colour(possible ? "quiet" : "warning"));
            name.setText(found.name());
            key.setText(found.key());
            more.setText(found.place() + " – " + found.why().orElse(found.tip()));
            getAccessibleContext().setAccessibleName(String.join(", ", name.getText(), key.getText(), more.getText()));
            return this;
        }
    }
}
