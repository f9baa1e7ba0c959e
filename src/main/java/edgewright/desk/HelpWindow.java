package edgewright.desk;

import static edgewright.texts.Arg.arg;

import edgewright.check.FindingSentences;
import edgewright.check.RuleBook;
import edgewright.check.RuleEntry;
import edgewright.desk.command.Scope;
import edgewright.desk.parts.ColumnScroll;
import edgewright.desk.parts.DeskActions;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.Look;
import edgewright.desk.parts.RulePageView;
import edgewright.desk.parts.TextColumn;
import edgewright.desk.pattern.PatternKeys;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Component;
import java.awt.Window;
import java.util.Comparator;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;

/** Help beside the chart, not in front of it: how to draw, the laws of the craft with their pictures, and every key. */
final class HelpWindow extends JDialog {

    private final JTabbedPane pages = new JTabbedPane();
    private final transient DeskActions actions;
    private final transient Language language;
    private final transient Messages says;

    HelpWindow(Window owner, DeskActions actions, FindingSentences sentences, Language language) {
        super(owner, ModalityType.MODELESS);
        this.language = language;
        says = language.messages("desk");
        setTitle(says.text("help-title"));
        this.actions = actions;
        setName("helpWindow");
        pages.setName("helpPages");
        pages.addTab(says.text("help-drawing"), drawing());
        pages.addTab(says.text("help-laws"), laws(sentences));
        pages.addTab(says.text("help-keys"), keys());
        setContentPane(pages);
        setSize(Look.onScreen(this, 760, 640));
        setLocationRelativeTo(owner);
        Forms.onEscape(this, () -> dispose());
    }

    /** Shows a page: 0 how to draw, 1 the laws, 2 the keys. */
    void open(int page) {
        pages.setSelectedIndex(page);
        setVisible(true);
        toFront();
    }

    private JComponent drawing() {
        TextColumn column = new TextColumn(18, 22, 22);
        for (int i = 1; says.has("help-head-" + i); i++) {
            column.heading(says.text("help-head-" + i));
            column.prose(says.text("help-drawing-" + i));
        }
        ColumnScroll scroll = new ColumnScroll("helpDrawing");
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.show(column);
        return scroll;
    }

    private JComponent laws(FindingSentences sentences) {
        JList<RuleEntry> list = new JList<>(RuleBook.all().stream()
                .sorted(Comparator.comparing(RuleEntry::severity).thenComparing(entry -> sentences.title(entry.id())))
                .toArray(RuleEntry[]::new));
        list.setName("laws");
        list.getAccessibleContext().setAccessibleName(says.text("help-laws"));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(Forms.renderer((RuleEntry entry) -> sentences.title(entry.id())));
        ColumnScroll page = new ColumnScroll("law");
        list.addListSelectionListener(event -> {
            if (list.getSelectedValue() != null) {
                TextColumn column = new TextColumn(14, 18, 18);
                RulePageView.addTo(
                        column,
                        new RuleBook(language).page(list.getSelectedValue().id()),
                        language);
                page.show(column);
            }
        });
        list.setSelectedIndex(0);
        JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, new JScrollPane(list), page);
        split.setDividerLocation(230);
        split.setBorder(BorderFactory.createEmptyBorder());
        return split;
    }

    /** Says what the program is. */
    static void about(Component owner, Messages says) {
        JOptionPane.showMessageDialog(
                owner, Forms.message(says.text("about-text")), says.text("about-title"), JOptionPane.PLAIN_MESSAGE);
    }

    private JComponent keys() {
        TextColumn column = new TextColumn(18, 22, 22);
        for (Scope scope : List.of(Scope.CHART, Scope.WINDOW)) {
            column.heading(says.text(scope == Scope.CHART ? "help-keys-canvas" : "help-keys-everywhere"));
            JPanel table = keyTable();
            new CommandFinder(actions, language)
                    .find("").stream()
                            .filter(found -> found.command().scope() == scope
                                    && !found.key().isEmpty())
                            .forEach(found -> line(table, allOf(found.keyNames()), found.name()));
            column.add(table);
        }
        column.heading(says.text("help-keys-words"));
        JPanel words = keyTable();
        PatternKeys.help(language).forEach(key -> line(words, key.shown(), key.does()));
        column.add(words);
        ColumnScroll scroll = new ColumnScroll("helpKeys");
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.show(column);
        return scroll;
    }

    /** The two keys of a command, or its one. */
    private String allOf(List<String> keys) {
        return keys.size() == 1
                ? keys.get(0)
                : says.text("help-keys-or", arg("key", keys.get(0)), arg("other", keys.get(1)));
    }

    private static JPanel keyTable() {
        JPanel table = new JPanel(new MigLayout("insets 2 0 8 0, gap 20 6, wrap 2", "[150!][]"));
        table.setOpaque(false);
        return table;
    }

    private static void line(JPanel table, String key, String does) {
        JLabel name = new JLabel(key);
        name.putClientProperty("FlatLaf.styleClass", "semibold");
        table.add(name);
        table.add(new JLabel(does));
    }
}
