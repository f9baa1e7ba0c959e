package edgewright.file.codec;

import edgewright.chart.Extras;
import edgewright.chart.Side;
import edgewright.chart.Start;
import java.util.Optional;
import java.util.OptionalInt;

/** Where the rounds are started. */
final class StartCodec extends RecordCodec<Start> {
    private static final Codec<Integer> WHOLE = ValueCodecs.whole(1, Integer.MAX_VALUE);

    /** A column, which is held against round 1 when that has been read. */
    private static final Codec<Integer> COLUMN = ValueCodecs.of(
            WHOLE.form(),
            in -> {
                Optional<Integer> column = WHOLE.read(in);
                column.ifPresent(number -> in.links().startsIn(number, in.json()));
                return column;
            },
            WHOLE::write);

    private static final Codec<Optional<Side>> SIDE =
            ValueCodecs.choice(Side.values()).orNone();

    private final Member<Start, OptionalInt> column =
            optional("column", COLUMN.as(OptionalInt::of, OptionalInt::getAsInt), OptionalInt.empty(), Start::column);
    private final Member<Start, Optional<Side>> odd =
            usual("odd", SIDE, Optional.empty(), start -> Optional.of(start.odd()));
    private final Member<Start, Optional<Side>> even =
            usual("even", SIDE, Optional.empty(), start -> Optional.of(start.even()));

    /** A side that is not given follows from the other one: rounds then start on opposite sides in turn. */
    @Override
    Start make(FoundMembers found) {
        Side first =
                found.get(odd).or(() -> found.get(even).map(Side::opposite)).orElse(Start.DEFAULT.odd());
        return new Start(found.get(column), first, found.get(even).orElse(first.opposite()), found.extras());
    }

    @Override
    Extras extras(Start start) {
        return start.extras();
    }
}
