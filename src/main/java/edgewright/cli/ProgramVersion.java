package edgewright.cli;

import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** The version that stands in the jar. */
final class ProgramVersion implements IVersionProvider {
    @Override
    public String[] getVersion() {
        Optional<String> version =
                Optional.ofNullable(ProgramVersion.class.getPackage().getImplementationVersion());
        return new String[] {version.map(v -> CommandTexts.of("version", v)).orElse(CommandTexts.of("version.none"))};
    }
}
