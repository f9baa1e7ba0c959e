package edgewright.file.codec;

import edgewright.file.fault.Problem.Shape;
import java.math.BigDecimal;
import java.util.List;

/** What the values of a codec look like in a file, as a schema would say it. The schema is held to this by a test. */
sealed interface ValueSchema {

    /** How the sentence for a member that is missing, or of another shape, calls it. */
    Shape shape();

    /** One text and no other. */
    record OneText(String text) implements ValueSchema {
        @Override
        public Shape shape() {
            return Shape.TEXT;
        }
    }

    /** One number and no other. */
    record OneNumber(int number) implements ValueSchema {
        @Override
        public Shape shape() {
            return Shape.WHOLE_NUMBER;
        }
    }

    /** Text of so many characters; what characters they may be is for the codec to say. */
    record Text(int least, int most) implements ValueSchema {
        @Override
        public Shape shape() {
            return Shape.TEXT;
        }
    }

    /** One of these texts. */
    record Choice(List<String> texts) implements ValueSchema {
        public Choice {
            texts = List.copyOf(texts);
        }

        @Override
        public Shape shape() {
            return Shape.TEXT;
        }
    }

    /** True or false. */
    record Truth() implements ValueSchema {
        @Override
        public Shape shape() {
            return Shape.TRUE_OR_FALSE;
        }
    }

    /** A whole number in this range, both ends among it. */
    record Whole(int least, int most) implements ValueSchema {
        @Override
        public Shape shape() {
            return Shape.WHOLE_NUMBER;
        }
    }

    /** A number in this range, both ends among it, whole or not. */
    record Measure(BigDecimal least, int most) implements ValueSchema {
        @Override
        public Shape shape() {
            return Shape.NUMBER;
        }
    }

    /** So many values of one form, of which the first may have a stricter one. */
    record Items(ValueSchema first, ValueSchema others, int least, int most) implements ValueSchema {
        @Override
        public Shape shape() {
            return Shape.LIST;
        }
    }

    /** An object with these members, in the order in which they are written, and any others. */
    record Members(List<Member<?, ?>> members) implements ValueSchema {
        public Members {
            members = List.copyOf(members);
        }

        @Override
        public Shape shape() {
            return Shape.OBJECT;
        }
    }
}
