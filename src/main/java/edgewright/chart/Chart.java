package edgewright.chart;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The design of a border: its yarns, its rounds and what the designer allows. Immutable; edits are in {@link Edits}.
 *
 * <p>A chart may be ragged: sections past round 1 may have a length that does not go with their round. Everything else
 * that the file format asks for holds for every chart.
 *
 * @param corner how its corners are turned
 * @param rules what the designer allows
 * @param yarns 1 to 64, with unique ids
 * @param rounds 1 to 2,000; the first element is round 1
 * @param making what is said of how it is made; a start column lies on the side as round 1 gives it, and
 *     sizes close on it
 */
public record Chart(
        Heading heading,
        Corner corner,
        Rules rules,
        List<Yarn> yarns,
        List<Round> rounds,
        PatternDetails making,
        Extras extras) {
    /** The most rounds of a chart. */
    public static final int MOST_ROUNDS = 2_000;

    /** The most stitches in a section of round 1. */
    public static final int MOST_STITCHES = 2_000;

    /** The most yarns of a chart. */
    public static final int MOST_YARNS = 64;

    /** A section whose length does not go with its round, and the length that would. */
    public record RaggedSection(int round, Section section, int length, int expected) {}

    /**
     * @throws IllegalArgumentException if there are too few or too many yarns or rounds, a yarn id occurs twice, a round names
     *     a yarn that is not there, or a section of round 1 is empty or too long, or the start column lies past the first repeat, or a
     *     size does not close
     */
    public Chart {
        Objects.requireNonNull(heading);
        Objects.requireNonNull(corner);
        Objects.requireNonNull(rules);
        Objects.requireNonNull(extras);
        yarns = List.copyOf(yarns);
        rounds = List.copyOf(rounds);
        requireBetween("yarns", yarns.size(), MOST_YARNS);
        requireBetween("rounds", rounds.size(), MOST_ROUNDS);
        Set<String> ids = new HashSet<>();
        for (Yarn yarn : yarns) {
            if (!ids.add(yarn.id())) {
                throw new IllegalArgumentException("two yarns have the id '" + yarn.id() + "'");
            }
        }
        for (int i = 0; i < rounds.size(); i++) {
            if (!ids.contains(rounds.get(i).yarn())) {
                throw new IllegalArgumentException("round " + (i + 1) + " names the yarn '"
                        + rounds.get(i).yarn() + "', which is not in the chart");
            }
        }
        for (Section section : Section.values()) {
            requireBetween(
                    "stitches in " + section.member() + " of round 1",
                    rounds.get(0).section(section).length(),
                    MOST_STITCHES);
        }
        Objects.requireNonNull(making);
        if (!making.equals(making.on(BorderShape.of(rounds.get(0))))) {
            throw new IllegalArgumentException("the start column lies past the first repeat, or a size does not close");
        }
    }

    /** A chart with the usual corners and rules, of whose making nothing is said. */
    public Chart(Heading heading, List<Yarn> yarns, List<Round> rounds) {
        this(heading, Corner.DEFAULT, Rules.DEFAULT, yarns, rounds, PatternDetails.NONE, Extras.NONE);
    }

    /** A chart of plain back-loop rounds to begin a design with; its yarns are used in turn, from the first. */
    public static Chart blank(String title, SideShape shape, int rounds, List<Yarn> yarns) {
        List<Round> blank = new ArrayList<>();
        for (int r = 1; r <= rounds; r++) {
            blank.add(
                    Edits.blankRound(shape, r, yarns.get((r - 1) % yarns.size()).id()));
        }
        return new Chart(Heading.of(title), yarns, blank);
    }

    /** How the design is called. */
    public String title() {
        return heading.title();
    }

    /** Who made the design; may be empty. */
    public String designer() {
        return heading.designer();
    }

    /** What the designer has to say, in several lines perhaps; may be empty. */
    public String notes() {
        return heading.notes();
    }

    /** Photographs, texts and imprint of the designer's own. */
    public OwnMatter own() {
        return heading.own();
    }

    /** The terms its pattern is written in unless others are asked for. */
    public Terms terms() {
        return heading.terms();
    }

    /** A, w and B as they follow from round 1, the same on every side; whoever means one of the sides asks {@link #shape(Side)}. */
    public SideShape shape() {
        // Asked at each step of a stroke, so no border is made for it.
        return BorderShape.sideOf(rounds.get(0));
    }

    /** A, w and B of this side. */
    public SideShape shape(Side side) {
        return border().on(side);
    }

    /** How all sides are put together. */
    public BorderShape border() {
        return BorderShape.of(rounds.get(0));
    }

    /**
     * The side that stands for this one: the first on which the same stitches are worked. All sides of a chart are worked alike,
     * so it is the first of all.
     */
    public Side alike(Side side) {
        return Side.FIRST;
    }

    /** The round with this number; charted rounds start at 1. */
    public Round round(int number) {
        return rounds.get(number - 1);
    }

    /** The yarn with this id; there is one for every round of the chart. */
    public Optional<Yarn> yarn(String id) {
        return yarns.stream().filter(yarn -> yarn.id().equals(id)).findFirst();
    }

    /** The yarns that some round is worked in, in the order of the list. */
    public List<Yarn> yarnsUsed() {
        Set<String> used = rounds.stream().map(Round::yarn).collect(Collectors.toSet());
        return yarns.stream().filter(yarn -> used.contains(yarn.id())).toList();
    }

    /** The yarn that this round is worked in. */
    public Yarn yarnOf(int round) {
        return yarn(round(round).yarn()).orElseThrow();
    }

    /** The stitch at a place of a charted round. */
    public Stitch stitch(Place place) {
        return round(place.round()).section(place.section()).at(place.place());
    }

    /** Whether the chart has a stitch at this place. */
    public boolean has(Place place) {
        return place.round() >= 1
                && place.round() <= rounds.size()
                && place.place()
                        <= round(place.round()).section(place.section()).length();
    }

    /**
     * The round whose yarn shows in the cell of this stitch on the right side: its own, or that of the outermost stitch
     * above that covers it.
     */
    public int shownRound(Place place) {
        return shownRound(place.round(), place.section(), place.place());
    }

    /** The same by the columns alone, so it may be asked of ragged charts too. */
    public int shownRound(int round, Section section, int place) {
        for (int up = Math.min(Stitch.DEEPEST - 1, rounds.size() - round); up >= 1; up--) {
            Stitches row = round(round + up).section(section);
            int above = section.placeAbove(place, up);
            if (above <= row.length() && row.at(above).covers(up)) {
                return round + up;
            }
        }
        return round;
    }

    /** The sections whose length does not go with their round, in working order. Empty for a chart that can be judged. */
    public List<RaggedSection> raggedSections() {
        BorderShape border = border();
        List<RaggedSection> ragged = new ArrayList<>();
        for (int r = 1; r <= rounds.size(); r++) {
            for (Section section : Section.values()) {
                int length = round(r).section(section).length();
                int expected = border.length(section, r);
                if (length != expected) {
                    ragged.add(new RaggedSection(r, section, length, expected));
                }
            }
        }
        return List.copyOf(ragged);
    }

    /** This chart under another title. */
    public Chart withTitle(String newTitle) {
        return withHeading(heading.withTitle(newTitle));
    }

    /** This chart by another designer. */
    public Chart withDesigner(String newDesigner) {
        return withHeading(heading.withDesigner(newDesigner));
    }

    /** This chart with other notes. */
    public Chart withNotes(String newNotes) {
        return withHeading(heading.withNotes(newNotes));
    }

    /** This chart with its pattern in other terms. */
    public Chart withTerms(Terms newTerms) {
        return withHeading(heading.withTerms(newTerms));
    }

    /** This chart with other matter of the designer's own. */
    public Chart withOwn(OwnMatter other) {
        return withHeading(heading.withOwn(other));
    }

    /** This chart under another heading. */
    public Chart withHeading(Heading newHeading) {
        return new Chart(newHeading, corner, rules, yarns, rounds, making, extras);
    }

    /** This chart with its corners turned otherwise. */
    public Chart withCorner(Corner newCorner) {
        return new Chart(heading, newCorner, rules, yarns, rounds, making, extras);
    }

    /** This chart with other things allowed. */
    public Chart withRules(Rules newRules) {
        return new Chart(heading, corner, newRules, yarns, rounds, making, extras);
    }

    /** This chart with other yarns; each round must find its own among them. */
    public Chart withYarns(List<Yarn> newYarns) {
        return new Chart(heading, corner, rules, newYarns, rounds, making, extras);
    }

    /** This chart with other rounds. */
    public Chart withRounds(List<Round> newRounds) {
        PatternDetails kept = newRounds.isEmpty() ? making : making.on(BorderShape.of(newRounds.get(0)));
        return new Chart(heading, corner, rules, yarns, newRounds, kept, extras);
    }

    /** This chart made otherwise. */
    public Chart withMaking(PatternDetails newMaking) {
        return new Chart(heading, corner, rules, yarns, rounds, newMaking, extras);
    }

    /** This chart with one round replaced. */
    public Chart withRound(int number, Round round) {
        List<Round> changed = new ArrayList<>(rounds);
        changed.set(number - 1, round);
        return withRounds(changed);
    }

    private static void requireBetween(String what, int number, int most) {
        if (number < 1 || number > most) {
            throw new IllegalArgumentException(what + ": " + number + ", expected 1 to " + most);
        }
    }
}
