package edgewright.words.write;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.number;
import static edgewright.texts.Arg.shortest;

import edgewright.chart.Stitch;
import edgewright.chart.Terms;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.page.TextBlock;
import edgewright.words.terms.TradeTerms;
import edgewright.words.terms.TradeWord;
import edgewright.words.tree.BackRound;
import edgewright.words.tree.WrittenBack;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Puts a back layer into words. */
final class BackWording {
    /** Two rounds are told one after the other as shortly as together. */
    private static final int FEWEST_TOGETHER = 3;

    private final Messages phrases;
    private final Messages says;
    private final TradeTerms trade;
    private final RoundWording rounds;

    BackWording(Language language, Terms terms, RoundWording rounds) {
        this.phrases = language.messages("words/phrases");
        this.says = language.messages("words/write");
        this.trade = TradeTerms.of(language, terms);
        this.rounds = rounds;
    }

    /** All that is said, a paragraph each: how it is worked, its rounds, and the join. */
    List<TextBlock> blocks(WrittenBack back, boolean changed, boolean eachRound) {
        List<String> said = new ArrayList<>();
        said.add(says.text(changed ? "backWhat-piece" : "backWhat-all", arg("stitch", trade.baseStitch())));
        said.add(back.hook()
                .map(hook -> phrases.text("back-hook", shortest("mm", hook.mm(), 2)))
                .orElseGet(() -> says.text("back-smallerHook")));
        Set<Integer> chains = new TreeSet<>();
        back.rounds().forEach(round -> chains.add(round.cornerChains()));
        chains.forEach(number -> said.add(says.text("backCorner-" + number)));
        said.add(
                has(back, BackRound.Height.TALL)
                        ? says.text(
                                "back-begin",
                                arg("stitch", trade.abbreviation(TradeWord.TALL)),
                                arg("chain", trade.abbreviation(TradeWord.CHAIN)))
                        : says.text("back-beginLow"));
        List<String> base = new ArrayList<>(List.of(phrases.text("back-base")));
        said.add(sentences(base, rounds.size(back.base())));
        said.addAll(rounds(back.rounds(), eachRound));
        if (back.joined()) {
            said.add(says.text("back-join"));
            said.add(phrases.text("back-joining", arg("stitch", trade.abbreviation(TradeWord.SLIP))));
        }
        return said.stream().<TextBlock>map(TextBlock.Prose::new).toList();
    }

    /** The words that only a back layer needs to have explained. */
    List<TradeWord> words(WrittenBack back, Set<Stitch> used) {
        List<TradeWord> words = new ArrayList<>();
        if (!used.contains(Stitch.PLAIN) && has(back, BackRound.Height.LOW)) {
            words.add(TradeWord.PLAIN);
        }
        if (has(back, BackRound.Height.TALL)) {
            words.add(TradeWord.TALL);
        }
        if (back.joined()) {
            words.add(TradeWord.SLIP);
        }
        return words;
    }

    private static boolean has(WrittenBack back, BackRound.Height height) {
        return back.rounds().stream().anyMatch(round -> round.height() == height);
    }

    /** All rounds; three or more that follow each other, are worked alike and grow alike stand together. */
    private List<String> rounds(List<BackRound> all, boolean eachRound) {
        List<String> said = new ArrayList<>();
        int from = 0;
        while (from < all.size()) {
            int to = from + 1;
            while (to < all.size() && standTogether(all.subList(from, to + 1))) {
                to++;
            }
            if (eachRound || to - from < FEWEST_TOGETHER) {
                to = from + 1;
                said.add(round(all.get(from), all));
            } else {
                said.add(together(all.subList(from, to)));
            }
            from = to;
        }
        return said;
    }

    private static boolean standTogether(List<BackRound> rounds) {
        BackRound first = rounds.get(0);
        BackRound last = rounds.get(rounds.size() - 1);
        boolean counted = !first.side().counts().isEmpty();
        return isWorkedAlike(first, last)
                && first.frontRound().isPresent() == last.frontRound().isPresent()
                && first.side().multiple().isEmpty()
                && last.side().multiple().isEmpty()
                && counted == !last.side().counts().isEmpty()
                && (!counted || goOnGrowing(rounds));
    }

    /** Whether the last of these rounds is as much larger than the one before it as the second is than the first. */
    private static boolean goOnGrowing(List<BackRound> rounds) {
        Optional<Integer> growth = growth(rounds.subList(0, 2));
        return growth.isPresent() && growth.equals(growth(rounds.subList(rounds.size() - 2, rounds.size())));
    }

    private static Optional<Integer> growth(List<BackRound> rounds) {
        return AlikeRounds.growthOf(rounds.stream().map(BackRound::side).toList());
    }

    private String together(List<BackRound> rounds) {
        BackRound first = rounds.get(0);
        List<String> line = new ArrayList<>();
        List<String> fronts = rounds.stream()
                .flatMapToInt(round -> round.frontRound().stream())
                .mapToObj(String::valueOf)
                .toList();
        int last = rounds.get(rounds.size() - 1).number();
        line.add(
                fronts.isEmpty()
                        ? phrases.text("back-titles", number("first", first.number()), number("last", last))
                        : phrases.text(
                                "back-titles-as",
                                number("first", first.number()),
                                number("last", last),
                                arg("fronts", phrases.list("back-fronts-next", fronts))));
        sentences(line, this.rounds.backSizes(rounds));
        line.add(worked(first));
        line.add(phrases.text("all-sides"));
        return phrases.list("sentences-next", line);
    }

    /** A round that is worked as one before it is said so. */
    private String round(BackRound round, List<BackRound> all) {
        List<String> line = new ArrayList<>();
        line.add(
                round.frontRound().isPresent()
                        ? phrases.text(
                                "back-title-as",
                                number("round", round.number()),
                                number("front", round.frontRound().getAsInt()))
                        : phrases.text("back-title", number("round", round.number())));
        sentences(line, rounds.size(round.side()));
        Optional<BackRound> same = all.stream()
                .filter(other -> other.number() < round.number() && isWorkedAlike(round, other))
                .findFirst();
        if (same.isPresent()) {
            line.add(phrases.text("back-as-before", number("round", same.get().number())));
        } else {
            line.add(worked(round));
            line.add(phrases.text("all-sides"));
        }
        return phrases.list("sentences-next", line);
    }

    /** All of these sentences, and one more if there is one. */
    private String sentences(List<String> said, String next) {
        if (!next.isEmpty()) {
            said.add(next);
        }
        return phrases.list("sentences-next", said);
    }

    private String worked(BackRound round) {
        String stitch = trade.abbreviation(round.height() == BackRound.Height.TALL ? TradeWord.TALL : TradeWord.PLAIN);
        String arm = phrases.text("run", number("count", round.atEachArm()), arg("stitch", stitch));
        String chains = phrases.text(
                "corner-chains",
                number("count", round.cornerChains()),
                arg("stitch", trade.abbreviation(TradeWord.CHAIN)));
        return phrases.text(
                "back-every", arg("stitch", stitch), arg("before", arm), arg("chains", chains), arg("after", arm));
    }

    private static boolean isWorkedAlike(BackRound one, BackRound other) {
        return one.height() == other.height()
                && one.atEachArm() == other.atEachArm()
                && one.cornerChains() == other.cornerChains();
    }
}
