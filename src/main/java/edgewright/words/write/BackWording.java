package edgewright.words.write;

import edgewright.chart.Stitch;
import edgewright.chart.Terms;
import edgewright.words.page.TextBlock;
import edgewright.words.terms.Phrasebook;
import edgewright.words.tree.BackRound;
import edgewright.words.tree.WrittenBack;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;

/** Puts a back layer into words. */
final class BackWording {
    private final Phrasebook texts = Phrasebook.ofPattern();
    private final Phrasebook terms;
    private final RoundWording rounds;

    BackWording(Terms terms, RoundWording rounds) {
        this.terms = Phrasebook.of(terms);
        this.rounds = rounds;
    }

    /** All that is said, a paragraph each: how it is worked, its rounds, and the join. */
    List<TextBlock> blocks(WrittenBack back, boolean changed) {
        List<TextBlock> blocks = new ArrayList<>();
        blocks.add(prose(changed ? "back.what.piece" : "back.what", terms.text("baseStitch")));
        blocks.add(back.hook().map(hook -> prose("back.hook", hook)).orElseGet(() -> prose("back.smallerHook")));
        Set<Integer> chains = new TreeSet<>();
        back.rounds().forEach(round -> chains.add(round.cornerChains()));
        chains.forEach(number -> blocks.add(prose("back.corner." + number)));
        blocks.add(
                has(back, BackRound.Height.TALL)
                        ? prose("back.begin", terms.text("tall.short"), terms.of(Stitch.CHAIN, "short"))
                        : prose("back.beginLow"));
        List<String> base = new ArrayList<>(List.of(texts.text("back.base")));
        rounds.size(back.base(), OptionalInt.empty(), base);
        blocks.add(new TextBlock.Prose(String.join(" ", base)));
        back.rounds().forEach(round -> blocks.add(round(round, back.rounds())));
        if (back.joined()) {
            blocks.add(prose("back.join"));
            blocks.add(prose("back.joining", terms.text("slip.short")));
        }
        return blocks;
    }

    /** The abbreviations that only a back layer needs. */
    List<TextBlock> abbreviations(WrittenBack back, Set<Stitch> used) {
        List<TextBlock> entries = new ArrayList<>();
        if (!used.contains(Stitch.PLAIN) && has(back, BackRound.Height.LOW)) {
            entries.add(new TextBlock.Entry(terms.of(Stitch.PLAIN, "short"), terms.of(Stitch.PLAIN, "meaning")));
        }
        if (has(back, BackRound.Height.TALL)) {
            entries.add(new TextBlock.Entry(terms.text("tall.short"), terms.text("tall.meaning")));
        }
        if (back.joined()) {
            entries.add(new TextBlock.Entry(terms.text("slip.short"), terms.text("slip.meaning")));
        }
        return entries;
    }

    private static boolean has(WrittenBack back, BackRound.Height height) {
        return back.rounds().stream().anyMatch(round -> round.height() == height);
    }

    /** A round that is worked as one before it is said so. */
    private TextBlock round(BackRound round, List<BackRound> all) {
        List<String> line = new ArrayList<>();
        line.add(
                round.frontRound().isPresent()
                        ? texts.text(
                                "back.roundAs",
                                round.number(),
                                round.frontRound().getAsInt())
                        : texts.text("back.round", round.number()));
        rounds.size(round.side(), OptionalInt.empty(), line);
        Optional<BackRound> same = all.stream()
                .filter(other -> other.number() < round.number() && isWorkedAlike(round, other))
                .findFirst();
        if (same.isPresent()) {
            line.add(texts.text("back.asBefore", same.get().number()));
            return new TextBlock.Prose(String.join(" ", line));
        }
        String stitch =
                round.height() == BackRound.Height.TALL ? terms.text("tall.short") : terms.of(Stitch.PLAIN, "short");
        String chain = terms.of(Stitch.CHAIN, "short");
        line.add(texts.text("back.every", stitch, round.atEachArm(), round.cornerChains(), chain));
        line.add(texts.text("round.sides"));
        return new TextBlock.Prose(String.join(" ", line));
    }

    private static boolean isWorkedAlike(BackRound one, BackRound other) {
        return one.height() == other.height()
                && one.atEachArm() == other.atEachArm()
                && one.cornerChains() == other.cornerChains();
    }

    private TextBlock prose(String key, Object... values) {
        return new TextBlock.Prose(texts.text(key, values));
    }
}
