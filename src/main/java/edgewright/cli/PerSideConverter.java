package edgewright.cli;

import edgewright.chart.PerSide;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Numbers a side, as {@link PerSide#parse} takes them. */
final class PerSideConverter implements ITypeConverter<PerSide<Integer>> {
    @Override
    public PerSide<Integer> convert(String text) {
        try {
            return PerSide.parse(text);
        } catch (IllegalArgumentException e) {
            throw new TypeConversionException(CommandTexts.of("perSide", text));
        }
    }
}
