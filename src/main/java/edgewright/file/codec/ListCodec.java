package edgewright.file.codec;

import edgewright.file.fault.ChartFault;
import edgewright.file.fault.Problem;
import edgewright.file.fault.Problem.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** A list of the chart with each value in a line of its own, so that one changed value is one changed line. */
class ListCodec<T> implements Codec<List<T>> {
    private final Codec<T> first;
    private final Codec<T> others;
    private final int least;
    private final int most;

    /**
     * A list of so many values.
     *
     * @param first what the first value is held to, which may be stricter
     * @param others what all others are held to
     */
    ListCodec(Codec<T> first, Codec<T> others, int least, int most) {
        this.first = first;
        this.others = others;
        this.least = least;
        this.most = most;
    }

    /** A short list, each value held to the same, and all of it in one line. */
    static class InOneLine<T> extends ListCodec<T> {
        InOneLine(Codec<T> each, int least, int most) {
            super(each, each, least, most);
        }

        @Override
        public String write(List<T> values) {
            return values.stream().map(super.others::write).collect(Collectors.joining(", ", "[", "]"));
        }
    }

    /** What comes of the number of values in the file, right or wrong ones. */
    void counted(int number, Reading in) {}

    /** The values that are right; those past the most are passed over. */
    @Override
    public Optional<List<T>> read(Reading in) {
        if (!in.standsOn(Shape.LIST)) {
            return Optional.empty();
        }
        int line = in.json().line();
        String path = in.json().path();
        List<T> values = new ArrayList<>();
        int number = in.json().list(place -> {
            if (place < most) {
                (place == 0 ? first : others).read(in).ifPresent(values::add);
            } else {
                in.json().pass();
            }
        });
        if (number < least || number > most) {
            in.note(Problem.atMember(new ChartFault.WrongNumber(number, least, most), line, path));
        }
        counted(number, in);
        return Optional.of(List.copyOf(values));
    }

    @Override
    public String write(List<T> values) {
        return values.stream().map(others::write).collect(Collectors.joining(",\n    ", "[\n    ", "\n  ]"));
    }

    @Override
    public ValueSchema form() {
        return new ValueSchema.Items(first.form(), others.form(), least, most);
    }
}
