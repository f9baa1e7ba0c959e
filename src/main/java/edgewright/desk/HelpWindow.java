package edgewright.desk;

import edgewright.check.FindingSentences;
import edgewright.check.RuleBook;
import edgewright.check.RuleEntry;
import edgewright.desk.canvas.CanvasKeys;
import edgewright.desk.parts.ColumnScroll;
import edgewright.desk.parts.DeskAction;
import edgewright.desk.parts.DeskActions;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.KeyNames;
import edgewright.desk.parts.RulePageView;
import edgewright.desk.parts.TextColumn;
import edgewright.desk.work.DeskTexts;
import edgewright.texts.Language;
import java.awt.Dimension;
import java.awt.Window;
import java.util.Comparator;
import javax.swing.Action;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;

/** Help beside the chart, not in front of it: how to draw, the laws of the craft with their pictures, and every key. */
final class HelpWindow extends JDialog {
    private static final int PARAGRAPHS = 12;

    private final JTabbedPane pages = new JTabbedPane();
    private final transient DeskActions actions;

    HelpWindow(Window owner, DeskActions actions, FindingSentences sentences, Language language) {
        super(owner, DeskTexts.of("help.title"), ModalityType.MODELESS);
        this.actions = actions;
        setName("helpWindow");
        pages.setName("helpPages");
        pages.addTab(DeskTexts.of("help.drawing"), drawing());
        pages.addTab(DeskTexts.of("help.laws"), laws(sentences, language));
        pages.addTab(DeskTexts.of("help.keys"), keys());
        setContentPane(pages);
        setSize(new Dimension(760, 640));
        setLocationRelativeTo(owner);
        getRootPane()
                .registerKeyboardAction(
                        event -> dispose(),
                        KeyStroke.getKeyStroke("ESCAPE"),
                        JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
    }

    /** Shows a page: 0 how to draw, 1 the laws, 2 the keys. */
    void open(int page) {
        pages.setSelectedIndex(page);
        setVisible(true);
        toFront();
    }

    private static JComponent drawing() {
        TextColumn column = new TextColumn(18, 22, 22);
        for (int i = 1; i <= PARAGRAPHS; i++) {
            column.heading(DeskTexts.of("help.drawing." + i + ".head"));
            column.prose(DeskTexts.of("help.drawing." + i));
        }
        ColumnScroll scroll = new ColumnScroll("helpDrawing");
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.show(column);
        return scroll;
    }

    private static JComponent laws(FindingSentences sentences, Language language) {
        JList<RuleEntry> list = new JList<>(RuleBook.all().stream()
                .sorted(Comparator.comparing(RuleEntry::severity).thenComparing(entry -> sentences.title(entry.id())))
                .toArray(RuleEntry[]::new));
        list.setName("laws");
        list.getAccessibleContext().setAccessibleName(DeskTexts.of("help.laws"));
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

    private JComponent keys() {
        TextColumn column = new TextColumn(18, 22, 22);
        column.heading(DeskTexts.of("help.keys.canvas"));
        JPanel canvasKeys = keyTable();
        for (String id : CanvasKeys.IDS) {
            line(canvasKeys, DeskTexts.of("canvas.key." + id + ".shown"), DeskTexts.of("canvas.key." + id));
        }
        column.add(canvasKeys);
        column.heading(DeskTexts.of("help.keys.everywhere"));
        JPanel everywhere = keyTable();
        for (DeskAction action : actions.all()) {
            if (action.getValue(Action.ACCELERATOR_KEY) instanceof KeyStroke key) {
                String also = action.alsoKey()
                        .map(other -> DeskTexts.of("help.keys.or", KeyNames.of(key), KeyNames.of(other)))
                        .orElseGet(() -> KeyNames.of(key));
                line(everywhere, also, action.plainName());
            }
        }
        column.add(everywhere);
        ColumnScroll scroll = new ColumnScroll("helpKeys");
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.show(column);
        return scroll;
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
