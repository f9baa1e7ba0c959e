package edgewright.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import edgewright.chart.Back;
import edgewright.chart.Ball;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.Corner;
import edgewright.chart.Extras;
import edgewright.chart.Heading;
import edgewright.chart.HookSize;
import edgewright.chart.KeptPiece;
import edgewright.chart.NamedSize;
import edgewright.chart.NamedSize.Unit;
import edgewright.chart.PatternDetails;
import edgewright.chart.PerSide;
import edgewright.chart.Round;
import edgewright.chart.RoundCounts;
import edgewright.chart.Rules;
import edgewright.chart.Side;
import edgewright.chart.Start;
import edgewright.chart.Stitch;
import edgewright.chart.Stitches;
import edgewright.chart.Swatch;
import edgewright.chart.Technique;
import edgewright.chart.Technique.Close;
import edgewright.chart.Technique.Join;
import edgewright.chart.Terms;
import edgewright.chart.Yarn;
import edgewright.chart.YarnUse;
import edgewright.file.fault.Fault;
import edgewright.file.fault.FileFault;
import edgewright.file.fault.JsonFault;
import edgewright.file.fault.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Charts and texts made at random, from fixed seeds. */
class ChartTextFuzzTest {
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private static final String CHARACTERS = "abcé編\ud83e\uddf6\"\\/\n\t\u2028\u0000 {}[]:,#09";

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void anyChartIsWrittenReadAndWrittenTheSame(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 300; i++) {
            Chart chart = chart(random);
            String text = ChartText.toJson(chart);
            assertThat(ChartText.fromJson(text)).isInstanceOfSatisfying(ReadResult.Read.class, read -> {
                assertThat(read.chart()).isEqualTo(chart);
                assertThat(ChartText.toJson(read.chart())).isEqualTo(text);
            });
        }
    }

    @Test
    void aChartCutOffAnywhereIsNoChart() {
        String text = BrokenCharts.sound().strip();
        for (int length = 0; length < text.length(); length++) {
            List<Fault> faults = faults(ChartText.fromJson(text.substring(0, length)));
            assertThat(faults).as("the first %s characters", length).hasSize(1).allMatch(ChartTextFuzzTest::saysNoJson);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23})
    void aTextWithOneWrongCharacterIsJsonToUsExactlyIfItIsJson(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 3_000; i++) {
            StringBuilder text = new StringBuilder(BrokenCharts.sound());
            int place = random.nextInt(text.length());
            String piece =
                    "{}[]:,\"\\ \n\tbt0-.eE+u'/".substring(random.nextInt(22)).substring(0, 1);
            switch (random.nextInt(3)) {
                case 0 -> text.deleteCharAt(place);
                case 1 -> text.insert(place, piece);
                default -> text.replace(place, place + 1, piece);
            }
            boolean isJson =
                    faults(ChartText.fromJson(text.toString())).stream().noneMatch(ChartTextFuzzTest::saysNoJson);
            assertThat(isJson).as(text.toString()).isEqualTo(isJson(text.toString()));
        }
    }

    /** Whether the fault says that the text is no JSON at all. */
    private static boolean saysNoJson(Fault fault) {
        return fault instanceof JsonFault || fault == FileFault.Simple.EMPTY;
    }

    private static List<Fault> faults(ReadResult result) {
        return result instanceof ReadResult.Problems refused
                ? refused.problems().stream().map(Problem::fault).toList()
                : List.of();
    }

    private static boolean isJson(String text) {
        try {
            return !JSON.readTree(text).isMissingNode();
        } catch (JsonProcessingException e) {
            return false;
        }
    }

    private static Chart chart(Random random) {
        List<Yarn> yarns = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(3); i++) {
            yarns.add(new Yarn(
                    "Y" + i,
                    words(random),
                    new Colour(random.nextInt(0x1000000)),
                    maybe(random, () -> new Ball(measure(random), measure(random), extras(random, true))),
                    measured(random),
                    extras(random, true)));
        }
        List<Round> rounds = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(5); i++) {
            String yarn = yarns.get(random.nextInt(yarns.size())).id();
            int least = i == 0 ? 1 : 0;
            rounds.add(
                    new Round(yarn, row(random, least), row(random, least), row(random, least), extras(random, true)));
        }
        return new Chart(
                new Heading(words(random), words(random), words(random), random.nextBoolean() ? Terms.UK : Terms.US),
                new Corner(1 + random.nextInt(3), extras(random, true)),
                new Rules(random.nextBoolean(), random.nextBoolean(), 1 + random.nextInt(99), extras(random, true)),
                yarns,
                rounds,
                making(random, rounds.get(0)),
                extras(random, false));
    }

    private static PatternDetails making(Random random, Round first) {
        int columns = first.fromCorner().length() - 1 + first.repeat().length();
        return new PatternDetails(
                maybe(
                        random,
                        () -> new Start(
                                random.nextBoolean()
                                        ? OptionalInt.of(1 + random.nextInt(columns))
                                        : OptionalInt.empty(),
                                Side.values()[random.nextInt(4)],
                                Side.values()[random.nextInt(4)],
                                extras(random, true))),
                maybe(random, () -> new Back(maybe(random, () -> hook(random)), extras(random, true))),
                maybe(random, () -> hook(random)),
                maybe(random, () -> new Swatch(measure(random), measure(random), extras(random, true))),
                maybe(
                        random,
                        () -> new YarnUse(
                                measured(random),
                                measured(random),
                                measured(random),
                                measured(random),
                                measured(random),
                                measured(random),
                                extras(random, true))),
                random.nextBoolean()
                        ? OptionalInt.of(random.nextInt(PatternDetails.MOST_WEIGHT + 1))
                        : OptionalInt.empty(),
                words(random),
                new Technique(any(random, Join.values()), any(random, Close.values()), extras(random, true)),
                sizes(random, first),
                maybe(random, () -> piece(random)));
    }

    private static List<NamedSize> sizes(Random random, Round first) {
        int corners = first.fromCorner().length() + first.toCorner().length() - 2;
        return IntStream.range(0, random.nextInt(NamedSize.MOST + 1))
                .mapToObj(i -> {
                    boolean repeats = random.nextBoolean();
                    int fewest = repeats ? 0 : corners;
                    int step = repeats ? 1 : first.repeat().length();
                    return new NamedSize(
                            i + words(random),
                            repeats ? Unit.REPEATS : Unit.STITCHES,
                            PerSide.pairs(fewest + step * random.nextInt(9), fewest + step * random.nextInt(9)),
                            extras(random, true));
                })
                .toList();
    }

    private static KeptPiece piece(Random random) {
        return new KeptPiece(counted(random, 0), counted(random, 1), extras(random, true));
    }

    private static List<RoundCounts> counted(Random random, int first) {
        return random.ints(random.nextInt(4), first, 40)
                .distinct()
                .mapToObj(round -> new RoundCounts(
                        round,
                        PerSide.each(side -> random.nextInt(RoundCounts.MOST_STITCHES + 1)),
                        extras(random, true)))
                .toList();
    }

    private static <T> T any(Random random, T[] values) {
        return values[random.nextInt(values.length)];
    }

    private static <T> Optional<T> maybe(Random random, Supplier<T> value) {
        return random.nextBoolean() ? Optional.of(value.get()) : Optional.empty();
    }

    private static HookSize hook(Random random) {
        return new HookSize(1 + random.nextInt(10_000));
    }

    private static double measure(Random random) {
        return random.nextBoolean() ? 1 + random.nextInt(99) : 0.01 + random.nextDouble() * 999_999;
    }

    private static OptionalDouble measured(Random random) {
        return random.nextBoolean() ? OptionalDouble.of(measure(random)) : OptionalDouble.empty();
    }

    private static Stitches row(Random random, int least) {
        StringBuilder letters = new StringBuilder();
        for (int i = least + random.nextInt(90); i > 0; i--) {
            letters.append(Stitch.LETTERS.charAt(random.nextInt(Stitch.LETTERS.length())));
        }
        return Stitches.of(letters);
    }

    private static String words(Random random) {
        StringBuilder words = new StringBuilder();
        for (int i = random.nextInt(8); i > 0; i--) {
            words.append(CHARACTERS.charAt(random.nextInt(CHARACTERS.length())));
        }
        return words.toString();
    }

    private static Extras extras(Random random, boolean oneLine) {
        Map<String, String> members = new LinkedHashMap<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            // The parser does not take half a character in a name.
            members.put("x" + words(random).replaceAll("[\\ud800-\\udfff]", ""), json(random, 3, oneLine));
        }
        return new Extras(members);
    }

    private static String json(Random random, int levels, boolean oneLine) {
        String gap = List.of("", " ", "  ", oneLine ? "\t" : "\n  ").get(random.nextInt(4));
        return switch (random.nextInt(levels == 0 ? 5 : 7)) {
            case 0 -> "null";
            case 1 -> "-0.50e+07";
            case 2 -> "12345678901234567890.10";
            case 3 -> "\"a \\\"\\u00e9\\\\ {[,: \"";
            case 4 -> "true";
            case 5 ->
                "[" + gap + json(random, levels - 1, oneLine) + gap + "," + json(random, levels - 1, oneLine) + "]";
            default ->
                "{" + gap + "\"a\"" + gap + ":" + json(random, levels - 1, oneLine) + gap + ",\"b\":[" + gap + "]}";
        };
    }
}
