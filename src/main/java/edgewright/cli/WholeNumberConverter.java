package edgewright.cli;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.texts.Messages;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;

/** A whole number. Which numbers make sense is for the command to say. */
final class WholeNumberConverter implements ITypeConverter<Integer> {
    private final Messages says;

    WholeNumberConverter(Messages says) {
        this.says = says;
    }

    @Override
    public Integer convert(String text) {
        try {
            return Integer.valueOf(text);
        } catch (NumberFormatException e) {
            boolean isWhole = text.matches("[+-]?[0-9]+");
            throw new TypeConversionException(
                    isWhole
                            ? says.text("whole-tooLarge", arg("found", text), count("most", Integer.MAX_VALUE))
                            : says.text("whole", arg("found", text)));
        }
    }

    /** @throws ParameterException if the number of an option lies outside */
    static void requireBetween(int number, String option, int least, int most, CommandSpec spec, Messages says) {
        if (number < least || number > most) {
            throw new ParameterException(
                    spec.commandLine(),
                    says.text(
                            "whole-between",
                            arg("option", option),
                            count("found", number),
                            count("least", least),
                            count("most", most)));
        }
    }
}
