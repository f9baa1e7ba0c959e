package edgewright.cli;

import edgewright.texts.Messages;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.IFactory;

/** Makes what the library makes of the classes that options name: those that refuse an argument say so in a language. */
final class CommandParts implements IFactory {
    private final Map<Class<?>, Supplier<?>> speaking;
    private final IFactory others = CommandLine.defaultFactory();

    CommandParts(Messages says) {
        speaking = Map.of(
                PathConverter.class, () -> new PathConverter(says),
                PerSideConverter.class, () -> new PerSideConverter(says),
                CropConverter.class, () -> new CropConverter(says),
                NumberConverter.OfDifference.class, () -> new NumberConverter.OfDifference(says),
                RotationConverter.class, () -> new RotationConverter(says),
                NumberConverter.OfCellMm.class, () -> new NumberConverter.OfCellMm(says),
                NumberConverter.OfPrintedCellMm.class, () -> new NumberConverter.OfPrintedCellMm(says),
                NumberConverter.OfDpi.class, () -> new NumberConverter.OfDpi(says),
                ProgramVersion.class, () -> new ProgramVersion(says));
    }

    @Override
    public <K> K create(Class<K> type) throws Exception {
        Supplier<?> part = speaking.get(type);
        return part == null ? others.create(type) : type.cast(part.get());
    }
}
