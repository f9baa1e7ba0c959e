package edgewright.cli;

import static edgewright.texts.Arg.arg;

import edgewright.assist.picture.PixelReduction;
import edgewright.assist.picture.PixelReduction.Crop;
import edgewright.chart.Chart;
import edgewright.texts.Messages;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;

/** How a picture in pixels becomes one of stitches. */
final class PixelOption {
    @Spec(Target.MIXEE)
    private CommandSpec spec;

    @Option(names = "--crop", paramLabel = "LEFT,TOP,WIDTH,HEIGHT", converter = CropConverter.class)
    private Crop crop;

    @Option(names = "--stitches", paramLabel = "N")
    private Integer stitches;

    @Option(names = "--rounds", paramLabel = "N")
    private Integer rounds;

    @Option(names = "--threshold", paramLabel = "DIFFERENCE", converter = NumberConverter.OfDifference.class)
    private Double threshold;

    /** @throws ParameterException if an option is given for letters, or a number makes no picture */
    PixelReduction reduction(Path file, boolean isPixels, Messages says) {
        if (!isPixels) {
            refuse(crop, "--crop", file, says);
            refuse(stitches, "--stitches", file, says);
            refuse(rounds, "--rounds", file, says);
            refuse(threshold, "--threshold", file, says);
        }
        return new PixelReduction(
                Optional.ofNullable(crop),
                optional(stitches, "--stitches", Chart.MOST_STITCHES, says),
                optional(rounds, "--rounds", Chart.MOST_ROUNDS, says),
                threshold == null ? OptionalDouble.empty() : OptionalDouble.of(threshold));
    }

    private void refuse(Object given, String option, Path file, Messages says) {
        if (given != null) {
            throw new ParameterException(
                    spec.commandLine(),
                    says.text("picture-forPixels", arg("option", option), arg("file", ScreenText.name(file))));
        }
    }

    private OptionalInt optional(Integer number, String option, int most, Messages says) {
        if (number == null) {
            return OptionalInt.empty();
        }
        WholeNumberConverter.requireBetween(number, option, 1, most, spec, says);
        return OptionalInt.of(number);
    }
}
