package edgewright.desk.output;

import edgewright.booklet.choice.BookletPart;
import edgewright.desk.parts.Forms;
import edgewright.texts.Messages;
import java.awt.Component;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.AbstractAction;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;

/**
 * The parts of a pattern, one under the other, with a box for each that says whether it is printed. Space or a click on a box
 * ticks it; Alt with an arrow, or the buttons, move the chosen part up and down. The cover stays the first.
 */
final class PartsList extends JPanel {
    private static final String LEFT_OUT = "-";
    private static final int ROWS_SHOWN = 8;

    private final transient Messages says;
    private final transient Runnable changed;
    private final DefaultListModel<BookletPart> parts = new DefaultListModel<>();
    private final Set<BookletPart> ticked = EnumSet.noneOf(BookletPart.class);
    private final JList<BookletPart> list = new JList<>(parts);
    private final JButton up = new JButton();
    private final JButton down = new JButton();

    /**
     * @param kept what {@link #toKeep} said the last time; anything else means the usual parts
     * @param changed what is to be done whenever something else is chosen
     */
    PartsList(Messages says, String kept, Runnable changed) {
        super(new MigLayout("insets 0, gap 6, fill", "[grow, fill][]", "[][][grow]"));
        this.says = says;
        this.changed = changed;
        begin(kept);
        list.setName("publish.parts");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setSelectedIndex(0);
        list.setVisibleRowCount(ROWS_SHOWN);
        list.setCellRenderer(renderer());
        list.addListSelectionListener(event -> look());
        onKey("SPACE", () -> tick(list.getSelectedIndex()));
        onKey("alt UP", () -> move(-1));
        onKey("alt DOWN", () -> move(1));
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                int index = list.locationToIndex(event.getPoint());
                Rectangle row = index < 0 ? null : list.getCellBounds(index, index);
                if (row != null && row.contains(event.getPoint()) && event.getX() - row.x < row.height) {
                    tick(index);
                }
            }
        });
        button(up, "publish.partUp", says.text("publish-partUp"), -1);
        button(down, "publish.partDown", says.text("publish-partDown"), 1);
        add(new JScrollPane(list), "spany 3, wmin 0");
        add(up, "growx, wrap");
        add(down, "growx, wrap");
        look();
    }

    /** The list itself, for its label. */
    JList<BookletPart> rows() {
        return list;
    }

    /** The parts that are ticked, in their order. */
    List<BookletPart> chosen() {
        return all().stream().filter(ticked::contains).toList();
    }

    /** Ticks every part of the workbook, if none is yet. */
    void tickWorkbook() {
        if (chosen().stream().noneMatch(BookletPart::isOfWorkbook)) {
            ticked.addAll(BookletPart.ofWorkbook());
            list.repaint();
            changed.run();
        }
    }

    /** Order and ticks in one line, for the next time. */
    String toKeep() {
        return all().stream()
                .map(part -> (ticked.contains(part) ? "" : LEFT_OUT) + part.name())
                .collect(Collectors.joining(","));
    }

    private void begin(String kept) {
        List<String> names = List.of(kept.split(","));
        boolean whole = Arrays.stream(BookletPart.values())
                        .allMatch(part -> names.contains(part.name()) || names.contains(LEFT_OUT + part.name()))
                && names.size() == BookletPart.values().length
                && names.get(0).endsWith(BookletPart.COVER.name());
        if (!whole) {
            Arrays.stream(BookletPart.values()).forEach(part -> put(part, part.isOfPattern()));
            return;
        }
        names.forEach(name -> put(
                BookletPart.valueOf(name.startsWith(LEFT_OUT) ? name.substring(1) : name), !name.startsWith(LEFT_OUT)));
    }

    private void put(BookletPart part, boolean printed) {
        parts.addElement(part);
        if (printed) {
            ticked.add(part);
        }
    }

    private List<BookletPart> all() {
        return IntStream.range(0, parts.size()).mapToObj(parts::get).toList();
    }

    private void tick(int index) {
        if (index >= 0) {
            BookletPart part = parts.get(index);
            if (!ticked.remove(part)) {
                ticked.add(part);
            }
            list.repaint();
            changed.run();
        }
    }

    private void move(int by) {
        int from = list.getSelectedIndex();
        if (canMove(from, by)) {
            BookletPart part = parts.remove(from);
            parts.add(from + by, part);
            list.setSelectedIndex(from + by);
            list.ensureIndexIsVisible(from + by);
            changed.run();
        }
    }

    /** Nothing goes over the cover, which stays where it is. */
    private boolean canMove(int from, int by) {
        return from > 0 && from + by > 0 && from + by < parts.size();
    }

    private void look() {
        up.setEnabled(canMove(list.getSelectedIndex(), -1));
        down.setEnabled(canMove(list.getSelectedIndex(), 1));
    }

    private void button(JButton button, String name, String text, int by) {
        Forms.caption(button, text).setName(name);
        button.addActionListener(event -> move(by));
    }

    private void onKey(String key, Runnable does) {
        list.getInputMap(WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key), key);
        list.getActionMap().put(key, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                does.run();
            }
        });
    }

    private ListCellRenderer<BookletPart> renderer() {
        JCheckBox box = new JCheckBox();
        box.setOpaque(true);
        return (of, part, index, selected, focused) -> paint(box, of, part, selected);
    }

    private Component paint(JCheckBox box, JList<? extends BookletPart> of, BookletPart part, boolean selected) {
        box.setText(says.text("part-" + part.name()));
        box.setSelected(ticked.contains(part));
        box.setBackground(selected ? of.getSelectionBackground() : of.getBackground());
        box.setForeground(selected ? of.getSelectionForeground() : of.getForeground());
        return box;
    }
}
