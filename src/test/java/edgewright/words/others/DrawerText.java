package edgewright.words.others;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import edgewright.chart.PerSide;
import edgewright.chart.Terms;
import edgewright.hands.HouseRules;
import edgewright.hands.Maker;
import edgewright.hands.WorkOutcome;
import edgewright.texts.English;
import edgewright.words.grammar.Remark;
import edgewright.words.tree.WrittenRound;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/** A text of the drawer, what a careful human reads in it, and what the reader makes of it. */
record DrawerText(String name, String text, JsonNode expected) {
    static final Path DRAWER = Path.of("src/test/resources/edgewright/words/drawer");

    private static final Map<String, OthersReading> RIGHT = new ConcurrentHashMap<>();

    /** What became of a text. */
    enum Verdict {
        READ_RIGHT,
        REFUSED_RIGHT,
        ASKED_RIGHT,
        /** Refused although a human can read it. */
        REFUSED_READABLE,
        /** Refused, but at another line. */
        REFUSED_ELSEWHERE,
        READ_WRONGLY
    }

    static List<DrawerText> all() throws IOException {
        try (Stream<Path> files = Files.list(DRAWER)) {
            List<DrawerText> all = new ArrayList<>();
            for (Path file : files.filter(file -> file.toString().endsWith(".txt"))
                    .sorted()
                    .toList()) {
                String name = file.getFileName().toString().replaceFirst("\\.txt$", "");
                all.add(new DrawerText(
                        name,
                        Files.readString(file),
                        new ObjectMapper().readTree(Files.readString(DRAWER.resolve(name + ".expected.json")))));
            }
            return all;
        }
    }

    /** What the line with this character of the text was taken as. */
    Account.Line lineAt(int character) {
        int line = (int)
                text.substring(0, character).chars().filter(c -> c == '\n').count();
        return right().account().lines().get(line);
    }

    /** The text as it was read, worked out once. */
    private OthersReading right() {
        return RIGHT.computeIfAbsent(name, unused -> read(text));
    }

    /** Its rounds as they were read. */
    List<String> rightRounds() {
        return readRounds(right(), base());
    }

    Optional<JsonNode> chart() {
        return Optional.ofNullable(expected.has("chart") ? expected.get("chart") : expected.get("chartIfUk"));
    }

    boolean asks() {
        return expected.get("outcome").asText().equals("question");
    }

    OthersReading read(String words) {
        return OthersReader.read(words, English.LANGUAGE, Optional.empty(), Optional.of(base()));
    }

    /** A size in which every round can be worked: the one told, or the first that closes with some repeats. */
    PerSide<Integer> base() {
        if (chart().isEmpty()) {
            return PerSide.all(43);
        }
        JsonNode first = chart().get().get("rounds").get(0);
        int corners = length(first, "fromCorner") + length(first, "toCorner") - 2;
        int w = length(first, "repeat");
        JsonNode repeats = expected.get("repeats");
        return PerSide.each(side ->
                corners + w * (repeats == null ? 4 : repeats.get(side.ordinal()).asInt()));
    }

    private static int length(JsonNode round, String section) {
        return round.get(section).asText().length();
    }

    /** The rounds of the expected chart on sides of this base: yarn, four sides and corner chains of each. */
    List<String> expectedRounds(PerSide<Integer> base) {
        JsonNode chart = chart().orElseThrow();
        List<String> rounds = new ArrayList<>();
        List<String> yarns = new ArrayList<>();
        int r = 0;
        for (JsonNode round : chart.get("rounds")) {
            r++;
            String from = round.get("fromCorner").asText();
            String repeat = round.get("repeat").asText();
            String to = round.get("toCorner").asText();
            int number = r;
            PerSide<String> sides = base.map(stitches -> {
                int m = (stitches + 2 * number - from.length() - to.length()) / repeat.length();
                return from + repeat.repeat(Math.max(0, m)) + to;
            });
            rounds.add(line(
                    yarns,
                    round.get("yarn").asText(),
                    sides,
                    chart.get("corner").get("chains").asInt()));
        }
        return rounds;
    }

    /** The rounds that were read, likewise. */
    static List<String> readRounds(OthersReading reading, PerSide<Integer> base) {
        List<String> rounds = new ArrayList<>();
        List<String> yarns = new ArrayList<>();
        for (WrittenRound round : reading.pattern().orElseThrow().rounds()) {
            PerSide<String> sides =
                    PerSide.each(side -> Sides.letters(round, side, base.get(side) + 2 * round.number()));
            rounds.add(line(yarns, round.yarn(), sides, round.cornerChains()));
        }
        return rounds;
    }

    private static String line(List<String> yarns, String yarn, PerSide<String> sides, int chains) {
        if (!yarns.contains(yarn)) {
            yarns.add(yarn);
        }
        return yarns.indexOf(yarn) + " " + String.join(" ", sides.stream().toList()) + " " + chains;
    }

    Verdict verdict() {
        OthersReading reading = read(text);
        String outcome = expected.get("outcome").asText();
        boolean refused = reading.pattern().isEmpty() || !reading.remarks().isEmpty();
        if (asks()) {
            return refused && reading.remarks().get(0).kind() == Remark.Kind.QUESTION
                    ? chartIfUk()
                    : refused ? Verdict.REFUSED_ELSEWHERE : Verdict.READ_WRONGLY;
        }
        if (outcome.equals("refused")) {
            int line = expected.get("line").asInt();
            return !refused
                    ? handsStop(reading) == line ? Verdict.REFUSED_RIGHT : Verdict.READ_WRONGLY
                    : reading.remarks().get(0).line() == line ? Verdict.REFUSED_RIGHT : Verdict.REFUSED_ELSEWHERE;
        }
        if (refused && holds("mayRefuse", reading.remarks().get(0).line())) {
            return Verdict.REFUSED_RIGHT;
        }
        return refused ? Verdict.REFUSED_READABLE : compared(reading);
    }

    /** The line of the round at which hands that follow the words must stop; 0 if they come to the end. */
    private int handsStop(OthersReading reading) {
        PerSide<Integer> sides =
                reading.sizes().isEmpty() ? base() : reading.sizes().get(0);
        WorkOutcome outcome =
                new Maker(HouseRules.ALL_ALLOWED).work(reading.pattern().orElseThrow(), sides);
        if (!(outcome instanceof WorkOutcome.Stopped stopped)) {
            return 0;
        }
        return reading.account().lines().stream()
                .filter(line -> line.rounds().contains(stopped.stop().round()))
                .findFirst()
                .map(Account.Line::number)
                .orElse(0);
    }

    private Verdict compared(OthersReading reading) {
        for (PerSide<Integer> base :
                Stream.concat(Stream.of(base()), reading.sizes().stream()).toList()) {
            if (!readRounds(reading, base).equals(expectedRounds(base))) {
                return Verdict.READ_WRONGLY;
            }
        }
        return Verdict.READ_RIGHT;
    }

    private Verdict chartIfUk() {
        if (chart().isEmpty()) {
            return Verdict.ASKED_RIGHT;
        }
        OthersReading answered = OthersReader.read(text, English.LANGUAGE, Optional.of(Terms.UK), Optional.of(base()));
        if (answered.pattern().isEmpty() || !answered.remarks().isEmpty()) {
            return Verdict.REFUSED_READABLE;
        }
        return compared(answered) == Verdict.READ_RIGHT ? Verdict.ASKED_RIGHT : Verdict.READ_WRONGLY;
    }

    /** Whether whoever wrote the text calls a line prose that no reader needs. */
    boolean isProse(int line) {
        return holds("prose", line) && !holds("statements", line);
    }

    private boolean holds(String member, int line) {
        for (JsonNode each : expected.path(member)) {
            if (each.asInt() == line) {
                return true;
            }
        }
        return false;
    }

    /** The lines that the reader took as instructions although they are none, or the other way round. */
    List<String> misplacedLines(OthersReading reading) {
        List<String> misplaced = new ArrayList<>();
        List<Integer> prose = new ArrayList<>();
        expected.get("prose").forEach(line -> prose.add(line.asInt()));
        for (Account.Line line : reading.account().lines()) {
            boolean round = !line.rounds().isEmpty();
            if (!line.text().isBlank() && round == prose.contains(line.number())) {
                misplaced.add(line.number() + ": " + line.text());
            }
        }
        return misplaced;
    }
}
