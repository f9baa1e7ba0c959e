package edgewright.cli;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.commas;

import edgewright.draw.grid.Rotation;
import edgewright.texts.Messages;
import java.util.List;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Degrees clockwise, in quarters of a turn. */
final class RotationConverter implements ITypeConverter<Rotation> {
    private final Messages says;

    RotationConverter(Messages says) {
        this.says = says;
    }

    @Override
    public Rotation convert(String degrees) {
        return switch (degrees) {
            case "0" -> Rotation.NONE;
            case "90" -> Rotation.QUARTER;
            case "180" -> Rotation.HALF;
            case "270" -> Rotation.THREE_QUARTERS;
            default ->
                throw new TypeConversionException(
                        says.text("choice", arg("found", degrees), commas("choices", List.of(0, 90, 180, 270))));
        };
    }
}
