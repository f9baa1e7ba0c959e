package edgewright.cli;

import static edgewright.texts.Arg.arg;

import edgewright.texts.Messages;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** File names on the command line. */
final class PathConverter implements ITypeConverter<Path> {
    private final Messages says;

    PathConverter(Messages says) {
        this.says = says;
    }

    @Override
    public Path convert(String name) {
        if (name.isEmpty()) {
            throw new TypeConversionException(says.text("path-empty"));
        }
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw new TypeConversionException(says.text(
                    "path-bad",
                    arg("found", ScreenText.oneLine(name)),
                    arg("reason", ScreenText.oneLine(e.getReason()))));
        }
    }
}
