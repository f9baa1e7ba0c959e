package edgewright.words.write;

import static edgewright.texts.Arg.arg;

import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.chart.Stitch;
import edgewright.chart.Technique;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.page.PatternPart;
import edgewright.words.page.PatternText;
import edgewright.words.page.RoundParts;
import edgewright.words.page.TextBlock;
import edgewright.words.said.SpanMarks;
import edgewright.words.technique.TechniqueWording;
import edgewright.words.terms.TradeTerms;
import edgewright.words.terms.TradeWord;
import edgewright.words.tree.ChangingStep;
import edgewright.words.tree.Instructions;
import edgewright.words.tree.PatternYarn;
import edgewright.words.tree.Run;
import edgewright.words.tree.SideSize;
import edgewright.words.tree.WrittenRound;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;

/** Puts a tree into words, part by part. A note stands only where the rounds need it. */
final class Wording {
    private final Language language;
    private final Messages says;
    private final Messages phrases;
    private final TradeTerms trade;
    private final Instructions pattern;
    private final Extras extras;
    private final YarnLabels yarns;
    private final RoundWording rounds;
    private final SizeWording sizes;
    private final StartWording starts;
    /** What is said of the one piece that the pattern is for. */
    private final Optional<PieceWording> piece;

    Wording(Language language, Instructions pattern) {
        this(language, pattern, Extras.none(RoundsLayout.SENTENCES), SpanMarks.none());
    }

    /**
     * What a pattern says and no tree holds, since no maker needs it to make the stitches.
     *
     * @param needs what is needed beside the names of the yarns
     * @param names of the sizes; none where they have no names
     * @param eachRound whether each round of a back layer is told by itself too
     * @param techniques whether it tells how its techniques are worked
     */
    record Extras(
            List<TextBlock> needs,
            List<String> names,
            Technique technique,
            RoundsLayout layout,
            boolean eachRound,
            boolean techniques) {
        static Extras none(RoundsLayout layout) {
            return new Extras(List.of(), List.of(), Technique.DEFAULT, layout, false, false);
        }

        Extras {
            needs = List.copyOf(needs);
            names = List.copyOf(names);
        }
    }

    /** @param marks for the pieces of the rounds that say stitches */
    Wording(Language language, Instructions pattern, Extras extras, SpanMarks marks) {
        this.language = language;
        this.says = language.messages("words/write");
        this.phrases = language.messages("words/phrases");
        this.trade = TradeTerms.of(language, pattern.terms());
        this.pattern = pattern;
        this.extras = extras;
        yarns = new YarnLabels(language, pattern.yarns());
        sizes = new SizeWording(language, pattern.counting(), pattern.hand());
        starts = new StartWording(language, pattern.markers());
        rounds = new RoundWording(
                language,
                pattern.terms(),
                pattern.base().cornerChains(),
                sizes,
                new ChangesWording(language, trade, pattern.hand(), marks),
                starts,
                marks);
        piece = PieceWording.of(language, pattern);
    }

    /** A word and what is said of it, apart and in one line. */
    static TextBlock entry(Messages phrases, String word, String text) {
        String line = phrases.text("entry", arg("word", word), arg("text", text));
        return new TextBlock.Entry(word, text, line.strip());
    }

    PatternText pattern() {
        List<PatternPart> parts = new ArrayList<>();
        parts.add(new PatternPart(PatternPart.Kind.HEADING, pattern.title(), heading()));
        for (PatternPart.Kind kind : PatternPart.Kind.values()) {
            List<TextBlock> blocks = kind == PatternPart.Kind.HEADING ? List.of() : blocks(kind);
            if (!blocks.isEmpty()) {
                parts.add(new PatternPart(kind, phrases.text("heading-" + kind), blocks));
            }
        }
        return new PatternText(parts);
    }

    TextBlock.RoundWords rounds(List<WrittenRound> together) {
        return rounds.rounds(
                together, together.stream().map(pattern::yarnOf).map(yarns::of).toList());
    }

    RoundParts parts(WrittenRound round) {
        return rounds.parts(round);
    }

    private List<TextBlock> blocks(PatternPart.Kind kind) {
        return switch (kind) {
            case HEADING -> heading();
            case TERMS -> List.of(prose(says.text("terms-which", arg("terms", trade.name()))));
            case NEEDS -> needs();
            case DESIGNER_NOTES ->
                pattern.notes().stream().<TextBlock>map(TextBlock.Prose::new).toList();
            case NOTES ->
                new NotesWording(language, pattern, used(), piece, inTable(), saysRepeatFrom(), figures()).blocks();
            case ABBREVIATIONS -> abbreviations();
            case SET_UP -> setUp();
            case JOINING -> new JoiningWording(language, extras.technique(), figures(), pattern).blocks();
            case ROUNDS -> rounds();
            case COUNTS ->
                new CountsWording(language, pattern, yarns, extras.names())
                        .table()
                        .<List<TextBlock>>map(List::of)
                        .orElse(List.of());
            case BACK ->
                pattern.back()
                        .map(back -> new BackWording(language, pattern.terms(), rounds)
                                .blocks(back, piece.isPresent(), extras.eachRound()))
                        .orElse(List.of());
            case TECHNIQUES -> extras.techniques() ? techniques() : List.of();
            case FINISHING ->
                List.of(
                        prose(says.text(pattern.back().isPresent() ? "finishing-endsBetween" : "finishing-ends")),
                        prose(says.text("finishing-block")));
        };
    }

    /** The heading under which figures show the techniques, if they do. */
    private Optional<String> figures() {
        return extras.techniques()
                ? Optional.of(phrases.text("heading-" + PatternPart.Kind.TECHNIQUES))
                : Optional.empty();
    }

    private List<TextBlock> techniques() {
        return TechniqueWording.of(pattern, extras.technique(), language).stream()
                .<TextBlock>map(TextBlock.Technique::new)
                .toList();
    }

    private List<TextBlock> rounds() {
        return inTable() && !pattern.rounds().isEmpty()
                ? List.of(new RoundsTableWording(language, pattern, yarns, rounds).table())
                : AlikeRounds.together(pattern).stream()
                        .<TextBlock>map(this::rounds)
                        .toList();
    }

    private boolean inTable() {
        return extras.layout() == RoundsLayout.TABLE;
    }

    private List<TextBlock> heading() {
        List<TextBlock> blocks = new ArrayList<>();
        if (!pattern.designer().isEmpty()) {
            blocks.add(prose(phrases.text("designer", arg("designer", pattern.designer()))));
        }
        if (pattern.hand() == HookHand.LEFT) {
            blocks.add(prose(phrases.text("left-hand")));
        }
        piece.map(PieceWording::heading).map(TextBlock.Prose::new).ifPresent(blocks::add);
        if (pattern.draft()) {
            blocks.add(prose(phrases.text("draft")));
        }
        return blocks;
    }

    private List<TextBlock> needs() {
        List<TextBlock> blocks = new ArrayList<>();
        for (PatternYarn yarn : pattern.yarns()) {
            blocks.add(entry(phrases, phrases.text("yarn-entry", arg("id", yarn.id())), yarn.name()));
        }
        blocks.addAll(extras.needs());
        return blocks;
    }

    /** Which numbers are whose: of named sizes, or of examples. */
    private Optional<String> sizes(SideSize side) {
        if (side instanceof SideSize.OfMultiple any) {
            List<Integer> examples = any.numbers().examples();
            return Optional.of(
                    examples.size() < 2
                            ? says.text("setUp-sides")
                            : phrases.list(
                                    "sentences-next",
                                    List.of(
                                            says.text("setUp-examples", arg("numbers", sizes.numbers(examples))),
                                            says.text("setUp-sides"))));
        }
        return side.counts().size() < 2
                ? Optional.empty()
                : Optional.of(
                        extras.names().isEmpty()
                                ? says.text("setUp-sizes")
                                : says.text("setUp-names", arg("names", SizeWording.ofSizes(phrases, extras.names()))));
    }

    private List<TextBlock> abbreviations() {
        List<TextBlock> blocks = new ArrayList<>();
        Set<Stitch> used = used();
        for (Stitch stitch : Stitch.values()) {
            if (used.contains(stitch) || stitch == Stitch.CHAIN) {
                blocks.add(explained(TradeWord.of(stitch)));
            }
        }
        pattern.back().stream()
                .flatMap(back -> new BackWording(language, pattern.terms(), rounds).words(back, used).stream())
                .map(this::explained)
                .forEach(blocks::add);
        for (Stitch stitch : together()) {
            blocks.add(entry(phrases, trade.together(stitch), trade.togetherMeaning(stitch)));
        }
        if (used.contains(Stitch.CHAIN)) {
            blocks.add(explained(TradeWord.MISS));
        }
        if (saysRepeatFrom()) {
            blocks.add(entry(phrases, says.text("rep"), says.text("rep-meaning")));
        }
        if (saysStitches()) {
            blocks.add(entry(phrases, says.text("st-both"), says.text("st-meaning")));
        }
        if (pattern.rounds().stream().anyMatch(JoiningWording::hasMark)) {
            blocks.add(entry(phrases, phrases.text("start-mark-word"), says.text("start-mark-meaning")));
        }
        return blocks;
    }

    /** Whether a group stands after an asterisk anywhere; in a table it does so only in words that run across. */
    private boolean saysRepeatFrom() {
        return pattern.rounds().stream()
                .filter(round -> !inTable() || rounds.runsAcross(round))
                .flatMap(round -> round.stretch().group().stream())
                .anyMatch(group -> !RoundWording.isEveryStitch(group));
    }

    private TextBlock explained(TradeWord word) {
        return entry(phrases, trade.abbreviation(word), trade.meaning(word));
    }

    private List<TextBlock> setUp() {
        SideSize side = pattern.base().side();
        List<TextBlock> blocks = new ArrayList<>();
        blocks.add(rounds.base(pattern.base()));
        blocks.add(prose(says.text("setUp-what", arg("stitch", trade.baseStitch()))));
        blocks.add(prose(says.text("setUp-pickUp", arg("stitch", trade.baseStitch()))));
        sizes(side).map(TextBlock.Prose::new).ifPresent(blocks::add);
        if (!side.equals(SideSize.unstated()) && piece.isEmpty()) {
            blocks.add(prose(new ChangingAdvice(language, pattern.rounds(), side.multiple(), sizes).paragraph()));
        }
        blocks.addAll(starts.setUp());
        return blocks;
    }

    static TextBlock prose(String text) {
        return new TextBlock.Prose(text);
    }

    private Set<Stitch> used() {
        Set<Stitch> used = EnumSet.noneOf(Stitch.class);
        pattern.rounds().forEach(round -> allRuns(round).map(Run::stitch).forEach(used::add));
        return used;
    }

    private boolean saysStitches() {
        return used().contains(Stitch.CHAIN)
                || !sizes.base(pattern.base().side(), OptionalInt.empty()).isEmpty()
                || pattern.rounds().stream()
                        .anyMatch(round -> !round.side().counts().isEmpty()
                                || round.stretch().group().stream()
                                        .anyMatch(group ->
                                                group.lastStitches() > 0 || RoundWording.isEveryStitch(group)));
    }

    private static Stream<Run> allRuns(WrittenRound round) {
        return Stream.concat(round.stretch().runs(), changes(round).flatMap(Wording::runs));
    }

    /** All that is done in a round with changes, step by step. */
    private static Stream<ChangingStep> changes(WrittenRound round) {
        return round.changes().stream()
                .flatMap(PerSide::stream)
                .flatMap(List::stream)
                .flatMap(step -> step instanceof ChangingStep.Times times ? times.steps().stream() : Stream.of(step));
    }

    private static Stream<Run> runs(ChangingStep step) {
        return step instanceof ChangingStep.Work work ? Stream.of(work.run()) : Stream.of();
    }

    /** The stitches of which two are worked together somewhere. */
    private Set<Stitch> together() {
        Set<Stitch> together = EnumSet.noneOf(Stitch.class);
        pattern.rounds().stream().flatMap(Wording::changes).forEach(step -> {
            if (step instanceof ChangingStep.Together both) {
                together.add(both.stitch());
            }
        });
        return together;
    }
}
