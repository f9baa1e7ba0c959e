package edgewright.desk.piece;

import static edgewright.texts.Arg.arg;

import edgewright.chart.HookHand;
import edgewright.chart.KeptPiece;
import edgewright.desk.fitting.Piece;
import edgewright.desk.fitting.PieceTexts;
import edgewright.desk.parts.Forms;
import edgewright.desk.parts.Look;
import edgewright.desk.parts.WrappingRow;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Workbench;
import edgewright.fit.PatternSize;
import edgewright.fit.Ties;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.Component;
import java.awt.event.ActionListener;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What is wanted of a piece: how its sides are tied, for which hand, by which swatch, and what is to be made or kept of it. */
final class PieceWanted extends JPanel {
    private final transient Language language;
    private final transient Messages says;
    private final transient Piece piece;
    private final transient Workbench bench;
    private final JCheckBox level = new JCheckBox();
    private final JCheckBox upright = new JCheckBox();
    private final JCheckBox left = new JCheckBox();
    private final JButton nearest = new JButton();
    private final TypedText across;
    private final TypedText down;
    private final JButton words = new JButton();
    private final JButton publish = new JButton();
    private final JButton keep = new JButton();
    private final JButton forget = new JButton();
    private final JLabel kept = Look.quiet(" ");

    PieceWanted(Piece piece, Workbench bench, ChartView view, PieceOutput output) {
        super(new MigLayout("insets 0 0 8 0, gap 0, fillx, wrap 1", "[grow, fill]"));
        this.piece = piece;
        this.bench = bench;
        language = view.language();
        says = language.messages("desk/piece");
        across = new TypedText("piece.swatch.stitches", 4);
        down = new TypedText("piece.swatch.rounds", 4);
        across.whenTyped(text -> piece.swatch(text, down.getText()));
        down.whenTyped(text -> piece.swatch(across.getText(), text));
        add(fit(view), "wmin 0");
        add(swatch(), "wmin 0");
        add(deeds(output), "wmin 0");
        kept.setName("piece.kept");
        kept.setBorder(BorderFactory.createEmptyBorder(4, 14, 0, 14));
        add(kept, "wmin 0");
        piece.listen(change -> follow());
        follow();
    }

    private WrappingRow fit(ChartView view) {
        name(level, "piece.tie.level", says.text("piece-tie-level"), says.text("piece-tie-level-tip"), event -> tie());
        name(
                upright,
                "piece.tie.upright",
                says.text("piece-tie-upright"),
                says.text("piece-tie-upright-tip"),
                event -> tie());
        name(
                nearest,
                "piece.nearest",
                says.text("piece-nearest"),
                says.text("piece-nearest-tip"),
                event -> piece.nearest());
        name(
                left,
                "piece.left",
                says.text("piece-left"),
                says.text("piece-left-tip"),
                event -> view.see(view.seeing().withHand(left.isSelected() ? HookHand.LEFT : HookHand.RIGHT)));
        return row(level, upright, nearest, left);
    }

    private void tie() {
        piece.tie(new Ties(level.isSelected(), upright.isSelected()));
    }

    private WrappingRow swatch() {
        JPanel swatch = new JPanel(new MigLayout("insets 0, gap 6"));
        swatch.add(Forms.label(says.text("piece-swatch-stitches"), across));
        swatch.add(across);
        swatch.add(Forms.label(says.text("piece-swatch-rounds"), down));
        swatch.add(down);
        swatch.add(new JLabel(says.text("piece-swatch-end")));
        return row(swatch);
    }

    private WrappingRow deeds(PieceOutput output) {
        name(
                words,
                "piece.words",
                says.text("piece-words"),
                says.text("piece-words-tip"),
                event -> with(output::saveWords));
        name(
                publish,
                "piece.publish",
                says.text("piece-publish"),
                says.text("piece-publish-tip"),
                event -> with(output::publish));
        name(
                keep,
                "piece.keep",
                says.text("piece-keep"),
                says.text("piece-keep-tip"),
                event -> piece.toKeep().ifPresent(counted -> keep(says.text("edit-keepPiece"), Optional.of(counted))));
        name(
                forget,
                "piece.forget",
                says.text("piece-forget"),
                says.text("piece-forget-tip"),
                event -> keep(says.text("edit-forgetPiece"), Optional.empty()));
        return row(words, publish, keep, forget);
    }

    private void with(BiConsumer<PatternSize, HookHand> deed) {
        piece.words().size().ifPresent(size -> deed.accept(size, piece.hand()));
    }

    private void keep(String edit, Optional<KeptPiece> counted) {
        bench.edit(edit, chart -> chart.withMaking(chart.making().withPiece(counted)));
    }

    private static void name(AbstractButton button, String name, String text, String tip, ActionListener deed) {
        Forms.caption(button, text, tip).setName(name);
        button.addActionListener(deed);
    }

    private static WrappingRow row(Component... parts) {
        WrappingRow row = new WrappingRow(8, 4);
        row.setBorder(BorderFactory.createEmptyBorder(2, 6, 0, 6));
        Stream.of(parts).forEach(row::add);
        return row;
    }

    private void follow() {
        level.setSelected(piece.ties().topAndBottom());
        upright.setSelected(piece.ties().leftAndRight());
        left.setSelected(piece.hand() == HookHand.LEFT);
        nearest.setEnabled(!piece.isNearest());
        across.follow(piece.swatchStitches());
        down.follow(piece.swatchRounds());
        boolean written = piece.words().size().isPresent();
        words.setEnabled(written);
        publish.setEnabled(written);
        Optional<KeptPiece> now = piece.chart().making().piece();
        Optional<KeptPiece> counted = piece.toKeep();
        keep.setEnabled(counted.isPresent() && !counted.equals(now));
        forget.setEnabled(now.isPresent());
        String rounds = now.map(this::rounds).orElse("");
        kept.setText(rounds.isEmpty() ? says.text("piece-kept-none") : says.text("piece-kept", arg("rounds", rounds)));
    }

    /** Which rounds are kept. */
    private String rounds(KeptPiece of) {
        return language.and(Stream.concat(rounds(of, false), rounds(of, true)).toList());
    }

    private Stream<String> rounds(KeptPiece of, boolean back) {
        return of.layer(back).stream()
                .map(counts -> PieceTexts.round(piece, new Piece.CountedIn(back, counts.round())));
    }
}
