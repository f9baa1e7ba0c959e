package edgewright.words.write;

import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.chart.Stitch;
import edgewright.words.page.PatternPart;
import edgewright.words.page.PatternText;
import edgewright.words.page.RoundParts;
import edgewright.words.page.TextBlock;
import edgewright.words.terms.Phrasebook;
import edgewright.words.tree.ChangingStep;
import edgewright.words.tree.Group;
import edgewright.words.tree.Instructions;
import edgewright.words.tree.PatternYarn;
import edgewright.words.tree.Run;
import edgewright.words.tree.SideSize;
import edgewright.words.tree.WrittenRound;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Puts a tree into words, part by part. A note stands only where the rounds need it. */
final class Wording {
    private final Phrasebook texts = Phrasebook.ofPattern();
    private final Phrasebook terms;
    private final Instructions pattern;
    private final List<TextBlock> tools;
    private final YarnLabels yarns;
    private final RoundWording rounds;
    /** What is said of the one piece that the pattern is for. */
    private final Optional<PieceWording> piece;

    Wording(Instructions pattern) {
        this(pattern, List.of());
    }

    /** @param tools what is needed beside yarn, and is in no tree */
    Wording(Instructions pattern, List<TextBlock> tools) {
        this.pattern = pattern;
        this.tools = List.copyOf(tools);
        terms = Phrasebook.of(pattern.terms());
        yarns = new YarnLabels(pattern.yarns());
        rounds = new RoundWording(pattern.terms(), pattern.counting(), pattern.hand());
        piece = PieceWording.of(pattern, rounds);
    }

    PatternText pattern() {
        List<PatternPart> parts = new ArrayList<>();
        parts.add(new PatternPart(PatternPart.Kind.HEADING, pattern.title(), heading()));
        for (PatternPart.Kind kind : PatternPart.Kind.values()) {
            List<TextBlock> blocks = kind == PatternPart.Kind.HEADING ? List.of() : blocks(kind);
            if (!blocks.isEmpty()) {
                parts.add(new PatternPart(kind, texts.text("heading." + kind), blocks));
            }
        }
        return new PatternText(parts);
    }

    TextBlock.RoundWords round(WrittenRound round) {
        return rounds.round(round, yarns.of(pattern.yarnOf(round)));
    }

    RoundParts parts(WrittenRound round) {
        return rounds.parts(round);
    }

    private List<TextBlock> blocks(PatternPart.Kind kind) {
        return switch (kind) {
            case HEADING -> heading();
            case TERMS -> List.of(prose("terms.which", terms.text("terms")));
            case NEEDS -> needs();
            case DESIGNER_NOTES ->
                pattern.notes().stream().<TextBlock>map(TextBlock.Prose::new).toList();
            case NOTES -> notes();
            case ABBREVIATIONS -> abbreviations();
            case SET_UP -> setUp();
            case JOINING -> joining();
            case ROUNDS -> pattern.rounds().stream().<TextBlock>map(this::round).toList();
            case COUNTS ->
                new CountsWording(pattern, yarns)
                        .table()
                        .<List<TextBlock>>map(List::of)
                        .orElse(List.of());
            case BACK ->
                pattern.back()
                        .map(back -> new BackWording(pattern.terms(), rounds).blocks(back, piece.isPresent()))
                        .orElse(List.of());
            case FINISHING -> List.of(prose(pattern.back().isPresent() ? "finishing.endsBetween" : "finishing.ends"));
        };
    }

    private List<TextBlock> heading() {
        List<TextBlock> blocks = new ArrayList<>();
        if (!pattern.designer().isEmpty()) {
            blocks.add(prose("heading.designer", pattern.designer()));
        }
        if (pattern.hand() == HookHand.LEFT) {
            blocks.add(prose("heading.left"));
        }
        piece.map(PieceWording::heading).ifPresent(blocks::add);
        if (pattern.draft()) {
            blocks.add(prose("heading.draft"));
        }
        return blocks;
    }

    private List<TextBlock> needs() {
        List<TextBlock> blocks = new ArrayList<>();
        for (PatternYarn yarn : pattern.yarns()) {
            blocks.add(new TextBlock.Entry(texts.text("needs.yarn", yarn.id()), yarn.name()));
        }
        blocks.addAll(tools);
        blocks.add(prose(tools.isEmpty() ? "needs.tools" : "needs.moreTools", terms.text("tension")));
        return blocks;
    }

    private List<TextBlock> notes() {
        List<TextBlock> blocks = new ArrayList<>();
        blocks.add(prose("notes.direction." + pattern.hand()));
        piece.map(PieceWording::note).ifPresent(blocks::add);
        blocks.add(prose(piece.isPresent() ? "notes.sides.others" : "notes.sides"));
        Stitch example = used().contains(Stitch.BACK_LOOP) ? Stitch.BACK_LOOP : Stitch.PLAIN;
        blocks.add(prose("notes.number", terms.of(example, "short"), terms.of(Stitch.CHAIN, "short")));
        List<Group> groups = pattern.rounds().stream()
                .flatMap(round -> round.stretch().group().stream())
                .toList();
        List<Group> starred = groups.stream()
                .filter(group -> !RoundWording.isEveryStitch(group))
                .toList();
        if (!starred.isEmpty()) {
            blocks.add(prose("notes.group"));
        }
        besideAsterisk().ifPresent(blocks::add);
        if (groups.size() > starred.size()) {
            blocks.add(prose("notes.every"));
        }
        if (groups.stream().anyMatch(group -> group.lastStitches() > 0)) {
            blocks.add(prose("notes.last"));
        }
        piece.map(of -> of.changes(terms.of(example, "short"))).ifPresent(blocks::add);
        for (int chains : cornerChains()) {
            blocks.add(new TextBlock.Prose(texts.text("notes.corner." + chains) + " " + texts.text("notes.growth")));
        }
        if (pattern.rounds().stream().anyMatch(Wording::hasLongAtCorner)) {
            blocks.add(prose("notes.longAtCorner", terms.of(Stitch.LONG, "short")));
        }
        if (used().contains(Stitch.CHAIN)) {
            blocks.add(prose("notes.chain"));
        }
        counting(blocks);
        return blocks;
    }

    private List<TextBlock> joining() {
        if (!startsAlongASide()) {
            return List.of(prose("joining.atCorner"), prose("joining.closeAtCorner"));
        }
        return startsAtACorner()
                ? List.of(
                        prose("joining.alongSide"),
                        prose("joining.someAtCorner"),
                        prose("joining.closeAlongSide"),
                        prose("joining.closeSomeAtCorner"))
                : List.of(prose("joining.alongSide"), prose("joining.closeAlongSide"));
    }

    /** What is said of a stitch that stands on both sides of an asterisk, with the first of them as the example. */
    private Optional<TextBlock> besideAsterisk() {
        for (WrittenRound round : pattern.rounds()) {
            if (round.stretch().before().isEmpty()
                    || round.stretch().group().isEmpty()
                    || RoundWording.isEveryStitch(round.stretch().group().get())) {
                continue;
            }
            Run before = round.stretch().before().get(round.stretch().before().size() - 1);
            Run after = round.stretch().group().get().runs().get(0);
            if (before.stitch() == after.stitch() && before.stitch() != Stitch.CHAIN) {
                Run both = new Run(before.count() + after.count(), before.stitch());
                return Optional.of(
                        prose("notes.besideAsterisk", rounds.run(before), rounds.run(after), rounds.run(both)));
            }
        }
        return Optional.empty();
    }

    private boolean startsAlongASide() {
        return pattern.rounds().stream().anyMatch(round -> round.start().isPresent());
    }

    private boolean startsAtACorner() {
        return pattern.rounds().isEmpty()
                || pattern.rounds().stream().anyMatch(round -> round.start().isEmpty());
    }

    private void counting(List<TextBlock> blocks) {
        List<SideSize> sizes = Stream.concat(
                        Stream.of(pattern.base().side()),
                        pattern.rounds().stream().map(WrittenRound::side))
                .toList();
        boolean both = sizes.stream()
                .anyMatch(size -> size.counts().isEmpty() && size.multiple().isPresent());
        if (both) {
            blocks.add(prose("notes.counting.both"));
        } else if (sizes.stream().anyMatch(size -> size.counts().isPresent())) {
            blocks.add(prose("notes.counting." + pattern.counting()));
        }
    }

    private List<TextBlock> abbreviations() {
        List<TextBlock> blocks = new ArrayList<>();
        Set<Stitch> used = used();
        for (Stitch stitch : Stitch.values()) {
            if (used.contains(stitch) || stitch == Stitch.CHAIN) {
                blocks.add(new TextBlock.Entry(terms.of(stitch, "short"), terms.of(stitch, "meaning")));
            }
        }
        pattern.back()
                .map(back -> new BackWording(pattern.terms(), rounds).abbreviations(back, used))
                .ifPresent(blocks::addAll);
        for (Stitch stitch : together()) {
            blocks.add(new TextBlock.Entry(terms.of(stitch, "together"), terms.of(stitch, "togetherMeaning")));
        }
        if (used.contains(Stitch.CHAIN)) {
            blocks.add(new TextBlock.Entry(terms.text("miss.short"), terms.text("miss.meaning")));
        }
        if (saysStitches()) {
            blocks.add(new TextBlock.Entry(texts.text("abbreviations.both.st"), texts.text("abbreviations.st")));
        }
        return blocks;
    }

    private List<TextBlock> setUp() {
        SideSize side = pattern.base().side();
        List<TextBlock> blocks = new ArrayList<>();
        blocks.add(rounds.base(pattern.base()));
        blocks.add(prose("setUp.what", terms.text("baseStitch")));
        if (side.counts().isEmpty() && side.multiple().isPresent()) {
            blocks.add(prose("setUp.sides"));
        }
        if (!side.equals(SideSize.UNSTATED) && piece.isEmpty()) {
            blocks.add(new ChangingAdvice(pattern.rounds()).paragraph());
        }
        return blocks;
    }

    private TextBlock prose(String key, Object... values) {
        return new TextBlock.Prose(texts.text(key, values));
    }

    private Set<Stitch> used() {
        Set<Stitch> used = EnumSet.noneOf(Stitch.class);
        pattern.rounds().forEach(round -> allRuns(round).map(Run::stitch).forEach(used::add));
        return used;
    }

    private boolean saysStitches() {
        return used().contains(Stitch.CHAIN)
                || pattern.base().side().counts().isPresent()
                || pattern.rounds().stream()
                        .anyMatch(round -> round.side().counts().isPresent()
                                || round.stretch().group().stream().anyMatch(group -> group.lastStitches() > 0));
    }

    private Set<Integer> cornerChains() {
        Set<Integer> chains = new TreeSet<>();
        pattern.base().cornerChains().ifPresent(chains::add);
        pattern.rounds().forEach(round -> chains.add(round.cornerChains()));
        return chains;
    }

    private static Stream<Run> allRuns(WrittenRound round) {
        Stream<Run> group = round.stretch().group().stream().flatMap(g -> g.runs().stream());
        Stream<Run> changed = changes(round).flatMap(Wording::runs);
        return Stream.of(round.stretch().before().stream(), group, round.stretch().after().stream(), changed)
                .flatMap(runs -> runs);
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

    /** Whether the second or the last but one stitch of a side can be long, with the group worked not at all or more often. */
    private static boolean hasLongAtCorner(WrittenRound round) {
        for (int times = 0; times <= 2; times++) {
            List<Run> side = new ArrayList<>(round.stretch().before());
            for (int i = 0; i < times; i++) {
                round.stretch().group().ifPresent(group -> side.addAll(group.runs()));
            }
            side.addAll(round.stretch().after());
            int last = Run.stitches(side);
            if (isLong(side, 2) || isLong(side, last - 1)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isLong(List<Run> side, int place) {
        int end = 0;
        for (Run run : side) {
            int start = end;
            end += run.count();
            if (place > start && place <= end) {
                return run.stitch().coversStitchBelow();
            }
        }
        return false;
    }
}
