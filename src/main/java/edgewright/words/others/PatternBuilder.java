package edgewright.words.others;

import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.chart.Terms;
import edgewright.words.grammar.Cursor;
import edgewright.words.grammar.Item;
import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.Remark;
import edgewright.words.grammar.Stopped;
import edgewright.words.setup.Facts;
import edgewright.words.tree.BaseRound;
import edgewright.words.tree.Instructions;
import edgewright.words.tree.Multiple;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.SideSize;
import edgewright.words.tree.WrittenRound;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Makes the tree of a pattern from its rounds as their words say them, and checks all that is stated. */
final class PatternBuilder {
    private final Facts facts;
    private final Yarns yarns;
    private final List<Remark> remarks;
    private final Optional<PerSide<Integer>> given;
    private final List<BuiltRound> built = new ArrayList<>();
    private Optional<Lexeme> unclear = Optional.empty();
    private Sizes sizes;

    PatternBuilder(Facts facts, Yarns yarns, Optional<PerSide<Integer>> given, List<Remark> remarks) {
        this.facts = facts;
        this.yarns = yarns;
        this.given = given;
        this.remarks = remarks;
    }

    /** Builds every round; what cannot be built gets a remark. */
    void build(Map<Integer, RoundWords> rounds) {
        requireAll(rounds);
        if (!remarks.isEmpty()) {
            return;
        }
        Guess usual = Guess.all(facts, false).get(0);
        sizes = solved(rounds, usual);
        if (!remarks.isEmpty()) {
            return;
        }
        if (unclear.isPresent() && sizes.bases().isEmpty()) {
            remarks.add(Remark.of(Remark.Kind.QUESTION, unclear.get(), "moreTimes", ""));
            return;
        }
        choose(rounds, usual);
        remarks.addAll(sizes.findings());
        if (remarks.isEmpty()) {
            requireBackLoops();
        }
    }

    /** Back loops that are spoken of are worked somewhere; else it was not understood for which stitches they are. */
    private void requireBackLoops() {
        boolean worked = built.stream()
                .flatMap(round -> round.sides().stream())
                .flatMap(side -> side.words().runs())
                .anyMatch(run -> run.stitch() == Stitch.BACK_LOOP);
        if (!worked && !facts.backLoopsSaid.isEmpty()) {
            remarks.add(Remark.of(Remark.Kind.REFUSED, facts.backLoopsSaid.get(0), "backLoopsOfWhat", ""));
        }
    }

    /** Takes the first way to understand the text that comes out; if none does, the usual one with what is wrong with it. */
    private void choose(Map<Integer, RoundWords> rounds, Guess usual) {
        Optional<Guess> taken = Optional.empty();
        List<BuiltRound> first = List.of();
        for (Guess guess : Guess.all(facts, unclear.isPresent())) {
            Sizes made = solved(rounds, guess);
            if (!remarks.isEmpty() || !made.findings().isEmpty()) {
                remarks.clear();
                continue;
            }
            boolean other = taken.isPresent() && taken.get().armsAdded() != guess.armsAdded() && differ(first, built);
            if (other) {
                remarks.add(Remark.of(
                        Remark.Kind.QUESTION, facts.corner.orElseThrow().at(), "armsInSides", ""));
                return;
            }
            if (taken.isEmpty()) {
                taken = Optional.of(guess);
                first = List.copyOf(built);
            }
        }
        sizes = solved(rounds, taken.orElse(usual));
    }

    private static boolean differ(List<BuiltRound> some, List<BuiltRound> others) {
        List<Object> sides = some.stream().<Object>map(round -> words(round)).toList();
        return !sides.equals(others.stream().<Object>map(round -> words(round)).toList());
    }

    private static PerSide<SideInstructions> words(BuiltRound round) {
        return round.sides().map(SideBuilder.Built::words);
    }

    private Sizes solved(Map<Integer, RoundWords> rounds, Guess guess) {
        built.clear();
        Map<Integer, BuiltRound> byNumber = new HashMap<>();
        Optional<String> yarn = Optional.empty();
        boolean changes = rounds.values().stream()
                .anyMatch(round -> round.notes().nextYarn.isPresent());
        for (RoundWords round : rounds.values()) {
            try {
                yarn = Optional.of(yarn(round, changes ? yarn : Optional.empty(), byNumber));
                BuiltRound made = round(round, yarn.get(), byNumber, guess);
                byNumber.put(round.number(), made);
                built.add(made);
            } catch (Stopped stopped) {
                if (!remarks.contains(stopped.remark())) {
                    remarks.add(stopped.remark());
                }
                break;
            }
        }
        Sizes solver = new Sizes(facts, List.copyOf(built), guess.base());
        if (remarks.isEmpty()) {
            solver.solve(given);
        }
        return solver;
    }

    /** Every number from 1 to the last has its round. */
    private void requireAll(Map<Integer, RoundWords> rounds) {
        int next = 1;
        for (RoundWords round : rounds.values()) {
            if (round.number() != next) {
                remarks.add(Remark.of(Remark.Kind.REFUSED, round.at(), "roundBefore", next));
                return;
            }
            next++;
        }
    }

    private String yarn(RoundWords round, Optional<String> before, Map<Integer, BuiltRound> byNumber) {
        Optional<Lexeme> named = round.yarn().or(() -> Optional.ofNullable(facts.yarnsOfRounds.get(round.number())));
        if (named.isEmpty() && !facts.yarnsInTurn.isEmpty()) {
            named = Optional.of(facts.yarnsInTurn.get((round.number() - 1) % facts.yarnsInTurn.size()));
        }
        if (named.isPresent()) {
            return yarns.id(named.get());
        }
        if (round.as().isPresent()) {
            return model(round, byNumber).yarn();
        }
        if (before.isPresent()) {
            return before.get();
        }
        if (yarns.all().size() == 1) {
            return yarns.all().get(0).id();
        }
        throw Cursor.stop(round.at(), "yarnOfRound", "");
    }

    private static BuiltRound model(RoundWords round, Map<Integer, BuiltRound> byNumber) {
        Lexeme as = round.as().orElseThrow();
        BuiltRound model = byNumber.get(as.number());
        if (model == null) {
            throw Cursor.stop(as, "roundToldBefore", round.number());
        }
        return model;
    }

    private BuiltRound round(RoundWords round, String yarn, Map<Integer, BuiltRound> byNumber, Guess guess) {
        if (round.as().isPresent()) {
            BuiltRound model = model(round, byNumber);
            return new BuiltRound(
                    round.at(),
                    round.number(),
                    yarn,
                    model.sides(),
                    model.chains(),
                    model.chainsAt(),
                    Optional.of(model.as().orElse(model.number())),
                    round.notes().counts,
                    List.of(),
                    round.notes().growths,
                    PerSide.all(round.at()));
        }
        PerSide<RoundShape.Stretch> stretches = RoundShape.of(round, facts.corner, guess.armsAdded());
        PerSide<SideBuilder.Built> sides =
                PerSide.each(side -> SideBuilder.of(ofSide(stretches.get(side), side), guess.less()));
        sides.stream().forEach(side -> unclear = unclear.or(side::unclear));
        boolean apart = round.items().stream().anyMatch(Item.ForSides.class::isInstance);
        int chains = stretches.top().after().chains().orElseThrow();
        for (RoundShape.Stretch stretch : stretches.stream().toList()) {
            if (stretch.after().chains().orElseThrow() != chains) {
                throw Cursor.stop(stretch.after().at(), "chainsAsBefore", chains);
            }
        }
        return new BuiltRound(
                round.at(),
                round.number(),
                yarn,
                sides,
                chains,
                stretches.top().after().at(),
                Optional.empty(),
                round.notes().counts,
                round.notes().chainsBelow,
                round.notes().growths,
                apart ? stretches.map(stretch -> begins(stretch, round.at())) : PerSide.all(round.at()));
    }

    private static Lexeme begins(RoundShape.Stretch stretch, Lexeme otherwise) {
        return stretch.items().stream().findFirst().map(Item::at).orElse(otherwise);
    }

    /** The words of one side, where numbers in brackets are those of left and right. */
    private RoundShape.Stretch ofSide(RoundShape.Stretch stretch, Side side) {
        return facts.bracketsForSides
                ? new RoundShape.Stretch(stretch.before(), Item.ofSide(stretch.items(), side), stretch.after())
                : stretch;
    }

    /** Whether every round was built. */
    boolean isBuilt() {
        return sizes != null && !built.isEmpty();
    }

    /** The sizes that the text is for. */
    List<PerSide<Integer>> bases() {
        return sizes == null ? List.of() : sizes.bases();
    }

    /** The tree, once nothing was refused. */
    Instructions tree(String title, String designer, Terms terms) {
        Map<Integer, WrittenRound> byNumber = new HashMap<>();
        List<WrittenRound> written = new ArrayList<>();
        for (BuiltRound round : built) {
            WrittenRound made = written(round, byNumber);
            byNumber.put(round.number(), made);
            written.add(made);
        }
        return new Instructions(
                title, designer, List.of(), false, terms, sizes.counting(), yarns.all(), base(), written);
    }

    private BaseRound base() {
        Optional<PerSide<Integer>> one =
                facts.base.isEmpty() || bases().size() != 1 || !sizes.findings().isEmpty()
                        ? Optional.empty()
                        : Optional.of(bases().get(0));
        Optional<Multiple> multiple = facts.multiple.map(said -> Multiple.containing(said.of(), sizes.plus(said)));
        OptionalInt chains = facts.baseChains.stream()
                .mapToInt(Lexeme::number)
                .filter(edgewright.chart.Corner::isTurnedWith)
                .findFirst();
        SideSize size = one.<SideSize>map(counts -> new SideSize.Counted(List.of(counts), multiple))
                .or(() -> multiple.map(SideSize::of))
                .orElse(SideSize.unstated());
        return new BaseRound(size, OptionalInt.empty(), chains);
    }

    private WrittenRound written(BuiltRound round, Map<Integer, WrittenRound> byNumber) {
        PerSide<SideInstructions> sides = round.sides().map(SideBuilder.Built::words);
        boolean counted = !round.counts().isEmpty()
                && bases().size() == 1
                && sizes.findings().isEmpty();
        SideSize size =
                counted ? SideSize.of(bases().get(0).map(side -> side + 2 * round.number())) : SideSize.unstated();
        if (!sides.allSidesAreAlike()) {
            return new WrittenRound.EachSide(round.number(), round.yarn(), size, sides, round.chains());
        }
        if (round.as().isPresent() && byNumber.get(round.as().get()) instanceof WrittenRound.AtCorner model) {
            return new WrittenRound.AsRound(round.number(), round.yarn(), size, model);
        }
        return new WrittenRound.AtCorner(round.number(), round.yarn(), size, sides.top(), round.chains());
    }
}
