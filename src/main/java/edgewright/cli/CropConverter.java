package edgewright.cli;

import static edgewright.texts.Arg.arg;

import edgewright.assist.picture.PixelReduction.Crop;
import edgewright.texts.Messages;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A part of a picture in pixels: {@code LEFT,TOP,WIDTH,HEIGHT}. */
final class CropConverter implements ITypeConverter<Crop> {
    private final Messages says;

    CropConverter(Messages says) {
        this.says = says;
    }

    @Override
    public Crop convert(String text) {
        if (!text.matches("[0-9]{1,9}(,[0-9]{1,9}){3}")) {
            throw new TypeConversionException(says.text("crop", arg("found", text)));
        }
        String[] numbers = text.split(",");
        return new Crop(
                Integer.parseInt(numbers[0]),
                Integer.parseInt(numbers[1]),
                Integer.parseInt(numbers[2]),
                Integer.parseInt(numbers[3]));
    }
}
