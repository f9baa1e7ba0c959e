package edgewright.cli;

import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** The version that stands in the jar. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        Optional<String> version =
                Optional.ofNullable(Version.class.getPackage().getImplementationVersion());
        return new String[] {version.map(v -> Texts.of("version", v)).orElse(Texts.of("version.none"))};
    }
}
