package edgewright.words.others;

import edgewright.chart.Counting;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.words.grammar.BodyNotes;
import edgewright.words.grammar.Lexeme;
import edgewright.words.grammar.Remark;
import edgewright.words.grammar.StatedCount;
import edgewright.words.grammar.StatedCount.Of;
import edgewright.words.setup.Facts;
import edgewright.words.tree.SideInstructions;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the sizes that a text is for, and holds every number of stitches in it to what comes out: base round, multiple, the
 * count of each round, and whether each group fits.
 */
final class Sizes {
    private static final int CORNERS = Side.values().length;

    private final Facts facts;
    private final List<BuiltRound> rounds;
    private final Guess.Base base;
    private final Counting counting;
    private final int many;
    private List<PerSide<Integer>> bases = List.of();
    private final List<Remark> findings = new ArrayList<>();

    /** @param base how the base round is counted */
    Sizes(Facts facts, List<BuiltRound> rounds, Guess.Base base) {
        this.base = base;
        this.facts = facts;
        this.rounds = rounds;
        this.counting = facts.counting.orElse(Counting.STITCHES);
        this.many = allCounts().stream()
                .filter(count ->
                        count.of() != Of.TWO_LENGTHS && count.of() != Of.FOUR_LENGTHS && count.of() != Of.ROUNDS)
                .mapToInt(count -> count.values().size())
                .max()
                .orElse(1);
    }

    private List<StatedCount> allCounts() {
        List<StatedCount> all = new ArrayList<>(facts.base);
        rounds.forEach(round -> all.addAll(round.counts()));
        return all;
    }

    /** The base round of each size; empty if nothing tells it. */
    List<PerSide<Integer>> bases() {
        return bases;
    }

    List<Remark> findings() {
        return findings;
    }

    Counting counting() {
        return counting;
    }

    /**
     * Finds the sizes and checks all that is stated.
     *
     * @param given the base round of the piece, if whoever asks has one and the text need not tell it
     */
    void solve(Optional<PerSide<Integer>> given) {
        bases = fromBase()
                .or(() -> fromRounds())
                .or(() -> given.map(List::of))
                .or(this::fromTimes)
                .or(this::fromClosed)
                .orElse(List.of());
        checkCounts();
        checkMultiple();
        checkFit();
        checkChains();
        checkGrowth();
    }

    private Optional<List<PerSide<Integer>>> fromBase() {
        return facts.base.isEmpty() ? Optional.empty() : from(facts.base, 0);
    }

    private Optional<List<PerSide<Integer>>> fromRounds() {
        return rounds.stream()
                .filter(round -> !round.counts().isEmpty())
                .findFirst()
                .flatMap(round -> from(round.counts(), round.number()));
    }

    /** The base round that gives these counts in a round. */
    private Optional<List<PerSide<Integer>>> from(List<StatedCount> counts, int round) {
        List<PerSide<Integer>> found = new ArrayList<>();
        for (int size = 0; size < many; size++) {
            Integer[] sides = new Integer[CORNERS];
            for (StatedCount count : counts) {
                fill(sides, count, size, round);
            }
            for (Integer side : sides) {
                if (side == null || side < 0) {
                    return Optional.empty();
                }
            }
            found.add(PerSide.of(sides[0], sides[1], sides[2], sides[3]));
        }
        return Optional.of(found);
    }

    private void fill(Integer[] sides, StatedCount count, int size, int round) {
        boolean lengths = count.of() == Of.TWO_LENGTHS || count.of() == Of.FOUR_LENGTHS;
        if (!lengths && size >= count.values().size()) {
            return;
        }
        for (Side side : Side.values()) {
            int i = side.ordinal();
            if (sides[i] != null || (!count.sides().isEmpty() && !count.sides().contains(side))) {
                continue;
            }
            Shown how = shown(count, round);
            if (lengths) {
                sides[i] = how.stitches(count.values().get(i % count.values().size())) - 2 * round;
            } else if (count.of() == Of.ROUND || (count.of() == Of.UNSAID && isOfRound(count, size, round))) {
                sides[i] = quarter(count.values().get(size)) - 2 * round;
            } else {
                sides[i] = how.stitches(count.values().get(size)) - 2 * round;
            }
        }
    }

    private static int quarter(int total) {
        return total % CORNERS == 0 ? total / CORNERS : -1;
    }

    /** Whether a number of which nothing is said can only be that of the whole round. */
    private boolean isOfRound(StatedCount count, int size, int round) {
        int value = count.values().get(size);
        int quarter = quarter(value);
        int side = shown(count, round).stitches(value);
        return quarter >= 0 && !fits(side - 2 * round) && fits(quarter - 2 * round);
    }

    private boolean fits(int base) {
        return base >= 0
                && rounds.stream()
                        .allMatch(round -> round.sides().stream()
                                .allMatch(side -> BuiltRound.comesOut(side.words(), base + 2L * round.number())));
    }

    /** From a number of times that is told for each size. */
    private Optional<List<PerSide<Integer>>> fromTimes() {
        for (BuiltRound round : rounds) {
            if (round.sides().stream().allMatch(side -> side.sized().isPresent())) {
                int sizes = round.sides().top().sized().orElseThrow().times().size();
                List<PerSide<Integer>> found = new ArrayList<>();
                for (int size = 0; size < sizes; size++) {
                    int index = size;
                    found.add(round.sides()
                            .map(side -> stitches(side.sized().orElseThrow(), index) - 2 * round.number()));
                }
                return Optional.of(found);
            }
        }
        return Optional.empty();
    }

    private static int stitches(SideBuilder.SizedTimes sized, int size) {
        return sized.fixed()
                + sized.step() * sized.times().get(Math.min(size, sized.times().size() - 1));
    }

    /** From a round without a group, whose stitches are all told. */
    private Optional<List<PerSide<Integer>>> fromClosed() {
        return rounds.stream()
                .filter(round -> round.sides().stream().allMatch(side -> BuiltRound.step(side.words()) == 0))
                .findFirst()
                .map(round ->
                        List.of(round.sides().map(side -> (int) BuiltRound.fixed(side.words()) - 2 * round.number())))
                .filter(found -> found.get(0).stream().allMatch(side -> side >= 0));
    }

    private void checkCounts() {
        if (bases.isEmpty()) {
            allCounts().forEach(count -> find(count.at(), "countOfSides", ""));
            return;
        }
        facts.base.forEach(count -> check(count, 0));
        rounds.forEach(round -> round.counts().forEach(count -> check(count, round.number())));
    }

    private void check(StatedCount count, int round) {
        boolean lengths = count.of() == Of.TWO_LENGTHS || count.of() == Of.FOUR_LENGTHS;
        if (count.of() == Of.ROUNDS || (!lengths && count.values().size() != bases.size())) {
            find(count.at(), "countForEachSize", bases.size());
            return;
        }
        for (int size = 0; size < bases.size(); size++) {
            PerSide<Integer> made = bases.get(size).map(side -> side + 2 * round);
            if (!agrees(count, size, round, made)) {
                find(count.at(), "stitches", shown(count, round, made));
                return;
            }
        }
        count.corners().ifPresent(corners -> checkCorners(corners, round));
    }

    private void checkCorners(StatedCount.Corners corners, int round) {
        int chains = rounds.get(Math.max(0, round - 1)).chains();
        if (corners.many() != CORNERS) {
            find(corners.at(), "countOfCorners", CORNERS);
        } else if (corners.chains() != 0 && corners.chains() != chains) {
            find(corners.at(), "chainsOfCorner", chains);
        }
    }

    /** How a count of the text and the stitches of a side go into one another. */
    private record Shown(int more) {
        int shown(int stitches) {
            return stitches + more;
        }

        int stitches(int count) {
            return count - more;
        }
    }

    private Shown shown(StatedCount count, int round) {
        if (round == 0 && count.counting().isEmpty() && base != Guess.Base.AS_ELSEWHERE) {
            return new Shown(base == Guess.Base.BETWEEN_CORNERS ? -2 : 0);
        }
        boolean between =
                count.between() || (facts.betweenCorners && count.counting().isEmpty());
        return new Shown(
                between && round > 0 ? -2 : count.counting().orElse(counting).shown(0));
    }

    /** What a multiple leaves over, in stitches. */
    int plus(Facts.SaidMultiple said) {
        return switch (base) {
            case AS_ELSEWHERE -> counting.stitches(said.plus());
            case STITCHES -> said.plus();
            case BETWEEN_CORNERS -> said.plus() + 2;
        };
    }

    private boolean agrees(StatedCount count, int size, int round, PerSide<Integer> made) {
        Shown how = shown(count, round);
        if (count.of() == Of.TWO_LENGTHS || count.of() == Of.FOUR_LENGTHS) {
            return PerSide.each(side ->
                            count.values().get(side.ordinal() % count.values().size()))
                    .equals(made.map(how::shown));
        }
        int value = count.values().get(size);
        boolean ofSides = made.stream().map(how::shown).allMatch(shown -> shown == value);
        boolean ofNamed =
                !count.sides().isEmpty() && count.sides().stream().allMatch(side -> how.shown(made.get(side)) == value);
        long total = PerSide.sum(made.map(how::shown));
        boolean ofRound = total == value || PerSide.sum(made) == value;
        return switch (count.of()) {
            case SIDE -> count.sides().isEmpty() ? ofSides : ofNamed;
            case ROUND -> ofRound;
            default -> ofSides || ofRound;
        };
    }

    private String shown(StatedCount count, int round, PerSide<Integer> made) {
        Shown how = shown(count, round);
        PerSide<Integer> shown = made.map(how::shown);
        if (count.of() == Of.ROUND) {
            return String.valueOf(PerSide.sum(made));
        }
        if (!count.sides().isEmpty()) {
            return String.valueOf(shown.get(count.sides().iterator().next()));
        }
        return shown.allSidesAreAlike() ? String.valueOf(shown.top()) : shown.top() + ", " + shown.left();
    }

    private void checkMultiple() {
        if (facts.multiple.isEmpty()) {
            return;
        }
        Facts.SaidMultiple said = facts.multiple.get();
        int plus = Math.floorMod(plus(said), said.of());
        for (Lexeme example : said.examples()) {
            if (Math.floorMod(counting.stitches(example.number()), said.of()) != plus) {
                find(example, "example", said.of());
            }
        }
        boolean sizesFit =
                bases.stream().flatMap(PerSide::stream).allMatch(base -> Math.floorMod(base, said.of()) == plus);
        boolean groupsFit = rounds.stream()
                .allMatch(round -> round.sides().stream().allMatch(side -> fits(side.words(), round, said.of(), plus)));
        boolean roundsFit = !bases.isEmpty() && !rounds.stream().allMatch(this::fitsAll);
        if (!sizesFit || (!groupsFit && !roundsFit)) {
            find(said.at(), "multiple", "");
        }
    }

    private static boolean fits(SideInstructions side, BuiltRound round, int of, int plus) {
        int step = BuiltRound.step(side);
        return step == 0
                || (of % step == 0
                        && Math.floorMod(plus + 2L * round.number() - BuiltRound.fixed(side), (long) step) == 0);
    }

    /** Whether every group comes out in every size. */
    private void checkFit() {
        for (BuiltRound round : rounds) {
            for (int size = 0; size < bases.size(); size++) {
                Optional<Side> wrong = misfit(round, size);
                if (wrong.isPresent()) {
                    Lexeme at = round.sideAt().get(wrong.get());
                    find(at, "roundComesOut", bases.get(size).get(wrong.get()) + 2 * round.number());
                    break;
                }
            }
        }
    }

    private boolean fitsAll(BuiltRound round) {
        for (int size = 0; size < bases.size(); size++) {
            if (!fits(round, size)) {
                return false;
            }
        }
        return true;
    }

    private boolean fits(BuiltRound round, int size) {
        return misfit(round, size).isEmpty();
    }

    /** The first side whose words do not fill it. */
    private Optional<Side> misfit(BuiltRound round, int size) {
        for (Side side : Side.values()) {
            SideBuilder.Built built = round.sides().get(side);
            int stitches = bases.get(size).get(side) + 2 * round.number();
            if (!BuiltRound.comesOut(built.words(), stitches)
                    || (built.sized().isPresent()
                            && (built.sized().get().times().size() != bases.size()
                                    || stitches(built.sized().get(), size) != stitches))) {
                return Optional.of(side);
            }
        }
        return Optional.empty();
    }

    /** The chains that a corner below is said to have. */
    private void checkChains() {
        int below = facts.baseChains.isEmpty() ? 0 : facts.baseChains.get(0).number();
        facts.corner
                .filter(corner ->
                        rounds.stream().anyMatch(round -> corner.chains().orElse(round.chains()) != round.chains()))
                .ifPresent(corner ->
                        find(corner.at(), "chainsOfCorner", rounds.get(0).chains()));
        for (Lexeme said : facts.baseChains) {
            if (!rounds.isEmpty() && said.number() != rounds.get(0).chains()) {
                find(said, "chainsOfCorner", rounds.get(0).chains());
            }
        }
        for (BuiltRound round : rounds) {
            for (Lexeme said : round.chainsBelow()) {
                int expected = round.number() == 1 && below == 0 ? round.chains() : below;
                if (said.number() != expected) {
                    find(said, "chainsOfCorner", expected);
                }
            }
            below = round.chains();
        }
    }

    /** A side grows by 2 in every round. */
    private void checkGrowth() {
        for (BuiltRound round : rounds) {
            for (BodyNotes.Growth said : round.growths()) {
                int grown = 2 * (round.number() - said.since().number());
                if (said.by().number() != grown) {
                    find(said.by(), "stitches", grown);
                }
            }
        }
    }

    private void find(Lexeme at, String what, Object value) {
        Remark remark = Remark.of(Remark.Kind.FINDING, at, what, value);
        if (!findings.contains(remark)) {
            findings.add(remark);
        }
    }
}
