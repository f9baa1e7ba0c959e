package edgewright.cli;

import static edgewright.texts.Arg.arg;

import edgewright.texts.Messages;
import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** The version that stands in the jar. */
final class ProgramVersion implements IVersionProvider {
    private final Messages says;

    ProgramVersion(Messages says) {
        this.says = says;
    }

    @Override
    public String[] getVersion() {
        Optional<String> version =
                Optional.ofNullable(ProgramVersion.class.getPackage().getImplementationVersion());
        return new String[] {
            version.map(v -> says.text("version", arg("version", v))).orElse(says.text("version-none"))
        };
    }
}
