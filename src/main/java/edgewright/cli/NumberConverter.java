package edgewright.cli;

import edgewright.booklet.choice.PrintChoice;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A number in a range, written with a point. */
abstract class NumberConverter implements ITypeConverter<Double> {
    private final double least;
    private final double most;

    NumberConverter(double least, double most) {
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
        throw new TypeConversionException(CommandTexts.of("number", text, least, most));
    }

    /** The edge of a cell in a picture. */
    static final class OfCellMm extends NumberConverter {
        OfCellMm() {
            super(0.5, 50);
        }
    }

    /** The edge of a cell in print. */
    static final class OfPrintedCellMm extends NumberConverter {
        OfPrintedCellMm() {
            super(PrintChoice.SMALLEST_CELL_MM, PrintChoice.LARGEST_CELL_MM);
        }
    }

    /** Pixels an inch. */
    static final class OfDpi extends NumberConverter {
        OfDpi() {
            super(10, 2_400);
        }
    }
}
