package edgewright.cli;

import static edgewright.texts.Arg.arg;

import edgewright.chart.PerSide;
import edgewright.texts.Messages;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Numbers a side, as {@link PerSide#parse} takes them. */
final class PerSideConverter implements ITypeConverter<PerSide<Integer>> {
    private final Messages says;

    PerSideConverter(Messages says) {
        this.says = says;
    }

    @Override
    public PerSide<Integer> convert(String text) {
        try {
            return PerSide.parse(text);
        } catch (IllegalArgumentException e) {
            throw new TypeConversionException(says.text("perSide", arg("found", text)));
        }
    }
}
