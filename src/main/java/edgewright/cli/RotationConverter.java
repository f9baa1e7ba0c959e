package edgewright.cli;

import edgewright.draw.picture.Rotation;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Degrees clockwise, in quarters of a turn. */
final class RotationConverter implements ITypeConverter<Rotation> {
    @Override
    public Rotation convert(String degrees) {
        return switch (degrees) {
            case "0" -> Rotation.NONE;
            case "90" -> Rotation.QUARTER;
            case "180" -> Rotation.HALF;
            case "270" -> Rotation.THREE_QUARTERS;
            default -> throw new TypeConversionException(CommandTexts.of("choice", degrees, "0, 90, 180, 270"));
        };
    }
}
