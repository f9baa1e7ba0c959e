package edgewright.file;

import edgewright.chart.Back;
import edgewright.chart.Ball;
import edgewright.chart.Extras;
import edgewright.chart.HookSize;
import edgewright.chart.PatternDetails;
import edgewright.chart.Round;
import edgewright.chart.Side;
import edgewright.chart.Start;
import edgewright.chart.Swatch;
import edgewright.chart.YarnUse;
import edgewright.file.ChartValues.KnownMembers;
import edgewright.file.ChartValues.Members;
import edgewright.file.Problem.Shape;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Takes the members of a chart file that say how the border is made. All of them may be left out. */
final class PatternDetailsReader {
    private final JsonWalk json;
    private final ChartValues values;
    private PatternDetails making = PatternDetails.NONE;

    /** The start column and where it stands, to be held against round 1, which may come later. */
    private OptionalInt column = OptionalInt.empty();

    private int columnLine;
    private String columnPath = "";

    PatternDetailsReader(JsonWalk json, ChartValues values) {
        this.json = json;
        this.values = values;
    }

    PatternDetails making() {
        return making;
    }

    /** Whether the member of the chart with this name is one of these, and so has been taken. */
    boolean take(String name) {
        switch (name) {
            case "start" -> making = making.withStart(takeStart());
            case "back" -> making = making.withBack(takeBack());
            case "hook" -> making = making.withHook(takeHook());
            case "swatch" -> making = making.withSwatch(takeSwatch());
            case "yarnUse" -> making = making.withUse(takeUse());
            case "yarnWeight" -> making = making.withYarnWeight(whole(PatternDetails.MOST_WEIGHT));
            case "skill" -> making = making.withSkill(values.text().orElse(""));
            default -> {
                return false;
            }
        }
        return true;
    }

    /** Notes a problem if the start column lies past the first repeat. */
    void checkStart(Round first) {
        int last = first.fromCorner().length() - 1 + first.repeat().length();
        if (column.isPresent() && column.getAsInt() > last) {
            values.note(Problem.atMember(new ChartFault.NoSuchColumn(column.getAsInt(), last), columnLine, columnPath));
        }
    }

    /** The current value as what the band of a ball says. */
    Optional<Ball> takeBall() {
        Measured ball = new Measured("metres", "grams");
        return values.object(ball, RawJson::inOneLine)
                .filter(members -> ball.isWhole(members))
                .map(members -> new Ball(ball.number("metres"), ball.number("grams"), members.extras()));
    }

    private Optional<Swatch> takeSwatch() {
        Measured swatch = new Measured("stitches", "rounds");
        return values.object(swatch, RawJson::inOneLine)
                .filter(members -> swatch.isWhole(members))
                .map(members -> new Swatch(swatch.number("stitches"), swatch.number("rounds"), members.extras()));
    }

    private Optional<YarnUse> takeUse() {
        Measured use = new Measured("backLoop", "plain", "long", "chain", "tall", "slip");
        return values.object(use, RawJson::inOneLine)
                .map(members -> new YarnUse(
                        use.of("backLoop"),
                        use.of("plain"),
                        use.of("long"),
                        use.of("chain"),
                        use.of("tall"),
                        use.of("slip"),
                        members.extras()));
    }

    private Optional<HookSize> takeHook() {
        OptionalDouble mm = values.measure();
        return mm.isEmpty() ? Optional.empty() : Optional.of(HookSize.ofMm(mm.getAsDouble()));
    }

    private Optional<Back> takeBack() {
        BackDraft draft = new BackDraft();
        return values.object(draft, RawJson::inOneLine).map(members -> new Back(draft.hook, members.extras()));
    }

    private Optional<Start> takeStart() {
        StartDraft draft = new StartDraft();
        return values.object(draft, RawJson::inOneLine).map(draft::start);
    }

    private OptionalInt whole(int most) {
        return values.whole(0, most).map(OptionalInt::of).orElseGet(OptionalInt::empty);
    }

    private final class BackDraft implements KnownMembers {
        private Optional<HookSize> hook = Optional.empty();

        @Override
        public boolean take(String name) {
            boolean known = name.equals("hook");
            if (known) {
                hook = takeHook();
            }
            return known;
        }
    }

    private final class StartDraft implements KnownMembers {
        private Optional<Side> odd = Optional.empty();
        private Optional<Side> even = Optional.empty();

        @Override
        public boolean take(String name) {
            switch (name) {
                case "column" -> {
                    columnLine = json.line();
                    columnPath = json.path();
                    column = values.whole(1, Integer.MAX_VALUE)
                            .map(OptionalInt::of)
                            .orElseGet(OptionalInt::empty);
                }
                case "odd" -> odd = values.choice(Side.values(), ChartWriter::written);
                case "even" -> even = values.choice(Side.values(), ChartWriter::written);
                default -> {
                    return false;
                }
            }
            return true;
        }

        /** A side that is not given follows from the other one: rounds then start on opposite sides in turn. */
        private Start start(Members members) {
            Extras extras = members.extras();
            Side first = odd.or(() -> even.map(Side::opposite)).orElse(Start.DEFAULT.odd());
            return new Start(column, first, even.orElse(first.opposite()), extras);
        }
    }

    /** An object of measures. */
    private final class Measured implements KnownMembers {
        private final Map<String, OptionalDouble> found = new HashMap<>();

        Measured(String... names) {
            for (String name : names) {
                found.put(name, OptionalDouble.empty());
            }
        }

        @Override
        public boolean take(String name) {
            boolean known = found.containsKey(name);
            if (known) {
                found.put(name, values.measure());
            }
            return known;
        }

        OptionalDouble of(String name) {
            return found.get(name);
        }

        double number(String name) {
            return of(name).getAsDouble();
        }

        /** Whether all of them were given and right; notes a problem for those that were not given. */
        boolean isWhole(Members members) {
            found.keySet().stream().sorted().forEach(name -> values.require(members, name, Shape.NUMBER));
            return found.values().stream().allMatch(OptionalDouble::isPresent);
        }
    }
}
