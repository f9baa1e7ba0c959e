package edgewright.file.codec;

import edgewright.chart.Ball;
import edgewright.chart.Colour;
import edgewright.chart.Extras;
import edgewright.chart.Yarn;
import edgewright.file.fault.ChartFault;
import java.util.Optional;
import java.util.OptionalDouble;

/** A yarn. */
final class YarnCodec extends RecordCodec<Yarn> {
    private static final int COLOUR_LENGTH = "#rrggbb".length();

    /** A colour as {@code #rrggbb}. */
    static final Codec<Colour> COLOUR =
            ValueCodecs.text(COLOUR_LENGTH, COLOUR_LENGTH, YarnCodec::colourLaw).as(Colour::parse, Colour::toString);

    private final Member<Yarn, String> id =
            required("id", ValueCodecs.text(1, Yarn.LONGEST_ID, YarnCodec::idLaw), Yarn::id);
    private final Member<Yarn, String> name = required("name", ValueCodecs.TEXT, Yarn::name);
    private final Member<Yarn, Colour> colour = required("colour", COLOUR, Yarn::colour);
    private final Member<Yarn, Optional<Ball>> ball =
            optional("ball", new BallCodec().orNone(), Optional.empty(), Yarn::ball);
    private final Member<Yarn, OptionalDouble> inHand = optional(
            "inHand",
            ValueCodecs.MEASURE_OR_NONE.as(OptionalDouble::of, OptionalDouble::getAsDouble),
            OptionalDouble.empty(),
            Yarn::metresInHand);

    private static Optional<String> idLaw(String id, Reading in) {
        if (!Yarn.isId(id)) {
            in.note(new ChartFault.NotAnId(id, Yarn.LONGEST_ID));
            return Optional.empty();
        }
        if (!in.links().yarnHas(id)) {
            in.note(new ChartFault.SameId(id));
        }
        return Optional.of(id);
    }

    private static Optional<String> colourLaw(String colour, Reading in) {
        if (!Colour.isColour(colour)) {
            in.note(new ChartFault.NotAColour(colour));
            return Optional.empty();
        }
        return Optional.of(colour);
    }

    @Override
    Yarn make(FoundMembers found) {
        return new Yarn(
                found.get(id), found.get(name), found.get(colour), found.get(ball), found.get(inHand), found.extras());
    }

    @Override
    Extras extras(Yarn yarn) {
        return yarn.extras();
    }
}
