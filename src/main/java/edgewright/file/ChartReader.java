package edgewright.file;

import edgewright.chart.Ball;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Corner;
import edgewright.chart.Round;
import edgewright.chart.Rules;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import edgewright.chart.Stitches;
import edgewright.chart.Terms;
import edgewright.chart.Yarn;
import edgewright.file.ChartValues.KnownMembers;
import edgewright.file.ChartValues.Members;
import edgewright.file.Problem.Shape;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;

/**
 * Makes a chart of a JSON text, or says all that is wrong with it.
 *
 * <p>Members may come in any order. Those that version 1 does not know are kept as they are written, at every level. A
 * section that is too long or too short for its round is no mistake here; it is found when the chart is checked.
 */
final class ChartReader {
    private static final List<String> LETTERS = Arrays.stream(Stitch.values())
            .map(stitch -> String.valueOf(stitch.letter()))
            .toList();

    private final JsonWalk json;
    private final ChartValues values;

    private String format = "";
    /** The problem that the version is newer, if it is. */
    private List<Problem> newer = List.of();

    private String title = "";
    private String designer = "";
    private String notes = "";
    private Terms terms = Terms.UK;
    private Corner corner = Corner.DEFAULT;
    private Rules rules = Rules.DEFAULT;
    private final List<Yarn> yarns = new ArrayList<>();
    /** Ids of all yarns, also of those that are wrong in other ways, so that their rounds are not blamed too. */
    private final Set<String> yarnIds = new LinkedHashSet<>();

    /** Whether the ids are all that there are. If not, nobody can say that a round names a yarn that is not there. */
    private boolean yarnIdsComplete = true;

    private final List<Round> rounds = new ArrayList<>();
    private final PatternDetailsReader making;
    private final List<YarnNamed> yarnsNamed = new ArrayList<>();

    /** Where a round names its yarn. Yarns may come after the rounds, so these are looked up at the end. */
    private record YarnNamed(String id, int line, String path) {}

    private ChartReader(JsonWalk json) {
        this.json = json;
        this.values = new ChartValues(json);
        this.making = new PatternDetailsReader(json, values);
    }

    /** Reads the whole text. */
    static ReadResult read(String text, Fingerprint fingerprint) {
        OptionalInt start = IntStream.range(0, text.length())
                .filter(place -> !JsonWalk.isBlank(text.charAt(place)))
                .findFirst();
        if (start.isEmpty()) {
            return new ReadResult.Problems(List.of(Problem.ofFile(FileFault.Simple.EMPTY)));
        }
        if (text.charAt(start.getAsInt()) != '{') {
            String found = JsonMistake.pieceAt(text, start.getAsInt());
            return new ReadResult.Problems(List.of(Problem.ofFile(new JsonFault.NoObject(found))));
        }
        try {
            return new ChartReader(new JsonWalk(text)).read(fingerprint);
        } catch (Refusal refusal) {
            return new ReadResult.Problems(List.of(refusal.problem()));
        }
    }

    private ReadResult read(Fingerprint fingerprint) {
        Members members = values.object(this::takeChartMember, RawJson::inLines).orElseThrow();
        json.end();
        if (!format.equals(ChartText.FORMAT)) {
            return new ReadResult.Problems(List.of(Problem.ofFile(new ChartFault.NotAChart(ChartText.FORMAT))));
        }
        if (!newer.isEmpty()) {
            // What else was noted may be right in that version.
            return new ReadResult.Problems(newer);
        }
        values.require(members, "version", Shape.WHOLE_NUMBER);
        values.require(members, "title", Shape.TEXT);
        values.require(members, "yarns", Shape.LIST);
        values.require(members, "rounds", Shape.LIST);
        checkYarnsNamed();
        if (!values.problems().isEmpty()) {
            return new ReadResult.Problems(values.problems());
        }
        making.checkStart(rounds.get(0));
        if (!values.problems().isEmpty()) {
            return new ReadResult.Problems(values.problems());
        }
        Chart chart = new Chart(
                title, designer, notes, terms, corner, rules, yarns, rounds, making.making(), members.extras());
        return new ReadResult.Read(chart, fingerprint);
    }

    private boolean takeChartMember(String name) {
        switch (name) {
            case "format" -> format = values.text().orElse("");
            case "version" -> takeVersion();
            case "title" -> title = values.text().orElse("");
            case "designer" -> designer = values.text().orElse("");
            case "notes" -> notes = values.text().orElse("");
            case "terms" -> terms = values.choice(Terms.values()).orElse(Terms.UK);
            case "corner" -> takeCorner();
            case "rules" -> takeRules();
            case "yarns" -> takeYarns();
            case "rounds" -> takeRounds();
            default -> {
                return making.take(name);
            }
        }
        return true;
    }

    private void takeVersion() {
        int order = values.number()
                .map(version -> version.compareTo(BigDecimal.valueOf(ChartText.VERSION)))
                .orElse(0);
        if (order > 0) {
            newer = List.of(Problem.atMember(
                    new ChartFault.NewerVersion(json.text(), ChartText.VERSION), json.line(), json.path()));
        } else if (order < 0) {
            values.note(new ChartFault.NoSuchVersion(json.text(), ChartText.VERSION));
        }
    }

    private void takeCorner() {
        CornerDraft draft = new CornerDraft();
        values.object(draft, RawJson::inOneLine)
                .ifPresent(members -> corner = new Corner(draft.chains, members.extras()));
    }

    private void takeRules() {
        RulesDraft draft = new RulesDraft();
        values.object(draft, RawJson::inOneLine)
                .ifPresent(members -> rules =
                        new Rules(draft.landOnCornerChain, draft.stackLongStitches, draft.looseRun, members.extras()));
    }

    private void takeYarns() {
        int length = takeList(Chart.MOST_YARNS, place -> {
            YarnDraft draft = new YarnDraft();
            values.object(draft, RawJson::inOneLine).ifPresent(draft::finish);
        });
        yarnIdsComplete = yarnIds.size() == length;
    }

    private void takeRounds() {
        takeList(Chart.MOST_ROUNDS, place -> {
            RoundDraft draft = new RoundDraft(place == 0);
            values.object(draft, RawJson::inOneLine).ifPresent(draft::finish);
        });
    }

    /** Takes a list of at least one value, and says how many there were; what is past the most is passed over. */
    private int takeList(int most, IntConsumer taker) {
        int line = json.line();
        String path = json.path();
        OptionalInt length = values.list(place -> {
            if (place < most) {
                taker.accept(place);
            } else {
                json.pass();
            }
        });
        if (length.isPresent() && (length.getAsInt() < 1 || length.getAsInt() > most)) {
            values.note(Problem.atMember(new ChartFault.WrongNumber(length.getAsInt(), 1, most), line, path));
        }
        return length.orElse(0);
    }

    private void checkYarnsNamed() {
        if (yarnIds.isEmpty() || !yarnIdsComplete) {
            return;
        }
        for (YarnNamed named : yarnsNamed) {
            if (!yarnIds.contains(named.id())) {
                values.note(Problem.atMember(
                        new ChartFault.NoSuchYarn(named.id(), List.copyOf(yarnIds)), named.line(), named.path()));
            }
        }
    }

    private final class CornerDraft implements KnownMembers {
        private int chains = Corner.DEFAULT.chains();

        @Override
        public boolean take(String name) {
            boolean known = name.equals("chains");
            if (known) {
                chains = values.whole(1, Corner.MOST_CHAINS).orElse(chains);
            }
            return known;
        }
    }

    private final class RulesDraft implements KnownMembers {
        private boolean landOnCornerChain = Rules.DEFAULT.landOnCornerChain();
        private boolean stackLongStitches = Rules.DEFAULT.stackLongStitches();
        private int looseRun = Rules.DEFAULT.looseRun();

        @Override
        public boolean take(String name) {
            switch (name) {
                case "landOnCornerChain" -> landOnCornerChain = values.truth().orElse(landOnCornerChain);
                case "stackLongStitches" -> stackLongStitches = values.truth().orElse(stackLongStitches);
                case "looseRun" -> looseRun = values.whole(1, Integer.MAX_VALUE).orElse(looseRun);
                default -> {
                    return false;
                }
            }
            return true;
        }
    }

    private final class YarnDraft implements KnownMembers {
        private Optional<String> id = Optional.empty();
        private Optional<String> name = Optional.empty();
        private Optional<Colour> colour = Optional.empty();
        private Optional<Ball> ball = Optional.empty();
        private OptionalDouble inHand = OptionalDouble.empty();

        @Override
        public boolean take(String member) {
            switch (member) {
                case "id" -> takeId();
                case "name" -> name = values.text();
                case "colour" -> colour = takeColour();
                case "ball" -> ball = making.takeBall();
                case "inHand" -> inHand = values.measureOrNone();
                default -> {
                    return false;
                }
            }
            return true;
        }

        private void takeId() {
            Optional<String> text = values.text();
            if (text.isEmpty()) {
                return;
            }
            if (!Yarn.isId(text.get())) {
                values.note(new ChartFault.NotAnId(text.get(), Yarn.LONGEST_ID));
                return;
            }
            if (!yarnIds.add(text.get())) {
                values.note(new ChartFault.SameId(text.get()));
            }
            id = text;
        }

        private Optional<Colour> takeColour() {
            Optional<String> text = values.text();
            if (text.isPresent() && !Colour.isColour(text.get())) {
                values.note(new ChartFault.NotAColour(text.get()));
                return Optional.empty();
            }
            return text.map(Colour::parse);
        }

        private void finish(Members members) {
            values.require(members, "id", Shape.TEXT);
            values.require(members, "name", Shape.TEXT);
            values.require(members, "colour", Shape.TEXT);
            if (id.isPresent() && name.isPresent() && colour.isPresent()) {
                yarns.add(new Yarn(id.get(), name.get(), colour.get(), ball, inHand, members.extras()));
            }
        }
    }

    private final class RoundDraft implements KnownMembers {
        private final boolean first;
        private Optional<String> yarn = Optional.empty();
        private final Map<Section, Stitches> sections = new EnumMap<>(Section.class);

        RoundDraft(boolean first) {
            this.first = first;
        }

        @Override
        public boolean take(String name) {
            if (name.equals("yarn")) {
                yarn = values.text();
                yarn.ifPresent(id -> yarnsNamed.add(new YarnNamed(id, json.line(), json.path())));
                return true;
            }
            for (Section section : Section.values()) {
                if (section.member().equals(name)) {
                    takeStitches().ifPresent(stitches -> sections.put(section, stitches));
                    return true;
                }
            }
            return false;
        }

        private Optional<Stitches> takeStitches() {
            Optional<String> text = values.text();
            if (text.isEmpty()) {
                return Optional.empty();
            }
            String letters = text.get();
            for (int i = 0; i < letters.length(); i++) {
                if (Stitch.ofLetter(letters.charAt(i)).isEmpty()) {
                    values.note(
                            new ChartFault.NoSuchStitch(Character.toString(letters.codePointAt(i)), i + 1, LETTERS));
                    return Optional.empty();
                }
            }
            if (first && (letters.isEmpty() || letters.length() > Chart.MOST_STITCHES)) {
                values.note(new ChartFault.WrongNumber(letters.length(), 1, Chart.MOST_STITCHES));
                return Optional.empty();
            }
            return Optional.of(Stitches.of(letters));
        }

        private void finish(Members members) {
            values.require(members, "yarn", Shape.TEXT);
            for (Section section : Section.values()) {
                values.require(members, section.member(), Shape.TEXT);
            }
            if (yarn.isPresent() && sections.size() == Section.values().length) {
                rounds.add(new Round(
                        yarn.get(),
                        sections.get(Section.FROM_CORNER),
                        sections.get(Section.REPEAT),
                        sections.get(Section.TO_CORNER),
                        members.extras()));
            }
        }
    }
}
