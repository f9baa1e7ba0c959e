package edgewright.desk;

import edgewright.desk.command.Command;
import edgewright.desk.command.Commands;
import edgewright.desk.command.Hindrance;
import edgewright.desk.start.StartPage;
import edgewright.desk.work.WorkbenchChange;
import edgewright.texts.Messages;
import java.awt.CardLayout;
import java.util.Set;
import javax.swing.JFrame;
import javax.swing.JPanel;

/**
 * The middle of the window: the documents on their tabs, or the start page in their place. While that is seen, nothing can be done
 * with a document, since nobody would see what comes of it.
 */
final class StartDeck extends JPanel {
    private static final String CHARTS = "charts";
    private static final String START = "start";

    /** What a document offers that does nothing to it: a text is read into a window of its own. */
    private static final Set<String> HARMLESS = Set.of("readText");

    private final transient Runnable whenTurned;
    private final DocumentTabs tabs;
    private final StartPage page;
    private boolean start;

    /** @param whenTurned is run when the start page has come or gone */
    StartDeck(DocumentTabs tabs, StartPage page, Runnable whenTurned) {
        super(new CardLayout());
        this.tabs = tabs;
        this.page = page;
        this.whenTurned = whenTurned;
        setName("deck");
        add(tabs, CHARTS);
        add(page, START);
    }

    /** Whether the start page is seen. */
    boolean isStart() {
        return start;
    }

    /** Lays the start page over the documents. */
    void begin() {
        if (!start) {
            start = true;
            tabs.front().toRest();
            page.fill();
            turn(START);
            page.takeKeys();
        }
    }

    /** Shows the documents again, the one in front with the keys where they were. */
    void leave() {
        if (start) {
            giveWay();
            tabs.front().toFront();
        }
    }

    /** Shows the documents again, one of which has come to the front by itself. */
    void giveWay() {
        if (start) {
            start = false;
            page.rest();
            turn(CHARTS);
        }
    }

    /** Takes the keys to what is seen. */
    void takeKeys() {
        if (start) {
            page.takeKeys();
        } else {
            tabs.front().canvas().requestFocusInWindow();
        }
    }

    private void turn(String to) {
        ((CardLayout) getLayout()).show(this, to);
        whenTurned.run();
    }

    /** Shows the documents again when something has come to lie on one. */
    void makeWayFor(WorkbenchChange change) {
        if (change.ofChart()) {
            leave();
        }
    }

    /** What of this can be done now. */
    Commands possible(Commands ofFront) {
        if (!start) {
            return ofFront;
        }
        Commands possible = new Commands();
        for (Command command : ofFront.all()) {
            possible.add(
                    HARMLESS.contains(command.id()) ? command : command.when(() -> false, Hindrance.NO_CHART_SHOWN));
        }
        return possible;
    }

    /** Has the window bear the name of the start page while that is seen. */
    void nameIn(JFrame window, Messages says) {
        if (start) {
            window.setTitle(says.text("title-start"));
        }
    }
}
