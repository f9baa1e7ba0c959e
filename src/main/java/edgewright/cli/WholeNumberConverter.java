package edgewright.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A whole number. Which numbers make sense is for the command to say. */
final class WholeNumberConverter implements ITypeConverter<Integer> {
    @Override
    public Integer convert(String text) {
        try {
            return Integer.valueOf(text);
        } catch (NumberFormatException e) {
            boolean isWhole = text.matches("[+-]?[0-9]+");
            throw new TypeConversionException(
                    isWhole
                            ? CommandTexts.of("whole.tooLarge", text, Integer.MAX_VALUE)
                            : CommandTexts.of("whole", text));
        }
    }
}
