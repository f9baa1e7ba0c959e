package edgewright.file.codec;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import edgewright.file.ChartText;
import edgewright.file.json.JsonText;
import edgewright.file.json.JsonWalk;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;

/** Member by member the schema says what the codecs read and write, and nothing else. */
class SchemaMembersTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final JsonNode SCHEMA = schema();
    private static final ChartCodec CHART = new ChartCodec();

    @Test
    void schemaAndCodecsHaveTheSameMembersInTheSameOrderWithTheSameRanges() {
        List<String> ofTheSchema = new ArrayList<>();
        describe("chart", SCHEMA, ofTheSchema);
        List<String> ofTheCodecs = new ArrayList<>();
        describe("chart", CHART.form(), ofTheCodecs);
        assertThat(ofTheSchema).containsExactlyElementsOf(ofTheCodecs).hasSizeGreaterThan(50);
    }

    @Test
    void aDefaultOfTheSchemaIsWhatTheAbsenceOfTheMemberStandsFor() {
        List<String> ofTheSchema = new ArrayList<>();
        List<String> ofTheCodecs = new ArrayList<>();
        defaults("chart", SCHEMA, CHART.form(), ofTheSchema, ofTheCodecs);
        assertThat(ofTheSchema).containsExactlyElementsOf(ofTheCodecs).hasSize(20);
    }

    /** One line for each value that a chart can hold: its place, its form, and whether it must be there. */
    private static void describe(String place, JsonNode schema, List<String> lines) {
        JsonNode node = resolved(schema);
        if (node.has("const")) {
            lines.add(place + " is " + node.get("const"));
        } else if (node.has("enum")) {
            lines.add(place + " is one of " + node.get("enum"));
        } else {
            switch (node.path("type").asText()) {
                case "string" ->
                    lines.add(place + " is text of " + node.path("minLength").asInt(0) + " to "
                            + node.path("maxLength").asInt(Integer.MAX_VALUE));
                case "boolean" -> lines.add(place + " is true or false");
                case "integer" -> lines.add(place + " is whole, " + node.get("minimum") + " to " + node.get("maximum"));
                case "number" ->
                    lines.add(place + " is a number, " + node.get("minimum") + " to " + node.get("maximum"));
                case "array" -> {
                    lines.add(place + " is a list of " + node.get("minItems") + " to " + node.get("maxItems"));
                    describe(
                            place + "[0]",
                            node.path("prefixItems").path(0).isMissingNode()
                                    ? node.get("items")
                                    : node.get("prefixItems").get(0),
                            lines);
                    describe(place + "[1]", node.get("items"), lines);
                }
                case "object" -> {
                    lines.add(place + " is an object with " + names(node.path("required")));
                    node.path("properties")
                            .properties()
                            .forEach(member -> describe(place + "." + member.getKey(), member.getValue(), lines));
                }
                default -> lines.add(place + " is nothing that a codec reads: " + node);
            }
        }
    }

    private static void describe(String place, ValueSchema form, List<String> lines) {
        if (form instanceof ValueSchema.OneText one) {
            lines.add(place + " is " + JsonText.quoted(one.text()));
        } else if (form instanceof ValueSchema.OneNumber one) {
            lines.add(place + " is " + one.number());
        } else if (form instanceof ValueSchema.Choice choice) {
            lines.add(place + " is one of "
                    + choice.texts().stream()
                            .map(JsonText::quoted)
                            .toList()
                            .toString()
                            .replace(", ", ","));
        } else if (form instanceof ValueSchema.Text text) {
            lines.add(place + " is text of " + text.least() + " to " + text.most());
        } else if (form instanceof ValueSchema.Truth) {
            lines.add(place + " is true or false");
        } else if (form instanceof ValueSchema.Whole whole) {
            lines.add(place + " is whole, " + whole.least() + " to " + whole.most());
        } else if (form instanceof ValueSchema.Measure measure) {
            lines.add(place + " is a number, " + measure.least() + " to " + measure.most());
        } else if (form instanceof ValueSchema.Items items) {
            lines.add(place + " is a list of " + items.least() + " to " + items.most());
            describe(place + "[0]", items.first(), lines);
            describe(place + "[1]", items.others(), lines);
        } else if (form instanceof ValueSchema.Members object) {
            lines.add(place + " is an object with "
                    + object.members().stream()
                            .filter(Member::isRequired)
                            .map(Member::name)
                            .toList());
            object.members()
                    .forEach(member ->
                            describe(place + "." + member.name(), member.codec().form(), lines));
        }
    }

    private static void defaults(
            String place, JsonNode schema, ValueSchema form, List<String> ofTheSchema, List<String> ofTheCodecs) {
        JsonNode node = resolved(schema);
        if (form instanceof ValueSchema.Items items) {
            defaults(place + "[]", node.get("items"), items.others(), ofTheSchema, ofTheCodecs);
        } else if (form instanceof ValueSchema.Members object) {
            for (Member<?, ?> member : object.members()) {
                String there = place + "." + member.name();
                JsonNode property = resolved(node.path("properties").path(member.name()));
                if (property.has("default")) {
                    ofTheSchema.add(there + " else " + readAndWritten(member.codec(), property.get("default")));
                }
                ifAbsent(member).ifPresent(value -> ofTheCodecs.add(there + " else " + value));
                defaults(there, property, member.codec().form(), ofTheSchema, ofTheCodecs);
            }
        }
    }

    /** What the absence of a member stands for, where a file can say that at all. */
    private static <T> Optional<String> ifAbsent(Member<?, T> member) {
        try {
            return member.ifAbsent().map(member.codec()::write);
        } catch (NoSuchElementException e) {
            return Optional.empty();
        }
    }

    private static <T> String readAndWritten(Codec<T> codec, JsonNode value) {
        return codec.write(
                codec.read(new Reading(new JsonWalk(value.toString()))).orElseThrow());
    }

    private static List<String> names(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false)
                .map(JsonNode::asText)
                .toList();
    }

    /** The node with what it refers to put in its place, and all that must hold together put together. */
    private static JsonNode resolved(JsonNode node) {
        ObjectNode whole = JSON.createObjectNode();
        if (node.has("$ref")) {
            merge(whole, resolved(SCHEMA.at(node.get("$ref").asText().substring(1))));
        }
        node.path("allOf").forEach(part -> merge(whole, resolved(part)));
        merge(whole, node);
        whole.remove(List.of("$ref", "allOf"));
        return whole;
    }

    private static void merge(ObjectNode into, JsonNode from) {
        from.properties().forEach(member -> {
            JsonNode there = into.get(member.getKey());
            if (there instanceof ObjectNode && member.getValue() instanceof ObjectNode) {
                ObjectNode both = JSON.createObjectNode();
                merge(both, resolved(there));
                merge(both, resolved(member.getValue()));
                into.set(member.getKey(), both);
            } else {
                into.set(member.getKey(), member.getValue());
            }
        });
    }

    private static JsonNode schema() {
        try (InputStream in = ChartText.class.getResourceAsStream("chart-1.schema.json")) {
            return JSON.readTree(in);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
