package edgewright.file.fault;

import edgewright.file.fault.Problem.Token;

/** A fault that makes a text no JSON, or none that a chart file may be. */
public sealed interface JsonFault extends Fault {

    /** What there is to say of each; a new fault does not compile before it is answered here. */
    interface Cases<T> {
        /** The text does not begin as a chart does. */
        T of(NoObject fault);

        /** The text ends before it is complete. */
        T of(EndsEarly fault);

        /** Not JSON. */
        T of(NotJson fault);

        /** Something follows after the end of the chart. */
        T of(MoreAfterEnd fault);

        /** A member stands twice in one place. */
        T of(Twice fault);

        /** Objects and lists too deep inside each other. */
        T of(TooDeep fault);

        /** A number with too many digits. */
        T of(LongNumber fault);
    }

    /**
     * The text does not begin as a chart does.
     *
     * @param found what stands there
     */
    record NoObject(String found) implements JsonFault {
        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /** The text ends before it is complete. */
    record EndsEarly(Token expected) implements JsonFault {
        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /**
     * Not JSON.
     *
     * @param column counted from 1
     * @param found what stands there
     */
    record NotJson(int column, String found, Token expected) implements JsonFault {
        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /**
     * Something follows after the end of the chart.
     *
     * @param column counted from 1
     * @param found what stands there
     */
    record MoreAfterEnd(int column, String found) implements JsonFault {
        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /**
     * A member stands twice in one place.
     *
     * @param firstLine the line of the first, counted from 1
     */
    record Twice(int firstLine) implements JsonFault {
        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /**
     * Objects and lists too deep inside each other.
     *
     * @param most the levels that there may be
     */
    record TooDeep(int most) implements JsonFault {
        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /**
     * A number with too many digits.
     *
     * @param most the characters that it may have
     */
    record LongNumber(int most) implements JsonFault {
        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }
}
