package edgewright.cli;

import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.PrintStream;

/** Answers as one JSON document. An answer is a record whose components are the members, in their order. */
final class JsonAnswer {
    private static final ObjectWriter WRITER = JsonMapper.builder()
            .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
            .build()
            .writer(new DefaultPrettyPrinter(Separators.createDefaultInstance()
                            .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                            .withArrayEmptySeparator(""))
                    .withObjectIndenter(new DefaultIndenter("  ", "\n"))
                    .withArrayIndenter(new DefaultIndenter("  ", "\n")));

    private JsonAnswer() {}

    /** Prints it without ever holding the whole text: a chart can have millions of findings. */
    static void print(Object answer, PrintStream to) {
        try {
            WRITER.writeValue(to, answer);
            to.print('\n');
        } catch (IOException e) {
            throw new IllegalStateException("a print stream keeps its failures to itself", e);
        }
    }
}
