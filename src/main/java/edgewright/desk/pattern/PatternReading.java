package edgewright.desk.pattern;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.desk.pattern.ShownPattern.Paragraph;
import edgewright.desk.pattern.ShownPattern.Stretch;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Lit;
import edgewright.desk.work.Workbench;
import edgewright.words.said.SaidPattern;
import edgewright.words.said.SaidPattern.Saying;
import edgewright.words.said.SaidRounds;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/**
 * Words and chart point at each other. Under the mouse, words light their stitches, and a stitch of the chart its words; a click on
 * words goes to their first stitch. While the words have the focus, the keys walk the reading mark along the rounds.
 */
final class PatternReading {
    /** More stitches than these are as good as the whole chart, and lighting them shows nothing. */
    private static final int MOST_LIT = 4_000;

    private final Workbench bench;
    private final Lit lit;
    private final WordsText words;
    private final Consumer<String> tell;
    private final PatternSentences sentences;
    private Optional<ShownPattern> shown = Optional.empty();
    private Optional<ReadingMark> mark = Optional.empty();
    private Optional<Under> under = Optional.empty();
    private boolean focused;

    /** What lies under the mouse: the name of rounds, or a piece of their words. */
    private record Under(int title, Optional<Saying> piece) {}

    /**
     * Listens to mouse and keys on the words from now on.
     *
     * @param tell is given the sentence of what is read; empty if nothing is read
     * @param toChart gives the chart the focus
     */
    PatternReading(Workbench bench, ChartView view, WordsText words, Consumer<String> tell, Runnable toChart) {
        this.bench = bench;
        this.lit = view.lit();
        this.words = words;
        this.tell = tell;
        sentences = new PatternSentences(view.language());
        Hand hand = new Hand();
        words.addMouseListener(hand);
        words.addMouseMotionListener(hand);
        words.addFocusListener(hand);
        lit.whenPointed(this::followPointer);
        PatternKeys.bind(
                words,
                Map.of(
                        "next", () -> read(to -> to.goOn(1)),
                        "back", () -> read(to -> to.goOn(-1)),
                        "nextStep", () -> read(ReadingMark::goToNextStep),
                        "stepBack", () -> read(ReadingMark::goToStepBefore),
                        "nextRound", () -> read(to -> to.goOnRounds(1)),
                        "roundBack", () -> read(to -> to.goOnRounds(-1)),
                        "first", () -> read(ReadingMark::goToFirst),
                        "last", () -> read(ReadingMark::goToLast),
                        "there", this::goThere,
                        "leave", toChart),
                view.language().messages("desk/pattern"));
    }

    /** Shows a text that says no stitches. */
    void showOnly(String text) {
        shown = Optional.empty();
        mark = Optional.empty();
        under = Optional.empty();
        words.show(List.of(new Paragraph(ShownPattern.Kind.TITLE, text, 0)));
        light();
    }

    /** Shows a pattern; what is read, and what is pointed at on the chart, stays so as far as it is there. */
    void show(ShownPattern pattern) {
        boolean first = shown.isEmpty();
        shown = Optional.of(pattern);
        under = Optional.empty();
        words.show(pattern.paragraphs());
        if (mark.isPresent()) {
            mark.get().readIn(pattern.said());
        } else {
            mark = Optional.of(new ReadingMark(pattern.said()));
        }
        light();
        if (first) {
            reveal(bench.cursor());
        }
    }

    /** Lights the words of the stitch at the cursor, and scrolls to them. */
    void followCursor() {
        light();
        if (!focused) {
            reveal(bench.cursor());
        }
    }

    private void followPointer() {
        light();
        lit.pointed().ifPresent(this::reveal);
    }

    private void reveal(Place place) {
        // Last, the words that say it first: those under the title of its own round.
        List<Stretch> stretches = stretchesOf(place);
        if (!stretches.isEmpty()) {
            words.reveal(stretches.get(0));
        }
    }

    private List<Stretch> stretchesOf(Place place) {
        return shown.filter(pattern -> pattern.said().chart().has(place))
                .map(pattern ->
                        pattern.said().saying(place).stream().map(pattern::of).toList())
                .orElse(List.of());
    }

    private void read(Consumer<ReadingMark> step) {
        mark.ifPresent(at -> {
            under = Optional.empty();
            step.accept(at);
            light();
            words.reveal(shown.orElseThrow().of(at.words()));
        });
    }

    private void goThere() {
        // The words may be older than an edit of this very moment.
        mark.map(at -> at.stitch().place()).filter(bench.chart()::has).ifPresent(bench::moveCursor);
    }

    /** Lights what is pointed at and what is read, here and on the chart, and tells what is read. */
    private void light() {
        boolean reads = focused && mark.isPresent();
        words.light(WordsLight.CURSOR, reads ? List.of() : stretchesOf(bench.cursor()));
        words.light(WordsLight.POINTED, pointed());
        words.light(
                WordsLight.READ,
                reads ? List.of(shown.orElseThrow().of(mark.get().words())) : List.of());
        Optional<ReadingMark> read = mark.filter(at -> reads);
        Set<Place> places = under.map(this::places)
                .or(() -> read.map(at -> places(at.words())))
                .orElse(Set.of());
        lit.light(
                places.size() > MOST_LIT ? Set.of() : places,
                read.map(at -> at.stitch().place()));
        tell.accept(read.map(at -> sentences.sentence(shown.orElseThrow().said(), at.stitch(), at.words()))
                .orElse(""));
    }

    private List<Stretch> pointed() {
        return under.map(at -> List.of(at.piece()
                        .map(shown.orElseThrow()::of)
                        .orElseGet(() -> shown.orElseThrow().labelOf(at.title()))))
                .orElseGet(() -> lit.pointed().map(this::stretchesOf).orElse(List.of()));
    }

    private Set<Place> places(Under at) {
        return at.piece().map(this::places).orElseGet(() -> placesOf(at.title()));
    }

    private Set<Place> places(Saying piece) {
        SaidPattern said = shown.orElseThrow().said();
        return said.places(said.rounds().get(piece.title()), piece.piece().span());
    }

    /** All stitches of the rounds of a title. */
    private Set<Place> placesOf(int title) {
        SaidPattern said = shown.orElseThrow().said();
        SaidRounds rounds = said.rounds().get(title);
        Chart chart = said.chart();
        Set<Place> places = new HashSet<>();
        for (int round = rounds.first(); round <= rounds.last() && places.size() <= MOST_LIT; round++) {
            for (Section section : Section.values()) {
                for (int i = 1; i <= chart.round(round).section(section).length(); i++) {
                    places.add(new Place(round, section, i));
                }
            }
        }
        return places;
    }

    /** What lies at a character: a piece, or the name of rounds; nothing elsewhere. */
    private Optional<Under> at(MouseEvent event) {
        var character = words.characterAt(event.getPoint());
        if (shown.isEmpty() || character.isEmpty()) {
            return Optional.empty();
        }
        ShownPattern pattern = shown.get();
        int at = character.getAsInt();
        return pattern.pieceAt(at)
                .map(piece -> new Under(piece.title(), Optional.of(piece)))
                .or(() -> pattern.titleAt(at)
                        .filter(title -> pattern.labelOf(title).holds(at))
                        .map(title -> new Under(title, Optional.empty())));
    }

    private void point(Optional<Under> at) {
        if (!at.equals(under)) {
            under = at;
            light();
        }
    }

    private final class Hand extends MouseAdapter implements FocusListener {
        @Override
        public void mouseMoved(MouseEvent event) {
            point(at(event));
        }

        @Override
        public void mouseExited(MouseEvent event) {
            point(Optional.empty());
        }

        @Override
        public void mouseClicked(MouseEvent event) {
            // Words that were drawn over are to be copied.
            if (SwingUtilities.isLeftMouseButton(event) && words.getSelectedText() == null) {
                at(event).ifPresent(here -> {
                    mark.orElseThrow()
                            .goTo(
                                    here.title(),
                                    here.piece().map(piece -> piece.piece().span()));
                    light();
                    goThere();
                });
            }
        }

        @Override
        public void focusGained(FocusEvent event) {
            focused = true;
            if (shown.isPresent() && shown.get().said().chart().has(bench.cursor())) {
                mark.orElseThrow().goTo(bench.cursor());
            }
            light();
        }

        @Override
        public void focusLost(FocusEvent event) {
            focused = false;
            light();
        }
    }
}
