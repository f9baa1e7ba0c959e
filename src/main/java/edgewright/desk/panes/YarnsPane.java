package edgewright.desk.panes;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.chart.Chart;
import edgewright.chart.Yarn;
import edgewright.desk.parts.DeskActions;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.Look;
import edgewright.desk.parts.YarnCard;
import edgewright.desk.work.ChartCommands;
import edgewright.desk.work.Workbench;
import edgewright.desk.work.WorkbenchChange;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Component;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;

/** The yarns of the chart with their names and colours, and how many rounds are worked in each. */
public final class YarnsPane extends JPanel {
    private final transient Workbench bench;
    private final transient Messages says;
    private final transient Messages common;
    private final DefaultListModel<Yarn> yarns = new DefaultListModel<>();
    private final JList<Yarn> list = new JList<>(yarns);

    public YarnsPane(Workbench bench, DeskActions actions, Language language) {
        super(new MigLayout("insets 10 12 12 12, gap 6, fill", "[grow, fill]", "[][grow, fill][][]"));
        this.bench = bench;
        says = language.messages("desk/panes");
        common = language.messages("desk/common");
        list.setName("yarns");
        list.getAccessibleContext().setAccessibleName(says.text("yarns-heading"));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setVisibleRowCount(3);
        list.setCellRenderer(new Row());
        // As wide as its window, whatever the names are.
        list.setFixedCellWidth(1);
        list.addListSelectionListener(event -> actions.refresh());
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2) {
                    actions.get("changeYarn").actionPerformed(null);
                }
            }
        });
        add(Look.heading(says.text("yarns-heading")), "wrap");
        add(new JScrollPane(list), "wrap, hmin 66");
        JPanel buttons =
                new JPanel(new MigLayout("insets 0, gap 6, fillx", "[grow, fill, sg][grow, fill, sg][grow, fill, sg]"));
        buttons.setOpaque(false);
        for (String id : new String[] {"addYarn", "changeYarn", "removeYarn"}) {
            JButton button = Forms.button(actions.get(id));
            button.setText(says.text("yarns-button-" + id));
            button.setMnemonic(0);
            buttons.add(button);
        }
        add(buttons, "wrap");
        JButton amounts = Forms.button(actions.get("amounts"));
        amounts.setMnemonic(0);
        add(amounts);
        bench.listen(this::changed);
        fill();
    }

    /** The yarn chosen in the list. */
    public Optional<Yarn> chosen() {
        return Optional.ofNullable(list.getSelectedValue());
    }

    /** What has the keys first when somebody comes to this pane. */
    public Component firstPart() {
        return list;
    }

    private void changed(WorkbenchChange change) {
        if (change.kind() == WorkbenchChange.Kind.OPENED
                || (change.kind() == WorkbenchChange.Kind.EDITED && isOtherYarn(change.before(), change.after()))) {
            fill();
        }
    }

    /** Whether a yarn or the yarn of a round has changed. */
    private static boolean isOtherYarn(Chart before, Chart after) {
        return !before.yarns().equals(after.yarns())
                || before.yarns().stream()
                        .anyMatch(yarn -> ChartCommands.roundsIn(before, yarn) != ChartCommands.roundsIn(after, yarn));
    }

    private void fill() {
        String chosen = chosen().map(Yarn::id).orElse("");
        yarns.clear();
        bench.chart().yarns().forEach(yarns::addElement);
        for (int i = 0; i < yarns.size(); i++) {
            if (i == 0 || yarns.get(i).id().equals(chosen)) {
                list.setSelectedIndex(i);
            }
        }
    }

    /** A yarn, and at the end of the row how many rounds are worked in it. */
    private final class Row extends JPanel implements ListCellRenderer<Yarn> {
        private final JLabel name = new JLabel();
        private final JLabel rounds = new JLabel();

        Row() {
            super(new MigLayout("insets 4 8 4 8", "[grow][]"));
            add(name, "wmin 0");
            add(rounds);
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends Yarn> of, Yarn yarn, int index, boolean chosen, boolean focused) {
            setBackground(chosen ? of.getSelectionBackground() : of.getBackground());
            name.setForeground(chosen ? of.getSelectionForeground() : of.getForeground());
            rounds.setForeground(chosen ? of.getSelectionForeground() : Look.colour("quiet"));
            name.setIcon(new YarnCard(yarn.colour(), 18));
            name.setIconTextGap(9);
            name.setText(common.text("yarn-short", arg("id", yarn.id()), arg("yarn", yarn.name())));
            setToolTipText(name.getText());
            rounds.setText(says.text("yarns-rounds", count("rounds", ChartCommands.roundsIn(bench.chart(), yarn))));
            getAccessibleContext().setAccessibleName(name.getText() + ", " + rounds.getText());
            return this;
        }
    }
}
