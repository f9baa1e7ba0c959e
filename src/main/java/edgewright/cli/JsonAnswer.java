package edgewright.cli;

import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.io.CharacterEscapes;
import com.fasterxml.jackson.core.io.SerializedString;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import edgewright.chart.CleanText;
import java.io.IOException;
import java.io.PrintStream;
import java.util.Locale;

/** Answers as one JSON document. An answer is a record whose components are the members, in their order. */
final class JsonAnswer {
    private static final int DELETE = 0x7f;

    private static final ObjectWriter WRITER = JsonMapper.builder(new JsonFactoryBuilder()
                    .characterEscapes(new SteeringEscaped())
                    .build())
            .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
            .build()
            .writer(new DefaultPrettyPrinter(Separators.createDefaultInstance()
                            .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                            .withArrayEmptySeparator(""))
                    .withObjectIndenter(new DefaultIndenter("  ", "\n"))
                    .withArrayIndenter(new DefaultIndenter("  ", "\n")));

    /** Writes characters that would steer a terminal as escapes, so that the document is the same and safe to look at. */
    private static final class SteeringEscaped extends CharacterEscapes {
        private static final long serialVersionUID = 1;

        @Override
        public int[] getEscapeCodesForAscii() {
            int[] codes = standardAsciiEscapesForJSON();
            codes[DELETE] = ESCAPE_STANDARD;
            return codes;
        }

        @Override
        public SerializableString getEscapeSequence(int c) {
            return CleanText.steers(c) ? new SerializedString(String.format(Locale.ROOT, "\\u%04x", c)) : null;
        }
    }

    private JsonAnswer() {}

    /** Prints it without ever holding the whole text: a border can have hundreds of thousands of stitches. */
    static void print(Object answer, PrintStream to) {
        try {
            WRITER.writeValue(to, answer);
            to.print('\n');
        } catch (IOException e) {
            throw new IllegalStateException("a print stream keeps its failures to itself", e);
        }
    }
}
