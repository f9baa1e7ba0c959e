package edgewright.desk.yarn;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.PerSide;
import edgewright.chart.Yarn;
import edgewright.chart.YarnUse;
import edgewright.desk.parts.ColumnScroll;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.Look;
import edgewright.desk.parts.ShortText;
import edgewright.desk.parts.SizeSpinners;
import edgewright.desk.parts.TextColumn;
import edgewright.desk.parts.YarnCard;
import edgewright.desk.work.ChartCommands;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Workbench;
import edgewright.desk.work.YarnReport;
import edgewright.texts.Messages;
import edgewright.yarn.WhatIsLeft;
import edgewright.yarn.YarnSentences;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Window;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.JButton;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.SwingWorker;
import net.miginfocom.swing.MigLayout;

/**
 * How much yarn the chart takes in a size, whether its yarns can be told apart, and whether what is in hand is enough. It stays
 * beside the chart and follows it. What it proposes is done by a button, as an edit that can be undone.
 */
public final class YarnWindow extends JDialog {
    /** So many letters of a name stand on a button. */
    private static final int MOST_OF_NAME = 32;

    private final transient Messages says;
    private final transient Messages common;
    private final transient Workbench bench;
    private final transient ChartView view;
    private final transient YarnSentences sentences;
    private final SizeSpinners size;
    private final JButton stop = new JButton();
    private final JLabel base = Look.quiet(" ");
    private final transient YarnTables tables;
    private final JTable yarns;
    private final JTable rounds;
    private final TextColumn notes = new TextColumn(4, 14, 10);
    private final ColumnScroll contrast = new ColumnScroll("yarns.contrast");
    private final ColumnScroll left = new ColumnScroll("yarns.left");
    private transient PerSide<Integer> asked;
    private transient Optional<SwingWorker<YarnReport, Void>> working = Optional.empty();

    public YarnWindow(Window owner, Workbench bench, ChartView view) {
        super(owner, ModalityType.MODELESS);
        says = view.language().messages("desk/yarn");
        common = view.language().messages("desk/common");
        setTitle(says.text("yarns-title"));
        this.bench = bench;
        this.view = view;
        sentences = new YarnSentences(view.language());
        tables = new YarnTables(view.language());
        yarns = tables.table("yarns.table", says.text("yarns-amounts"));
        rounds = tables.table("yarns.roundsTable", says.text("yarns-rounds-table"));
        size = new SizeSpinners(view, "yarns.level", "yarns.upright");
        setName("yarnWindow");
        setLayout(new BorderLayout());
        add(sizeRow(), BorderLayout.NORTH);
        add(tabs(), BorderLayout.CENTER);
        view.listen(change -> {
            if (isVisible() && !view.repeats().equals(asked)) {
                begin();
            }
        });
        bench.listen(change -> {
            if (change.ofChart() && isVisible()) {
                begin();
            }
        });
        setSize(Look.onScreen(this, 760, 560));
        setMinimumSize(new Dimension(560, 400));
        setLocationRelativeTo(owner);
        Forms.onEscape(this, () -> setVisible(false));
    }

    /** Opens the one window of this kind that an owner has; it is made when it is first asked for. */
    public static Runnable opener(Window owner, Workbench bench, ChartView view) {
        AtomicReference<YarnWindow> window = new AtomicReference<>();
        return () -> {
            if (window.get() == null) {
                window.set(new YarnWindow(owner, bench, view));
            }
            window.get().open();
        };
    }

    /** Shows the window with the chart as it is now. */
    void open() {
        begin();
        setVisible(true);
        toFront();
    }

    private JPanel sizeRow() {
        JPanel row = new JPanel(new MigLayout("insets 14 14 10 14, gap 8", "[][80!]16[][80!]push[]"));
        base.setName("yarns.base");
        row.add(Forms.label(common.text("size-level"), size.level()));
        row.add(size.level(), "growx");
        row.add(Forms.label(common.text("size-upright"), size.upright()));
        row.add(size.upright(), "growx");
        Forms.caption(stop, says.text("yarns-stop")).setName("yarns.stop");
        stop.setEnabled(false);
        stop.addActionListener(event -> working.ifPresent(worker -> worker.cancel(false)));
        row.add(stop, "wrap");
        row.add(base, "span, growx, wmin 0");
        return row;
    }

    private JTabbedPane tabs() {
        JButton change = Forms.caption(new JButton(), says.text("yarns-change"));
        change.setName("yarns.change");
        change.addActionListener(event -> changeChosen());
        JButton measure = Forms.caption(new JButton(), says.text("yarns-measure"));
        measure.setName("yarns.measure");
        measure.addActionListener(event -> measure());
        JPanel amounts =
                new JPanel(new MigLayout("insets 10 14 10 14, gap 8, fill", "[grow, fill]", "[grow, fill][][]"));
        amounts.add(new JScrollPane(yarns), "wrap, hmin 90");
        amounts.add(notes, "wrap, wmin 0");
        amounts.add(row(change, measure));
        JTabbedPane tabs = new JTabbedPane();
        tabs.setName("yarns.tabs");
        tabs.addTab(says.text("yarns-tab-amounts"), amounts);
        tabs.addTab(says.text("yarns-tab-rounds"), new JScrollPane(rounds));
        tabs.addTab(says.text("yarns-tab-contrast"), contrast);
        tabs.addTab(says.text("yarns-tab-left"), left);
        return tabs;
    }

    private void begin() {
        working.ifPresent(worker -> worker.cancel(false));
        Chart chart = bench.chart();
        PerSide<Integer> repeats = view.repeats();
        asked = repeats;
        PerSide<Integer> stitches = chart.border().stitches(0, repeats);
        base.setText(
                says.text("yarns-base", count("topAndBottom", stitches.top()), count("leftAndRight", stitches.left())));
        SwingWorker<YarnReport, Void> worker = new SwingWorker<>() {
            @Override
            protected YarnReport doInBackground() {
                return YarnReport.of(chart, repeats, this::isCancelled);
            }

            @Override
            protected void done() {
                finish(this);
            }
        };
        working = Optional.of(worker);
        stop.setEnabled(true);
        worker.execute();
    }

    /** Shows what was found, unless the chart has gone on since. */
    private void finish(SwingWorker<YarnReport, Void> worker) {
        if (working.isPresent() && working.get() == worker) {
            stop.setEnabled(false);
        }
        try {
            YarnReport report = worker.get();
            if (report.chart().equals(bench.chart())) {
                show(report);
            }
        } catch (CancellationException e) {
            // Another one is on its way.
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        }
    }

    private void show(YarnReport report) {
        int chosen = yarns.getSelectedRow();
        yarns.setModel(tables.yarns(report.left().amounts()));
        if (chosen >= 0 && chosen < yarns.getRowCount()) {
            yarns.setRowSelectionInterval(chosen, chosen);
        }
        rounds.setModel(tables.rounds(report.chart(), report.left().amounts()));
        notes.removeAll();
        sentences.tools(report.chart().making()).forEach(notes::prose);
        sentences.notes(report.left().amounts()).forEach(notes::prose);
        showContrast(report);
        showLeft(report);
        getContentPane().revalidate();
        getContentPane().repaint();
    }

    private void showContrast(YarnReport report) {
        TextColumn column = new TextColumn(14, 14, 14);
        column.heading(says.text("yarns-greyStrip"));
        column.add(new GreyStrip(report.chart(), view.language()));
        column.prose(says.text("yarns-greyStrip-tip"));
        report.meetings().forEach(meeting -> column.prose(sentences.contrast(meeting)));
        report.suggestions().forEach((yarn, colour) -> {
            column.prose(sentences.suggestion(yarn, colour));
            colour.ifPresent(nearest -> column.add(row(recolour(yarn, nearest))));
        });
        column.prose(sentences.contrastLimits());
        contrast.show(column);
    }

    private JButton recolour(Yarn yarn, Colour colour) {
        JButton button = new JButton(
                says.text(
                        "yarns-recolour",
                        arg("yarn", ShortText.of(yarn.name(), MOST_OF_NAME)),
                        arg("colour", colour.toString())),
                new YarnCard(colour, 16));
        button.setName("yarns.recolour." + yarn.id());
        button.addActionListener(event -> bench.chart().yarn(yarn.id()).ifPresent(now -> {
            ChartCommands.changeYarn(bench, now, now.withColour(colour));
        }));
        return button;
    }

    private void showLeft(YarnReport report) {
        TextColumn column = new TextColumn(14, 14, 14);
        column.heading(says.text("yarns-tab-left"));
        sentences.left(report.chart(), report.left()).forEach(column::prose);
        if (report.left() instanceof WhatIsLeft.OtherYarns others) {
            JButton button = Forms.caption(new JButton(), says.text("yarns-swap"));
            button.setName("yarns.swap");
            button.addActionListener(event -> {
                if (bench.chart().equals(report.chart())) {
                    bench.edit(
                            says.text(
                                    "edit-swapYarns",
                                    count(
                                            "rounds",
                                            others.changed(report.chart()).size())),
                            others::applyTo);
                }
            });
            column.add(row(button));
        }
        column.heading(says.text("yarns-swaps"));
        report.swaps().forEach(swap -> column.prose(sentences.swap(swap)));
        column.prose(sentences.swapLaw());
        left.show(column);
    }

    /** Buttons that are as wide as their texts, in a column where all is as wide as the column. */
    private static JPanel row(JButton... buttons) {
        JPanel row = new JPanel(new MigLayout("insets 0, gap 8"));
        row.setOpaque(false);
        for (JButton button : buttons) {
            row.add(button);
        }
        return row;
    }

    private void changeChosen() {
        int row = Math.max(0, yarns.getSelectedRow());
        Chart chart = bench.chart();
        if (row < chart.yarns().size()) {
            Yarn yarn = chart.yarns().get(row);
            YarnDialog dialog = YarnDialog.changing(this, chart, yarn, view.language());
            if (dialog.ask()) {
                ChartCommands.changeYarn(bench, yarn, dialog.yarn());
            }
        }
    }

    private void measure() {
        MeasureDialog dialog =
                new MeasureDialog(this, bench.chart().making().use().orElse(YarnUse.NONE), view.language());
        if (dialog.ask()) {
            bench.edit(
                    says.text("edit-measure"),
                    chart -> chart.withMaking(chart.making().withUse(dialog.use())));
        }
    }
}
