package edgewright.file.fault;

import edgewright.file.fault.Problem.Shape;
import java.util.List;

/** A fault of a member: the text is JSON, and its value is not what the file format asks for. */
public sealed interface ChartFault extends Fault {

    /** What there is to say of each; a new fault does not compile before it is answered here. */
    interface Cases<T> {
        /** The file does not say that it is a chart. */
        T of(NotAChart fault);

        /** The file does not say that it is an imprint. */
        T of(NotAnImprint fault);

        /** The file does not say that it is a motif. */
        T of(NotAMotif fault);

        /** A round of a motif that is not like its first. */
        T of(NotLikeFirst fault);

        /** A version that this program does not know yet. */
        T of(NewerVersion fault);

        /** A version that never was. */
        T of(NoSuchVersion fault);

        /** A member that every such object has is not there. */
        T of(Missing fault);

        /** The wrong type of value. */
        T of(WrongShape fault);

        /** A number that is not whole or not in its range. */
        T of(NotInRange fault);

        /** A measure that is not in its range. */
        T of(NotAMeasure fault);

        /** A text that is none of those allowed. */
        T of(NoSuchChoice fault);

        /** Not a colour. */
        T of(NotAColour fault);

        /** Not an id for a yarn. */
        T of(NotAnId fault);

        /** Two yarns with one id. */
        T of(SameId fault);

        /** A round names a yarn that is not there. */
        T of(NoSuchYarn fault);

        /** A letter that no stitch has. */
        T of(NoSuchStitch fault);

        /** A start column past the first repeat. */
        T of(NoSuchColumn fault);

        /** A size without a name. */
        T of(NoName fault);

        /** Two sizes with one name. */
        T of(SameName fault);

        /** Two counts of one round of a piece. */
        T of(SameRound fault);

        /** A side of a size that does not close. */
        T of(NotClosing fault);

        /** Both or neither of two members of which one is expected. */
        T of(NotOneOf fault);

        /** A text that says nothing, or too much. */
        T of(NoWords fault);

        /** Not an address of the World Wide Web. */
        T of(NotAWebAddress fault);

        /** Too few or too many yarns, rounds or stitches. */
        T of(WrongNumber fault);
    }

    /**
     * The file does not say that it is a chart.
     *
     * @param format the value expected of {@code format}
     */
    record NotAChart(String format) implements ChartFault {
        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /**
     * The file does not say that it is a motif.
     *
     * @param format the value expected of {@code format}
     */
    record NotAMotif(String format) implements ChartFault {
        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /**
     * A round of a motif that has not as many letters as its first, or its corner elsewhere.
     *
     * @param round from 1, the innermost
     */
    record NotLikeFirst(int round) implements ChartFault {
        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /**
     * A version that this program does not know yet.
     *
     * @param found as it is written
     * @param newest the newest that it knows
     */
    record NewerVersion(String found, int newest) implements ChartFault {
        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /**
     * A version that never was.
     *
     * @param found as it is written
     */
    record NoSuchVersion(String found, int expected) implements ChartFault {
        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /**
     * A member that every such object has is not there.
     *
     * @param expected what was expected in it
     */
    record Missing(Shape expected) implements ChartFault {
        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /** The wrong type of value. */
    record WrongShape(Shape found, Shape expected) implements ChartFault {
        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /**
     * A number that is not whole or not in its range.
     *
     * @param found as it is written
     */
    record NotInRange(String found, int least, int most) implements ChartFault {
        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /**
     * A measure that is not in its range.
     *
     * @param found as it is written
     * @param least as it is to be shown
     */
    record NotAMeasure(String found, String least, int most) implements ChartFault {
        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /** A text that is none of those allowed. */
    record NoSuchChoice(String found, List<String> choices) implements ChartFault {
        public NoSuchChoice {
            choices = List.copyOf(choices);
        }

        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /**
     * Not a colour.
     *
     * @param found the text
     */
    record NotAColour(String found) implements ChartFault {
        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /**
     * Not an id for a yarn.
     *
     * @param found the text
     * @param longest the characters that it may have
     */
    record NotAnId(String found, int longest) implements ChartFault {
        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /** Two yarns with one id. */
    record SameId(String id) implements ChartFault {
        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /**
     * A round names a yarn that is not there.
     *
     * @param ids those that are there
     */
    record NoSuchYarn(String id, List<String> ids) implements ChartFault {
        public NoSuchYarn {
            ids = List.copyOf(ids);
        }

        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /**
     * A letter that no stitch has.
     *
     * @param place in the section, counted from 1
     * @param letters those that there are
     */
    record NoSuchStitch(String letter, int place, List<String> letters) implements ChartFault {
        public NoSuchStitch {
            letters = List.copyOf(letters);
        }

        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /**
     * A start column past the first repeat.
     *
     * @param found the column
     * @param last the last that there is
     */
    record NoSuchColumn(int found, int last) implements ChartFault {
        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /** A size without a name. */
    record NoName() implements ChartFault {
        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /** Two counts of one round of a piece. */
    record SameRound(int round) implements ChartFault {
        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /** Two sizes with one name. */
    record SameName(String name) implements ChartFault {
        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /**
     * A side of a size that does not close.
     *
     * @param found its stitches in the base round, corner chains not counted
     * @param nearest the numbers next to it that close, the smaller first
     */
    record NotClosing(int found, List<Integer> nearest) implements ChartFault {
        public NotClosing {
            nearest = List.copyOf(nearest);
        }

        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /**
     * Both or neither of two members of which one is expected.
     *
     * @param both whether both are there
     */
    record NotOneOf(boolean both, List<String> members) implements ChartFault {
        public NotOneOf {
            members = List.copyOf(members);
        }

        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /**
     * Too few or too many yarns, rounds or stitches.
     *
     * @param found how many
     */
    record WrongNumber(int found, int least, int most) implements ChartFault {
        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /**
     * The file does not say that it is an imprint.
     *
     * @param format the value expected of {@code format}
     */
    record NotAnImprint(String format) implements ChartFault {
        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /**
     * A text that says nothing, or too much.
     *
     * @param longest the most characters that it may have
     */
    record NoWords(int longest) implements ChartFault {
        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }

    /**
     * Not an address of the World Wide Web.
     *
     * @param found the text
     */
    record NotAWebAddress(String found) implements ChartFault {
        @Override
        public <T> T among(Fault.Cases<T> cases) {
            return cases.of(this);
        }
    }
}
