package edgewright.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ContainerNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import edgewright.chart.Stitch;
import edgewright.file.fault.ChartFault;
import edgewright.file.fault.Fault;
import edgewright.file.fault.JsonFault;
import edgewright.file.fault.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The schema and the reader say the same. The schema is judged by a library that knows nothing of charts: JSON Schema, draft
 * 2020-12, https://json-schema.org/draft/2020-12.
 */
class ChartSchemaTest {
    private static final SchemaRegistry DRAFT = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final Schema SCHEMA = DRAFT.getSchema(schemaText());

    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    /** What the reader refuses and no schema can say; the schema's description names these laws. */
    private static final Set<Class<? extends Fault>> BEYOND_A_SCHEMA = Set.of(
            ChartFault.SameId.class,
            ChartFault.NoSuchYarn.class,
            ChartFault.NoSuchColumn.class,
            ChartFault.NoName.class,
            ChartFault.NoWords.class,
            ChartFault.SameName.class,
            ChartFault.SameRound.class,
            ChartFault.NotClosing.class,
            JsonFault.Twice.class,
            JsonFault.TooDeep.class,
            JsonFault.LongNumber.class);

    /** All that a chart may say of how it is made. */
    private static final String MAKING = """
            { "hook": 4.5, "yarnWeight": 4, "swatch": { "stitches": 16, "rounds": 18.5 },
              "start": { "column": 3, "odd": "left", "even": "right" }, "back": { "hook": 4 },
              "technique": { "join": "standing", "close": "slip" },
              "sizes": [{ "name": "Lap", "repeats": [9, 7] }, { "name": "Bed", "sides": [40] }],
              "piece": { "front": [{ "round": 0, "sides": [103, 131, 103, 131] }], "back": [{ "round": 1, "sides": [107, 135, 107, 135] }] },
              "photos": [{ "file": "reed.jpg", "alt": "Reeds", "caption": "At low water", "at": "cover" }],
              "sections": [{ "title": "Care", "text": "Wash it *cold*." }], "imprint": "saltmarsh.imprint.json",
              "yarnUse": { "backLoop": 112, "plain": 115, "long": 200, "chain": 60, "tall": 220, "slip": 40 },
              "skill": "You can count." }
            """;

    private static final String OF_A_YARN = """
            { "ball": { "metres": 160, "grams": 50 }, "inHand": 0 }
            """;

    /** Values that are put where they may not belong. */
    private static final List<String> ODD_VALUES = List.of(
            "null",
            "true",
            "false",
            "0",
            "1",
            "1.0",
            "10e-1",
            "2",
            "2.5",
            "-1",
            "3",
            "4",
            "64",
            "2147483647",
            "2147483648",
            "2147483647.0",
            "1e30",
            "\"\"",
            "\"A\"",
            "\"B\"",
            "\"b\"",
            "\"" + Stitch.LETTERS + "\"",
            "\"bb\\n\"",
            "\"\\nbb\"",
            "\"Bb\"",
            "\"#2b2a33\"",
            "\"#2B2A33\"",
            "\"#2b2a33\\n\"",
            "\"\u00c5\u00f1\u7de8\u0662\"",
            "\"\ud835\udc9c\ud835\udc9c\ud835\udc9c\ud835\udc9c\ud835\udc9c\"",
            "\"e\\u0301\"",
            "\"A_\"",
            "\"ABCDEFGH\"",
            "\"ABCDEFGHI\"",
            "\"UK\"",
            "\"US\"",
            "\"top\"",
            "\"TOP\"",
            "0.01",
            "0.009",
            "1000000",
            "1000001",
            "\"edgewright-chart\"",
            "[]",
            "[1]",
            "[{}]",
            "{}",
            "{\"id\":\"C\",\"name\":\"\",\"colour\":\"#000000\"}",
            "{\"yarn\":\"A\",\"fromCorner\":\"\",\"repeat\":\"\",\"toCorner\":\"\"}");

    @TempDir
    private Path folder;

    @Test
    void theSchemaKeepsTheRulesForSchemas() {
        Schema meta = DRAFT.getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertThat(meta.validate(schemaText(), InputFormat.JSON)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("edgewright.file.ChartTextTest#sampleCharts")
    void everySampleKeepsTheSchema(Path file) throws IOException {
        assertThat(SCHEMA.validate(Files.readString(file), InputFormat.JSON)).isEmpty();
    }

    @Test
    void everyBrokenChartThatIsJsonBreaksTheSchemaToo() throws IOException {
        int judged = 0;
        for (BrokenCharts.BrokenChart broken : BrokenCharts.all()) {
            Path file = broken.in(Files.createTempDirectory(folder, "chart"));
            if (Files.isRegularFile(file) && Files.isReadable(file) && Files.size(file) < ChartFiles.MOST_BYTES) {
                String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
                if (isJson(text)) {
                    agree(text);
                    judged++;
                }
            }
        }
        assertThat(judged).isGreaterThan(60);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void readerAndSchemaAgreeOnChartsThatAreChangedAtRandom(long seed) throws JsonProcessingException {
        Random random = new Random(seed);
        int refused = 0;
        int charts = 2_500;
        for (int i = 0; i < charts; i++) {
            ObjectNode chart = (ObjectNode) JSON.readTree(BrokenCharts.sound());
            if (random.nextBoolean()) {
                chart.setAll((ObjectNode) JSON.readTree(MAKING));
                ((ObjectNode) chart.at("/yarns/0")).setAll((ObjectNode) JSON.readTree(OF_A_YARN));
            }
            change(chart, random);
            if (random.nextInt(4) == 0) {
                change(chart, random);
            }
            refused += agree(chart.toString()) ? 0 : 1;
        }
        // Both answers must come up often, or the agreement would mean little.
        assertThat(refused).isBetween(charts / 10, charts * 9 / 10);
    }

    /** Whether the reader takes the text; fails if the schema sees it otherwise. */
    private static boolean agree(String text) throws JsonProcessingException {
        List<Fault> faults = ChartText.fromJson(text) instanceof ReadResult.Problems refused
                ? refused.problems().stream().map(Problem::fault).toList()
                : List.of();
        boolean breaksTheSchema = faults.stream().anyMatch(fault -> !BEYOND_A_SCHEMA.contains(fault.getClass()));
        if (SCHEMA.validate(JSON.readTree(text)).isEmpty() == breaksTheSchema) {
            assertThat(SCHEMA.validate(JSON.readTree(text)).toString())
                    .as("the reader says %s of %s", faults, text)
                    .isEqualTo(breaksTheSchema ? "anything but nothing" : "[]");
        }
        return faults.isEmpty();
    }

    /** One change somewhere: a value replaced, taken out or put in twice, or a member that nobody knows. */
    private static void change(ObjectNode chart, Random random) throws JsonProcessingException {
        List<ContainerNode<?>> containers = new ArrayList<>();
        collect(chart, containers);
        ContainerNode<?> container = containers.get(random.nextInt(containers.size()));
        JsonNode value = JSON.readTree(ODD_VALUES.get(random.nextInt(ODD_VALUES.size())));
        if (container instanceof ObjectNode object) {
            changeMember(object, value, random);
        } else if (container instanceof ArrayNode list) {
            changeList(list, value, random);
        }
    }

    private static void changeMember(ObjectNode object, JsonNode value, Random random) {
        List<String> names = new ArrayList<>();
        object.fieldNames().forEachRemaining(names::add);
        if (names.isEmpty() || random.nextInt(5) == 0) {
            object.set(List.of("gauge", "", "Title", "notes ", "id", "chains").get(random.nextInt(6)), value);
            return;
        }
        String name = names.get(random.nextInt(names.size()));
        if (random.nextInt(6) == 0) {
            object.remove(name);
        } else {
            object.set(name, value);
        }
    }

    private static void changeList(ArrayNode list, JsonNode value, Random random) {
        if (list.isEmpty()) {
            list.add(value);
            return;
        }
        int place = random.nextInt(list.size());
        switch (random.nextInt(4)) {
            case 0 -> list.remove(place);
            case 1 -> list.add(list.get(place).deepCopy());
            case 2 -> list.insert(place, value);
            default -> list.set(place, value);
        }
    }

    private static void collect(JsonNode node, List<ContainerNode<?>> containers) {
        if (node instanceof ContainerNode<?> container) {
            containers.add(container);
            container.forEach(child -> collect(child, containers));
        }
    }

    private static boolean isJson(String text) {
        try {
            return !JSON.readTree(text).isMissingNode();
        } catch (IOException | NumberFormatException e) {
            // The second is a number too large for the library, which then cannot judge it either.
            return false;
        }
    }

    private static String schemaText() {
        try (InputStream in = ChartText.class.getResourceAsStream("chart-1.schema.json")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
