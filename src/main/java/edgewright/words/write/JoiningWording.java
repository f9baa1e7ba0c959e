package edgewright.words.write;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.choice;

import edgewright.chart.Technique;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.page.TextBlock;
import edgewright.words.tree.Instructions;
import edgewright.words.tree.StartMark;
import edgewright.words.tree.WrittenRound;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How a round is begun and closed, in the technique that the designer chose. */
final class JoiningWording {
    private final Messages says;
    private final Messages phrases;
    private final Technique technique;
    /** The heading under which figures show how a round is begun and closed, if they do. */
    private final Optional<String> figures;

    private final List<WrittenRound> rounds;
    /** Whether a round starts after its marker instead of right above it. */
    private final boolean someStartPast;

    /** @param figures the heading under which figures show the techniques, if they do; they need not be told twice */
    JoiningWording(Language language, Technique technique, Optional<String> figures, Instructions pattern) {
        this.says = language.messages("words/write");
        this.phrases = language.messages("words/phrases");
        this.technique = technique;
        this.figures = figures;
        this.rounds = pattern.rounds();
        this.someStartPast = rounds.stream()
                .anyMatch(round -> round.start()
                        .filter(start ->
                                start.stitch() > pattern.markers().orElseThrow().joins(round.number()))
                        .isPresent());
    }

    /** Whether the words of this round have the mark of its start. */
    static boolean hasMark(WrittenRound round) {
        return round.start().isPresent() && !RoundWording.isOneStitchThroughout(round.stretch());
    }

    /** On beginning and on closing, for each of the places where rounds begin. */
    List<TextBlock> blocks() {
        boolean alongSide = rounds.stream().anyMatch(round -> round.start().isPresent());
        boolean atCorner = rounds.isEmpty()
                || rounds.stream().anyMatch(round -> round.start().isEmpty());
        List<TextBlock> blocks = new ArrayList<>();
        String join = figures.map(heading ->
                        says.text("join-shown", choice("join", technique.join()), arg("techniques", heading)))
                .orElseGet(() -> says.text("joining-" + technique.join()));
        String ends = says.text("joining-ends");
        if (!alongSide) {
            blocks.add(paragraph(says.text("joining-atCorner"), join, says.text("joining-apart")));
            blocks.add(paragraph(close(false), ends));
            return blocks;
        }
        List<String> starting = new ArrayList<>();
        starting.add(figures.map(heading ->
                        says.text("aboveMarker-shown", choice("join", technique.join()), arg("techniques", heading)))
                .orElseGet(() -> says.text("joining-aboveMarker")));
        if (someStartPast) {
            starting.add(says.text("joining-pastMarker"));
        }
        if (figures.isEmpty()) {
            starting.add(says.text("joinAlong-" + technique.join()));
        }
        blocks.add(new TextBlock.Prose(phrases.list("sentences-next", starting)));
        blocks.add(around());
        if (atCorner) {
            blocks.add(paragraph(says.text("joining-someAtCorner"), join));
        }
        blocks.add(paragraph(close(true), ends));
        if (atCorner) {
            blocks.add(paragraph(says.text("joining-closeSomeAtCorner")));
        }
        return blocks;
    }

    /** The way from the start round the piece and back, and what the mark means, as far as rounds have it. */
    private TextBlock around() {
        List<String> sentences = new ArrayList<>(List.of(says.text("joining-around")));
        List<WrittenRound> marked =
                rounds.stream().filter(JoiningWording::hasMark).toList();
        if (!marked.isEmpty()) {
            sentences.add(says.text("joining-mark"));
        }
        if (marked.stream().anyMatch(round -> isInGroup(round, false))) {
            sentences.add(says.text("joining-markInGroup"));
        }
        if (marked.stream().anyMatch(round -> isInGroup(round, true))) {
            sentences.add(says.text("joining-markInEvery"));
        }
        if (rounds.stream().anyMatch(round -> round.start().isPresent() && !hasMark(round))) {
            sentences.add(says.text("joining-noMark"));
        }
        return new TextBlock.Prose(phrases.list("sentences-next", sentences));
    }

    /** @param everyStitch whether the group is said without an asterisk */
    private static boolean isInGroup(WrittenRound round, boolean everyStitch) {
        return round.start().orElseThrow().mark().part() == StartMark.Part.GROUP
                && RoundWording.isEveryStitch(round.stretch().group().orElseThrow()) == everyStitch;
    }

    private String close(boolean alongSide) {
        var where = arg("where", says.text(alongSide ? "closeAt-SIDE" : "closeAt-CORNER"));
        if (technique.close() == Technique.Close.SLIP) {
            return says.text("close-SLIP", where);
        }
        return figures.isPresent()
                ? says.text("close-shown", where, arg("techniques", figures.get()))
                : says.text(
                        "close-INVISIBLE",
                        where,
                        arg("last", says.text(alongSide ? "close-lastStitch" : "close-lastChain")),
                        choice("join", technique.join()));
    }

    private TextBlock paragraph(String... sentences) {
        return new TextBlock.Prose(phrases.list("sentences-next", List.of(sentences)));
    }
}
