package edgewright.desk.journal;

import edgewright.desk.parts.Forms;
import edgewright.desk.parts.Look;
import edgewright.desk.parts.WrappingRow;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Window;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;

/**
 * A dialog that says what has happened to a chart, shows its two states, and has a button for each thing that can be done about
 * it. Escape, and closing it, are the choice that leaves everything as it is.
 */
final class ChoiceDialog extends JDialog {
    private static final int WIDTH_PX = 900;
    private static final int HEIGHT_PX = 640;

    private final WrappingRow buttons = new WrappingRow(10, 4);
    private boolean isChosen;

    ChoiceDialog(Window owner, ModalityType modality, String name, String sentence, ComparedCharts charts) {
        super(owner, modality);
        setName(name);
        setDefaultCloseOperation(DO_NOTHING_ON_CLOSE);
        JTextArea said = Forms.prose(sentence);
        said.setName("message");
        said.setFocusable(false);
        JPanel content = new JPanel(
                new MigLayout("insets 18 20 16 20, gap 14, fill, wrap 1", "[grow, fill]", "[][grow, fill][]"));
        content.add(said, "wmin 0");
        content.add(charts, "wmin 0, hmin 0");
        ((FlowLayout) buttons.getLayout()).setAlignment(FlowLayout.TRAILING);
        // The row has its gap on both outer sides too, which here are those of the dialog.
        content.add(buttons, "wmin 0, gap -10 -10");
        setContentPane(content);
    }

    /**
     * Adds a button; the first is the proposed one.
     *
     * @param caption with an ampersand before its mnemonic
     */
    void choice(String name, String caption, Runnable chosen) {
        JButton button = Forms.caption(new JButton(), caption);
        button.setName(name);
        button.addActionListener(event -> choose(chosen));
        if (getRootPane().getDefaultButton() == null) {
            getRootPane().setDefaultButton(button);
        }
        buttons.add(button);
    }

    /** Says what leaves everything as it is. */
    void unchosen(Runnable left) {
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent event) {
                choose(left);
            }
        });
        getRootPane()
                .registerKeyboardAction(
                        event -> choose(left), KeyStroke.getKeyStroke("ESCAPE"), JComponent.WHEN_IN_FOCUSED_WINDOW);
    }

    /** Shows it above the window that it belongs to. One that stays beside the work does not take the keys away from it. */
    void open() {
        Dimension size = Look.onScreen(this, WIDTH_PX, HEIGHT_PX);
        setSize(size);
        setMinimumSize(new Dimension(Math.min(size.width, 640), Math.min(size.height, 420)));
        setLocationRelativeTo(getOwner());
        setAutoRequestFocus(isModal());
        setVisible(true);
    }

    private void choose(Runnable choice) {
        if (!isChosen) {
            isChosen = true;
            dispose();
            choice.run();
        }
    }
}
