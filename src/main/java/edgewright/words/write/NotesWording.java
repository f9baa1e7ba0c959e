package edgewright.words.write;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.plain;

import edgewright.chart.PerSide;
import edgewright.chart.Stitch;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.page.TextBlock;
import edgewright.words.terms.TradeTerms;
import edgewright.words.tree.Bracket;
import edgewright.words.tree.ChangingStep;
import edgewright.words.tree.Group;
import edgewright.words.tree.Instructions;
import edgewright.words.tree.SideStep;
import edgewright.words.tree.StartMark;
import edgewright.words.tree.WrittenRound;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Tells how the rounds of a pattern are to be read, as far as something in it is written so. */
final class NotesWording {
    private final Messages says;
    private final Messages phrases;
    private final TradeTerms trade;
    private final Instructions pattern;
    private final Set<Stitch> used;
    private final Optional<PieceWording> piece;
    private final boolean inTable;
    private final boolean repeatFrom;
    private final Optional<String> figures;

    /**
     * @param used the stitches that the rounds are worked in
     * @param piece of a pattern for one piece
     * @param inTable whether the rounds stand in a table
     * @param repeatFrom whether a round is told with an asterisk
     * @param figures the heading under which figures show the techniques, if they do
     */
    NotesWording(
            Language language,
            Instructions pattern,
            Set<Stitch> used,
            Optional<PieceWording> piece,
            boolean inTable,
            boolean repeatFrom,
            Optional<String> figures) {
        this.says = language.messages("words/write");
        this.phrases = language.messages("words/phrases");
        this.trade = TradeTerms.of(language, pattern.terms());
        this.pattern = pattern;
        this.used = used;
        this.piece = piece;
        this.inTable = inTable;
        this.repeatFrom = repeatFrom;
        this.figures = figures;
    }

    List<TextBlock> blocks() {
        List<TextBlock> blocks = new ArrayList<>();
        blocks.add(Wording.prose(says.text("direction-" + pattern.hand())));
        piece.map(PieceWording::note).map(TextBlock.Prose::new).ifPresent(blocks::add);
        blocks.add(Wording.prose(says.text(piece.isPresent() ? "sides-others" : "sides-all")));
        String example = trade.abbreviation(used.contains(Stitch.BACK_LOOP) ? Stitch.BACK_LOOP : Stitch.PLAIN);
        if (saysNumbers()) {
            blocks.add(Wording.prose(
                    says.text("notes-number", arg("stitch", example), arg("chain", trade.abbreviation(Stitch.CHAIN)))));
        }
        groups(blocks, example);
        piece.map(of -> of.changes(example)).map(TextBlock.Prose::new).ifPresent(blocks::add);
        blocks.add(Wording.prose(corners()));
        if (used.contains(Stitch.CHAIN)) {
            blocks.add(Wording.prose(says.text("notes-chain")));
        }
        return blocks;
    }

    /** How what stands after an asterisk, in brackets and in every stitch is worked. */
    private void groups(List<TextBlock> blocks, String example) {
        List<Group> groups = pattern.rounds().stream()
                .flatMap(round -> round.stretch().group().stream())
                .toList();
        List<Group> starred = groups.stream()
                .filter(group -> !RoundWording.isEveryStitch(group))
                .toList();
        if (inTable) {
            blocks.add(Wording.prose(says.text("notes-table")));
        }
        if (repeatFrom) {
            blocks.add(Wording.prose(says.text("notes-group")));
        }
        if (pattern.rounds().stream().anyMatch(NotesWording::hasBrackets)) {
            blocks.add(Wording.prose(says.text(
                    "notes-brackets", arg("stitch", example), arg("other", trade.abbreviation(Stitch.LONG)))));
        }
        List<String> whole = new ArrayList<>();
        if (groups.size() > starred.size()) {
            whole.add(says.text("notes-every"));
        }
        if (groups.stream().anyMatch(group -> group.lastStitches() > 0)) {
            whole.add(says.text("notes-last"));
        }
        if (!whole.isEmpty()) {
            blocks.add(Wording.prose(phrases.list("sentences-next", whole)));
        }
    }

    /** Whether anything is worked a number of times, along a side or in a round that puts counts right. */
    private static boolean hasBrackets(WrittenRound round) {
        Stream<SideStep> steps =
                Stream.of(StartMark.Part.values()).flatMap(part -> round.stretch().steps(part).stream());
        return steps.anyMatch(Bracket.class::isInstance)
                || round.changes().stream()
                        .flatMap(PerSide::stream)
                        .flatMap(List::stream)
                        .anyMatch(ChangingStep.Times.class::isInstance);
    }

    /** How corners are turned, and which loops of their chains the stitches take. */
    private String corners() {
        List<String> said = new ArrayList<>();
        cornerChains().forEach(chains -> said.add(corner(chains)));
        List<String> loops = Stream.of(Stitch.BACK_LOOP, Stitch.PLAIN)
                .filter(used::contains)
                .map(trade::abbreviation)
                .toList();
        if (loops.size() == 2 && figures.isPresent()) {
            said.add(says.text("cornerLoops-plain", arg("stitch", loops.get(1))));
        } else if (loops.size() == 2) {
            said.add(says.text("cornerLoops-both", arg("back", loops.get(0)), arg("plain", loops.get(1))));
        } else if (used.contains(Stitch.BACK_LOOP)) {
            said.add(says.text("cornerLoops-back", arg("stitch", loops.get(0))));
        } else if (used.contains(Stitch.PLAIN)) {
            said.add(says.text("cornerLoops-plain", arg("stitch", loops.get(0))));
        }
        if (pattern.rounds().stream().anyMatch(LongAtCorner::isIn)) {
            said.add(says.text("cornerLoops-long", arg("stitch", trade.abbreviation(Stitch.LONG))));
        }
        return phrases.list("sentences-next", said);
    }

    /** How a corner of so many chains is made, in short where a figure shows it. */
    private String corner(int chains) {
        return figures.map(heading -> says.text("shown-corner", plain("chains", chains), arg("techniques", heading)))
                .orElseGet(() -> says.text("corner-" + chains));
    }

    /** Whether a round gives a number of stitches; one of a single stitch throughout does not. */
    private boolean saysNumbers() {
        return pattern.rounds().stream()
                .anyMatch(round -> round.changes().isPresent()
                        || !round.stretch().before().isEmpty()
                        || !round.stretch().after().isEmpty()
                        || round.stretch().group().stream().anyMatch(group -> !RoundWording.isEveryStitch(group)));
    }

    private Set<Integer> cornerChains() {
        Set<Integer> chains = new TreeSet<>();
        pattern.base().cornerChains().ifPresent(chains::add);
        pattern.rounds().forEach(round -> chains.add(round.cornerChains()));
        return chains;
    }
}
