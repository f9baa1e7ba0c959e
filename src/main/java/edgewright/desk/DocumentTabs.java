package edgewright.desk;

import static edgewright.texts.Arg.arg;

import edgewright.desk.parts.ShortText;
import edgewright.desk.work.Workbench;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import net.miginfocom.swing.MigLayout;

/**
 * The documents on a desk, each on a tab with its title, a mark while it is not saved, and a button that closes it. With one
 * document there is no row of tabs. Only the panes of the one in front are part of the window, so nothing is laid out or
 * painted that is not seen.
 */
final class DocumentTabs extends JTabbedPane {
    private static final int MOST_OF_TITLE = 24;

    private final transient Messages says;
    private final transient Consumer<DocumentPane> closing;
    private final transient Runnable whenFrontChanges;
    private final List<DocumentPane> panes = new ArrayList<>();
    private final Map<DocumentPane, Head> heads = new HashMap<>();
    private transient Optional<DocumentPane> front = Optional.empty();

    /**
     * No documents yet.
     *
     * @param closing asks whether a document may be closed, and closes it
     * @param whenFrontChanges is run when another document has come to the front
     */
    DocumentTabs(Language language, Consumer<DocumentPane> closing, Runnable whenFrontChanges) {
        super(TOP, SCROLL_TAB_LAYOUT);
        says = language.messages("desk");
        this.closing = closing;
        this.whenFrontChanges = whenFrontChanges;
        setName("documents");
        getAccessibleContext().setAccessibleName(says.text("tabs"));
        putClientProperty("JTabbedPane.hideTabAreaWithOneTab", true);
        addChangeListener(event -> exchange());
    }

    /** The document in front. */
    DocumentPane front() {
        return front.orElseThrow();
    }

    List<DocumentPane> all() {
        return List.copyOf(panes);
    }

    /** Puts a document on a tab of its own, behind all others, and brings it to the front. */
    void lay(DocumentPane pane) {
        panes.add(pane);
        Head head = new Head(pane);
        heads.put(pane, head);
        addTab("", new JPanel(new BorderLayout()));
        showHeads();
        head.follow();
        pane.document().bench().listen(change -> head.follow());
        bring(pane);
    }

    /** Brings a document to the front. */
    void bring(DocumentPane pane) {
        setSelectedIndex(panes.indexOf(pane));
        exchange();
    }

    /** Brings the document to the front that is so many tabs on, round the ends. */
    void step(int by) {
        setSelectedIndex(Math.floorMod(getSelectedIndex() + by, panes.size()));
    }

    /** Takes a document off its tab; the one beside it comes to the front. There must be another. */
    void takeOff(DocumentPane pane) {
        int at = panes.indexOf(pane);
        if (pane == front()) {
            setSelectedIndex(at > 0 ? at - 1 : 1);
            exchange();
        }
        panes.remove(at);
        heads.remove(pane);
        removeTabAt(at);
        showHeads();
        revalidate();
    }

    /** With one document there is no row: its head would lie on its panes. */
    private void showHeads() {
        boolean several = panes.size() > 1;
        for (int i = 0; i < panes.size(); i++) {
            setTabComponentAt(i, several ? heads.get(panes.get(i)) : null);
        }
        setFocusable(several);
    }

    /** Lays the panes of the chosen document into the window, and takes those of the other out. */
    private void exchange() {
        int chosen = getSelectedIndex();
        if (chosen < 0
                || chosen >= panes.size()
                || front.filter(panes.get(chosen)::equals).isPresent()) {
            return;
        }
        front.ifPresent(before -> {
            before.toRest();
            before.getParent().remove(before);
        });
        DocumentPane now = panes.get(chosen);
        front = Optional.of(now);
        ((JPanel) getComponentAt(chosen)).add(now);
        now.lookAgain();
        revalidate();
        repaint();
        now.toFront();
        whenFrontChanges.run();
    }

    /** What stands on a tab. */
    private final class Head extends JPanel {
        private final transient DocumentPane pane;
        private final JLabel title = new JLabel();
        private final JButton close = new JButton("×");

        Head(DocumentPane pane) {
            super(new MigLayout("insets 0, gap 6"));
            this.pane = pane;
            setOpaque(false);
            setName("tab");
            title.setName("tabTitle");
            close.setName("closeTab");
            close.putClientProperty("JButton.buttonType", "toolBarButton");
            // The keys have a command for it.
            close.setFocusable(false);
            close.addActionListener(event -> closing.accept(pane));
            add(title);
            add(close);
        }

        void follow() {
            Workbench bench = pane.document().bench();
            String name = ShortText.of(bench.chart().title(), MOST_OF_TITLE);
            boolean changed = bench.hasUnsavedWork();
            title.setText(changed ? says.text("tab-changed", arg("title", name)) : name);
            close.getAccessibleContext().setAccessibleName(says.text("tab-close", arg("title", name)));
            int at = panes.indexOf(pane);
            if (at >= 0 && at < getTabCount()) {
                // For the ear: the tab is called by it where nothing is seen.
                setTitleAt(at, changed ? says.text("tab-heard-changed", arg("title", name)) : name);
                setToolTipTextAt(at, bench.file().map(Object::toString).orElseGet(() -> says.text("title-noFile")));
            }
        }
    }
}
