package edgewright.desk.output;

import static edgewright.texts.Arg.count;

import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.BookletPart;
import edgewright.booklet.choice.BookletParts;
import edgewright.booklet.choice.ChartKind;
import edgewright.booklet.choice.ChartPaper;
import edgewright.booklet.choice.Edition;
import edgewright.booklet.choice.Paper;
import edgewright.booklet.choice.PrintChoice;
import edgewright.booklet.choice.PrintedTerms;
import edgewright.booklet.choice.PrintingNotice;
import edgewright.booklet.choice.WordingChoice;
import edgewright.booklet.own.OwnFiles;
import edgewright.booklet.own.OwnSentences;
import edgewright.booklet.own.PrintedImprint;
import edgewright.booklet.own.PrintedMatter;
import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.chart.OwnMatter;
import edgewright.desk.parts.FormDialog;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.SizeFields;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Settings;
import edgewright.draw.marks.MarkStyle;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.write.RoundsLayout;
import java.awt.Window;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JSpinner;
import javax.swing.JTextField;
import javax.swing.SpinnerNumberModel;

/**
 * How the printable pattern is to be, with its pages beside. A chart that cannot be worked is published as a draft only. What
 * was chosen last is proposed again.
 */
public final class PublishDialog extends FormDialog {
    /** What the pages are for. */
    enum Use {
        /** They go into a file, the workbook perhaps into a second one. */
        PUBLISH,
        /** They go to a printer. */
        PRINT
    }

    private static final String PARTS = "parts";

    private final transient Messages says;
    private final transient Messages common;
    private final Use use;
    private final boolean unworkable;
    private final transient Settings settings;
    private final transient PrintedMatter matter;
    private final JTextField imprint = new JTextField(12);
    private final transient Language language;
    private final JComboBox<Edition> edition = new JComboBox<>(Edition.values());
    private final JComboBox<Paper> paper = new JComboBox<>(Paper.values());
    private final JComboBox<ChartPaper> chartPaper = new JComboBox<>(ChartPaper.values());
    private final JComboBox<ChartKind> pictures = new JComboBox<>(ChartKind.values());
    private final JComboBox<MarkStyle> marks = new JComboBox<>(MarkStyle.values());
    private final JComboBox<PrintedTerms> terms = new JComboBox<>(PrintedTerms.values());
    private final JComboBox<Counting> counting = new JComboBox<>(Counting.values());
    private final JComboBox<RoundsLayout> layout = new JComboBox<>(RoundsLayout.values());
    private final JCheckBox eachRound = new JCheckBox();
    private final JComboBox<HookHand> hand = new JComboBox<>(HookHand.values());
    private final JCheckBox fit = new JCheckBox();
    private final JSpinner cell =
            new JSpinner(new SpinnerNumberModel(5.0, PrintChoice.SMALLEST_CELL_MM, PrintChoice.LARGEST_CELL_MM, 0.5));
    private final SizeFields size;
    private final PartsList parts;
    private final JCheckBox apart = new JCheckBox();
    private final JTextField version = new JTextField(8);
    private final JTextField date = new JTextField(12);
    private final JCheckBox draft = new JCheckBox();

    /**
     * The dialog for a chart.
     *
     * @param errors how many error findings it has
     */
    public PublishDialog(Window owner, Chart chart, ChartView view, int errors, Settings settings) {
        this(owner, chart, view, errors, settings, Use.PUBLISH, PrintedMatter.NONE, Optional::empty);
    }

    /**
     * The dialog for a chart that names files.
     *
     * @param use whether the pages are for a file or for a printer, which takes no second file
     * @param matter the files that it names
     * @param choosing asks for an imprint file
     */
    PublishDialog(
            Window owner,
            Chart chart,
            ChartView view,
            int errors,
            Settings settings,
            Use use,
            PrintedMatter matter,
            Supplier<Optional<Path>> choosing) {
        super(owner, use == Use.PUBLISH ? "publish" : "print", view.language());
        says = view.language().messages("desk/output");
        common = view.language().messages("desk/common");
        this.use = use;
        titled(
                says.text(use == Use.PUBLISH ? "publish-title" : "print-title"),
                says.text(use == Use.PUBLISH ? "publish-accept" : "print-accept"));
        this.settings = settings;
        this.matter = matter;
        this.language = view.language();
        unworkable = errors > 0;
        edition.setRenderer(Forms.renderer((Edition each) -> says.text("edition-" + each.name())));
        field("publish.edition", says.text("publish-edition"), edition)
                .setSelectedItem(settings.choice(Edition.STANDARD));
        paper.setRenderer(Forms.renderer((Paper each) -> says.text("paper-" + each.name())));
        field("publish.paper", says.text("publish-paper"), paper).setSelectedItem(settings.choice(usualPaper()));
        chartFields();
        fitFields();
        terms.setRenderer(Forms.renderer((PrintedTerms each) -> common.text("terms-" + each.name())));
        field("publish.terms", says.text("publish-terms"), terms).setSelectedItem(PrintedTerms.of(chart.terms()));
        hand.setRenderer(Forms.renderer((HookHand each) -> says.text("publish-hand-" + each.name())));
        field("publish.hand", says.text("publish-hand"), hand).setSelectedItem(settings.choice(HookHand.RIGHT));
        layout.setRenderer(Forms.renderer((RoundsLayout each) -> common.text("layout-" + each.name())));
        field("publish.layout", says.text("publish-layout"), layout)
                .setSelectedItem(settings.choice(RoundsLayout.SENTENCES));
        eachRound();
        counting.setRenderer(Forms.renderer((Counting each) -> common.text("counting-" + each.name())));
        field("publish.counting", says.text("publish-counting"), counting).setSelectedItem(view.counting());
        size = new SizeFields(chart, this, counting, view.language());
        parts = new PartsList(says, settings.kept(PARTS), this::look);
        parts();
        notice(choosing);
        draft(errors);
        beside(says.text("publish-pages"), new PagePreview(new ChartPages(chart), this::options, language));
    }

    private void draft(int errors) {
        Forms.caption(draft, says.text(use == Use.PUBLISH ? "publish-draft" : "print-draft"))
                .setName("publish.draft");
        if (unworkable) {
            draft.addActionListener(event -> look());
            form().add(draft, "span, gaptop 6");
            explain(says.text("publish-unworkable", count("errors", errors)));
        }
    }

    /** Proposes a pattern for one piece, and for whoever works it. */
    void forPiece(PieceOrder order) {
        size.offer(order.piece());
        hand.setSelectedItem(order.hand());
    }

    private void chartFields() {
        chartPaper.setRenderer(Forms.renderer((ChartPaper each) -> says.text("chartPaper-" + each.name())));
        field("publish.chartPaper", says.text("publish-chartPaper"), chartPaper)
                .setSelectedItem(settings.choice(ChartPaper.SAME));
        pictures.setRenderer(Forms.renderer((ChartKind each) -> says.text("pictures-" + each.name())));
        field("publish.pictures", says.text("publish-pictures"), pictures)
                .setSelectedItem(settings.choice(ChartKind.CORNER));
        marks.setRenderer(Forms.renderer((MarkStyle each) -> says.text("marks-" + each.name())));
        field("publish.marks", says.text("publish-marks"), marks).setSelectedItem(settings.choice(MarkStyle.IN_PRINT));
    }

    private void eachRound() {
        Forms.caption(eachRound, common.text("eachRound"), common.text("eachRound-tip"))
                .setName("publish.eachRound");
        form().add(eachRound, "skip, span");
        Runnable follow = () -> eachRound.setEnabled(layout.getSelectedItem() != RoundsLayout.TABLE);
        follow.run();
        layout.addActionListener(event -> follow.run());
    }

    private void notice(Supplier<Optional<Path>> choosing) {
        field("publish.version", says.text("publish-version"), version);
        field("publish.date", says.text("publish-date"), date);
        imprint.setName("publish.imprint");
        imprint.setToolTipText(says.text("publish-imprint-tip"));
        watch(imprint);
        JButton choose = Forms.caption(new JButton(), says.text("publish-imprint-choose"));
        choose.setName("publish.imprint.choose");
        choose.addActionListener(event -> choosing.get().map(Path::toString).ifPresent(imprint::setText));
        form().add(Forms.label(says.text("publish-imprint"), imprint));
        form().add(imprint, "split 2, wmin 0");
        form().add(choose, "growx 0");
    }

    private void fitFields() {
        Forms.caption(fit, says.text("publish-fit")).setName("publish.fit");
        fit.setSelected(true);
        fit.addActionListener(event -> cell.setEnabled(!fit.isSelected()));
        form().add(fit, "span");
        cell.setName("publish.cell");
        cell.setEnabled(false);
        form().add(Forms.label(says.text("publish-cell"), cell), "gapleft 22");
        form().add(cell, "growx 0, wmin 90");
    }

    private void parts() {
        parts.rows().setToolTipText(says.text("publish-parts-tip"));
        form().add(Forms.label(says.text("publish-parts"), parts.rows()), "top");
        form().add(parts, "wmin 0");
        Forms.caption(apart, says.text("publish-apart"), says.text("publish-apart-tip"))
                .setName("publish.apart");
        apart.addActionListener(event -> {
            if (apart.isSelected()) {
                parts.tickWorkbook();
            }
            look();
        });
        if (use == Use.PUBLISH) {
            form().add(apart, "skip, span");
        }
    }

    /** How the pattern is to be. */
    BookletOptions options() {
        return options(parts.chosen().stream()
                .filter(part -> !(apart.isSelected() && part.isOfWorkbook()))
                .toList());
    }

    /** How the workbook is to be, if it goes into a second file. */
    Optional<BookletOptions> workbook() {
        List<BookletPart> of =
                parts.chosen().stream().filter(BookletPart::isOfWorkbook).toList();
        return apart.isSelected() && !of.isEmpty() ? Optional.of(options(of)) : Optional.empty();
    }

    /** The usual parts follow the edition as long as nobody chose others. */
    private static BookletParts parts(List<BookletPart> of) {
        return Stream.of(BookletParts.USUAL, BookletParts.WITH_WORKBOOK)
                .filter(usual -> usual.inOrder(Edition.STANDARD).stream()
                        .filter(part -> part != BookletPart.CONTENTS)
                        .toList()
                        .equals(of))
                .findFirst()
                .orElseGet(() -> new BookletParts(of, false));
    }

    private BookletOptions options(List<BookletPart> of) {
        return new BookletOptions(
                new PrintChoice(
                        edition.getItemAt(edition.getSelectedIndex()),
                        paper.getItemAt(paper.getSelectedIndex()),
                        chartPaper.getItemAt(chartPaper.getSelectedIndex()),
                        fit.isSelected() ? OptionalDouble.empty() : OptionalDouble.of((Double) cell.getValue()),
                        pictures.getItemAt(pictures.getSelectedIndex()),
                        marks.getItemAt(marks.getSelectedIndex())),
                new WordingChoice(
                        terms.getItemAt(terms.getSelectedIndex()),
                        counting.getItemAt(counting.getSelectedIndex()),
                        hand.getItemAt(hand.getSelectedIndex()),
                        size.size(),
                        layout.getItemAt(layout.getSelectedIndex()),
                        eachRound.isSelected()),
                new PrintingNotice(version.getText(), date.getText()),
                parts(of),
                draft.isSelected(),
                language,
                new PrintedMatter(matter.photos(), printedImprint()));
    }

    /** That of the file that is named here; else that of the chart. */
    private Optional<PrintedImprint> printedImprint() {
        return otherImprint() instanceof OwnFiles.Read read ? read.matter().imprint() : matter.imprint();
    }

    /** What the file came to that is named here; nothing is read if none is. */
    private OwnFiles.Result otherImprint() {
        String name = imprint.getText().strip();
        if (name.isEmpty()) {
            return new OwnFiles.Read(matter);
        }
        try {
            Path file = Path.of(name).toAbsolutePath();
            return OwnFiles.read(OwnMatter.NONE, file, Optional.of(file));
        } catch (InvalidPathException e) {
            return OwnFiles.read(OwnMatter.NONE.withImprint(Optional.of(name)), Path.of("chart"), Optional.empty());
        }
    }

    /** Keeps what suits the maker or the printer rather than the chart, for next time. */
    void remember() {
        BookletOptions chosen = options();
        settings.choose(chosen.edition());
        settings.choose(chosen.paper());
        settings.choose(chosen.appearance().chartPaper());
        settings.choose(chosen.appearance().chart());
        settings.choose(chosen.appearance().marks());
        settings.choose(chosen.hand());
        settings.choose(chosen.telling().layout());
        settings.keep(PARTS, parts.toKeep());
    }

    @Override
    protected Optional<String> objection() {
        if (parts.chosen().stream().allMatch(part -> apart.isSelected() && part.isOfWorkbook())) {
            return Optional.of(says.text("publish-noPart"));
        }
        if (otherImprint() instanceof OwnFiles.Refused refused) {
            return Optional.of(new OwnSentences(language).of(refused.fault()));
        }
        return unworkable && !draft.isSelected()
                ? Optional.of(says.text(use == Use.PUBLISH ? "publish-objection" : "print-objection"))
                : Optional.empty();
    }

    /** What is sold in the shops where this machine is. */
    private static Paper usualPaper() {
        return Locale.getDefault().getCountry().matches("US|CA") ? Paper.LETTER : Paper.A4;
    }
}
