package edgewright.cli;

import edgewright.draw.Turn;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Degrees clockwise, in quarters of a turn. */
final class TurnConverter implements ITypeConverter<Turn> {
    @Override
    public Turn convert(String degrees) {
        return switch (degrees) {
            case "0" -> Turn.NONE;
            case "90" -> Turn.QUARTER;
            case "180" -> Turn.HALF;
            case "270" -> Turn.THREE_QUARTERS;
            default -> throw new TypeConversionException(Texts.of("choice", degrees, "0, 90, 180, 270"));
        };
    }
}
