package edgewright.cli;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.shortest;

import edgewright.booklet.choice.PrintChoice;
import edgewright.texts.Messages;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A number in a range, written with a point. */
abstract class NumberConverter implements ITypeConverter<Double> {
    private final Messages says;
    private final double least;
    private final double most;

    NumberConverter(Messages says, double least, double most) {
        this.says = says;
        this.least = least;
        this.most = most;
    }

    @Override
    public Double convert(String text) {
        // No signs, exponents or words: 'Infinity' and '0x1p3' are numbers to Java alone.
        if (text.matches("[0-9]{1,6}(\\.[0-9]{1,6})?")) {
            double number = Double.parseDouble(text);
            if (number >= least && number <= most) {
                return number;
            }
        }
        throw new TypeConversionException(
                says.text("number", arg("found", text), shortest("least", least, 1), shortest("most", most, 1)));
    }

    /** The edge of a cell in a picture. */
    static final class OfCellMm extends NumberConverter {
        OfCellMm(Messages says) {
            super(says, 0.5, 50);
        }
    }

    /** The edge of a cell in print. */
    static final class OfPrintedCellMm extends NumberConverter {
        OfPrintedCellMm(Messages says) {
            super(says, PrintChoice.SMALLEST_CELL_MM, PrintChoice.LARGEST_CELL_MM);
        }
    }

    /** Pixels an inch. */
    static final class OfDpi extends NumberConverter {
        OfDpi(Messages says) {
            super(says, 10, 2_400);
        }
    }

    /** A difference of colours, after CIEDE2000. */
    static final class OfDifference extends NumberConverter {
        OfDifference(Messages says) {
            super(says, 0, 200);
        }
    }
}
