package edgewright.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** File names on the command line. */
final class PathConverter implements ITypeConverter<Path> {
    @Override
    public Path convert(String name) {
        if (name.isEmpty()) {
            throw new TypeConversionException(CommandTexts.of("path.empty"));
        }
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw new TypeConversionException(
                    CommandTexts.of("path.bad", CommandTexts.oneLine(name), CommandTexts.oneLine(e.getReason())));
        }
    }
}
