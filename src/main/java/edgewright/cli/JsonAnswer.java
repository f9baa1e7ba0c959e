package edgewright.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.PrintStream;

/** Answers as one JSON document. An answer is a record whose components are the members, in their order. */
final class JsonAnswer {
    private static final ObjectWriter WRITER = JsonMapper.builder()
            .build()
            .writer(new DefaultPrettyPrinter(Separators.createDefaultInstance()
                            .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                            .withArrayEmptySeparator(""))
                    .withObjectIndenter(new DefaultIndenter("  ", "\n"))
                    .withArrayIndenter(new DefaultIndenter("  ", "\n")));

    private JsonAnswer() {}

    static void print(Object answer, PrintStream to) {
        try {
            to.print(WRITER.writeValueAsString(answer));
            to.print('\n');
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("an answer is made of records, lists, texts and numbers", e);
        }
    }
}
